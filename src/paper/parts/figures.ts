import type { Block } from "../../document/blocks.ts";
import type { Drawing } from "../../document/shapes.ts";
import { isolationCloseUp } from "../../drawing/close-up/isolation-close-up.ts";
import { wellboreSchematic } from "../../drawing/schematic/wellbore-schematic.ts";
import { ENGLISH } from "../../drawing/words-en.ts";
import type { UnitSystem } from "../../units/format.ts";
import type { Findings, PaperContext } from "../context.ts";
import type { Part } from "./part.ts";

const figure = (drawing: Drawing): Block => ({
	kind: "figure",
	drawing,
	caption: [{ kind: "text", text: drawing.title }],
	id: drawing.id,
});

const options = (context: Pick<PaperContext, "units" | "index">, width: number, height: number) => ({
	units: context.units,
	width,
	height,
	words: ENGLISH,
	keyOf: context.index.keyOf,
});

const schematic =
	(detail: "full" | "plain", width: number, height: number): Part =>
	(context) => [
		figure(wellboreSchematic(context.well, context.results, { ...options(context, width, height), detail })),
	];

/** Nothing to draw where the protected water is not known. */
const closeUp =
	(width: number, height: number): Part =>
	(context) =>
		context.results.geology.protected_water_base === undefined
			? []
			: [figure(isolationCloseUp(context.well, context.results, options(context, width, height)))];

/** Drawings, each at the size that its page leaves for it [pt]. */
export const figures: Readonly<Record<string, Part>> = {
	schematic: schematic("full", 504, 570),
	"schematic-plain": schematic("plain", 504, 520),
	"isolation-close-up": closeUp(500, 420),
	"isolation-close-up-plain": closeUp(480, 400),
	"schematic-small": schematic("plain", 504, 285),
};

/** Every drawing of a well, for files of their own. */
export const wellDrawings = (findings: Findings, units: UnitSystem): readonly Drawing[] => {
	const { well, results, index } = findings;
	const size = options({ units, index }, 504, 570);
	return [
		wellboreSchematic(well, results, { ...size, detail: "full" }),
		...(results.geology.protected_water_base === undefined
			? []
			: [isolationCloseUp(well, results, { ...size, height: 420 })]),
	];
};
