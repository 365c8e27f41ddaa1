import { describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import { isKnown, isTable, type Known } from "../../src/cite/known.ts";
import type { Block } from "../../src/document/blocks.ts";
import { LANGUAGES, PAPERS, type Paper, type PaperDocument } from "../../src/document/document.ts";
import type { Shape } from "../../src/document/shapes.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { keysIn } from "../../src/paper/places.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter, starterText, understandText } from "../starters.ts";
import { told } from "../told.ts";

/*
 *  What a whole set of papers must do, and where each of it is tested when not here.
 *
 *  1   equal keys are equal values in every paper, and each is found in its PDF      tests/agreement.test.ts
 *  2   an input that is taken out is told, and no paper prints a guess               here
 *  3   the ladder of pressures, each inequality broken in turn                       tests/calc/stimulation/pressure-ladder.test.ts
 *  4   the published vectors of the grade formula                                    tests/readability.test.ts
 *  5   sums of truck loads                                                           here, tests/calc/logistics
 *  6   the public's papers: no depth from the rig floor, no private field, no names  here, tests/privacy.test.ts
 *  7   title, language, headings, heads of tables: tests/render/structure.test.ts; text alternatives: here. Words of
 *      another language inside a paper (an operator's own, a rule's) are not tagged as such: a document has one language.
 *  8   contrast and least line weights: tests/drawing; a scan at 200 dpi is looked at, not tested: no reader of print is here.
 *  9   the numbers sheet on one page in Spanish                                      tests/paper/budgets.test.ts
 *  10  the grade of the public's papers, by section                                  tests/readability.test.ts
 *  11  the depth ruler in proportion                                                 tests/drawing/depth-scale.test.ts
 *  12  fractures only with their model's name, and marked as an illustration         here
 *  13  a revision lists the derived numbers that moved: a comparison of two definitions is not made yet.
 *  14  set points of gas alarms only with who set them                               here
 *  15  loads and trips are never interchanged                                        here
 */

const documentsOf = (
	findings: ReturnType<typeof findingsOf>,
	paper: Paper,
	language: PaperDocument["language"] = "en",
): readonly PaperDocument[] =>
	(paper === "crew" ? jobsOfWell(findings.well).map(jobName) : [undefined]).flatMap((job) =>
		composeOnce(findings, [
			{ paper, language, units: "field", ...(job === undefined ? {} : { job }) },
		]).documents.map(({ paper: document }) => document),
	);

const blocksIn = (blocks: readonly Block[]): Block[] =>
	blocks.flatMap((block) => [
		block,
		...(block.kind === "callout" || block.kind === "columns" ? blocksIn(block.blocks) : []),
		...(block.kind === "list" ? block.items.flatMap(blocksIn) : []),
		...(block.kind === "beside" ? blocksIn([...block.left, ...block.right]) : []),
	]);
const allBlocks = (document: PaperDocument): Block[] =>
	blocksIn(document.sections.flatMap(({ blocks }) => blocks));
const textOf = (document: PaperDocument): string => renderText(document).replaceAll(/\s+/gu, " ");

const without = (paths: readonly string[], jurisdictions: readonly string[] = ["us-tx"]) => {
	const document = parseDocument(starterText("horizontal"));
	document.setIn(["site", "jurisdictions"], jurisdictions);
	for (const path of paths) {
		const removed = document.deleteIn(
			path.split(".").map((step) => (/^\d+$/u.test(step) ? Number(step) : step)),
		);
		if (!removed) throw new Error(`the starter has no ${path}`);
	}
	return understandText(document.toString());
};

/** A value rests on an assumption if anything that it was worked from does. */
const restsOn = (known: Known, seen = new Set<Known>()): string[] => {
	if (seen.has(known)) return [];
	seen.add(known);
	if (known.from.kind === "assumed") return [known.from.id];
	if (known.from.kind !== "worked") return [];
	return Object.values(known.from.inputs).flatMap((input) =>
		[input].flat().flatMap((each) => (isKnown(each) ? restsOn(each, seen) : [])),
	);
};

describe("2: an input that is taken out", () => {
	it.each([
		"geology.protected_water.base",
		"site.depth_datum",
		"casing.1.pipe.0.weight",
		"stimulation.base_fluid",
	])("%s: without it there is no paper, and the fault names it", (path) => {
		const { findings, diagnostics } = without([path]);
		expect(findings).toBeUndefined();
		const last = path.split(".").at(-1) ?? "";
		expect(diagnostics.some(({ what, at }) => `${told(what)} ${at.path.join(".")}`.includes(last))).toBe(
			true,
		);
	});

	const TX = ["us-tx"];
	it.each<readonly [string, readonly string[], readonly string[]]>([
		["well.api_number", [], TX],
		["geology.protected_water.reference", [], TX],
		["stimulation.limits.maximum_treating_pressure", [], TX],
		["stimulation.additives.0.ingredients.0.cas", [], TX],
		["stimulation.annuli.0.stop_above", [], TX],
		// No rule of Texas reads an absence; one of Pennsylvania does, where no other well is listed.
		["site.neighbors_complete", ["site.offset_wells"], ["us-pa"]],
	])("%s: is on the list of what is missing, in print", (path, besides, jurisdictions) => {
		const { findings } = without([path, ...besides], jurisdictions);
		const whole = without(besides, jurisdictions).findings;
		if (findings === undefined || whole === undefined) throw new Error(path);
		const before = whole.missing.map(({ what }) => told(what));
		const now = findings.missing.map(({ what }) => told(what)).filter((what) => !before.includes(what));
		expect(now.length, path).toBeGreaterThan(0);
		const [regulator] = documentsOf(findings, "regulator");
		const section = regulator?.sections.find(({ id }) => id === "summary");
		const cells = JSON.stringify(section?.blocks);
		// A cell begins with a capital.
		const asCell = (what: string): string =>
			JSON.stringify(what[0]?.toUpperCase() + what.slice(1)).slice(1, -1);
		for (const what of now) expect(cells, path).toContain(asCell(what));
	});

	it.each([
		"site.depth_datum.to_casing_hanger",
		"design_basis.design_factors.burst",
		"stimulation.pressure_model.near_wellbore",
		"stimulation.pressure_model.friction_reduction",
		"stimulation.stages.layout.plug_below_bottom_cluster",
		"logistics.water_by_pipeline",
	])("%s: what stands in for it is printed as assumed", (path) => {
		const { findings } = without([path]);
		if (findings === undefined) throw new Error(path);
		const before = findingsOf("horizontal").well.assumptions.map(({ id }) => id);
		const now = findings.well.assumptions.filter(({ id }) => !before.includes(id));
		expect(now.length, path).toBeGreaterThan(0);
		const printed = documentsOf(findings, "regulator-appendix").map(textOf).join("");
		for (const { what } of now) expect(printed, path).toContain(told(what).replaceAll(/\s+/gu, " "));
	});

	it.each([
		"stimulation.base_fluid.viscosity",
		"stimulation.pressure_model.net",
		"logistics.sand_truck",
		"site.neighbors.0.latitude",
	])("%s: what needed it is not worked, and the paper says so", (path) => {
		const { findings } = without([path]);
		if (findings === undefined) throw new Error(path);
		const before = JSON.stringify(findingsOf("horizontal").results.undetermined);
		const now = findings.results.undetermined.filter((entry) => !before.includes(JSON.stringify(entry)));
		expect(now.length, path).toBeGreaterThan(0);
		const because = told(now[0]?.because);
		expect(documentsOf(findings, "regulator-appendix").map(textOf).join("")).toContain(
			because.charAt(0).toUpperCase() + because.slice(1),
		);
	});

	it.each(["safety.person_in_charge", "stimulation.limits.relief_valve", "safety.radio_silence"])(
		"%s: a crew is told not to start, and no number stands there",
		(path) => {
			const { findings } = without([path]);
			if (findings === undefined) throw new Error(path);
			const unset = (of: ReturnType<typeof findingsOf>): number =>
				documentsOf(of, "crew")
					.flatMap(allBlocks)
					.flatMap((block) => (block.kind === "facts" ? block.items : []))
					.filter(({ value }) => value.kind === "unset").length;
			expect(unset(findings)).toBeGreaterThan(unset(findingsOf("horizontal")));
		},
	);

	it("agency.comments_until: the presenter reads that no last day is stated, and no day", () => {
		const { findings } = without(["agency.comments_until"]);
		if (findings === undefined) throw new Error("the starter has no last day for comments");
		const said = (of: ReturnType<typeof findingsOf>): string =>
			documentsOf(of, "answers").map(textOf).join("");
		expect(said(findingsOf("horizontal"))).toContain("until May 29, 2026.");
		expect(said(findings)).toContain("No last day for comments is stated.");
		expect(said(findings)).not.toContain("May 29, 2026");
	});

	it.each(["site.pad.area", "community.dust"])(
		"%s: what neighbors ask about it is on the list of open questions",
		(path) => {
			const { findings } = without([path]);
			if (findings === undefined) throw new Error(path);
			const open = (of: ReturnType<typeof findingsOf>): number =>
				documentsOf(of, "answers")
					.flatMap(({ sections }) => sections.filter(({ id }) => id === "open"))
					.flatMap(({ blocks }) => blocks)
					.flatMap((block) => (block.kind === "table" ? block.rows : [])).length;
			const lost = (of: ReturnType<typeof findingsOf>): number =>
				documentsOf(of, "answers").map(textOf).join("").length;
			expect(
				open(findings) > open(findingsOf("horizontal")) || lost(findings) < lost(findingsOf("horizontal")),
			).toBe(true);
		},
	);
});

describe.each(STARTERS)("the papers of %s", (starter: Starter) => {
	const findings = findingsOf(starter);

	it("2: print no value that rests on an assumption which is not listed", () => {
		const listed = new Set(findings.well.assumptions.map(({ id }) => id));
		let printed = 0;
		let assumed = 0;
		for (const paper of PAPERS)
			for (const document of documentsOf(findings, paper))
				for (const key of document.sections.flatMap(({ blocks }) => keysIn(blocks))) {
					const value = findings.index.byKey.get(key);
					if (value === undefined || isTable(value)) continue;
					printed += 1;
					for (const id of restsOn(value)) {
						assumed += 1;
						expect(listed, key).toContain(id);
					}
				}
		expect(printed).toBeGreaterThan(500);
		expect(assumed).toBeGreaterThan(0);
	});

	it("5: loads add up to their total, and each is a whole truck", () => {
		const logistics = findings.results.logistics;
		if (logistics?.total_loads === undefined) throw new Error("the starter counts no loads");
		const parts = [
			logistics.water_loads,
			logistics.proppant_loads,
			logistics.cement_loads,
			logistics.pipe_loads,
			logistics.equipment_loads,
			logistics.returned_water_loads,
			logistics.other_loads,
		].flatMap((load) => (load === undefined ? [] : [load.value as number]));
		for (const load of parts) expect(Number.isInteger(load)).toBe(true);
		expect(logistics.total_loads.value).toBe(parts.reduce((sum, load) => sum + load, 0));
	});

	it.each(["landowner", "handout"] as const)("6: the %s tells depth from the ground alone", (paper) => {
		for (const language of LANGUAGES)
			for (const document of documentsOf(findings, paper, language)) {
				const blocks = document.sections.flatMap((section) => section.blocks);
				let told = 0;
				for (const key of keysIn(blocks)) {
					const value = findings.index.byKey.get(key);
					if (value === undefined || isTable(value)) continue;
					told += 1;
					expect(["measured-depth", "true-vertical-depth"], key).not.toContain(value.dimension);
				}
				expect(told).toBeGreaterThan(5);
				const printed = textOf(document);
				expect(printed).not.toMatch(/\b(?:RKB|KB|MD|TVD)\b/u);
				if (findings.well.datum.name !== "ground level")
					expect(printed).not.toContain(findings.well.datum.name);
			}
	});

	it("6: no person is named to the public but as a contact of theirs", () => {
		const { identity, safety, neighbors } = findings.well;
		const persons = [
			identity.prepared_by?.name,
			identity.technical_contact?.name,
			safety?.person_in_charge,
			...neighbors.map(({ owner }) => owner),
			...(identity.revisions ?? []).map(({ by }) => by),
		].flatMap((name) => (name === undefined ? [] : [name.replace(/\s*\(.*\)$/u, "")]));
		expect(persons.length).toBeGreaterThan(0);
		for (const paper of ["landowner", "handout"] as const)
			for (const language of LANGUAGES)
				for (const document of documentsOf(findings, paper, language))
					for (const person of persons) expect(JSON.stringify(document), person).not.toContain(person);
	});

	it("7: every figure of every paper has words for a reader who cannot see it", () => {
		let figures = 0;
		for (const language of LANGUAGES)
			for (const paper of PAPERS)
				for (const document of documentsOf(findings, paper, language))
					for (const block of allBlocks(document))
						if (block.kind === "figure") {
							figures += 1;
							const { alternative } = block.drawing;
							expect(alternative.split(" ").length, `${paper} ${block.drawing.id}`).toBeGreaterThan(8);
							expect(alternative).not.toMatch(/\{\w+\}|undefined/u);
						}
		expect(figures).toBeGreaterThan(10);
	});

	/** The public is told the range, by models and as no promise; nobody but the regulator is given a model by itself. */
	const TELL_CRACKS: readonly Paper[] = [
		"regulator",
		"regulator-appendix",
		"landowner",
		"handout",
		"answers",
		"slides",
		"notes",
	];

	it("12: a fracture's size stands only where models are named, marked as an illustration", () => {
		const isFracture = (key: string): boolean =>
			/^results\.stimulation\.fractures\..*(?:height|half_length|width|top)/u.test(key);
		for (const paper of PAPERS)
			for (const document of documentsOf(findings, paper))
				for (const { blocks } of document.sections)
					for (const block of blocks) {
						if (block.kind === "figure") {
							if (!keysOfShapes(block.drawing.shapes).some(isFracture)) continue;
							expect(TELL_CRACKS).toContain(paper);
							expect(block.drawing.scale).toMatch(/models: a range, not a promise/u);
							continue;
						}
						if (!keysIn([block]).some(isFracture)) continue;
						expect(TELL_CRACKS).toContain(paper);
						const before = JSON.stringify(blocks.slice(0, blocks.indexOf(block) + 1));
						expect(before).toMatch(/illustrat|not a promise/iu);
					}
	});

	it("14: the set point of a gas alarm stands with who set it", () => {
		const alarms = findings.well.safety?.gas_alarms ?? [];
		for (const alarm of alarms) expect(alarm.source).not.toBe("");
		const lines = documentsOf(findings, "crew")
			.flatMap((document) => renderText(document).split("\n"))
			.filter((line) => /^\W*Alarm: /u.test(line));
		for (const line of lines)
			expect(
				alarms.some(({ source }) => line.includes(source)),
				line,
			).toBe(true);
		for (const { gas } of alarms)
			expect(
				lines.some((line) => line.includes(gas)),
				gas,
			).toBe(true);
	});

	it("15: loads and trips are told apart: trips are twice the loads, and each word stands by its own key", () => {
		const logistics = findings.results.logistics;
		expect(logistics?.one_way_trips?.value).toBe(2 * Number(logistics?.total_loads?.value));
		let seen = 0;
		for (const paper of ["landowner", "handout", "answers"] as const)
			for (const document of documentsOf(findings, paper))
				for (const block of allBlocks(document)) {
					const runs =
						block.kind === "paragraph"
							? [block.children]
							: block.kind === "table"
								? block.rows.flatMap((row) =>
										Object.values(row.cells).flatMap((cell) => (cell.kind === "rich" ? [cell.children] : [])),
									)
								: [];
					for (const run of runs)
						for (const [i, inline] of run.entries()) {
							if (inline.kind !== "quantity") continue;
							const next = run[i + 1];
							const after = next?.kind === "text" ? next.text : "";
							if (inline.key === "results.logistics.total_loads") {
								seen += 1;
								expect(after).toMatch(/^ (?:truck )?loads\b/u);
							}
							if (inline.key === "results.logistics.one_way_trips") {
								seen += 1;
								expect(after).toMatch(/^ (?:one-way )?trips\b/u);
							}
						}
				}
		expect(seen).toBeGreaterThan(3);
	});
});

const keysOfShapes = (shapes: readonly Shape[]): string[] =>
	shapes.flatMap((shape) => {
		if (shape.kind === "group") return keysOfShapes(shape.children);
		return shape.kind === "text" && shape.key !== undefined ? [shape.key] : [];
	});
