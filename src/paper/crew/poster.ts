import type { Section } from "../../document/blocks.ts";
import { pressureLadderView } from "../../drawing/ladder/pressure-ladder-view.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { PaperContext } from "../context.ts";
import { isDone } from "./job.ts";
import { crewFigures } from "./sheet.ts";
import { crewStops } from "./stops.ts";

/** What `--job` calls the poster. */
export const POSTER = "poster";
/** The job whose pressures hang on the wall. */
export const POSTER_JOB = "pumping";

/** Room for the drawing: under the title, the figures and the STOP lines, and no wider than its two columns of labels need [pt]. */
const DRAWINGS = {
	field: { sheet: "job-tabloid", width: 900, height: 330 },
	metric: { sheet: "job-a3", width: 900, height: 370 },
} as const;
/** Read from ten feet away [pt]. */
const SIZE = 16;

/**
 * A wall poster of the pressure ladder, on one large page: the five numbers, every pressure that limits the job to scale, and
 * the right to stop. Nothing where the well has no ladder to draw.
 */
export const posterSection = (
	context: PaperContext,
	data: Readonly<Record<string, unknown>>,
): Section | undefined => {
	const { words, units } = context;
	// What hangs on a wall is to be worked by: a job that is done has no place on it.
	if (isDone(context)) return undefined;
	const { sheet, width, height } = DRAWINGS[units];
	const drawing = pressureLadderView(context.well, context.results, {
		units,
		width,
		height,
		size: SIZE,
		words: DRAWING_WORDS[words.language],
		keyOf: context.index.keyOf,
	});
	if (drawing === undefined) return undefined;
	return {
		id: POSTER,
		title: words.label("crew.poster"),
		onePage: true,
		poster: true,
		goesOn: {
			sheet: POSTER,
			title: words.label("crew.poster_continued"),
			readAlso: words.label("crew.read_also"),
		},
		newPage: true,
		sheet,
		blocks: [
			...words.blocks("crew", "void", data),
			...crewStops(context),
			...crewFigures(context),
			{ kind: "figure", drawing, caption: [{ kind: "text", text: drawing.title }], id: drawing.id },
			...words.blocks("crew", "stop-work", data),
		],
	};
};
