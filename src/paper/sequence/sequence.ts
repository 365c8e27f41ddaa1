import { readBy } from "../../document/document.ts";
import type { SequenceDocument } from "../../document/sequence.ts";
import type { Drawing } from "../../document/shapes.ts";
import { captionedFrame, sequenceFrame, stripDrawing } from "../../drawing/sequence/sequence-frame.ts";
import { everyStep, stepOfJob } from "../../drawing/sequence/steps.ts";
import type { PaperContext } from "../context.ts";
import { isFinished } from "../narrative/done.ts";
import { narrative } from "../narrative/narrative.ts";
import { sayDate } from "../narrative/say.ts";
import { frameOptions, toldFrames, toldStep } from "./frames.ts";

/** Of a picture that is a file of its own, or fills a screen [pt]. */
const FILE = { width: 864, height: 340, size: 20 } as const;
/** Of a phone's page: the same drawing for every width, its words large enough where it is drawn small [pt]. */
const PAGE = { width: 640, height: 360, size: 20 } as const;

/** The steps as pictures with their sentences under them: a file each. */
export const frameDrawings = (context: PaperContext): readonly Drawing[] => {
	const { well, results } = context;
	const frames = toldFrames(context);
	const steps = frames.map(({ step }) => step);
	return frames.map(({ step, words, number }) =>
		captionedFrame(well, results, steps, step, words, {
			...frameOptions(context, FILE),
			number,
			of: frames.length,
		}),
	);
};

/** The steps for one page that shows them in turn. */
export const sequenceDocument = (context: PaperContext): SequenceDocument => {
	const { well, results, words } = context;
	const { identity } = well;
	const frames = toldFrames(context);
	const steps = frames.map(({ step }) => step);
	return {
		language: words.language,
		units: context.units,
		title: words.label("sequence.title"),
		operator: identity.operator,
		well: identity.name,
		standing: [
			words.label(`states.${identity.state}`),
			`${words.label(readBy(context.paper) === "landowner" ? "imprint.version" : "imprint.revision")} ${identity.revisions?.at(-1)?.id ?? "–"}`,
			sayDate(context, identity.issued) || identity.issued,
			context.digest,
		].join("  ·  "),
		caution: words.label("imprint.caution"),
		frames: frames.map((told) => ({
			id: told.step.id,
			number: told.number,
			title: told.title,
			say: told.say,
			drawing: sequenceFrame(well, results, steps, told.step, told.words, frameOptions(context, PAGE)),
		})),
	};
};

/** Height that a page of the packet has for a strip [pt]. */
const STRIP = 550;
const STRIP_TYPE = 9.5;
const MOST_CELL = 126;

/** The steps on two pages of the packet, ten or so on each. */
export const sequenceStrip = (context: PaperContext): readonly Drawing[] => {
	const { well, results, words } = context;
	const frames = toldFrames(context);
	const steps = frames.map(({ step }) => step);
	const half = Math.ceil(frames.length / 2);
	const cell = Math.min(MOST_CELL, STRIP / Math.ceil(half / 2));
	return [frames.slice(0, half), frames.slice(half)].map((cells, i) =>
		stripDrawing(well, results, steps, cells, {
			...frameOptions(context, { width: 504, height: 0, size: STRIP_TYPE }),
			id: `sequence-${i + 1}`,
			title: words.label(`sequence.strip_${i + 1}${isFinished(context) ? "_done" : ""}`),
			cell,
		}),
	);
};

/**
 * The well as a crew finds it for a job: a small picture without words of its own for their sheet. Nothing where the well
 * has no step that the job belongs to.
 */
export const frameForJob = (
	context: PaperContext,
	job: { readonly id: string; readonly string?: string },
	size: { readonly width: number; readonly height: number; readonly size: number } = {
		width: 240,
		height: 130,
		size: 9,
	},
): Drawing | undefined => {
	const { well, results } = context;
	const step = stepOfJob(well, results, job);
	if (step === undefined) return undefined;
	const told = toldStep(context, step, 1, narrative(context));
	return {
		...sequenceFrame(well, results, everyStep(well, results), step, told.words, frameOptions(context, size)),
		title: context.words.label("sequence.at_job"),
	};
};
