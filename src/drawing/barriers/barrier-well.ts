import type { BarrierPhaseResults, Results } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import type { Box } from "../lithology.ts";
import { cementFill } from "../marks/cement.ts";
import { holeShapes, shoeMark, steelWall } from "../marks/steel.ts";
import type { AxisPoint } from "../well-axis.ts";

/** A well drawn without scale: places in the order of their depth, evenly apart, strings nested by even steps. */
export interface BarrierWell {
	readonly shapes: readonly Shape[];
	readonly top: number;
	readonly bottom: number;
	readonly center: number;
	/** Height of a measured depth on the page. */
	readonly at: (md: number) => number;
	/** Half-width of a string's steel, and of the hole that it stands in. */
	readonly steel: (id: string) => number;
	readonly wall: (id: string) => number;
}

/** Strings that stand when a phase begins; while cementing, the one that is cemented too. */
const standing = (well: Well, { phase, of }: BarrierPhaseResults): readonly CasingString[] => {
	if (phase !== "drilling" && phase !== "cementing") return well.strings;
	const hole =
		phase === "drilling"
			? well.holes.find(({ id }) => id === of)
			: well.strings.find(({ id }) => id === of)?.hole;
	const deepest = hole?.bottom.value ?? Number.POSITIVE_INFINITY;
	return well.strings.filter(
		(string) =>
			string.hole.bottom.value < deepest || (phase === "cementing" && string.hole.bottom.value === deepest),
	);
};

const PIECES = 12;

export const barrierWell = (
	well: Well,
	results: Results,
	phase: BarrierPhaseResults,
	box: Box,
): BarrierWell => {
	const strings = standing(well, phase);
	const holes = well.holes.filter(
		({ id, bottom }) =>
			strings.some(({ hole }) => hole.id === id) ||
			(phase.phase === "drilling" && id === phase.of) ||
			bottom.value <= (strings.at(-1)?.hole.bottom.value ?? 0),
	);
	const marks = [
		...new Set([
			0,
			...strings.map(({ shoe }) => shoe.value as number),
			...strings.flatMap(({ production }) => production?.packer.value ?? []),
			...holes.map(({ bottom }) => bottom.value as number),
		]),
	]
		.toSorted((a, b) => a - b)
		// A shoe and the bottom of its hole are one place.
		.filter((md, i, all) => i === 0 || md - (all[i - 1] ?? 0) > 40);
	const at = (md: number): number => {
		const i = marks.findIndex((mark) => mark >= md);
		const [upper, lower] = [marks[i - 1], marks[i]];
		if (upper === undefined || lower === undefined) return box.y + box.height * (i <= 0 && md <= 0 ? 0 : 1);
		return box.y + (box.height * (i - 1 + (md - upper) / (lower - upper))) / Math.max(1, marks.length - 1);
	};
	const center = box.x + box.width / 2;
	const step = box.width / 2 / (well.holes.length + 1);
	const order = (id: string): number => well.strings.findIndex((string) => string.id === id);
	const steel = (id: string): number => step * (well.strings.length - order(id) - 0.25);
	const wall = (id: string): number => steel(id) + step * 0.45;
	const points = (from: number, to: number): AxisPoint[] =>
		Array.from({ length: PIECES + 1 }, (_, i) => ({
			md: i,
			x: center,
			y: from + ((to - from) * i) / PIECES,
			normal: [1, 0] as const,
		}));
	const thick = Math.max(1.6, step * 0.16);
	const drilled = phase.phase === "drilling" ? well.holes.find(({ id }) => id === phase.of) : undefined;
	const shapes: Shape[] = [
		...strings.flatMap(({ id, hole }) => holeShapes(points(box.y, at(hole.bottom.value)), wall(id))),
		...(drilled === undefined
			? []
			: holeShapes(
					points(box.y, at(drilled.bottom.value)),
					Math.min(
						...strings.map(({ id }) => steel(id) - thick),
						...well.strings.filter(({ hole }) => hole.id === drilled.id).map(({ id }) => wall(id)),
					),
				)),
		...strings.flatMap(({ id, shoe }): Shape[] => {
			const cement = results.cement[id];
			const outer = well.strings[order(id) - 1];
			const far = (y: number): number =>
				outer !== undefined && y < at(outer.shoe.value) ? steel(outer.id) - thick : wall(id);
			const columns = (cement?.columns ?? []).flatMap(({ top, bottom }) => {
				const [from, to] = [at(top.md.value), at(bottom.md.value)];
				const middle = outer === undefined ? from : Math.min(Math.max(at(outer.shoe.value), from), to);
				const recorded = cement?.top_basis === "recorded" ? "recorded" : "planned";
				return [
					[from, middle],
					[middle, to],
				].flatMap(([a = 0, b = 0]) =>
					b - a < 0.5 ? [] : cementFill(points(a, b), steel(id), far((a + b) / 2), recorded),
				);
			});
			return [
				...columns,
				...steelWall(points(box.y, at(shoe.value)), { outer: steel(id), inner: steel(id) - thick }),
				...shoeMark({ md: 0, x: center, y: at(shoe.value), normal: [1, 0] }, steel(id), step * 0.3),
			];
		}),
	];
	return { shapes, top: box.y, bottom: box.y + box.height, center, at, steel, wall };
};
