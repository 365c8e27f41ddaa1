import type { Findings } from "../../src/paper/context.ts";
import { composePapers, type NamedPaper, type PaperRequest } from "../../src/pipeline.ts";

const composed = new WeakMap<Findings, Map<string, readonly NamedPaper[]>>();

/** The papers asked for of a well, each composed once a worker, however many tests read it. */
export const composeOnce = (
	findings: Findings,
	requests: readonly PaperRequest[],
): { readonly documents: readonly NamedPaper[] } => {
	const shelf = composed.get(findings) ?? new Map<string, readonly NamedPaper[]>();
	composed.set(findings, shelf);
	const documents = requests.flatMap((request) => {
		const { paper, language, units, job = "", neighbor = "" } = request;
		const key = [paper, language, units, job, neighbor].join("|");
		const found = shelf.get(key) ?? composePapers(findings, [request]).documents;
		shelf.set(key, found);
		return found;
	});
	return { documents };
};
