import { describe, expect, it } from "vitest";
import { indexValues } from "../src/cite/index-values.ts";
import { isTable, type Known } from "../src/cite/known.ts";
import { mayAppear, papersOf } from "../src/definition/privacy.ts";
import { type Path, pathKey } from "../src/diagnostics/path.ts";
import { PAPERS, type Paper, readBy } from "../src/document/document.ts";
import { jobName, jobsOfWell } from "../src/paper/jobs.ts";
import { keysIn } from "../src/paper/places.ts";
import { attachmentsOf, renderTablesAsJson } from "../src/pipeline.ts";
import { resultsLines } from "../src/render/json/results-lines.ts";
import { renderText } from "../src/render/text/render-text.ts";
import { readYaml } from "../src/source/read-yaml.ts";
import { composeOnce } from "./run/compose-once.ts";
import { setOnce } from "./run/set-once.ts";
import { findingsOf, STARTERS, type Starter, starterText, understandText } from "./starters.ts";

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
			composeOnce(findings, [
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

	it.each(PAPERS)("is not in the text of the %s paper, nor in its tables as files", async (paper) => {
		const allowed = all.filter((leaf) => mayAppear(paper, leaf.path, tree)).map((leaf) => leaf.text);
		const kept = leaves.filter(
			(leaf) => !mayAppear(paper, leaf.path, tree) && !allowed.some((text) => text.includes(leaf.text)),
		);
		if (readBy(paper) !== "regulator") expect(kept.length).toBeGreaterThan(5);
		const documents = papersFor(starter, paper);
		const printed = [
			...documents.map((document) => renderText(document.paper)),
			...(await Promise.all(documents.map((document) => renderTablesAsJson(document.paper)))),
		].join("\n");
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
				if (!papersOf(value.from.at).includes(readBy(paper))) kept.add(pathKey(value.from.at));
			}
		if (paper !== "transmittal") expect(seen).toBeGreaterThan(5);
		expect([...kept]).toEqual([]);
	});
});

describe.each(STARTERS)("the files that travel in the papers of %s", (starter) => {
	const tree = readYaml(starterText(starter), "w.yaml").value?.value;
	const filesOf = (paper: Paper) =>
		papersFor(starter, paper).map(({ paper: document }) => attachmentsOf(findingsOf(starter), document));
	const attached = (): readonly [definition: string, results: string] => {
		const [definition, results] = filesOf("regulator").flat();
		if (definition === undefined || results === undefined) throw new Error("files are missing");
		return [Buffer.from(definition.bytes).toString(), Buffer.from(results.bytes).toString()];
	};

	it("are in the regulator's copy alone", () => {
		expect(
			filesOf("regulator").map((files) => files.map(({ name, relationship }) => [name, relationship])),
		).toEqual([
			[
				[expect.stringMatching(/\.definition\.yaml$/u), "Source"],
				[expect.stringMatching(/\.results\.json$/u), "Data"],
			],
		]);
		for (const paper of PAPERS.filter((other) => other !== "regulator"))
			for (const files of filesOf(paper)) expect(files, paper).toEqual([]);
	});

	it("hold everything that the regulator may see, in its place, and nothing else", () => {
		const written = readYaml(attached()[0], "attached.yaml");
		expect(written.diagnostics).toEqual([]);
		const entries = (node: unknown): string[] =>
			leavesOf(node).map(({ path, text }) => `${pathKey(path)}: ${text}`);
		const open = leavesOf(tree).filter(({ path }) => mayAppear("regulator", path, tree));
		const shut = leavesOf(tree).filter(({ path }) => !mayAppear("regulator", path, tree));
		expect(open.length).toBeGreaterThan(200);
		expect(shut.length).toBeGreaterThan(20);
		// Items that are left out move the later ones up, so that texts are compared in order and not by place.
		expect(leavesOf(written.value?.value).map(({ text }) => text)).toEqual(open.map(({ text }) => text));
		expect(entries(written.value?.value).length).toBe(open.length);
		const all = attached().join("\n");
		const leaked = shut.filter(
			({ text }) =>
				text.length >= TELLING &&
				/[\s(]|\d{3}/u.test(text) &&
				!open.some((other) => other.text.includes(text)) &&
				!VOCABULARY.includes(text) &&
				all.includes(text),
		);
		expect(leaked.map(({ path, text }) => `${pathKey(path)}: ${text}`)).toEqual([]);
		// Remarks are nobody's business: the definition is written anew.
		expect(attached()[0]).not.toContain("#");
	});

	it("give the same results again", () => {
		const { findings, diagnostics } = understandText(attached()[0]);
		expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
		const { values } = JSON.parse(attached()[1]) as { values: Record<string, string | { value?: number }> };
		expect(Object.keys(values).length).toBeGreaterThan(1000);
		for (const [key, told] of Object.entries(values)) {
			const again = findings?.index.byKey.get(key);
			expect(again, key).toBeDefined();
			if (typeof told === "string") expect(findings?.index.byKey.get(told), key).toBe(again);
			else if (again !== undefined && !isTable(again))
				expect(Number(again.value.toPrecision(10)), key).toBe(told.value);
		}
	});

	it("hold every result that the regulator's papers print", () => {
		const results = (JSON.parse(attached()[1]) as { values: Record<string, unknown> }).values;
		const printed = (["regulator", "regulator-appendix", "transmittal"] as const)
			.flatMap((paper) => papersFor(starter, paper))
			.flatMap(({ paper }) => paper.sections.flatMap((section) => keysIn(section.blocks)));
		const keys = printed.filter((key) => key.startsWith("results."));
		expect(keys.length).toBeGreaterThan(50);
		expect(keys.filter((key) => !(key in results))).toEqual([]);
	});
});

it("a result that rests on what is kept from a reader is not told, however far up it stands", () => {
	const line = (step: string): Known => ({
		dimension: "length",
		value: 1 as Known["value"],
		from: { kind: "definition", at: [step], text: "1 ft" },
	});
	const worked = (...inputs: readonly Known[]): Known => ({
		dimension: "length",
		value: 2 as Known["value"],
		from: { kind: "worked", formula: "f", source: { key: "api-5c3" }, inputs: { one: inputs } },
	});
	const [open, shut] = [line("open"), line("shut")];
	const results = { open, shut, fine: worked(open), near: worked(open, shut), far: worked(worked(shut)) };
	const request = { prefix: "results.", mayShow: (at: Path) => at[0] === "open" };
	const told = JSON.parse([...resultsLines(indexValues({ results }), request)].join("")) as {
		values: Record<string, unknown>;
		inputs: Record<string, unknown>;
	};
	expect(Object.keys(told.values)).toEqual(["results.open", "results.fine"]);
	expect(told.inputs).toEqual({});
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
	const { bytes } = await setOnce(document.paper, attachmentsOf(findingsOf("horizontal"), document.paper));
	const raw = Buffer.from(bytes).toString("latin1");
	const utf16 = (text: string): string => Buffer.from(text, "utf16le").swap16().toString("latin1");
	for (const { text } of persons.filter(
		({ text }) => text.length >= TELLING && !["regulator"].includes(text),
	)) {
		expect(raw.includes(text), text).toBe(false);
		expect(raw.includes(utf16(text)), text).toBe(false);
	}
});
