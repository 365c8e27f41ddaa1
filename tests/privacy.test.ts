import { describe, expect, it } from "vitest";
import { isTable } from "../src/cite/known.ts";
import { mayAppear, papersOf } from "../src/definition/privacy.ts";
import { type Path, pathKey } from "../src/diagnostics/path.ts";
import { PAPERS, type Paper } from "../src/document/document.ts";
import { jobName, jobsOfWell } from "../src/paper/jobs.ts";
import { keysIn } from "../src/paper/places.ts";
import { composePapers, renderPaper } from "../src/pipeline.ts";
import { renderText } from "../src/render/text/render-text.ts";
import { readYaml } from "../src/source/read-yaml.ts";
import { findingsOf, STARTERS, type Starter, starterText } from "./starters.ts";

interface Leaf {
	readonly path: Path;
	readonly text: string;
}

const leavesOf = (node: unknown, path: Path = []): Leaf[] => {
	if (typeof node === "string") return [{ path, text: node }];
	if (Array.isArray(node)) return node.flatMap((item, i) => leavesOf(item, [...path, i]));
	if (typeof node !== "object" || node === null) return [];
	return Object.entries(node).flatMap(([key, child]) => leavesOf(child, [...path, key]));
};

/** Every paper of a starter of one kind: the crew's has one for each job. */
const papersFor = (starter: Starter, paper: Paper) => {
	const findings = findingsOf(starter);
	const jobs = paper === "crew" ? jobsOfWell(findings.well).map(jobName) : [undefined];
	return jobs.flatMap(
		(job) =>
			composePapers(findings, [
				{ paper, language: "en", units: "field", ...(job === undefined ? {} : { job }) },
			]).documents,
	);
};

/** Words of the trade that a definition chooses from and the papers use of themselves; they tell nothing of anybody. */
const VOCABULARY = ["hydrogen sulfide", "pressure test", "rotary table", "kelly bushing"];

/** Long enough that it is in a paper only if it was put there. */
const TELLING = 6;

describe.each(STARTERS)("what %s keeps from a reader", (starter) => {
	const tree = readYaml(starterText(starter), "w.yaml").value?.value;
	const all = leavesOf(tree);
	const leaves = all.filter(
		(leaf) => leaf.text.length >= TELLING && !/^\d/u.test(leaf.text) && !VOCABULARY.includes(leaf.text),
	);

	it.each(PAPERS)("is not in the text of the %s paper", (paper) => {
		const allowed = all.filter((leaf) => mayAppear(paper, leaf.path, tree)).map((leaf) => leaf.text);
		const kept = leaves.filter(
			(leaf) => !mayAppear(paper, leaf.path, tree) && !allowed.some((text) => text.includes(leaf.text)),
		);
		if (paper !== "regulator") expect(kept.length).toBeGreaterThan(5);
		const printed = papersFor(starter, paper)
			.map((document) => renderText(document.paper))
			.join("\n");
		expect(printed.length).toBeGreaterThan(1000);
		// One word may be the tool's own too; a name, a phone or a sentence may not.
		const leaked = kept.filter((leaf) => /[\s(]|\d{3}/u.test(leaf.text) && printed.includes(leaf.text));
		expect(leaked.map((leaf) => `${pathKey(leaf.path)}: ${leaf.text}`)).toEqual([]);
	});

	it.each(PAPERS)("no number of the %s paper was written for others alone", (paper) => {
		const { index } = findingsOf(starter);
		let seen = 0;
		const kept = new Set<string>();
		for (const document of papersFor(starter, paper))
			for (const key of document.paper.sections.flatMap((section) => keysIn(section.blocks))) {
				seen += 1;
				const value = index.byKey.get(key);
				if (
					value === undefined ||
					isTable(value) ||
					value.from.kind !== "definition" ||
					value.from.file !== undefined
				)
					continue;
				if (!papersOf(value.from.at).includes(paper)) kept.add(pathKey(value.from.at));
			}
		expect(seen).toBeGreaterThan(5);
		expect([...kept]).toEqual([]);
	});
});

it("a public paper's bytes hold none of the persons either: not in metadata, bookmarks or text alternatives", async () => {
	const read = readYaml(starterText("horizontal"), "w.yaml").value?.value as
		| Record<string, Record<string, unknown>>
		| undefined;
	const wellBlock = read?.["well"] ?? {};
	const persons = ["prepared_by", "technical_contact"].flatMap((key) => leavesOf(wellBlock[key]));
	expect(persons.length).toBeGreaterThan(1);
	const [document] = papersFor("horizontal", "landowner");
	if (document === undefined) throw new Error("no landowner paper");
	const { bytes } = await renderPaper(document.paper);
	const raw = Buffer.from(bytes).toString("latin1");
	const utf16 = (text: string): string => Buffer.from(text, "utf16le").swap16().toString("latin1");
	for (const { text } of persons.filter(
		({ text }) => text.length >= TELLING && !["regulator"].includes(text),
	)) {
		expect(raw.includes(text), text).toBe(false);
		expect(raw.includes(utf16(text)), text).toBe(false);
	}
});
