import type { Known, KnownTable } from "../../cite/known.ts";
import type { Well } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import type { AnnulusGap, IsolationLayer, LayerInterval, Results } from "../results.ts";
import { cementEvidence, steelEvidence } from "./evidence.ts";

type Md = Known<"measured-depth">;
type Built = Pick<Results, "casing" | "cement">;

/** Tops closer than this to the top of their string leave no gap: hanger and ground level differ by a foot or two [ft]. */
const NO_GAP = 5;

/**
 * What is crossed from the inside of the well to the rock at a depth along the hole, from the inside outward. An annulus
 * without cement is told as one; in open hole there is nothing.
 *
 * @param md  [ft]; on a boundary the upper interval's layers
 */
export const layersAt = (well: Well, { casing, cement }: Built, md: number): readonly IsolationLayer[] =>
	well.strings.toReversed().flatMap((string): readonly IsolationLayer[] => {
		const pipe = casing[string.id];
		if (pipe === undefined || md <= pipe.top.md.value || md > pipe.shoe.md.value) return [];
		const column = cement[string.id];
		const cemented = (column?.columns ?? []).some(
			({ top, bottom }) => top.md.value < md && md <= bottom.md.value,
		);
		return [
			{ kind: "steel", string: string.id, evidence: steelEvidence(string) },
			cemented
				? {
						kind: "cement",
						string: string.id,
						evidence: cementEvidence(string.cement?.actual),
					}
				: { kind: "open annulus", string: string.id },
		];
	});

/** Every stretch of hole with its layers, from the hanger to total depth. */
export const layerIntervals = (
	well: Well,
	path: KnownTable,
	built: Built,
	totalDepth: Md,
): readonly LayerInterval[] => {
	const marks = Object.values(built.casing).flatMap(({ top, shoe }) => [top.md, shoe.md]);
	const columns = Object.values(built.cement).flatMap((job) =>
		job.columns.flatMap(({ top, bottom }) => [top.md, bottom.md]),
	);
	const hanger = Math.min(...Object.values(built.casing).map(({ top }) => top.md.value));
	const cuts = [...marks, ...columns, totalDepth]
		.filter(({ value }) => value >= hanger && value <= totalDepth.value)
		.sort((a, b) => a.value - b.value)
		.filter(({ value }, i, all) => value !== all[i - 1]?.value);
	const pieces = cuts.flatMap((bottom, i) => {
		const top = cuts[i - 1];
		return top === undefined
			? []
			: [
					{
						top,
						bottom,
						layers: layersAt(well, built, (top.value + bottom.value) / 2),
					},
				];
	});
	return joined(pieces).map(({ top, bottom, layers }, i) => ({
		number: i + 1,
		top: holeMark(path, top, well.datum),
		bottom: holeMark(path, bottom, well.datum),
		layers,
	}));
};

interface Piece {
	readonly top: Md;
	readonly bottom: Md;
	readonly layers: readonly IsolationLayer[];
}

/** Neighboring pieces with the same layers are one. */
const joined = (pieces: readonly Piece[]): readonly Piece[] => {
	const done: Piece[] = [];
	for (const piece of pieces) {
		const last = done.at(-1);
		const same = last !== undefined && JSON.stringify(last.layers) === JSON.stringify(piece.layers);
		if (same) done.splice(-1, 1, { ...last, bottom: piece.bottom });
		else done.push(piece);
	}
	return done;
};

/** Stretches of each string's annulus without cement, cut where what lies outside changes. */
export const annulusGaps = (
	well: Well,
	path: KnownTable,
	built: Built,
): readonly Omit<AnnulusGap, "zones">[] =>
	well.strings.flatMap((string) => {
		const pipe = built.casing[string.id];
		if (pipe === undefined) return [];
		const columns = built.cement[string.id]?.columns ?? [];
		const bare = [...columns, undefined].map((column, i): readonly [Md, Md] => [
			columns[i - 1]?.bottom.md ?? pipe.top.md,
			column?.top.md ?? pipe.shoe.md,
		]);
		return bare
			.filter(([top, bottom]) => bottom.value - top.value > NO_GAP)
			.flatMap(([top, bottom]) => outsideOf(well, built, string.id, top, bottom))
			.map((piece, i) => ({
				id: `${string.id}-${i + 1}`,
				string: string.id,
				top: holeMark(path, piece.top, well.datum),
				bottom: holeMark(path, piece.bottom, well.datum),
				against: piece.against,
			}));
	});

/** A stretch, cut at the shoes of the strings outside it. */
const outsideOf = (well: Well, { casing }: Built, id: string, top: Md, bottom: Md) => {
	const index = well.strings.findIndex((string) => string.id === id);
	const outer = well.strings.slice(0, index).toReversed();
	const cuts = [
		top,
		...outer.flatMap((string) => {
			const shoe = casing[string.id]?.shoe.md;
			return shoe !== undefined && shoe.value > top.value && shoe.value < bottom.value ? [shoe] : [];
		}),
		bottom,
	].sort((a, b) => a.value - b.value);
	const pieces = cuts.flatMap((lower, i) => {
		const upper = cuts[i - 1];
		if (upper === undefined) return [];
		const middle = (upper.value + lower.value) / 2;
		const against = outer.find((string) => {
			const pipe = casing[string.id];
			return pipe !== undefined && pipe.top.md.value <= middle && middle <= pipe.shoe.md.value;
		});
		return [{ top: upper, bottom: lower, against: against?.id ?? "rock" }];
	});
	// Only what lies directly outside matters: a shoe farther out changes nothing.
	return pieces.reduceRight<typeof pieces>((done, piece) => {
		const [next] = done;
		if (next?.against === piece.against) done.splice(0, 1, { ...piece, bottom: next.bottom });
		else done.unshift(piece);
		return done;
	}, []);
};
