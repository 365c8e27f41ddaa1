import { LANGUAGES, PAPERS, type PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import type { PaperRequest } from "../../src/pipeline.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";
import { composeOnce } from "./compose-once.ts";
import { sampleOf } from "./sample.ts";

/** A paper of a starter in one language, in one system of units, for one crew or one neighbor. */
export interface Edition {
	readonly starter: Starter;
	readonly request: PaperRequest;
	/** As a test's title has it. */
	readonly title: string;
}

/** Whom else a paper is made for: the crew of each job; the neighbors and, beside them, one with a packet of its own. */
const readersOf = (starter: Starter, paper: PaperRequest["paper"]): readonly Partial<PaperRequest>[] => {
	const { well } = findingsOf(starter);
	if (paper === "crew") return jobsOfWell(well).map((job) => ({ job: jobName(job) }));
	const neighbor = well.neighbors.find(({ id }) => id !== undefined)?.id;
	return paper === "landowner" && neighbor !== undefined ? [{}, { neighbor }] : [{}];
};

const everyEdition = (starter: Starter, paper: PaperRequest["paper"]): readonly Edition[] =>
	LANGUAGES.flatMap((language) =>
		(["field", "metric"] as const).flatMap((units) =>
			readersOf(starter, paper).map((reader) => ({
				starter,
				request: { paper, language, units, ...reader },
				title: [starter, paper, language, units, ...Object.values(reader)].join(", "),
			})),
		),
	);

/**
 * Of each paper of each starter one edition, by the seed; all of them in the long run. Every test of whole papers goes
 * over these, so that each is composed and set once and looked at from all sides.
 */
export const EDITIONS: readonly Edition[] = STARTERS.flatMap((starter) =>
	PAPERS.flatMap((paper) => sampleOf(`${starter} ${paper}`, everyEdition(starter, paper), 1)),
);

/** Of each paper one edition, of whichever starter; all of them in the long run. For what costs more than the paper itself. */
export const ONE_OF_EACH: readonly Edition[] = PAPERS.flatMap((paper) =>
	sampleOf(
		`one ${paper}`,
		EDITIONS.filter(({ request }) => request.paper === paper),
		1,
	),
);

/** @throws Error if no paper comes of the request */
export const documentOf = ({ starter, request, title }: Edition): PaperDocument => {
	const [found] = composeOnce(findingsOf(starter), [request]).documents;
	if (found === undefined) throw new Error(`no paper comes of ${title}`);
	return found.paper;
};
