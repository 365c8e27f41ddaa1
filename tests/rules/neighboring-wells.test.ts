import { describe, expect, test } from "vitest";
import { minimumCurvaturePath } from "../../src/calc/trajectory/path.ts";
import { longestInterval } from "../../src/calc/trajectory/path-summary.ts";
import { stopsOf, toldIn } from "../../src/rules/finding.ts";
import { given, stationTable } from "../calc/given.ts";
import { starterText, understandStarter, understandText } from "../starters.ts";
import { told } from "./told.ts";

const AS_BUILT = starterText("horizontal-as-built");
const PLACE =
	"id: ow-2, name: Tamarack Draw 8-22H, status: drilled, latitude: 31.927480, longitude: -99.612700";
const RADIUS = "uncertainty: { radius: 105 ft, confidence: 95 %, source: a survey }";
const BESIDE = `${PLACE}, total_depth: 8004 ft TVD, path: { vertical: true, ${RADIUS} }`;

/** Findings of one practice rule on the pad's other well, its entry written anew. */
const findings = (text: string) => {
	const { findings: found, diagnostics } = understandText(text);
	if (found === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return found.judgement.findings.map(told);
};
const on = (entry: string, rule: string, text = AS_BUILT) => {
	const edited = text.replace(/ {4}- id: ow-2\n(?: {6}.*\n)+/u, `    - { ${entry} }\n`);
	const found = findings(edited).find(
		({ cite, subject }) =>
			cite.rule === `practice.neighboring-wells.${rule}` && subject === "Tamarack Draw 8-22H",
	);
	if (found === undefined) throw new Error("no finding");
	return { ...found, because: found.because.replaceAll(/[\u00a0\u202f]/gu, " ") };
};

describe("separation from another well", () => {
	test("of the starters is met everywhere", () => {
		for (const starter of ["horizontal", "horizontal-as-built"] as const) {
			const found = understandStarter(starter).findings?.judgement.findings.map(told) ?? [];
			const own = found.filter(({ cite }) => cite.rule.startsWith("practice.neighboring-wells."));
			expect(own.length).toBeGreaterThan(1);
			for (const each of own)
				expect(["met", "does not apply"], `${each.subject}: ${each.because}`).toContain(each.verdict);
		}
	});

	test("of a pair that may be one hole is not met, and is told in the answers and to the neighbors", () => {
		const found = on(BESIDE, "separation");
		expect(found.verdict).toBe("not met");
		expect(found.because).toMatch(
			/^The separation factor to Tamarack Draw 8-22H is −0\.01, lowest at 7,538 ft/u,
		);
		expect(toldIn([found], "answers")).toHaveLength(1);
		expect(toldIn([found], "landowner")).toHaveLength(1);
	});

	test("between 1 and 1.5 an engineer confirms", () => {
		const bottom = (longitude: string) =>
			`${PLACE}, path: { bottom_hole: { latitude: 31.927480, longitude: ${longitude}, depth: 7000 ft TVD }, ${RADIUS} }`;
		const verdicts = ["-99.612700", "-99.612000", "-99.611830", "-99.610000"].map(
			(longitude) => on(bottom(longitude), "separation").verdict,
		);
		expect(verdicts[0]).toBe("not met");
		expect(verdicts).toContain("needs judgement");
	});

	test("cannot be told without the path of the other well, or without how well it is known", () => {
		const lost = on(`${PLACE}, total_depth: 8004 ft TVD`, "separation");
		expect(lost).toMatchObject({
			verdict: "cannot tell",
			missing: [{ at: ["site", "offset_wells", 1, "path"] }],
		});
		expect(lost.because).toBe("The path of Tamarack Draw 8-22H is not given.");
		const vague = on(`${PLACE}, total_depth: 8004 ft TVD, path: { vertical: true }`, "separation");
		expect(vague.because).toBe("The survey uncertainty of Tamarack Draw 8-22H is not given.");
	});
});

describe("another well within reach of the fractures", () => {
	const OLD =
		"id: ow-2, name: Tamarack Draw 8-22H, status: plugged 1931, latitude: 31.941000, longitude: -99.620700";
	const deep = (more: string) =>
		`${OLD}, total_depth: 9000 ft TVD, position_uncertainty: 100 ft, path: { vertical: true }${more}`;

	test("is not met where it goes as deep and nothing shows that it is shut off; pumping stops for it", () => {
		const found = on(deep(""), "fracture-reach");
		expect(found.verdict).toBe("not met");
		expect(found.because).toMatch(
			/^Tamarack Draw 8-22H is as deep as the fractures and \d+ ft horizontally from the treated interval; fractures and uncertainties reach \d+ ft. There is no evidence that it is isolated across and above them\.$/u,
		);
		expect(stopsOf([found], "pumping")).toHaveLength(1);
	});

	test("is met where barriers cover the fractures, and not where they end within them", () => {
		const plug = (top: number, bottom: number) =>
			`, barriers: [{ top: ${top} ft TVD, bottom: ${bottom} ft TVD, what: cement plug, shown_by: plugging record }]`;
		expect(on(deep(plug(7000, 9000)), "fracture-reach").verdict).toBe("met");
		expect(on(deep(plug(7900, 9000)), "fracture-reach").verdict).toBe("not met");
		expect(on(deep(plug(7000, 7800)), "fracture-reach").verdict).toBe("not met");
	});

	test("a shallower one without evidence is for an engineer to confirm", () => {
		const shallow = (more: string) =>
			`${OLD}, total_depth: 6000 ft TVD, position_uncertainty: 100 ft, path: { vertical: true }${more}`;
		expect(on(shallow(""), "fracture-reach").verdict).toBe("needs judgement");
		expect(on(shallow(", evidence: plugging record"), "fracture-reach").verdict).toBe("met");
	});

	test("cannot be told without its path, or without what the fractures rest on", () => {
		expect(on(`${OLD}, total_depth: 9000 ft TVD`, "fracture-reach").verdict).toBe("cannot tell");
		const soft = AS_BUILT.replace("youngs_modulus: 3.8e6 psi, ", "");
		expect(on(deep(""), "fracture-reach", soft).verdict).toBe("cannot tell");
	});
});

test("stations of the build and the lateral lie at most 100 ft apart", () => {
	const path = (rows: readonly (readonly [number, number, number])[]) =>
		longestInterval.of({
			path: minimumCurvaturePath.of({
				stations: stationTable(rows),
				TD: given("measured-depth", rows.at(-1)?.[0] ?? 0),
				Avs: given("angle", 0),
			}),
		}).value;
	const rows = [
		[0, 0, 0],
		[1000, 0, 0],
		[1095, 8, 0],
		[1200, 16, 0],
		[1290, 20, 0],
		[1500, 20, 0],
	] as const;
	expect(path(rows)).toBe(105);
	expect(
		path([
			[0, 0, 0],
			[3000, 1, 0],
			[6000, 1, 0],
		]),
	).toBeNaN();
	const sparse = AS_BUILT.replace(
		"survey: { file: horizontal-as-built-survey.csv }",
		"survey: { stations: [{ md: 0 ft, inclination: 0 deg, azimuth: 0 deg }, { md: 7400 ft, inclination: 0 deg, azimuth: 338 deg }, { md: 8347 ft, inclination: 90 deg, azimuth: 338 deg }, { md: 15700 ft, inclination: 90 deg, azimuth: 338 deg }, { md: 15838 ft, inclination: 90 deg, azimuth: 338 deg }] }",
	);
	const found = findings(sparse).find(
		({ cite }) => cite.rule === "practice.neighboring-wells.survey-interval",
	);
	expect(found?.verdict).toBe("not met");
});
