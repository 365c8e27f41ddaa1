import { type Changes, compare } from "./compare/compare.ts";
import { keysThatMoved } from "./compare/moved-results.ts";
import { definitionFor } from "./definition/definition-for.ts";
import { mayAppear } from "./definition/privacy.ts";
import type { Diagnostic } from "./diagnostics/diagnostic.ts";
import { type Language, type Paper, type PaperDocument, readBy } from "./document/document.ts";
import { fileSlug } from "./document/file-slug.ts";
import type { Drawing } from "./document/shapes.ts";
import { placesInAttachment } from "./paper/attachment.ts";
import { changesForAgency, composeChanges } from "./paper/changes/compose-changes.ts";
import { markChanged } from "./paper/changes/mark-changed.ts";
import { composePaper } from "./paper/compose.ts";
import type { Findings, PaperContext } from "./paper/context.ts";
import { ALL_JOBS, crewPack, crewPoster } from "./paper/crew/pack.ts";
import { POSTER } from "./paper/crew/poster.ts";
import { inTwoLanguages } from "./paper/crew/two-languages.ts";
import { deadlineCalendar } from "./paper/deadlines.ts";
import { findingsFor } from "./paper/findings-for.ts";
import { forPaper } from "./paper/for-paper.ts";
import { findJob, jobName, jobsOfWell, nextJob, type WellJob } from "./paper/jobs.ts";
import { paperName } from "./paper/paper-name.ts";
import { wellDrawings } from "./paper/parts/figures.ts";
import { frameDrawings, sequenceDocument } from "./paper/sequence/sequence.ts";
import { ownSlideFaults } from "./paper/slides/own-slide-faults.ts";
import type { OwnSlidesFile } from "./paper/slides/own-slides.ts";
import { type NoMap, wellMap } from "./paper/well-map.ts";
import { loadWords } from "./paper/words/words.ts";
import { resultsLines } from "./render/json/results-lines.ts";
import type { Attachment } from "./render/pdf/render-pdf.ts";
import { writeYaml } from "./source/write-yaml.ts";
import type { UnitSystem } from "./units/format.ts";

export type { NoMap } from "./paper/well-map.ts";
export {
	renderEdition,
	renderPaper,
	renderTableFiles,
	renderTablesAsJson,
	renderWorkbook,
} from "./render/render-paper.ts";
export { type NamedFile, type Surroundings, type Understanding, understand } from "./understand.ts";

/*
 *  text ── read ──▶ tree ── validate ──▶ definition ── resolve ──▶ well ── calculate ──▶ results ── judge ──▶ judgement
 *                                                                   └─────────────┬──────────────────────────────┘
 *                                                                        compose ─┴▶ document ── render ──▶ PDF
 *
 *  Faults of form do not keep the parts from being compared, with something standing in for what cannot be read; after
 *  that, a stage with an error in what it needs does not run. Every fault of the stages that ran is told at once.
 */

export interface PaperRequest {
	readonly paper: Paper;
	readonly language: Language;
	readonly units: UnitSystem;
	/** Of the crew's: the language beside the first, step for step. */
	readonly second?: Language;
	/** Of the crew's: a job, `all` or `poster`; the next job where absent. */
	readonly job?: string;
	/** Of the landowner packet: the short name of the neighbor whose own edition it is. */
	readonly neighbor?: string;
	/** Of slides and notes: the presenter's own, by file. */
	readonly ownSlides?: readonly OwnSlidesFile[];
}

/** A paper with the name its file takes. */
export interface NamedPaper {
	readonly name: string;
	readonly paper: PaperDocument;
}

interface ComposedPapers {
	readonly documents: readonly NamedPaper[];
	/** Crew packs that may be asked for beside the one made. */
	readonly otherJobs: readonly string[];
	readonly unknownJob?: { readonly asked: string; readonly jobs: readonly string[] };
	readonly unknownNeighbor?: { readonly asked: string; readonly neighbors: readonly string[] };
}

interface CrewRequest extends Pick<PaperRequest, "language" | "units"> {
	readonly second: Language | undefined;
	readonly asked: string | undefined;
}

/** The crew's papers that are not one job in one language: of every job, for the wall, in two languages. */
const boundOf = (
	findings: Findings,
	jobs: readonly WellJob[],
	{ language, units, second, asked }: CrewRequest,
): PaperDocument | undefined => {
	const job = asked === undefined ? nextJob(jobs) : findJob(jobs, asked);
	const inOne = (spoken: Language): PaperDocument | undefined => {
		const context: PaperContext = { ...findings, paper: "crew", words: loadWords(spoken), units };
		if (asked === ALL_JOBS) return crewPack(context, jobs);
		if (asked === POSTER) return crewPoster(context, jobs);
		return second === undefined || job === undefined ? undefined : composePaper({ ...context, job });
	};
	const first = inOne(language);
	const other = second === undefined ? undefined : inOne(second);
	return first === undefined || other === undefined ? first : inTwoLanguages(first, other);
};

/**
 * Composes the papers asked for.
 *
 * @param before  an earlier state of the well: the regulator's paper then lists what changed and marks what moved, and
 *                the paper of changes is composed as well
 */
export const composePapers = (
	findings: Findings,
	requests: readonly PaperRequest[],
	before?: Findings,
): ComposedPapers => {
	const jobs = jobsOfWell(findings.well, findings.jobs);
	const documents: NamedPaper[] = [];
	let otherJobs: readonly string[] = [];
	const places = forPaper(findings.well, "landowner").neighbors;
	for (const { paper, language, units, second, job: asked, neighbor, ownSlides } of requests) {
		const own = paper === "landowner" ? neighbor : undefined;
		if (own !== undefined && places.every(({ id }) => id !== own))
			return {
				documents: [],
				otherJobs: [],
				unknownNeighbor: { asked: own, neighbors: places.map(({ id }) => id) },
			};
		const sampled = findings.well.neighbors.find(({ id }) => id === own)?.sampled;
		const crew = paper === "crew";
		const bound = crew ? boundOf(findings, jobs, { language, units, second, asked }) : undefined;
		if (bound !== undefined) {
			documents.push({ name: paperName(findings, bound), paper: bound });
			continue;
		}
		const job = crew ? (asked === undefined ? nextJob(jobs) : findJob(jobs, asked)) : undefined;
		if (crew && job === undefined)
			return { documents: [], otherJobs: [], unknownJob: { asked: asked ?? "", jobs: jobs.map(jobName) } };
		if (job !== undefined) otherJobs = jobs.filter((other) => other !== job).map(jobName);
		const changes =
			before === undefined || readBy(paper) !== "regulator"
				? undefined
				: changesForAgency(before, findings, units);
		const composed = composePaper({
			...findings,
			paper,
			words: loadWords(language),
			units,
			...(changes === undefined ? {} : { changes }),
			...(job === undefined ? {} : { job }),
			...(ownSlides === undefined ? {} : { ownSlides }),
			...(own === undefined ? {} : { neighbor: { id: own, ...(sampled === undefined ? {} : { sampled }) } }),
		});
		const document = changes === undefined ? composed : markChanged(composed, keysThatMoved(changes));
		documents.push({ name: paperName(findings, document), paper: document });
	}
	const [asked] = requests;
	if (before !== undefined && asked !== undefined) {
		const paper = composeChangesPaper(before, findings, asked);
		documents.push({ name: paperName(findings, paper), paper });
	}
	return { documents, otherJobs };
};

/** What slides of a presenter's own say or show and this well has not; none of them may be composed while there is any. */
export const faultsOfOwnSlides = (
	findings: Findings,
	{ language, units }: Pick<PaperRequest, "language" | "units">,
	files: readonly OwnSlidesFile[],
): readonly Diagnostic[] => ownSlideFaults(contextOf(findings, units, language, "slides"), files);

/**
 * The files that travel inside a paper. The regulator's has the definition it was made from and every result, without
 * what is written for other readers; no other paper carries any.
 */
export const attachmentsOf = (
	{ well, written, index, results: worked }: Findings,
	{ paper, language }: PaperDocument,
): readonly Attachment[] => {
	if (paper !== "regulator") return [];
	const { label } = loadWords(language);
	const slug = fileSlug(well.identity.name);
	const results = resultsLines(index, {
		prefix: "results.",
		mayShow: (at) => mayAppear(paper, at, written),
		notEvaluated: worked.undetermined,
	});
	const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
	return [
		{
			name: `${slug}.definition.yaml`,
			bytes: bytes(writeYaml(definitionFor(paper, written))),
			mime: "application/yaml",
			description: label("attachments.definition"),
			relationship: "Source",
		},
		{
			name: `${slug}.results.json`,
			bytes: bytes([...results].join("")),
			mime: "application/json",
			description: label("attachments.results"),
			relationship: "Data",
		},
	];
};

/** Lays two states of a well side by side; a difference counts once these units print it. */
export const compareStates = (before: Findings, after: Findings, units: UnitSystem): Changes =>
	compare({ before, after, units });

/** The paper of what changed between two states of a well. */
export const composeChangesPaper = (
	before: Findings,
	after: Findings,
	{ language, units }: Pick<PaperRequest, "language" | "units">,
): PaperDocument => composeChanges({ ...after, words: loadWords(language), units }, before);

/** Whether the regulator's paper prints a value, by its key: its appendices are part of it. */
export const printedByRegulator = (
	findings: Findings,
	{ language, units }: Pick<PaperRequest, "language" | "units">,
): ((key: string) => boolean) => {
	const at = placesInAttachment({ ...findings, words: loadWords(language), units });
	return (key) => at(key) !== undefined;
};

/** Every drawing of the well as the readers of one paper may see it, with the name its file takes. */
export const drawings = (
	findings: Findings,
	units: UnitSystem,
	language: Language = "en",
	paper: Paper = "regulator",
): readonly { readonly name: string; readonly drawing: Drawing }[] =>
	wellDrawings(findings, units, language, paper).map((drawing) => ({
		name: [
			fileSlug(findings.well.identity.name),
			drawing.id,
			paper === "regulator" ? undefined : paper,
			language === "en" ? undefined : language,
			units === findings.writtenIn ? undefined : units,
		]
			.filter((part) => part !== undefined)
			.join("."),
		drawing,
	}));

const contextOf = (findings: Findings, units: UnitSystem, language: Language, paper: Paper) => ({
	...findingsFor(findings, paper),
	paper,
	units,
	words: loadWords(language),
});

const sequenceName = (
	{ well, writtenIn }: Findings,
	units: UnitSystem,
	language: Language,
	paper: Paper,
	which: string,
): string =>
	[
		fileSlug(well.identity.name),
		which,
		paper === "landowner" ? undefined : paper,
		language === "en" ? undefined : language,
		units === writtenIn ? undefined : units,
	]
		.filter((part) => part !== undefined)
		.join(".");

/** The well being built, a drawing a step, with the name each file takes; in order by name. */
export const sequenceDrawings = (
	findings: Findings,
	units: UnitSystem,
	language: Language = "en",
	paper: Paper = "landowner",
): readonly { readonly name: string; readonly drawing: Drawing }[] =>
	frameDrawings(contextOf(findings, units, language, paper)).map((drawing, i) => ({
		name: sequenceName(findings, units, language, paper, `${String(i + 1).padStart(2, "0")}-${drawing.id}`),
		drawing,
	}));

/** The same as one page that shows the steps in turn. */
export const sequencePage = async (
	findings: Findings,
	units: UnitSystem,
	language: Language = "en",
	paper: Paper = "landowner",
): Promise<{ readonly name: string; readonly text: string }> => {
	const { renderSequence } = await import("./render/html/render-sequence.ts");
	return {
		name: sequenceName(findings, units, language, paper, "sequence"),
		text: renderSequence(sequenceDocument(contextOf(findings, units, language, paper))),
	};
};

/** A drawing as a PNG picture. The library is loaded only here. */
export const renderPicture = async (drawing: Drawing): Promise<Uint8Array> => {
	const { renderPng } = await import("./render/png/render-png.ts");
	return renderPng(drawing);
};

/** Maps of the well in the formats asked for, each with the name its file takes; or why there are none. */
export const mapsOf = async (
	findings: Findings,
	language: Language,
	formats: readonly ("geojson" | "kml")[],
): Promise<
	{ readonly files: readonly { readonly name: string; readonly text: string }[] } | { readonly noMap: NoMap }
> => {
	const map = wellMap(findings, loadWords(language));
	if (typeof map === "string") return { noMap: map };
	const { renderGeoJson, renderKml } = await import("./render/map/render-map.ts");
	const slug = fileSlug(findings.well.identity.name);
	return {
		files: formats.map((format) => ({
			name: `${slug}.map.${format}`,
			text: format === "kml" ? renderKml(map) : renderGeoJson(map),
		})),
	};
};

/** The deadlines of the well as iCalendar, with the name its file takes. The library is loaded only here. */
export const calendarFile = async (
	findings: Findings,
	language: Language,
): Promise<{ readonly name: string; readonly text: string }> => {
	const { renderCalendar } = await import("./render/calendar/render-calendar.ts");
	const words = loadWords(language);
	const suffix = language === "en" ? "" : `.${language}`;
	return {
		name: `${fileSlug(findings.well.identity.name)}.deadlines${suffix}.ics`,
		text: renderCalendar(deadlineCalendar(findings, words)),
	};
};
