import { describe, expect, it } from "vitest";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { findingsText } from "../../src/cli/findings-text.ts";
import { PAPERS } from "../../src/document/document.ts";
import type { Reader } from "../../src/messages/print.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { EVERY_FORMULA } from "../../src/rules/every-formula.ts";
import { composeOnce } from "../run/compose-once.ts";
import { sampleOf } from "../run/sample.ts";
import { starterText, understandText } from "../starters.ts";
import { told } from "../told.ts";

/* A definition written in metric units is answered in metric ones, on the terminal and in every paper. */

/** A number with a unit of the field. */
const FIELD = /\d[\d.,]*[\s\u00a0](?:ft|psi|bbl|lb\/gal|ppg|lbf|lbm|lb\/ft|gal|hp|mi|°F)(?![\p{L}/])/gu;

/** A limit in the unit that its text is written in, and in metric beside it: `≥ 1,000 ft (304.8 m)`. */
const LIMIT_IN_BOTH = /[≥≤<>]\s[\d,.]+\s(?:ft|psi)\s\([\d,.]+\s(?:m|MPa)\)/gu;

/** What is quoted in its own units: how the published formulas round, and from which temperature steel is derated. */
const QUOTED = ["rounded to 10 psi and 1,000 lbf", "above 70 °F", "in 0 °F"];

/** Notes of the list of sources, and what a formula says of its own. */
const PUBLISHED = [
	...[...EVERY_FORMULA.values()].flatMap(({ expression, source }) => [expression, source.at ?? expression]),
	...Object.values(loadCatalog().value?.sources ?? {}).map(({ note, title }) => note ?? title),
];

const METRIC: Reader = { language: "en", units: "metric" };

const CHANGED: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
	"as it ships": [],
	"with a shallow surface shoe": [
		["to: 302 m, washout", "to: 262 m, washout"],
		["from: 190 m, to: 298 m", "from: 190 m, to: 258 m"],
		["from: surface, to: 298 m }", "from: surface, to: 258 m }"],
		["{ from: 250 m, to: 298 m", "{ from: 250 m, to: 258 m"],
	],
	"with a light mud": [
		["density: 1130 kg/m3, plastic_viscosity: 13 cP", "density: 1050 kg/m3, plastic_viscosity: 13 cP"],
	],
	"with a short wait on cement": [["wait_on_cement: 24 hr", "wait_on_cement: 4 hr"]],
	"with a high treating pressure": [
		["maximum_treating_pressure: 25 MPa", "maximum_treating_pressure: 60 MPa"],
	],
};

/** Crew sheets that are read in a run of every change: some by the seed. */
const jobsRead = (well: Parameters<typeof jobsOfWell>[0]): readonly { readonly job: string }[] =>
	sampleOf(
		"metric sheets",
		jobsOfWell(well).map((job) => ({ job: jobName(job) })),
		4,
	);

describe("a metric definition", () => {
	it.each(Object.entries(CHANGED))("%s is answered in metric", (_, edits) => {
		const text = edits.reduce((left, [from, to]) => {
			expect(left).toContain(from);
			return left.replace(from, to);
		}, starterText("vertical-metric"));
		const { findings, diagnostics } = understandText(text);
		if (findings === undefined)
			throw new Error(diagnostics.map(({ code, what }) => `${code} ${told(what)}`).join("\n"));
		const terminal = findingsText("well.yaml", findings, { width: 100, reader: METRIC, all: true });
		const papers = composeOnce(
			findings,
			PAPERS.flatMap((paper) =>
				// The crew's sheet is one a job.
				(paper === "crew" ? jobsRead(findings.well) : [{}]).map(
					(reader) => ({ paper, language: "en", units: "metric", ...reader }) as const,
				),
			),
		);
		// A rule's requirement is quoted as the law has it; what was found, required and missing beside it is metric.
		const requirements = findings.judgement.findings.flatMap(({ requirement, cite }) => [
			told(requirement),
			told(cite.citation),
		]);
		const said = [terminal, ...papers.documents.map(({ paper }) => renderText(paper))].map((words) =>
			[...requirements, ...QUOTED, ...PUBLISHED]
				.sort((a, b) => b.length - a.length)
				.reduce((left, each) => left.replaceAll(each, "·"), words)
				.replaceAll(LIMIT_IN_BOTH, "·"),
		);
		expect(said.flatMap((words) => words.split("\n").filter((line) => line.search(FIELD) >= 0))).toEqual([]);
	});
});
