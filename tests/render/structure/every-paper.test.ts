import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { LANGUAGES, PAPERS, type Paper } from "../../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../../src/paper/jobs.ts";
import {
	attachmentsOf,
	composePapers,
	type NamedPaper,
	type PaperRequest,
	renderPaper,
} from "../../../src/pipeline.ts";
import { findingsOf, STARTERS, type Starter } from "../../starters.ts";
import { inspectPdf } from "./structure-faults.ts";

const run = promisify(execFile);
const place = mkdtempSync(join(tmpdir(), "casebound-structure-"));
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** `qpdf --check` reads every object and stream; it is used where it is installed. */
const qpdf = await run("qpdf", ["--version"]).then(
	() => true,
	() => false,
);

/** What qpdf finds wrong, warnings too; nothing where it is not installed. */
const qpdfFaults = async (name: string, bytes: Uint8Array): Promise<string> => {
	if (!qpdf) return "";
	const file = join(place, `${name}.pdf`);
	writeFileSync(file, bytes);
	return run("qpdf", ["--check", file]).then(() => "", String);
};

/** Every edition of one paper: the crew's has one for each job, the landowner's one for each neighbor. */
const editionsOf = (starter: Starter, paper: Paper, language: "en" | "es"): readonly NamedPaper[] => {
	const findings = findingsOf(starter);
	const request: PaperRequest = {
		paper,
		language,
		units: starter === "vertical-metric" ? "metric" : "field",
	};
	const neighbors = findings.well.neighbors.flatMap(({ id }) => (id === undefined ? [] : [id]));
	const requests: readonly PaperRequest[] =
		paper === "crew"
			? jobsOfWell(findings.well).map((job) => ({ ...request, job: jobName(job) }))
			: paper === "landowner"
				? [request, ...neighbors.slice(0, 1).map((neighbor) => ({ ...request, neighbor }))]
				: [request];
	return requests.flatMap((one) => composePapers(findings, [one]).documents);
};

describe.each(STARTERS)("the papers of %s", (starter) => {
	describe.each(LANGUAGES)("in %s", (language) => {
		it.each(PAPERS)("%s has structure throughout", async (paper) => {
			const editions = editionsOf(starter, paper, language);
			expect(editions.length).toBeGreaterThan(0);
			for (const { name, paper: document } of editions) {
				const attachments = attachmentsOf(findingsOf(starter), document);
				const { bytes, findings, pages } = await renderPaper(document, attachments);
				expect(findings, name).toEqual([]);
				const { faults, seen } = await inspectPdf(bytes, language);
				expect(faults, name).toEqual([]);
				expect(seen.attachments, name).toEqual(attachments.map((attachment) => attachment.name));
				expect(attachments, name).toHaveLength(paper === "regulator" ? 2 : 0);
				expect(seen.pages, name).toBe(pages);
				expect(seen.painted, name).toBeGreaterThan(100);
				expect(seen.fonts, name).toBeGreaterThan(1);
				expect(await qpdfFaults(name, bytes), name).toBe("");
			}
		});
	});
});

describe("qpdf, where it is installed", () => {
	let bytes: Uint8Array;
	beforeAll(async () => {
		const [edition] = editionsOf("horizontal", "handout", "en");
		if (edition === undefined) throw new Error("no handout");
		bytes = (await renderPaper(edition.paper)).bytes;
	});
	it.skipIf(!qpdf)("would find a broken file", async () => {
		expect(await qpdfFaults("whole", bytes)).toBe("");
		const source = Buffer.from(bytes).toString("latin1");
		const broken = Buffer.from(source.replace(/\nxref\n0 \d+/u, "\nxref\n0 2"), "latin1");
		expect(await qpdfFaults("broken", broken)).not.toBe("");
	});
});
