import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { UnitSystem } from "../../units/format.ts";
import type { Well } from "../../well/well.ts";
import { labelColumn, labelRow } from "../label.ts";
import { legendShapes } from "../legend.ts";
import { compose, type Line, run, sentence, setLine, wrap } from "../line-of-text.ts";
import { named } from "../named.ts";
import { SECOND_INK } from "../palette.ts";
import { type KeyOf, type Print, printer } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";
import { schematicAlternative } from "./alternative.ts";
import { completionPart, plannedShoeShown } from "./completion-part.ts";
import { groundPart, linesPart, rulerPart, turnTop } from "./ground-part.ts";
import { illustrativePart } from "./illustrative-part.ts";
import { lateralPart } from "./lateral-part.ts";
import { leftColumns } from "./left-columns.ts";
import { legendOf, pageEntries } from "./legend-part.ts";
import { schematicView } from "./schematic-view.ts";
import type { Detail, Frame, View } from "./view.ts";
import { wellLabels } from "./well-labels.ts";
import { plugsDrawn, wellPart } from "./well-part.ts";
import { wellheadPart } from "./wellhead-part.ts";

interface SchematicOptions {
	readonly units: UnitSystem;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly detail: Detail;
	readonly words: DrawingWords;
	/** Key of a value in the index of values, so that printed numbers can be compared between papers. */
	readonly keyOf?: KeyOf;
}

/**
 * The well on one portrait page: strings, holes and cement nested at their true depths beside the rock and the water,
 * the curve and lateral drawn schematically. See the shape grammar in DEVELOPERS.md.
 */
export const wellboreSchematic = (well: Well, results: Results, options: SchematicOptions): Drawing => {
	const print = printer(options.units, options.words, options.keyOf);
	const view = schematicView(well, results, options.detail, options, print);
	const { frame, scale, axis } = view;
	const { beside, under } = wellLabels(view);
	const level = axis.level !== undefined;
	const right = labelColumn(beside, {
		side: "right",
		x: frame.right.x,
		width: frame.right.width,
		edge: frame.lane,
		low: frame.top - 12,
		high: level ? turnTop(view) - 4 : frame.bottom + 4,
		size: frame.size,
	});
	const left = leftColumns(view);
	const below = labelRow(under, {
		left: 0,
		right: frame.width,
		top: frame.row.top + 12,
		bottom: frame.row.bottom,
		edge: frame.row.top,
		widest: options.detail === "plain" ? 260 : 100,
		size: frame.size,
	});
	const lost =
		options.detail === "plain" ? 0 : right.dropped.length + left.dropped.length + below.dropped.length;
	const pieces = scale.pieces.length;
	const wide = options.detail === "plain" && axis.level !== undefined;
	const whole = wide ? options.words.scaleWholeLevel : options.words.scaleWhole;
	const phrase = pieces > 1 ? options.words.scalePieces : whole;
	const scaleText = sentence(phrase, { count: String(pieces) });
	const notes: Line[] = [
		[run(scaleText, { color: SECOND_INK, italic: true })],
		...(lost === 0
			? []
			: [
					[
						run(sentence(options.words.undrawn, { count: String(lost) }), {
							color: SECOND_INK,
							italic: true,
						}),
					],
				]),
	];
	const legend = entriesOf(view);
	return {
		id: `schematic-${options.detail}`,
		width: options.width,
		height: options.height,
		title: sentence(options.detail === "plain" ? options.words.plainTitle : options.words.schematicOf, {
			well: well.identity.name,
		}),
		alternative: schematicAlternative(well, results, print, options.detail),
		scale: scaleText,
		undrawn: [left, right, below].flatMap((each) => each.lost),
		shapes: [
			...headShapes(well, print, frame, options.detail),
			named("ground", groundPart(view)),
			named("illustration", illustrativePart(view)),
			named("well", wellPart(view)),
			named("completion", completionPart(view)),
			named("lines", linesPart(view)),
			named("wellhead", wellheadPart(view)),
			named("lateral", lateralPart(view)),
			...rulerPart(view),
			...left.shapes,
			...right.shapes,
			...below.shapes,
			...notes.map(
				(line, i): Shape =>
					named(
						`label note ${i + 1}`,
						setLine(line, {
							x: 0,
							y: frame.notes + (i + 1) * frame.size * 1.2,
							size: frame.size * 0.95,
						}),
					),
			),
			...legendShapes(legend, {
				x: 0,
				y: frame.legend,
				width: frame.width,
				size: frame.size * 0.95,
			}),
		],
	};
};

const entriesOf = (view: View) => {
	const { well, results, detail, deepest, print } = view;
	const stages = results.stimulation?.stages ?? [];
	const plugs = stages.some((stage) => stage.plug !== undefined) && plugsDrawn(view);
	return [
		...legendOf(well, results, detail, deepest, print.words),
		...pageEntries(print.words, {
			plug: plugs,
			plannedShoe: well.strings.some((string) => plannedShoeShown(view, string)),
			illustration: illustrativePart(view).length > 0,
			rail: lateralPart(view).length > 0 ? stages.length : 0,
		}),
	];
};

/** Who, where, and what the depths count from. */
const headLines = (well: Well, print: Print, detail: Detail): Line[] => {
	const { identity, site, datum } = well;
	const { words } = print;
	if (detail === "plain") return [[run(words.datumGround, { color: SECOND_INK })]];
	const who = [identity.operator, identity.api_number, identity.lease, site.county].filter(
		(part) => part !== undefined,
	);
	return [
		[run(identity.name, { weight: "bold" }), run(`  ${detail === "full" ? who.join(" · ") : ""}`)],
		[
			...compose(
				words.datum,
				{
					datum: datum.name,
					above: print.value(datum.aboveGround),
					elevation: print.value(datum.groundElevation),
				},
				{ color: SECOND_INK },
			),
			...(identity.spud === undefined
				? []
				: compose(` ${words.spud}`, { date: identity.spud }, { color: SECOND_INK })),
		],
	];
};

const headShapes = (well: Well, print: Print, frame: Frame, detail: Detail): Shape[] => {
	const lines = headLines(well, print, detail).flatMap((line) => wrap(line, frame.size, frame.width, 1));
	return [
		named(
			"label head",
			lines.flatMap((line, i) =>
				setLine(line, {
					x: 0,
					y: (i + 1) * frame.size * 1.25,
					size: frame.size,
				}),
			),
		),
	];
};
