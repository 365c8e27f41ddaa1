import { describe, expect, it } from "vitest";
import type { Given } from "../../src/cite/known.ts";
import { SETTING } from "../../src/definition/audience.ts";
import { definitionSchema } from "../../src/definition/definition.ts";
import { namesOf } from "../../src/definition/entry-names.ts";
import { mayAppear } from "../../src/definition/privacy.ts";
import { everyField, fieldAt } from "../../src/definition/schema-walk.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import type { Paper } from "../../src/document/document.ts";
import type { Findings } from "../../src/paper/context.ts";
import { keysIn } from "../../src/paper/places.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { starterTree } from "../definition/starter-trees.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/*
 * Nothing is typed in vain: every field of the definition reaches a paper that its audience names, as it was written or
 * through a number worked from it. Driven by the schema, so that a field that is added and printed nowhere fails here.
 * What is asked for the people on location alone is held by `reach.test.ts`.
 */

interface Leaf {
	readonly path: Path;
	readonly pattern: string;
	readonly value: unknown;
}

const leavesOf = (node: unknown, path: Path = [], pattern = ""): readonly Leaf[] => {
	if (Array.isArray(node)) return node.flatMap((item, i) => leavesOf(item, [...path, i], `${pattern}[]`));
	if (typeof node === "object" && node !== null)
		return Object.entries(node).flatMap(([key, child]) =>
			leavesOf(child, [...path, key], pattern === "" ? key : `${pattern}.${key}`),
		);
	return [{ path, pattern, value: node }];
};

/** A list of bare values is one field of the schema; its items are what is printed. */
const isOfField = (leaf: Leaf, pattern: string): boolean =>
	leaf.pattern === pattern || leaf.pattern === `${pattern}[]`;

/** Where the tool is steered; ids join entries, and `papers` says where the entry goes. */
const isFact = (pattern: string): boolean => {
	const path = pattern.split(/[.[\]]+/u).filter((step) => step !== "");
	const last = path.at(-1);
	if (last === "papers" || last === "id") return false;
	const steps = pattern.split(".");
	return !steps.some((_, i) => {
		const upTo = steps
			.slice(0, i + 1)
			.join(".")
			.replaceAll("[]", ".0")
			.split(".")
			.map((step) => (step === "0" ? 0 : step));
		return fieldAt(definitionSchema, upTo)?.papers === SETTING;
	});
};

const facts = everyField(definitionSchema).filter(
	({ leaf, meta, pattern }) => leaf && meta !== undefined && isFact(pattern),
);
const forTheFile = facts.filter(({ meta }) => meta?.papers.includes("regulator"));

interface Printed {
	readonly text: string;
	readonly places: ReadonlySet<string>;
}

const printedOf = (findings: Findings, paper: Paper): Printed => {
	const { documents } = composePapers(findings, [{ paper, language: "en", units: "field" }]);
	const places = new Set<string>();
	const seen = new Set<Given>();
	const visit = (given: Given): void => {
		if (seen.has(given)) return;
		seen.add(given);
		if (!("from" in given)) {
			given.forEach(visit);
			return;
		}
		const { from } = given;
		if (from.kind === "definition") places.add(pathKey(from.at));
		if (from.kind === "worked") Object.values(from.inputs).forEach(visit);
	};
	for (const { paper: document } of documents)
		for (const key of document.sections.flatMap(({ blocks }) => keysIn(blocks))) {
			const value = findings.index.byKey.get(key);
			if (value !== undefined) visit(value);
		}
	return { text: flat(documents.map(({ paper: document }) => renderText(document)).join("\n")), places };
};

const flat = (text: string): string => text.toLowerCase().replaceAll(/[^\p{L}\p{N}.]+/gu, " ");

const starters = STARTERS.map((starter) => {
	const findings = findingsOf(starter);
	const papers = (["regulator", "regulator-appendix", "answers"] as const).map((paper) =>
		printedOf(findings, paper),
	);
	return { starter, papers, tree: starterTree(starter), leaves: leavesOf(starterTree(starter)) };
});

const isReached = ({ path, value }: Leaf, tree: unknown, { text, places }: Printed): boolean =>
	path.some((_, i) => places.has(pathKey(path.slice(0, i + 1)))) ||
	(typeof value === "string" && text.includes(flat(value).trim())) ||
	isListed(path, value, tree, text);

/** Under the name of its entry, with its own; an item of a list of bare values goes by the name of the list. */
const isListed = (path: Path, value: unknown, tree: unknown, text: string): boolean => {
	const own = typeof path.at(-1) === "number" ? path.slice(0, -1) : path;
	const entry = flat(namesOf(own.slice(0, -1), tree)).trim();
	return text.includes(entry) && text.includes(flat(`${String(own.at(-1))}: ${String(value)}`).trim());
};

describe("a field that a starter shows", () => {
	it("reaches the agency's file or the presenter, wherever it is written", () => {
		const unreached = starters.flatMap(({ starter, papers, tree, leaves }) =>
			leaves
				.filter((leaf) => forTheFile.some(({ pattern }) => isOfField(leaf, pattern)))
				.filter(({ path }) => mayAppear("regulator", path, tree))
				.filter((leaf) => !papers.some((printed) => isReached(leaf, tree, printed)))
				.map(({ path }) => `${starter}: ${pathKey(path)}`),
		);
		expect(unreached).toEqual([]);
	});
});

/** The definition with a mark in a field, in the first entry of each list on the way. */
const withMark = (tree: unknown, pattern: string, mark: string): void => {
	let node = tree as Record<string | number, unknown>;
	const steps = pattern.split(".").flatMap((step) => (step.endsWith("[]") ? [step.slice(0, -2), 0] : [step]));
	steps.forEach((step, i) => {
		if (i === steps.length - 1) node[step] = mark;
		else {
			const child = node[step];
			if (typeof child !== "object" || child === null)
				node[step] = typeof steps[i + 1] === "number" ? [] : {};
			node = node[step] as Record<string | number, unknown>;
		}
	});
};

describe("a field that no starter shows", () => {
	const shown = starters.flatMap(({ leaves }) => leaves);
	const others = forTheFile.filter(({ pattern }) => !shown.some((leaf) => isOfField(leaf, pattern)));
	const tree = structuredClone(starterTree("horizontal"));
	for (const [i, { pattern }] of others.entries()) withMark(tree, pattern, `mark-${i}-of-field`);
	const findings: Findings = { ...findingsOf("horizontal"), written: tree };
	const printed = (["regulator", "regulator-appendix", "answers"] as const).map((paper) =>
		printedOf(findings, paper),
	);
	const words = new Set(
		printed.flatMap(({ text }) => text.split(" mark ").map((rest) => rest.split(" ")[0])),
	);

	it.each(
		others
			.filter(({ pattern }) => !pattern.startsWith("community."))
			.map(({ pattern }) => [pattern] as const),
	)("%s is printed as it is written", (pattern) => {
		expect(words).toContain(String(others.findIndex((other) => other.pattern === pattern)));
	});
});

it("an answer to the public is printed for the presenter, whichever question it answers", () => {
	const asked = facts.flatMap(({ pattern }) => (pattern.startsWith("community.") ? [pattern.slice(10)] : []));
	const findings = findingsOf("horizontal");
	const community = Object.fromEntries(asked.map((question, i) => [question, `Mark ${i} of answers.`]));
	const { text } = printedOf({ ...findings, well: { ...findings.well, community } }, "answers");
	expect(asked.length).toBeGreaterThan(20);
	expect(asked.filter((_, i) => !text.includes(`mark ${i} of answers.`))).toEqual([]);
});

it("there is a field for each of the definition's topics", () => {
	const topics = new Set(facts.map(({ pattern }) => pattern.split(/[.[]/u, 1)[0]));
	expect(facts.length).toBeGreaterThan(550);
	expect(topics.size).toBeGreaterThan(14);
});
