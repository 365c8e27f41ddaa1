import { describe, expect, it } from "vitest";
import { isKnown } from "../../src/cite/known.ts";
import { definitionSchema } from "../../src/definition/definition.ts";
import { everyField } from "../../src/definition/schema-walk.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { starterTree } from "../definition/starter-trees.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";

/*
 * What is asked for the people on location reaches them. Driven by the schema: a field that is added for the crew, or for
 * the crew and the presenter, and that no paper of theirs prints, fails here.
 */

const FOR = ["crew", "answers"];

/** Fields that steer the tool: which packs there are is what they say. */
const SETTINGS: ReadonlySet<string> = new Set(["safety.jobs"]);

/** Said only where another well of the pad is worked on meanwhile; the starter has none, and the last test adds one. */
const MEANWHILE: ReadonlySet<string> = new Set([
	"site.pad.other_wells[].work",
	"site.pad.other_wells[].agreed_with",
]);

const fields = everyField(definitionSchema).filter(
	({ leaf, meta, pattern }) =>
		leaf &&
		meta?.papers.every((paper) => FOR.includes(paper)) === true &&
		!SETTINGS.has(pattern) &&
		!MEANWHILE.has(pattern),
);

const findings = findingsOf("horizontal");
const documents: readonly PaperDocument[] = [...jobsOfWell(findings.well).map(jobName), undefined].flatMap(
	(job) =>
		composePapers(findings, [
			{
				paper: job === undefined ? "answers" : "crew",
				language: "en",
				units: "field",
				...(job === undefined ? {} : { job }),
			},
		]).documents.map(({ paper }) => paper),
);

/** Every value and text of the starter, under the pattern of its field. */
const written = new Map<string, { readonly path: Path; readonly value: unknown }[]>();
const collect = (node: unknown, path: Path, pattern: string): void => {
	if (typeof node !== "object" || node === null) {
		const there = written.get(pattern);
		if (there === undefined) written.set(pattern, [{ path, value: node }]);
		else there.push({ path, value: node });
		return;
	}
	for (const [key, child] of Object.entries(node))
		collect(
			child,
			[...path, Array.isArray(node) ? Number(key) : key],
			Array.isArray(node) ? `${pattern}[]` : pattern === "" ? key : `${pattern}.${key}`,
		);
};
collect(starterTree("horizontal"), [], "");

const printed = documents.map(renderText).join("\n").replaceAll(/\s+/gu, " ");
const keys = new Set<string>();
const gather = (node: unknown): void => {
	if (typeof node !== "object" || node === null) return;
	if ("kind" in node && node.kind === "quantity" && "key" in node && typeof node.key === "string")
		keys.add(node.key);
	for (const child of Object.values(node)) gather(child);
};
gather(documents);
const places = new Set(
	[...keys].flatMap((key) => {
		const value = findings.index.byKey.get(key);
		return isKnown(value) && value.from.kind === "definition" ? [pathKey(value.from.at)] : [];
	}),
);

describe("what is asked for the people on location", () => {
	it("is printed of another well of the pad that is worked on meanwhile", () => {
		const { findings: busy } = understandText(
			starterText("horizontal").replace(
				"4-16H, status: planned }",
				"4-16H, status: planned, work: setting of the conductor, agreed_with: foreman of the other crew }",
			),
		);
		if (busy === undefined) throw new Error("the changed starter has errors");
		const [sheet] = composePapers(busy, [
			{ paper: "crew", language: "en", units: "field", job: "pumping" },
		]).documents;
		const text = sheet === undefined ? "" : renderText(sheet.paper).replaceAll(/\s+/gu, " ");
		expect(text).toContain("setting of the conductor");
		expect(text).toContain("foreman of the other crew");
	});

	it.each(fields.map(({ pattern, meta }) => [pattern, meta] as const))(
		"%s is printed for them",
		(pattern, meta) => {
			const found = written.get(pattern) ?? written.get(`${pattern}[]`) ?? [];
			expect(found.length, "the starter does not show the field").toBeGreaterThan(0);
			for (const { path, value } of found)
				if (meta?.dimension === undefined) expect(printed, pathKey(path)).toContain(String(value).trim());
				else expect(places, pathKey(path)).toContain(pathKey(path));
		},
	);

	it("there are such fields", () => {
		expect(fields.length).toBeGreaterThan(25);
	});
});
