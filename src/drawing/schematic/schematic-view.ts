import type { Results } from "../../calc/results.ts";
import type { Well } from "../../well/well.ts";
import { type DepthScale, depthScale } from "../depth-scale.ts";
import { legendHeight } from "../legend.ts";
import { nesting } from "../nesting.ts";
import type { Print } from "../print.ts";
import { levelFrom, wellAxis } from "../well-axis.ts";
import { illustrativeRange } from "./illustrative-part.ts";
import { railRoom } from "./lateral-part.ts";
import { legendOf, pageEntries } from "./legend-part.ts";
import { type Detail, type Frame, halfWidthAt, type View } from "./view.ts";

/** Type size of labels at each level of detail [pt]. */
const SIZES = { full: 8, plain: 10.5, numbers: 9.5 } as const;

interface PageSize {
	readonly width: number;
	readonly height: number;
}

/** Works out the page: what stands where, and how deep each point of it is. */
export const schematicView = (
	well: Well,
	results: Results,
	detail: Detail,
	paper: PageSize,
	print: Print,
): View => {
	const tallFor = (deepest: number) => {
		const size = SIZES[detail] * 0.95;
		const plugs = results.stimulation?.stages.some((stage) => stage.plug !== undefined) === true;
		const entries = legendOf(well, results, detail, deepest, print.words);
		// As much as the page may turn out to need.
		const page = pageEntries(print.words, {
			plug: plugs,
			plannedShoe: well.strings.some((string) => string.plannedShoe !== undefined),
			illustration: detail === "full" && illustrativeRange(results) !== undefined,
			rail: results.stimulation?.stages.length ?? 0,
		});
		return legendHeight([...entries, ...page], {
			x: 0,
			width: paper.width,
			size,
		});
	};
	// What the drawing reaches decides what its legend explains, and the legend takes room from the drawing.
	const first = viewWith(
		well,
		results,
		detail,
		paper,
		print,
		tallFor(results.trajectory.total_depth.tvd.value),
	);
	return viewWith(well, results, detail, paper, print, tallFor(first.deepest));
};

const viewWith = (
	well: Well,
	results: Results,
	detail: Detail,
	{ width, height }: PageSize,
	print: Print,
	legend: number,
): View => {
	const size = SIZES[detail];
	const { trajectory } = results;
	const level = levelFrom(trajectory);
	const reached = Math.max(
		...trajectory.path.rows.map((row) => row.tvd),
		trajectory.total_depth.tvd.value,
		// Water below the well, and wells deeper than it, are drawn too.
		results.geology.protected_water_base?.tvd.value ?? 0,
		...results.geology.water.map((zone) => zone.base.tvd.value),
		...results.isolation.neighbor_wells.map((each) => each.bottom?.value ?? 0),
	);
	const most = Math.min(46, width * 0.095);
	const nest = nesting(
		well,
		detail === "plain"
			? { bore: 4.4, steel: 1.6, clearance: 0.8, step: 7, most }
			: { bore: 5.5, steel: 1.8, clearance: 0.9, step: 8.2, most },
	);
	const legendTall = legend + size * 1.6;
	const rowTall = level === undefined ? 0 : 12 + size * 1.2 * (detail === "plain" ? 2.4 : 5.2);
	const head = size * 1.25 * (detail === "plain" ? 1 : 2);
	const top = head + size * 2.6;
	const notes = height - legendTall - size * 2.6;
	const bottom = notes - rowTall - 4;
	const ruler = size * 3.9;
	const leftWidth = width * (detail === "numbers" ? 0.24 : detail === "plain" ? 0.24 : 0.215);
	const leftX = ruler + 4 + leftWidth;
	const rock = detail === "numbers" || well.geology.formations.length === 0 ? 0 : width * 0.045;
	const columnX = leftX + 24;
	// Between column and hole stand the neighbors' wells, where rock is drawn.
	const beside = detail === "numbers" ? 12 : Math.min(42, width * 0.084);
	const middle = columnX + rock + beside + nest.widest;
	const lane = middle + nest.widest + 10;
	const frame: Frame = {
		width,
		height,
		size,
		ruler,
		left: { x: leftX, width: leftWidth },
		column: { x: columnX, width: rock },
		middle,
		lane,
		right: { x: lane + 16, width: width - lane - 16 },
		top,
		bottom,
		row: { top: bottom + 2, bottom: notes },
		notes,
		legend: height - legendTall + size * 1.1,
	};
	const stages = results.stimulation?.stages.length ?? 0;
	const inner = Math.max(
		...well.holes
			.filter((hole) => hole.bottom.value >= (level ?? trajectory.total_depth.md.value) - 1)
			.map(nest.hole),
		8,
	);
	const under = level === undefined ? 10 : inner + railRoom(stages, detail, size) + 6;
	const { scale, deepest } = scaleOf(well, results, detail, [top, bottom], reached, under);
	const curveTall =
		level === undefined ? 0 : scale.y(reached) - scale.y(trajectory.kickoff?.tvd.value ?? reached);
	const room = width - 12 - middle;
	const curve = Math.min(room * 0.4, Math.max(curveTall * 0.85, nest.widest + 20));
	const axis = wellAxis(trajectory, scale, {
		x: middle,
		curve,
		lateral: room - curve,
		slant: Math.min(60, room * 0.25),
	});
	return fitted({
		well,
		results,
		detail,
		print,
		frame,
		scale,
		axis,
		nest,
		deepest,
	});
};

/** A slanted hole pushes the labels on its right farther out. */
const fitted = (view: View): View => {
	const { axis, frame } = view;
	if (axis.level !== undefined) return view;
	const reach = Math.max(...axis.points.map((point) => point.x + halfWidthAt(view, point.md)));
	const lane = Math.max(frame.lane, reach + 8);
	return {
		...view,
		frame: {
			...frame,
			lane,
			right: { x: lane + 16, width: frame.width - lane - 16 },
		},
	};
};

/** Depth scale of the schematic: where the shallow part or the curve would be too small to read, the scale is broken. */
const scaleOf = (
	well: Well,
	results: Results,
	detail: Detail,
	page: readonly [number, number],
	reached: number,
	under: number,
): { readonly scale: DepthScale; readonly deepest: number } => {
	const deepestFor = (perPoint: number) => reached + under * perPoint;
	const whole = deepestFor(reached / (page[1] - page[0] - under));
	if (detail === "plain") return { scale: depthScale([0, whole], page), deepest: whole };
	const { geology, isolation, casing, trajectory, stimulation } = results;
	const shallow = Math.max(
		geology.protected_water_base?.tvd.value ?? 0,
		...geology.water.map((zone) => zone.base.tvd.value),
		...isolation.neighbor_wells.map((each) => each.bottom?.value ?? 0),
		casing[isolation.protecting_string ?? well.strings[1]?.id ?? well.strings[0]?.id ?? ""]?.shoe.tvd.value ??
			0,
	);
	const level = levelFrom(trajectory);
	const kickoff = trajectory.kickoff?.tvd.value;
	const top = stimulation?.top_perforation.tvd.value;
	const deep =
		level !== undefined && kickoff !== undefined
			? kickoff - 0.15 * (reached - kickoff)
			: level === undefined && top !== undefined && reached - top < 0.08 * reached
				? top - 1.2 * (reached - top) - 0.01 * reached
				: undefined;
	const cuts = [
		...(shallow > 0 && shallow * 1.12 < reached * 0.5 ? [{ at: shallow * 1.12, least: 0.39 }] : []),
		...(deep !== undefined && deep > shallow * 1.3 ? [{ at: deep, least: 0.2 }] : []),
	];
	const leastBelow = deep === undefined ? 0.25 : 0.28;
	const first = depthScale([0, whole], page, cuts, leastBelow);
	const last = first.pieces.at(-1);
	if (last === undefined) return { scale: first, deepest: whole };
	const deepest = reached + (under * (reached - last.from)) / Math.max(last.bottom - last.top - under, 1);
	return { scale: depthScale([0, deepest], page, cuts, leastBelow), deepest };
};
