import { describe, expect, it } from "vitest";
import { LANGUAGES, type Paper } from "../../src/document/document.ts";
import { wellDrawings } from "../../src/paper/parts/figures.ts";
import { composePapers, type PaperRequest } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";

/** The planned starter with the water that has to be protected deeper than its surface shoe, by some 85 ft. */
const short = () => {
	const { findings, diagnostics } = understandText(
		starterText("horizontal").replace("base: 984 ft below ground", "base: 1244 ft below ground"),
	);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings;
};
const print = (findings: ReturnType<typeof short>, paper: Paper, language: PaperRequest["language"] = "en") =>
	composePapers(findings, [{ paper, language, units: "field" }])
		.documents.map((each) => renderText(each.paper))
		.join("\n")
		.replaceAll(/[\s\u00a0\u202f]+/gu, " ");

describe("a surface shoe short of protected water", () => {
	const findings = short();

	it.each(["landowner", "handout", "answers"] as const)(
		"is named in the %s as not shown, whoever reads it",
		(paper) => {
			expect(print(findings, paper)).toContain("they are not shown yet. Ask us about them:");
			expect(print(findings, paper)).toMatch(
				paper === "answers" ? /85 ft|at least 50 ft/ : /at least 50 ft .*below the base of protected water/,
			);
			expect(print(findings, paper, "es")).toContain("todavía no está demostrado");
			expect(print(findingsOf("horizontal"), paper)).not.toContain("not shown yet. Ask us");
		},
	);

	it("is judged: the string that has to cover the water, not the one that happens to", () => {
		expect(findings.results.isolation).not.toHaveProperty("protecting_string");
		const open = findings.judgement.findings.filter(({ verdict }) => verdict === "not met");
		expect(open.map(({ cite }) => cite.rule)).toContain("practice.protected-water.shoe");
		const shoe = open.find(({ cite }) => cite.rule === "practice.protected-water.shoe");
		expect(shoe?.subject).toBe("surface");
		expect(shoe?.tell).toContain("landowner");
	});

	it.each(LANGUAGES)("takes every word of protection out of the public papers (%s)", (language) => {
		const [packet, handout] = [print(findings, "landowner", language), print(findings, "handout", language)];
		const said =
			language === "en"
				? [
						"The plan does not yet show that this water is protected.",
						"The plan does not yet show that the water is protected.",
					]
				: [
						"El plan todavía no muestra que esta agua quede protegida.",
						"El plan todavía no muestra que el agua quede protegida.",
					];
		expect(packet).toContain(said[0]);
		expect(handout).toContain(said[1]);
		expect(packet).toContain(
			language === "en"
				? "how deep the pipe that has to cover the water is set"
				: "a qué profundidad queda la tubería que debe cubrir el agua",
		);
		expect(`${packet} ${handout}`).not.toMatch(
			/deeper than the protected water|deeper than that water|más abajo que|baja .{1,12} más que esa agua/u,
		);
	});

	it("leaves the words where every check is met", () => {
		const found = findingsOf("horizontal");
		expect(print(found, "landowner")).toContain("deeper than the protected water");
		expect(print(found, "handout")).toContain("deeper than that water");
		expect(print(found, "landowner")).not.toContain("does not yet show");
	});
});

describe("an open check on the string that covers the water", () => {
	const { findings } = understandText(
		starterText("horizontal").replace(
			"from: surface\n          to: 885 ft",
			"from: 300 ft\n          to: 885 ft",
		),
	);
	if (findings === undefined) throw new Error("the changed plan does not read");

	it("takes the distance that would show it as protection out of the drawings", () => {
		const distance = "results.isolation.shoe_below_protected_water";
		const said = (of: typeof findings & object): string =>
			wellDrawings(of, "field", "en", "landowner")
				.filter(({ id }) => id.includes("close-up"))
				.map((drawing) => JSON.stringify(drawing))
				.join("\n");
		expect(said(findingsOf("horizontal"))).toContain(distance);
		expect(said(findings)).not.toContain(distance);
	});
});
