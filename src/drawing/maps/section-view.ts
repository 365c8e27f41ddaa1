import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { labelColumn, labelRow } from "../label.ts";
import { legendHeight, legendShapes } from "../legend.ts";
import { compose, lineWidth, run, sentence, setLine } from "../line-of-text.ts";
import { named } from "../named.ts";
import { GROUND, SECOND_INK } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { printer } from "../print.ts";
import { illustrativeBand, illustrativeRange } from "../schematic/illustrative-part.ts";
import { STRAIGHT_DOWN, scaleBar } from "./equal-scale.ts";
import type { MapOptions } from "./map-options.ts";
import { LINES_UNDER, RULER, type Section, SIZE, sectionOf } from "./section.ts";
import { groundLabels, legendOf, nearbyLabels, wellLabels } from "./section-labels.ts";
import { groundShapes, nearbyShapes, rulerShapes, wellShapes } from "./section-shapes.ts";

/**
 * The well seen from the side, along its vertical section: departure against true vertical depth, at one scale both ways,
 * with the rock, the water, the stages and the wells nearby whose depth is known.
 */
export const sectionView = (well: Well, results: Results, options: MapOptions): Drawing => {
	const print = printer(options.units, options.words, options.keyOf);
	const { words, width } = options;
	const legendBox = { x: 0, width, size: SIZE };
	// What the legend holds does not depend on the room it leaves.
	const legend = legendOf(sectionOf(well, results, options, print, 0));
	const section = sectionOf(well, results, options, print, legendHeight(legend, legendBox));
	const { box } = section;
	const left = labelColumn(groundLabels(section), {
		side: "left",
		x: box.left - 16,
		width: box.left - 16 - RULER - 6,
		edge: box.left - 4,
		low: box.top - 4,
		high: box.bottom + 4,
		size: SIZE,
	});
	const row = { left: RULER, right: width, widest: 96, size: SIZE };
	const above = labelRow(nearbyLabels(section), {
		...row,
		above: true,
		top: 0,
		bottom: box.top - 16,
		edge: box.top - 4,
	});
	const places = wellLabels(section);
	const beside = labelColumn(places.beside, {
		side: "right",
		x: section.scale.x(0) + 24,
		width: 130,
		edge: section.scale.x(0) + 8,
		low: section.scale.y(results.geology.protected_water_base?.tvd.value ?? 0) + 7,
		high: upperSide(section),
		size: SIZE,
		backing: GROUND,
	});
	const under = labelRow(places.under, {
		...row,
		top: box.bottom + 16,
		bottom: box.bottom + 16 + SIZE * LINES_UNDER * 1.2,
		edge: box.bottom + 3,
	});
	const direction = print.value(results.trajectory.vertical_section_azimuth);
	const foot = box.bottom + section.under;
	const straight = results.trajectory.closure.value < STRAIGHT_DOWN;
	const small = { color: SECOND_INK, italic: true } as const;
	const axis = compose(words.sectionAxis, { azimuth: direction }).map((part) => ({ ...part, ...small }));
	const scaleLine = [run(words.sectionScale, small)];
	return {
		id: "section",
		width,
		height: foot + SIZE * 2.4 + legendHeight(legend, legendBox),
		title: sentence(straight ? words.sectionOfUpright : words.sectionOf, {
			well: well.identity.name,
			azimuth: direction,
		}),
		alternative: alternativeOf(section),
		scale: words.sectionScale,
		undrawn: [...[left, above, beside, under].flatMap((each) => each.lost), ...section.far],
		shapes: [
			named("ground", groundShapes(section)),
			named("nearby", nearbyShapes(section)),
			named("illustration", illustration(section)),
			named("well", wellShapes(section)),
			named("depths", rulerShapes(section)),
			...left.shapes,
			...above.shapes,
			...under.shapes,
			...beside.shapes,
			...scaleBar(print, section.scale, { x: 1, y: foot, near: 90, size: SIZE }),
			...(straight
				? []
				: [
						named(
							"label direction",
							setLine(axis, {
								x: width - lineWidth(scaleLine, SIZE) - SIZE,
								y: foot + SIZE * 0.5,
								size: SIZE,
								anchor: "end",
							}),
						),
					]),
			named("label scale", setLine(scaleLine, { x: width, y: foot + SIZE * 0.5, size: SIZE, anchor: "end" })),
			...legendShapes(legend, { ...legendBox, y: foot + SIZE * 2 }),
		],
	};
};

/** y above which the ground right of the vertical hole is free of the well. */
const upperSide = ({ results, scale, box, at }: Section): number => {
	const path = placesAlong(results.trajectory.path, 0, results.trajectory.total_depth.md.value).map(at);
	const turned = path.filter(([x]) => x > scale.x(0) + 20).map(([, y]) => y - 8);
	return Math.min(box.bottom, ...turned);
};

/** The range that simple models give to a fracture's height, across the treated stretch. */
const illustration = ({ results, scale, box, at, well }: Section): Shape[] => {
	const range = illustrativeRange(results);
	const { top_perforation: top, bottom_perforation: bottom } = results.stimulation ?? {};
	if (range === undefined || top === undefined || bottom === undefined) return [];
	const xs = placesAlong(results.trajectory.path, top.md.value, bottom.md.value).map((place) => at(place)[0]);
	const [left, right] = [Math.min(...xs) - 5, Math.max(...xs) + 5];
	const [from, to] = [
		scale.y(Math.max(range[0], well.datum.groundLevel.value)),
		Math.min(scale.y(range[1]), box.bottom),
	];
	return to <= from ? [] : illustrativeBand({ x: left, y: from, width: right - left, height: to - from });
};

const alternativeOf = ({ well, results, print }: Section): string => {
	const { words } = print;
	const { trajectory } = results;
	const gap = results.isolation.protected_water_to_top_perforation;
	return [
		sentence(trajectory.closure.value < STRAIGHT_DOWN ? words.altPathDown : words.altPath, {
			azimuth: print.value(trajectory.closure_azimuth),
			departure: print.value(trajectory.closure),
			tvd: print.value(trajectory.total_depth.tvd),
		}),
		...(results.geology.protected_water_base === undefined
			? []
			: [sentence(words.altWaterBase, { depth: print.value(results.geology.protected_water_base.tvd) })]),
		...(gap === undefined || gap.value < 0 ? [] : [sentence(words.altGap, { distance: print.value(gap) })]),
		...(well.offsetWells.length === 0
			? []
			: [sentence(words.altNear, { list: well.offsetWells.map((each) => each.name).join(", ") })]),
		...(results.stimulation?.fractures === undefined
			? []
			: [sentence(words.altFractures, { depth: print.value(results.stimulation.fractures.highest_top) })]),
		words.altTable,
	].join(" ");
};
