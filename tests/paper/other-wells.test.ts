import { describe, expect, it } from "vitest";
import { LANGUAGES, type Paper } from "../../src/document/document.ts";
import { composePapers, drawings, type PaperRequest } from "../../src/pipeline.ts";
import { renderSvg } from "../../src/render/svg/render-svg.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";

/** The as-built starter with another well in place of its pad's second one. */
const withWell = (entry: string) => {
	const { findings, diagnostics } = understandText(
		starterText("horizontal-as-built").replace(/ {4}- id: ow-2\n(?: {6}.*\n)+/u, `    - { ${entry} }\n`),
	);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings;
};
const print = (
	findings: ReturnType<typeof withWell>,
	paper: Paper,
	language: PaperRequest["language"] = "en",
) =>
	composePapers(findings, [{ paper, language, units: "field" }])
		.documents.map((each) => renderText(each.paper))
		.join("\n")
		.replaceAll(/[\s\u00a0\u202f]+/gu, " ");

const PLACE = "id: ow-2, name: Bruin 5, status: plugged 1931, latitude: 31.941000, longitude: -99.620700";

describe("an old well within reach of the fractures, without evidence", () => {
	const findings = withWell(
		`${PLACE}, total_depth: 9000 ft TVD, position_uncertainty: 100 ft, path: { vertical: true }`,
	);

	it("is on page one, in the answers and in the landowner's words", () => {
		const regulator = print(findings, "regulator");
		expect(regulator.indexOf("Bruin 5 is as deep as the fractures")).toBeGreaterThan(0);
		expect(regulator.indexOf("Bruin 5 is as deep as the fractures")).toBeLessThan(
			regulator.indexOf("Key depths"),
		);
		expect(print(findings, "answers")).toContain(
			"The fractures might reach it and nothing shows that it is shut off there.",
		);
		expect(print(findings, "landowner")).toMatch(
			/Bruin 5 \(plugged 1931\)\. Our well comes as near as about .* Our cracks might reach it\. Nothing we hold shows that it is sealed there\./u,
		);
		expect(print(findings, "handout")).toContain("our cracks might reach it");
	});
});

describe("a well whose path nobody gives", () => {
	const findings = withWell(`${PLACE}, total_depth: 9000 ft TVD`);
	it.each(LANGUAGES)("is not evaluated, and every paper says so (%s)", (language) => {
		const said = (en: string, es: string) => (language === "en" ? en : es);
		expect(print(findings, "regulator", language)).toContain(said("Not evaluated", "No evaluado"));
		expect(print(findings, "landowner", language)).toContain(
			said("We do not know where this hole goes.", "No sabemos por dónde va ese agujero."),
		);
		expect(print(findings, "answers", language)).toContain(
			said("path not known, not evaluated", "trayectoria desconocida, no evaluado"),
		);
		const plan = drawings(findings, "field", language).find(({ drawing }) => drawing.id === "plan");
		expect(plan && renderSvg(plan.drawing)).toContain(
			said("path not known: not evaluated", "trayectoria desconocida: no evaluado"),
		);
	});
});

it("a sound pair is told with its distance and without a warning", () => {
	const packet = print(findingsOf("horizontal-as-built"), "landowner");
	expect(packet).toMatch(/Tamarack Draw 8-22H \(drilled\)\. Our well comes as near as about 8\d feet to it/u);
	expect(packet).not.toContain("too near for how well");
	expect(packet).not.toMatch(/\b0 ft from the well path|\b1 ft from the well path/u);
});

it("distances carry no deduction, and one sentence says so", () => {
	const regulator = print(findingsOf("horizontal-as-built"), "regulator");
	expect(regulator).toContain("no uncertainty is deducted from them");
	expect(
		Object.keys(findingsOf("horizontal-as-built").results.isolation.offset_wells[0] ?? {}),
	).not.toContain("in_space_at_least");
});
