import { scaleLinear } from "d3-scale";

/** A stretch of depth drawn at one scale: feet of true vertical depth to points down the page. */
interface DepthPiece {
	readonly from: number;
	readonly to: number;
	readonly top: number;
	readonly bottom: number;
}

/** True vertical depth to the page: one to three pieces, each linear, with a white gap where the scale changes. */
export interface DepthScale {
	readonly pieces: readonly DepthPiece[];
	readonly y: (tvd: number) => number;
	/** How many times smaller a foot is drawn below each break. */
	readonly breaks: readonly {
		readonly tvd: number;
		readonly y: number;
		readonly ratio: number;
	}[];
}

/** Height of the white gap at a break [pt]. */
export const BREAK_GAP = 6;
/** A break must magnify its piece by at least so much, or it is not worth its confusion. */
const WORTH_A_BREAK = 1.6;
/** Least share of the depth that a piece may have. */
const SLIGHTEST = 0.005;

const pointsPerFoot = (piece: DepthPiece): number => (piece.bottom - piece.top) / (piece.to - piece.from);

interface Cut {
	readonly from: number;
	readonly to: number;
	/** Share of the height it may claim even where depth alone gives it less. */
	readonly least: number;
}

/** Shares of the height: each cut gets its least or its true share, whichever is more; the rest is divided by depth. */
const shares = (cuts: readonly Cut[]): number[] => {
	const total = cuts.reduce((sum, cut) => sum + cut.to - cut.from, 0);
	const raised = cuts.map((cut) => (cut.to - cut.from) / total < cut.least);
	const taken = cuts.reduce((sum, cut, i) => sum + (raised[i] ? cut.least : 0), 0);
	const rest = cuts.reduce((sum, cut, i) => sum + (raised[i] ? 0 : cut.to - cut.from), 0);
	return cuts.map((cut, i) =>
		raised[i] ? cut.least / Math.max(taken, 1) : ((cut.to - cut.from) / rest) * (1 - taken),
	);
};

/** Joins the two neighbors whose scales differ least, as long as they differ too little to be worth a break. */
const settled = (cuts: readonly Cut[]): readonly Cut[] => {
	if (cuts.length < 2) return cuts;
	const heights = shares(cuts);
	const scales = cuts.map((cut, i) => (heights[i] ?? 0) / (cut.to - cut.from));
	const ratios = scales.slice(1).map((below, i) => {
		const above = scales[i] ?? below;
		return Math.max(above / below, below / above);
	});
	const least = Math.min(...ratios);
	if (least >= WORTH_A_BREAK) return cuts;
	const at = ratios.indexOf(least);
	const [upper, lower] = [cuts[at], cuts[at + 1]];
	if (upper === undefined || lower === undefined) return cuts;
	const joined: Cut = {
		from: upper.from,
		to: lower.to,
		least: Math.max(upper.least, lower.least),
	};
	return settled([...cuts.slice(0, at), joined, ...cuts.slice(at + 2)]);
};

/**
 * Lays a range of true vertical depth on the page.
 *
 * @param depths     top and bottom of what is drawn [ft TVD]
 * @param page       y of the two [pt]
 * @param cuts       depths where a change of scale would help [ft TVD], each with the share of the height that the stretch
 *                   above it should have at least; and the least share of the stretch below the last
 */
export const depthScale = (
	depths: readonly [number, number],
	page: readonly [number, number],
	cuts: readonly { readonly at: number; readonly least: number }[] = [],
	leastBelow = 0,
): DepthScale => {
	const slight = SLIGHTEST * (depths[1] - depths[0]);
	const inside: { readonly at: number; readonly least: number }[] = [];
	for (const cut of [...cuts].sort((a, b) => a.at - b.at))
		if (cut.at >= (inside.at(-1)?.at ?? depths[0]) + slight && cut.at <= depths[1] - slight) inside.push(cut);
	const ends = [depths[0], ...inside.map(({ at }) => at), depths[1]];
	const wanted = ends.slice(1).map(
		(to, i): Cut => ({
			from: ends[i] ?? depths[0],
			to,
			least: inside[i]?.least ?? (inside.length === 0 ? 0 : leastBelow),
		}),
	);
	const kept = settled(wanted);
	const heights = shares(kept);
	const room = page[1] - page[0] - BREAK_GAP * (kept.length - 1);
	let top = page[0];
	const pieces = kept.map((cut, i): DepthPiece => {
		const bottom = i === kept.length - 1 ? page[1] : top + (heights[i] ?? 0) * room;
		const piece = { from: cut.from, to: cut.to, top, bottom };
		top = bottom + BREAK_GAP;
		return piece;
	});
	const scales = pieces.map((piece) =>
		scaleLinear().domain([piece.from, piece.to]).range([piece.top, piece.bottom]),
	);
	const y = (tvd: number): number => {
		const index = pieces.findIndex((piece) => tvd <= piece.to);
		const scale = scales[index === -1 ? scales.length - 1 : index];
		return scale === undefined ? page[0] : scale(tvd);
	};
	const breaks = pieces.slice(1).flatMap((below, i) => {
		const above = pieces[i];
		return above === undefined
			? []
			: [
					{
						tvd: above.to,
						y: above.bottom + BREAK_GAP / 2,
						ratio: pointsPerFoot(above) / pointsPerFoot(below),
					},
				];
	});
	return { pieces, y, breaks };
};

interface Graduation {
	/** In the ruler's own unit, from the ruler's own zero. */
	readonly value: number;
	readonly y: number;
	/** Numbered; the others are bare ticks. */
	readonly numbered: boolean;
}

/**
 * Round depths for the ruler, piece by piece.
 *
 * @param perFoot  the ruler's unit in feet (1 for feet, 0.3048 for metres)
 * @param zero     the ruler's zero [ft TVD]: 0 for the datum, ground level's depth for depths below ground
 * @param apart    least distance of numbered ticks [pt]
 */
export const graduations = (
	scale: DepthScale,
	perFoot: number,
	zero: number,
	apart: number,
): Graduation[] => {
	const out: Graduation[] = [];
	for (const piece of scale.pieces) {
		const unit = scaleLinear()
			.domain([(piece.from - zero) * perFoot, (piece.to - zero) * perFoot])
			.range([piece.top, piece.bottom]);
		const count = Math.max(1, Math.floor((piece.bottom - piece.top) / apart));
		const numbered = new Set(unit.ticks(count).map((value) => Math.round(value * 1000) / 1000));
		const fine = unit.ticks(count * 5).filter((value) => value >= -1e-6);
		const seen = new Set([...fine.map((value) => Math.round(value * 1000) / 1000), ...numbered]);
		for (const value of [...seen].sort((a, b) => a - b)) {
			const y = unit(value);
			const last = out.at(-1);
			if (value < 0 || (last !== undefined && value <= last.value)) continue;
			const close = out.findLast((each) => each.numbered);
			const clear = close === undefined || y - close.y >= apart * 0.45;
			out.push({ value, y, numbered: numbered.has(value) && clear });
		}
	}
	return out;
};
