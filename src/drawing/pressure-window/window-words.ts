import type { HolePressureResults, Results } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import type { Label } from "../label.ts";
import { type LegendEntry, SWATCH } from "../legend.ts";
import { compose, type Line, lineText, sentence } from "../line-of-text.ts";
import { n } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";
import { holeName, type Print, stringName, withinSentence } from "../print.ts";
import { heading } from "../schematic/string-labels.ts";
import type { DrawingWords } from "../words/words.ts";
import type { WindowView } from "./pressure-window.ts";
import { asDensity, STROKES, type WindowLineKind } from "./window-lines.ts";

const strengthLine = (hole: HolePressureResults | undefined, { words, value }: Print): Line[] =>
	hole?.shoe_strength === undefined
		? []
		: [
				compose(words.shoeHolds, {
					density: value(hole.shoe_strength),
					basis: words.strengthBasis[hole.shoe_strength_basis ?? "fracture gradient"],
				}),
			];

/** Shoes with what the rock there holds, and what each fluid and each cement column exerts. */
export const besideLabels = (view: WindowView, well: Well, results: Results, print: Print): Label[] => {
	const { words } = print;
	const shoes = well.strings.flatMap((string): Label[] => {
		const shoe = results.casing[string.id]?.shoe;
		if (shoe === undefined || string.kind === "tieback") return [];
		const below = results.pressure.holes.find((hole) => hole.shoe === string.id);
		return [
			{
				id: `shoe ${string.id}`,
				anchor: [view.densities.right + 4, view.y(shoe.tvd.value)],
				lines: [
					heading(sentence(words.shoeOf, { string: stringName(words, string) })),
					print.mark(shoe),
					...strengthLine(below, print),
				],
				weight: 9,
				keep: true,
				least: 1,
				dot: false,
			},
		];
	});
	const fluids = view.lines.flatMap(({ kind, points, hole, string }): Label[] => {
		const densities = asDensity(points, view.shallow);
		const middle = densities[Math.floor(densities.length * (kind === "mud" ? 0.5 : 0.7))] ?? densities.at(-1);
		if (middle === undefined) return [];
		const x = Math.min(Math.max(view.atDensity(middle.density), view.densities.left), view.densities.right);
		const anchor = [x, view.y(middle.tvd)] as const;
		const density = hole?.fluid?.density;
		if (kind === "mud" && hole !== undefined && density !== undefined) {
			const lines = [
				heading(holeName(words, hole.id)),
				compose(words.holeFluidAt, { density: print.value(density) }),
			];
			return [{ id: `fluid ${hole.id}`, anchor, lines, weight: 5 }];
		}
		if (kind !== "cement" || string === undefined) return [];
		const atShoe = results.cement[string.id]?.equivalent_density_at_shoe;
		return [
			{
				id: `cement ${string.id}`,
				anchor,
				lines: [
					heading(sentence(words.cementInPlace, { string: withinSentence(stringName(words, string)) })),
					...(atShoe === undefined ? [] : [compose(words.densityAtShoe, { density: print.value(atShoe) })]),
				],
				weight: 4,
			},
		];
	});
	return [...shoes, ...fluids];
};

/** A line that ends so near to the foot of its chart is named under it [pt]. */
const AT_FOOT = 14;

/** The two lines of the rock, named where they end: under the chart, or beside it where they end higher up. */
export const endLabels = (
	view: WindowView,
	words: DrawingWords,
): { readonly under: Label[]; readonly beside: Label[] } => {
	const labels = (["pore", "fracture"] as const).flatMap((kind): Label[] => {
		const end = asDensity(view.lines.findLast((line) => line.kind === kind)?.points ?? [], 0).at(-1);
		if (end === undefined) return [];
		const x = Math.min(Math.max(view.atDensity(end.density), view.densities.left), view.densities.right);
		return [
			{
				id: kind,
				anchor: [x, view.y(end.tvd)],
				lines: [heading(words.windowLines[kind])],
				weight: 9,
				keep: true,
			},
		];
	});
	const atFoot = ({ anchor }: Label) => view.densities.bottom - anchor[1] < AT_FOOT;
	return {
		under: labels.filter(atFoot).map((label) => ({ ...label, dot: false })),
		beside: labels.filter((label) => !atFoot(label)),
	};
};

const DIAMOND = 3.4;
const diamond = (x: number, y: number): Shape => ({
	kind: "path",
	d: `M${n(x)} ${n(y - DIAMOND)}l${DIAMOND} ${DIAMOND}l-${DIAMOND} ${DIAMOND}l-${DIAMOND} -${DIAMOND}Z`,
	fill: PAPER,
	stroke: { color: INK, width: 1 },
});

const strengths = (results: Results) =>
	results.pressure.holes.flatMap((hole) => {
		const shoe = hole.shoe === undefined ? undefined : results.casing[hole.shoe]?.shoe.tvd.value;
		return shoe === undefined || hole.shoe_strength === undefined
			? []
			: [{ tvd: shoe, density: hole.shoe_strength.value }];
	});

/** What the rock below each shoe holds: an open diamond on the shoe's line. */
export const strengthMarks = (view: WindowView, results: Results): Shape[] =>
	strengths(results).map(({ tvd, density }) => diamond(view.atDensity(density), view.y(tvd)));

export const legendOf = (
	lines: WindowView["lines"],
	results: Results,
	words: DrawingWords,
): LegendEntry[] => [
	...(Object.keys(STROKES) as WindowLineKind[])
		.filter((kind) => lines.some((line) => line.kind === kind))
		.map(
			(kind): LegendEntry => ({
				text: words.windowLegend[kind],
				swatch: [{ kind: "line", x1: 0, y1: 4.5, x2: SWATCH.width, y2: 4.5, stroke: STROKES[kind] }],
			}),
		),
	...(strengths(results).length === 0 ? [] : [{ text: words.legendStrength, swatch: [diamond(8, 4.5)] }]),
];

export const windowAlternative = (view: WindowView, well: Well, results: Results, print: Print): string => {
	const { words } = print;
	const fluids = well.holes.flatMap((hole) =>
		hole.fluid?.density === undefined
			? []
			: [`${holeName(words, hole.id)} ${print.value(hole.fluid.density).text}`],
	);
	const cements = well.strings.flatMap((string) => {
		const atShoe = results.cement[string.id]?.equivalent_density_at_shoe;
		return atShoe === undefined ? [] : [`${stringName(words, string)} ${print.value(atShoe).text}`];
	});
	const held = well.strings.flatMap((string) => {
		const below = results.pressure.holes.find((hole) => hole.shoe === string.id);
		const [line] = strengthLine(below, print);
		return line === undefined
			? []
			: [`${sentence(words.shoeOf, { string: stringName(words, string) })}: ${lineText(line)}`];
	});
	const rock = view.lines.some((line) => line.kind === "pore" || line.kind === "fracture");
	return [
		rock ? words.altWindow : words.altWindowNoRock,
		...(fluids.length === 0 ? [] : [sentence(words.altWindowFluids, { list: fluids.join("; ") })]),
		...(cements.length === 0 ? [] : [sentence(words.altWindowCement, { list: cements.join("; ") })]),
		...held.map((text) => `${text}.`),
		words.altTable,
	].join(" ");
};
