import type { Shape } from "../../document/shapes.ts";
import type { Label } from "../label.ts";
import { type LegendEntry, SWATCH, strokeSwatch } from "../legend.ts";
import { compose, run, sentence } from "../line-of-text.ts";
import { waterBand } from "../marks/water.ts";
import { keeping } from "../never-dropped.ts";
import { BLUE, INK, PAPER, SECOND_INK, VERMILLION } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { stringName } from "../print.ts";
import { illustrativeBand, illustrativeRange } from "../schematic/illustrative-part.ts";
import { rockEntries } from "../schematic/legend-part.ts";
import { heading } from "../schematic/string-labels.ts";
import { bedsOf } from "../schematic/view.ts";
import type { Point } from "../well-axis.ts";
import type { Section } from "./section.ts";
import { OTHER_WELL } from "./section-shapes.ts";

/** Tops of the rock, and the base of protected water. */
export const groundLabels = (section: Section): Label[] => keeping("section", allGroundLabels(section));

const allGroundLabels = (section: Section): Label[] => {
	const { well, results, print, scale, box, deepest } = section;
	const base = results.geology.protected_water_base;
	return [
		...bedsOf(well, deepest).map((bed): Label => {
			const given =
				results.geology.formations.find((each) => each.id === bed.formation.id)?.top.tvd ?? bed.formation.top;
			return {
				id: `formation ${bed.formation.id}`,
				anchor: [box.left - (bed.formation.target ? 4 : 0), scale.y(Math.max(bed.top, 0))],
				lines: [
					[
						run(bed.formation.name, { weight: "semibold" }),
						run("  "),
						...compose(print.words.formationTop, { depth: print.value(given) }),
					],
				],
				weight: bed.formation.target || bed.formation.confining ? 5 : 2,
				dot: false,
			};
		}),
		...(base === undefined
			? []
			: [
					{
						id: "protected water",
						anchor: [box.left - 4, scale.y(base.tvd.value)],
						lines: [
							heading(print.words.waterBase),
							compose(print.words.depthVertical, { tvd: print.value(base.tvd) }),
						],
						weight: 9,
						least: 2,
						dot: false,
					} satisfies Label,
				]),
	];
};

/** Places of the well itself: those of its vertical part stand beside it, the others under the ground. */
export const wellLabels = (section: Section): { readonly beside: Label[]; readonly under: Label[] } => {
	const labels = keeping("section", allWellLabels(section));
	const upright = (label: Label) => Math.abs(label.anchor[0] - section.scale.x(0)) < ASIDE;
	return {
		beside: labels.filter(upright),
		under: labels.filter((label) => !upright(label)).sort((a, b) => a.anchor[0] - b.anchor[0]),
	};
};

/** A place drawn nearer to the wellhead's vertical than this is beside it [pt]. */
const ASIDE = 14;

const allWellLabels = (section: Section): Label[] => {
	const { well, results, print, at, scale } = section;
	const { trajectory, stimulation } = results;
	const { words } = print;
	const place = (md: number): Point => {
		const [found] = placesAlong(trajectory.path, md, md);
		return found === undefined ? [scale.x(0), scale.y(md)] : at(found);
	};
	const upright = (md: number) => Math.abs(place(md)[0] - scale.x(0)) < ASIDE;
	const mark = (
		id: string,
		name: string,
		depth: (typeof trajectory)["total_depth"] | undefined,
		weight: number,
	): Label[] =>
		depth === undefined
			? []
			: [
					{
						id,
						anchor: place(depth.md.value),
						lines: [heading(name), ...(upright(depth.md.value) ? [print.mark(depth)] : print.stacked(depth))],
						weight,
					},
				];
	return [
		...mark("kickoff", words.kickoff, trajectory.kickoff, 3),
		...mark("landing", words.landing, trajectory.landing, 2),
		...mark("top perforation", words.topPerforation, stimulation?.top_perforation, 6),
		...mark("total depth", words.totalDepth, trajectory.total_depth, 9),
		...well.strings
			.filter((string) => string.id === results.isolation.protecting_string)
			.flatMap((string) =>
				mark(
					`shoe ${string.id}`,
					sentence(words.shoeOf, { string: stringName(words, string) }),
					results.casing[string.id]?.shoe,
					5,
				),
			),
	];
};

/** Wells nearby are named above the ground: what lies under it is this well's. */
export const nearbyLabels = ({ nearby, print, scale }: Section): Label[] =>
	[...nearby]
		.sort((a, b) => a.departure - b.departure)
		.map(
			({ id, name, departure, bottom, top }): Label => ({
				id: `nearby ${id}`,
				anchor: [scale.x(departure), scale.y(top)],
				lines: [heading(name), compose(print.words.depthVertical, { tvd: print.value(bottom) })],
				weight: 4,
				dot: false,
			}),
		);

/** What the section shows. */
export const legendOf = ({ nearby, well, results, print, deepest }: Section): LegendEntry[] => {
	const { words } = print;
	const { trajectory, stimulation, geology } = results;
	const kinds = new Set(nearby.map((each) => each.kind));
	const entry = (when: boolean, text: string, swatch: readonly Shape[]): LegendEntry[] =>
		when ? [{ text, swatch }] : [];
	return [
		...entry(true, trajectory.basis === "surveyed" ? words.pathSurveyed : words.pathPlanned, [
			strokeSwatch(INK, 1.4),
		]),
		...entry(trajectory.planned !== undefined, words.plannedPath, [strokeSwatch(SECOND_INK, 0.9, [3, 2])]),
		...entry(
			stimulation !== undefined,
			stimulation?.stages.length === 1 ? words.legendStageOne : words.legendStage,
			[strokeSwatch(VERMILLION, 4.2), strokeSwatch(INK, 1.1)],
		),
		...entry(
			illustrativeRange(results) !== undefined,
			words.legendIllustrative,
			illustrativeBand({ x: 0, y: 0, ...SWATCH }),
		),
		...entry(kinds.has("water"), words.legendWaterWellPlaced, [
			{ kind: "path", d: "M6.4 0.5V8.5h3.2V0.5", fill: PAPER, stroke: { color: BLUE, width: 0.8 } },
		]),
		...entry(kinds.has("offset"), words.legendOffset, [
			strokeSwatch(OTHER_WELL.color, OTHER_WELL.width, OTHER_WELL.dash),
		]),
		...entry(geology.water.length > 0, words.legendWater, waterBand({ x: 0, y: 0, ...SWATCH })),
		...entry(geology.protected_water_base !== undefined, words.legendWaterBase, [
			strokeSwatch(BLUE, 1.4),
			{ kind: "path", d: "M5.2 4.5h5.6l-2.8 4.2Z", fill: BLUE },
		]),
		...rockEntries(bedsOf(well, deepest), words),
	];
};
