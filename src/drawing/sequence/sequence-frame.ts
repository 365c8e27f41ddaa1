import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import { type Printable, quantityString, type UnitSystem } from "../../units/format.ts";
import type { Well } from "../../well/well.ts";
import { type Line, run, setLine, wrap } from "../line-of-text.ts";
import type { Box } from "../lithology.ts";
import { named } from "../named.ts";
import { INK, SECOND_INK } from "../palette.ts";
import { type KeyOf, printer } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";
import { builtPart, progressOf } from "./built.ts";
import { changeShapes } from "./change.ts";
import { groundLabels, groundLines, groundShapes } from "./ground.ts";
import { hasInset, insetShapes } from "./inset.ts";
import { sceneOf } from "./scene.ts";
import type { WellStep } from "./steps.ts";
import { surfaceShapes } from "./surface.ts";

/** Words of a step: a title, and a sentence whose values still know their keys. */
export interface StepWords {
	readonly title: string;
	readonly say: readonly (string | (Printable & { readonly key?: string }))[];
	/** What the picture shows, for a reader who cannot see it. */
	readonly shows: string;
}

export interface FrameOptions {
	readonly units: UnitSystem;
	readonly words: DrawingWords;
	readonly language: "en" | "es";
	readonly keyOf?: KeyOf;
	/** What is said of the scale, where it is not the whole of it. */
	readonly scale?: string;
	/** Of the picture [pt]. */
	readonly width: number;
	readonly height: number;
	/** Type size [pt]. */
	readonly size: number;
}

/** How the values of a sentence are said. */
type Said = Pick<FrameOptions, "units" | "language">;

/** Sentences as lines of a drawing. */
const sayLine = (words: StepWords, { units, language }: Said): Line =>
	words.say.map((part) =>
		typeof part === "string"
			? run(part)
			: run(
					quantityString(part, units, language),
					part.key === undefined ? { whole: true } : { key: part.key },
				),
	);

export const sayText = (words: StepWords, said: Said): string =>
	sayLine(words, said)
		.map(({ text }) => text)
		.join("");

/** The picture of one step, in a box of the page. */
const pictureShapes = (
	well: Well,
	results: Results,
	steps: readonly WellStep[],
	step: WellStep,
	box: Box,
	options: FrameOptions,
): Shape[] => {
	const print = printer(options.units, options.words, options.keyOf);
	const scene = sceneOf(well, results, box, options.size, print);
	const { right, ground } = scene;
	const large = options.size >= 14;
	const wide = Math.min(box.width * 0.34, box.height * 1.1);
	const level = scene.axis.level;
	const lateral = level === undefined ? box.y + box.height : scene.axis.at(level).y - scene.nest.widest * 0.9;
	const base = results.geology.protected_water_base;
	// Below the words about the water, above the lateral.
	const clear =
		base === undefined
			? ground
			: Math.max(scene.scale.y(base.tvd.value), ground + options.size) + 10 * scene.mark;
	const top = large ? box.y + 2 : clear;
	const inset: Box = {
		x: right - wide - 6 * scene.mark,
		y: top,
		width: wide,
		height: Math.max(0, Math.min(lateral - 10 * scene.mark, box.y + box.height * 0.86) - top),
	};
	return [
		named("ground", groundShapes(scene)),
		named("built", builtPart(scene, progressOf(steps, step))),
		named("ground lines", groundLines(scene)),
		named("surface", surfaceShapes(scene, step)),
		...changeShapes(scene, step),
		...groundLabels(scene),
		...(hasInset(step.kind) && inset.height > 30 * scene.mark
			? [named("close-up", insetShapes(scene, step.kind, inset, large))]
			: []),
	];
};

const alternativeOf = (words: StepWords, said: Said): string => `${sayText(words, said)} ${words.shows}`;

/** One step as a picture alone, for a page that sets its words beside it. */
export const sequenceFrame = (
	well: Well,
	results: Results,
	steps: readonly WellStep[],
	step: WellStep,
	words: StepWords,
	options: FrameOptions,
): Drawing => ({
	id: `step-${step.id}`,
	width: options.width,
	height: options.height,
	title: words.title,
	alternative: alternativeOf(words, options),
	scale: options.scale ?? options.words.frameScale,
	shapes: pictureShapes(
		well,
		results,
		steps,
		step,
		{ x: 0, y: 0, width: options.width, height: options.height },
		options,
	),
});

/** One step with its words under it: a file of its own. */
export const captionedFrame = (
	well: Well,
	results: Results,
	steps: readonly WellStep[],
	step: WellStep,
	words: StepWords,
	options: FrameOptions & { readonly number: number; readonly of: number },
): Drawing => {
	const { size, width, height } = options;
	const count = run(`${options.number}/${options.of}  `, { color: SECOND_INK, weight: "bold" });
	const lines = [
		...wrap([count, run(words.title, { weight: "bold" })], size * 1.15, width, 2).map((line) => ({
			line,
			size: size * 1.15,
		})),
		...wrap(sayLine(words, options), size, width, 6).map((line) => ({ line, size })),
		...wrap([run(options.words.frameScale, { color: SECOND_INK })], size * 0.7, width, 3).map((line) => ({
			line,
			size: size * 0.7,
		})),
	];
	let y = height + size * 0.4;
	const set = lines.map(({ line, size: tall }, i): Shape => {
		y += tall * 1.3;
		return named(`label line ${i + 1}`, setLine(line, { x: 0, y, size: tall }));
	});
	const frame = sequenceFrame(well, results, steps, step, words, options);
	return {
		...frame,
		height: y + size * 0.5,
		shapes: [...frame.shapes, ...set],
	};
};

/** Line height of a strip's words, in type sizes. */
const LEADING = 1.2;

/** Steps side by side in two columns, each picture with its words at its right: a page of the landowner's packet. */
export const stripDrawing = (
	well: Well,
	results: Results,
	steps: readonly WellStep[],
	cells: readonly { readonly step: WellStep; readonly words: StepWords; readonly number: number }[],
	options: Omit<FrameOptions, "height"> & {
		readonly id: string;
		readonly title: string;
		/** Of one cell [pt]. */
		readonly cell: number;
	},
): Drawing => {
	const { size, width, cell, words: labels } = options;
	const gutter = size * 1.6;
	const column = (width - gutter) / 2;
	const picture = column * 0.53;
	const beside = column - picture - size * 0.7;
	const shapes = cells.flatMap(({ step, words, number }, i): Shape[] => {
		const x = (i % 2) * (column + gutter);
		const y = Math.floor(i / 2) * cell;
		const box: Box = { x, y, width: picture, height: cell - size * 1.1 };
		const title = wrap([run(`${number}  ${words.title}`, { weight: "bold", color: INK })], size, beside, 3);
		const room = Math.floor((cell - size * 0.4) / (size * LEADING)) - title.length;
		const lines = [...title, ...wrap(sayLine(words, options), size, beside, room)];
		return [
			...pictureShapes(well, results, steps, step, box, {
				...options,
				height: box.height,
				size: Math.max(7, size * 0.78),
			}),
			...lines.map((line, k) =>
				named(
					`label cell ${number} ${k}`,
					setLine(line, { x: x + picture + size * 0.7, y: y + size * (1 + k * LEADING), size }),
				),
			),
		];
	});
	return {
		id: options.id,
		width,
		height: Math.ceil(cells.length / 2) * cell,
		title: options.title,
		alternative: cells
			.map(({ words, number }) => `${number}. ${words.title}: ${sayText(words, options)}`)
			.join(" "),
		scale: labels.frameScale,
		shapes,
	};
};
