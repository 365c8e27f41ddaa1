import { describe, expect, it } from "vitest";
import { definitionSchema } from "../../src/definition/definition.ts";
import { everyField } from "../../src/definition/schema-walk.ts";
import {
	LANGUAGES,
	PAPERS,
	type Paper,
	READER_PAPERS,
	type ReadBy,
	readBy,
	readerPaperOf,
} from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import {
	attachmentsOf,
	composePapers,
	drawings,
	type PaperRequest,
	renderEdition,
	renderTablesAsJson,
} from "../../src/pipeline.ts";
import { renderSvg } from "../../src/render/svg/render-svg.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { sampleOf } from "../run/sample.ts";
import { starterText, understandText } from "../starters.ts";

/*
 * An entry of every kind that can be narrowed is planted with words that stand nowhere else, kept from one paper at a time,
 * and looked for in everything that the paper's readers could be given.
 */

const PUBLIC: readonly ReadBy[] = ["regulator", "landowner", "handout", "answers"];

interface Plant {
	/** The field that narrows it. */
	readonly field: string;
	readonly papers: readonly Paper[];
	readonly words: readonly string[];
	readonly into: (text: string, narrowed: string) => string;
}

const before = (text: string, mark: string, line: string): string => {
	if (!text.includes(mark)) throw new Error(`the starter has no ${mark}`);
	return text.replace(mark, `${line}\n${mark}`);
};
const replaced = (text: string, pattern: RegExp, line: string): string => {
	if (!pattern.test(text)) throw new Error(`the starter has no ${pattern.source}`);
	return text.replace(pattern, line);
};

const PLANTS: readonly Plant[] = [
	{
		field: "site.neighbors[].papers",
		papers: PUBLIC,
		words: ["Zanthor"],
		into: (text, papers) =>
			["water well", "dwelling", "stream"].reduce(
				(so, kind, i) =>
					before(
						so,
						"  neighbors_complete: true",
						`    - { id: zan-${i}, kind: ${kind}, name: Zanthor ${kind}, latitude: 31.48${i}5, longitude: -98.7715, ${kind === "water well" ? "depth: 611 ft below ground, " : ""}papers: ${papers} }`,
					),
				text,
			),
	},
	{
		field: "site.offset_wells[].papers",
		papers: PUBLIC,
		words: ["Quorbex"],
		into: (text, papers) =>
			before(
				before(
					text,
					"  conditions: ",
					`    - { id: quo-1, name: Quorbex Deep 1, status: idle, latitude: 31.4795, longitude: -98.7695, total_depth: 9000 ft TVD, position_uncertainty: 60 ft, path: { vertical: true }, papers: ${papers} }`,
				),
				"  conditions: ",
				`    - { id: quo-2, name: Quorbex Lost 2, status: idle, latitude: 31.4790, longitude: -98.7690, total_depth: 9000 ft TVD, papers: ${papers} }`,
			),
	},
	{
		field: "stimulation.additives[].papers",
		papers: READER_PAPERS,
		words: ["Vintrol", "Sulphenyl", "Morvic"],
		into: (text, papers) =>
			before(
				text,
				"    - id: b-2",
				`    - { id: vin-1, name: Vintrol 9, purpose: Vintrol purpose, supplier: Vintrol supply, rate: 0.3 gal/1000gal, density: 8.8 ppg, handling: Vintrol gloves, ingredients: [{ name: Sulphenyl oxide, cas: 7732-18-5, max_share: 60 % }, { name: Morvic acid, cas: 77-92-9, max_share: 30 % }], papers: ${papers} }`,
			),
	},
	{
		field: "safety.contacts[].papers",
		papers: READER_PAPERS,
		words: ["Ombrecht"],
		into: (text, papers) =>
			before(
				text,
				"  muster_points:",
				`    - { role: Ombrecht desk, name: R. Ombrecht, phone: 555-0999, papers: ${papers} }`,
			),
	},
	{
		field: "well.contractors[].papers",
		papers: PUBLIC,
		words: ["Yardlow"],
		into: (text, papers) =>
			before(
				text,
				"    - { does: drilling, name: Tern Drilling (fictional) }",
				`    - { does: Yardlow work, name: Yardlow Company, papers: ${papers} }`,
			),
	},
	...(["prepared_by", "technical_contact"] as const).map(
		(field): Plant => ({
			field: `well.${field}.papers`,
			papers: ["regulator"],
			words: ["Hjelmqvist"],
			into: (text, papers) =>
				replaced(
					text,
					new RegExp(`^ {2}${field}: .*$`, "mu"),
					`  ${field}: { name: T. Hjelmqvist, role: Hjelmqvist lead, phone: 555-0998${papers === "[]" ? "" : `, papers: ${papers}`} }`,
				),
		}),
	),
];

/** The starter with every plant kept from one paper; from none where no paper is named. */
const planted = (from?: Paper) => {
	const text = PLANTS.reduce((so, { papers, into }) => {
		const left = papers.filter((paper) => from === undefined || paper !== readBy(from));
		// A person goes to the regulator alone, so that it can be kept only from the others, who never see it.
		return into(so, `[${(left.length === 0 ? papers : left).join(", ")}]`);
	}, starterText("horizontal"));
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings;
};

/** Crew packs of a run of every change: pumping, which has most of what can be narrowed, and some others by the seed. */
const packsOf = (well: ReturnType<typeof planted>["well"]): readonly string[] => {
	const jobs = jobsOfWell(well).map(jobName);
	return [...new Set(["pumping", ...sampleOf("narrowed packs", jobs, 3)])];
};

/** Everything that readers of a paper could be given: text, tables, HTML, drawings, and the files inside. */
const outputs = async (findings: ReturnType<typeof planted>, paper: Paper): Promise<string> => {
	const jobs = paper === "crew" ? packsOf(findings.well) : [undefined];
	const languages: readonly PaperRequest["language"][] =
		paper === "crew" ? ["en"] : sampleOf(`narrowed ${paper}`, LANGUAGES, 1);
	const parts: string[] = [];
	for (const language of languages) {
		for (const job of jobs)
			for (const { paper: document } of composePapers(findings, [
				{ paper, language, units: "field", ...(job === undefined ? {} : { job }) },
			]).documents) {
				parts.push(renderText(document), await renderTablesAsJson(document), await renderEdition(document));
				for (const { bytes } of attachmentsOf(findings, document)) parts.push(Buffer.from(bytes).toString());
			}
		for (const { drawing } of drawings(findings, "field", language, paper))
			parts.push(renderSvg(drawing), drawing.alternative, JSON.stringify(drawing.undrawn ?? []));
	}
	return parts.join("\n");
};

describe("what `papers:` keeps from a reader", () => {
	it("is tested for every kind of entry that can be narrowed", () => {
		const narrowable = everyField(definitionSchema)
			.map(({ pattern }) => pattern)
			.filter((pattern) => pattern.endsWith(".papers"));
		expect(narrowable.length).toBeGreaterThan(4);
		expect(PLANTS.map(({ field }) => field).sort()).toEqual([...new Set(narrowable)].sort());
	});

	it("is there where nothing keeps it: what is looked for can be found", async () => {
		const findings = planted();
		const all = (await Promise.all(PAPERS.map((paper) => outputs(findings, paper)))).join("\n");
		for (const { field, words } of PLANTS)
			for (const word of words) expect(all.includes(word), `${field}: ${word}`).toBe(true);
	}, 240_000);

	it.each(PAPERS)(
		"is in nothing that the readers of the %s paper are given, the drawings among them",
		async (paper) => {
			const printed = await outputs(planted(readerPaperOf(paper)), paper);
			expect(printed.length).toBeGreaterThan(paper === "transmittal" ? 2000 : 10_000);
			const leaked = PLANTS.flatMap(({ papers, words }) =>
				readBy(paper) === "regulator" && papers.length === 1
					? []
					: words.filter((word) => printed.includes(word)),
			);
			expect([...new Set(leaked)]).toEqual([]);
		},
		240_000,
	);
});
