import type { Results } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { compose, lineText, run } from "../line-of-text.ts";
import { boxPath, n } from "../lithology.ts";
import { equalScale } from "../maps/equal-scale.ts";
import { knownWells } from "../maps/section.ts";
import { groundLine } from "../marks/lines.ts";
import { protectedBase, waterBand } from "../marks/water.ts";
import { BLUE, GROUND, INK, LEADER, tint, VERMILLION } from "../palette.ts";
import { along, placesAlong } from "../path-line.ts";
import { printer } from "../print.ts";
import { openPath, type Point } from "../well-axis.ts";
import { keyHeight, keyShapes, type Numbered, numberShapes } from "./numbered.ts";
import type { TalkOptions } from "./talk-options.ts";

/** Share of the width that the section takes. */
const SECTION = 0.48;
const OTHER_WELLS = 2;

/**
 * The well from the side, one scale both ways: the water that is protected, this well, the wells near it as deep as they
 * are, and between which heights the models put the cracks.
 */
export const talkSection = (well: Well, results: Results, options: TalkOptions): Drawing => {
	const { width, height, size, words } = options;
	const print = printer(options.units, words, options.keyOf, options.language);
	const { trajectory, geology, stimulation } = results;
	const azimuth = trajectory.vertical_section_azimuth.value;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const others = knownWells(well, results, azimuth)
		.filter(({ inReach }) => inReach)
		.sort((a, b) => b.bottom.value - a.bottom.value)
		.slice(0, OTHER_WELLS);
	const surface = well.datum.groundLevel.value;
	const cracks = cracksOf(results);
	const deepest = Math.max(...path.map(({ tvd }) => tvd), cracks?.bottom ?? 0) * 1.04;
	const across = [
		0,
		...path.map((place) => along(azimuth, place)),
		...others.map(({ departure }) => departure),
	];
	const [from, to] = [Math.min(...across), Math.max(...across)];
	const margin = Math.max(400, (to - from) * 0.12);
	const boxAbove = (list: number) => ({ left: 0, top: size * 0.8, right: width, bottom: height - list });
	const boxBeside = { left: 0, top: size * 0.8, right: width * SECTION, bottom: height };
	const scaleIn = (box: typeof boxBeside) =>
		equalScale([from - margin, to + margin], [surface, deepest], box, "down");
	const base = geology.protected_water_base;
	const line = size * 0.16;
	const end = path.at(-1);
	const middle = path.find(
		({ md }) => md >= (trajectory.kickoff?.md.value ?? trajectory.total_depth.md.value) * 0.55,
	);
	const itemsAt = (scale: ReturnType<typeof scaleIn>, right: number): Numbered[] => {
		const at = pointAt(scale);
		return [
			...(base === undefined
				? []
				: [
						{
							at: [right - size * 1.2, scale.y((surface + base.tvd.value) / 2)] as const,
							says: compose(words.talkWater, { depth: print.value(base.below_ground, { spoken: true }) }),
						},
					]),
			...(middle === undefined || end === undefined
				? []
				: [
						{
							at: at(along(azimuth, middle), middle.tvd),
							says: compose(words.talkThisWell, {
								depth: print.value(trajectory.total_depth.below_ground, { significant: 2, spoken: true }),
							}),
						},
					]),
			...(cracks === undefined
				? []
				: [
						{
							at: at((cracks.from + cracks.to) / 2, cracks.top),
							says: compose(words.talkCracks, {
								least: print.value(cracks.least, { significant: 2, spoken: true }),
								most: print.value(cracks.most, { significant: 2, spoken: true }),
							}),
						},
					]),
			...others.map(
				({ name, departure, bottom, id }): Numbered => ({
					at: at(departure, (surface + bottom.value) / 2),
					says: [
						run(`${name}: `, { weight: "bold" }),
						...compose(words.talkDeep, {
							depth: print.value(fromGround(results, id) ?? bottom, { significant: 2, spoken: true }),
						}),
					],
				}),
			),
		];
	};
	// How high the list is does not depend on where its numbers stand.
	const box = options.keyBelow
		? boxAbove(size + keyHeight(itemsAt(scaleIn(boxBeside), boxBeside.right), width, size))
		: boxBeside;
	const scale = scaleIn(box);
	const at = pointAt(scale);
	const [ground, floor] = [scale.y(surface), scale.y(deepest)];
	const [left, right] = [Math.max(0, scale.x(from - margin)), Math.min(box.right, scale.x(to + margin))];
	const items = itemsAt(scale, right);
	const shapes: Shape[] = [
		{
			kind: "path",
			d: boxPath({ x: left, y: ground, width: right - left, height: floor - ground }),
			fill: GROUND,
		},
		...geology.water.flatMap((zone) =>
			waterBand({
				x: left,
				y: scale.y(Math.max(zone.top.tvd.value, surface)),
				width: right - left,
				height: scale.y(zone.base.tvd.value) - scale.y(Math.max(zone.top.tvd.value, surface)),
			}),
		),
		...(cracks === undefined ? [] : crackShapes(cracks, at)),
		...others.map(
			({ departure, bottom, kind }): Shape => ({
				kind: "path",
				d: openPath([at(departure, surface), at(departure, bottom.value)]),
				stroke: {
					color: kind === "water" ? BLUE : LEADER,
					width: line,
					...(kind === "water" ? {} : { dash: [size * 0.4, size * 0.2, size * 0.1, size * 0.2] }),
				},
			}),
		),
		{
			kind: "path",
			d: openPath(
				path.filter(({ tvd }) => tvd >= surface).map((place) => at(along(azimuth, place), place.tvd)),
			),
			stroke: { color: INK, width: line * 1.2, join: "round" },
		},
		...groundLine(left, right, ground),
		...(base === undefined ? [] : protectedBase(left, right, scale.y(base.tvd.value))),
		...numberShapes(items, { ...box, top: 0 }, size),
		...keyShapes(
			items,
			options.keyBelow
				? { left: 0, top: box.bottom + size * 0.6, right: width, bottom: height }
				: { left: box.right + size, top: 2, right: width, bottom: height },
			size,
		),
	];
	return {
		id: "talk-section",
		width,
		height,
		title: words.talkSection,
		alternative: items.map(({ says }, i) => `${i + 1}. ${lineText(says)}.`).join(" "),
		scale: stimulation?.fractures === undefined ? words.talkSectionScale : words.talkSectionModels,
		shapes,
	};
};

/** How deep another well goes, as its owner counts it. */
const fromGround = ({ isolation }: Results, id: string): Known<"depth-below-ground"> | undefined =>
	isolation.neighbor_wells.find((each) => each.id === id)?.depth ??
	isolation.offset_wells.find((each) => each.id === id)?.bottom_below_ground;

const pointAt =
	(scale: ReturnType<typeof equalScale>) =>
	(departure: number, tvd: number): Point => [scale.x(departure), scale.y(tvd)];

/** Between which heights the models put the cracks, along the treated part. */
const cracksOf = ({ stimulation, trajectory }: Results) => {
	const models = stimulation?.fractures?.models ?? [];
	const sorted = models.toSorted((a, b) => a.height.value - b.height.value);
	const [least, most] = [sorted[0], sorted.at(-1)];
	if (least === undefined || most === undefined || stimulation === undefined) return undefined;
	const azimuth = trajectory.vertical_section_azimuth.value;
	const treated = placesAlong(
		trajectory.path,
		stimulation.top_perforation.md.value,
		stimulation.bottom_perforation.md.value,
	).map((place) => along(azimuth, place));
	return {
		least: least.height,
		most: most.height,
		top: Math.min(...models.map(({ top }) => top.value)),
		bottom: Math.max(...models.map(({ top, height }) => top.value + height.value)),
		leastTop: least.top.value,
		leastBottom: least.top.value + least.height.value,
		from: Math.min(...treated),
		to: Math.max(...treated),
	};
};

/** The greatest height as a tint with an outline, the least as strokes of the same color. */
const crackShapes = (
	cracks: NonNullable<ReturnType<typeof cracksOf>>,
	at: (departure: number, tvd: number) => Point,
): Shape[] => {
	const [x1, y1] = at(cracks.from, cracks.top);
	const [x2, y2] = at(cracks.to, cracks.bottom);
	const wide = Math.max(x2 - x1, 4);
	const x = (x1 + x2) / 2 - wide / 2;
	const strokes = Array.from({ length: 9 }, (_, i) => {
		const s = x + (wide * (i + 0.5)) / 9;
		return `M${n(s)} ${n(at(0, cracks.leastTop)[1])}V${n(at(0, cracks.leastBottom)[1])}`;
	}).join("");
	return [
		{
			kind: "path",
			d: boxPath({ x, y: y1, width: wide, height: y2 - y1 }),
			fill: tint(VERMILLION, 0.25),
			stroke: { color: VERMILLION, width: 1.4, dash: [4, 2] },
		},
		{ kind: "path", d: strokes, stroke: { color: VERMILLION, width: 1.6 } },
	];
};
