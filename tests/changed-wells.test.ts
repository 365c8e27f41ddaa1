import { describe, expect, it } from "vitest";
import { told as inWords } from "./rules/told.ts";
import { sampleOf } from "./run/sample.ts";
import { starterText, understandText } from "./starters.ts";

/*
 * The planned starter is a sound well. Each case changes it as an engineer might change a plan, into one that a good
 * engineer would stop, and names the finding or fault that has to say so. The changes are ours: common practice, no source.
 */

type Change = readonly [written: string | RegExp, instead: string];

interface Case {
	readonly plan: string;
	readonly changes: readonly Change[];
	/** A rule whose finding is open or to be confirmed, or the code of a fault of the writing. */
	readonly told: string;
}

/** In the block of one string. */
const inString = (id: string, written: string, instead: string): Change => [
	new RegExp(`(  - id: ${id}\n    hole: [\\s\\S]*?)${written.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&")}`),
	`$1${instead}`,
];

const CASES: readonly Case[] = [
	{
		plan: "mud of the production hole below the pore pressure of the target",
		changes: [
			["fluid: { kind: oil-based mud, density: 11.8 ppg", "fluid: { kind: oil-based mud, density: 10.5 ppg"],
		],
		told: "practice.open-hole.mud-over-pore",
	},
	{
		plan: "mud of the production hole close to what the rock bears",
		changes: [
			["fluid: { kind: oil-based mud, density: 11.8 ppg", "fluid: { kind: oil-based mud, density: 15.6 ppg"],
		],
		told: "practice.open-hole.rock-over-mud",
	},
	{
		plan: "a shoe test too low for the kick the hole is designed for",
		changes: [inString("intermediate", "equivalent: 14.0 ppg", "equivalent: 12.0 ppg")],
		told: "practice.well-control.kick-tolerance",
	},
	{
		plan: "preventers rated below what the hole can bring",
		changes: [
			[
				"{ over: intermediate, working_pressure: 10000 psi",
				"{ over: intermediate, working_pressure: 3000 psi",
			],
		],
		told: "practice.well-control.preventer-rating",
	},
	{
		plan: "preventers tested against the surface casing, without a plug",
		changes: [[/(over: surface, [^\n]*), test_plug: [^,}]+/, "$1"]],
		told: "practice.well-control.preventer-test",
	},
	{
		plan: "a low-pressure preventer test of 1,000 psi",
		changes: [["test: { low: 250 psi, high: 7000 psi", "test: { low: 1000 psi, high: 7000 psi"]],
		told: "practice.well-control.low-pressure-test",
	},
	{
		plan: "production casing too thin for the treating pressure",
		changes: [["weight: 23 lb/ft, grade: P110", "weight: 17 lb/ft, grade: N80"]],
		told: "practice.strings.burst",
	},
	{
		plan: "intermediate casing too thin for full evacuation",
		changes: [["weight: 43.5 lb/ft, grade: L80", "weight: 36 lb/ft, grade: J55"]],
		told: "practice.strings.collapse",
	},
	{
		plan: "production casing tested above what it is allowed to bear",
		changes: [["pressure_test: { pressure: 9800 psi", "pressure_test: { pressure: 12000 psi"]],
		told: "practice.strings.test-pressure",
	},
	{
		plan: "sour gas behind P110 at the cool end of the string",
		changes: [
			[
				"hydrogen_sulfide: { expected: false, fraction: 0 ppm",
				"hydrogen_sulfide: { expected: true, fraction: 8000 ppm",
			],
		],
		told: "practice.sour.pipe",
	},
	{
		plan: "sour gas without a rate for the exposure radius",
		changes: [
			[
				"hydrogen_sulfide: { expected: false, fraction: 0 ppm",
				"hydrogen_sulfide: { expected: true, fraction: 8000 ppm",
			],
		],
		told: "practice.sour.exposure-radius",
	},
	{
		plan: "lead of the intermediate string so heavy that it breaks the rock",
		changes: [inString("intermediate", "density: 12.0 ppg", "density: 15.4 ppg")],
		told: "practice.cement.fracture-margin",
	},
	{
		plan: "lead of the production string lighter than the pore pressure",
		changes: [["to: 8200 ft, excess: 5 %, density: 12.6 ppg", "to: 8200 ft, excess: 5 %, density: 9.0 ppg"]],
		told: "practice.cement.density-order",
	},
	{
		plan: "plug bumped at most of what the casing holds",
		changes: [inString("surface", "bump: 500 psi", "bump: 2600 psi")],
		told: "practice.cement.plug-bump",
	},
	{
		plan: "slurry that thickens before the job is done",
		changes: [["water: 7.9 gal/sk, thickening_time: 6 hr", "water: 7.9 gal/sk, thickening_time: 1 hr"]],
		told: "practice.cement.thickening-time",
	},
	{
		plan: "no centralizers on the intermediate string",
		changes: [
			[
				/( {2}- id: intermediate\n {4}hole: [\s\S]*?) {4}centralizers:\n {6}bow_spring:\n(?: {8}- [^\n]*\n)+/,
				"$1",
			],
		],
		told: "practice.cement.standoff",
	},
	{
		plan: "a spacer of five barrels",
		changes: [["spacer: { volume: 80 bbl", "spacer: { volume: 5 bbl"]],
		told: "practice.cement.spacer-contact",
	},
	{
		plan: "a spacer lighter than the mud",
		changes: [["spacer: { volume: 80 bbl, density: 12.2 ppg", "spacer: { volume: 80 bbl, density: 9.0 ppg"]],
		told: "practice.cement.density-order",
	},
	{
		plan: "a hot well cemented without silica",
		changes: [["gradient: 1.5 degF/100 ft", "gradient: 2.9 degF/100 ft"]],
		told: "practice.cement.silica",
	},
	{
		plan: "strengths tested at another temperature than the rock's",
		changes: [
			[
				"strength: [{ value: 500 psi, after: 12 hr, at: 200 degF }]",
				"strength: [{ value: 500 psi, after: 12 hr, at: 140 degF }]",
			],
		],
		told: "practice.cement.strength-test-temperature",
	},
	{
		plan: "drilled out before the cement is strong",
		changes: [inString("surface", "wait_on_cement: 12 hr", "wait_on_cement: 2 hr")],
		told: "practice.cement.strength-at-drill-out",
	},
	{
		plan: "production cement that stops below the intermediate shoe",
		changes: [
			["class: H, from: 5400 ft, to: 8200 ft", "class: H, from: 7000 ft, to: 8200 ft"],
			["bow_spring: [{ from: 5400 ft, to: 8200 ft", "bow_spring: [{ from: 7000 ft, to: 8200 ft"],
		],
		told: "practice.cement.top",
	},
	{
		plan: "no confining bed stated above the target",
		changes: [["lithology: limestone, confining: true", "lithology: limestone"]],
		told: "practice.isolation.confining-bed",
	},
	{
		plan: "a confining bed of eight feet",
		changes: [["name: Upper Rushford Lime, top: 8610 ft TVD", "name: Upper Rushford Lime, top: 8842 ft TVD"]],
		told: "practice.isolation.confining-bed",
	},
	{
		plan: "an old well without evidence, as deep as the fractures and close to the lateral",
		changes: [
			["total_depth: 4120 ft TVD", "total_depth: 9000 ft TVD"],
			[
				"latitude: 31.476905\n      longitude: -98.767720",
				"latitude: 31.470000\n      longitude: -98.765000",
			],
			[/ {6}barriers: \[[^\n]*\n {6}evidence: [^\n]*\n/, ""],
			["status: plugged 1981", "status: abandoned 1931"],
		],
		told: "practice.neighboring-wells.fracture-reach",
	},
	{
		plan: "an old well of which no path is given",
		changes: [[/ {6}path: \{ vertical: true, uncertainty: [^\n]*\n/, ""]],
		told: "practice.neighboring-wells.separation",
	},
	{
		plan: "a surface shoe short of the protected water",
		changes: [
			[
				"condition: new, joint: 40 ft, from: surface, to: 1185 ft",
				"condition: new, joint: 40 ft, from: surface, to: 925 ft",
			],
			["- { from: 1065 ft, to: 1185 ft, every: 1 joint }", "- { from: 805 ft, to: 925 ft, every: 1 joint }"],
			[
				"- { from: surface, to: 1065 ft, every: 4 joints }",
				"- { from: surface, to: 805 ft, every: 4 joints }",
			],
			["from: surface\n          to: 885 ft", "from: surface\n          to: 625 ft"],
			["from: 885 ft\n          to: 1185 ft", "from: 625 ft\n          to: 925 ft"],
			["diameter: 17 1/2 in, to: 1200 ft", "diameter: 17 1/2 in, to: 940 ft"],
		],
		told: "practice.protected-water.shoe",
	},
	{
		plan: "a relief valve that opens above the maximum",
		changes: [["relief_valve: 9400 psi", "relief_valve: 9700 psi"]],
		told: "practice.treatment.relief-below-maximum",
	},
	{
		plan: "pumps that trip above the relief valve",
		changes: [
			["pump_kickouts: [8900 psi, 9000 psi, 9100 psi]", "pump_kickouts: [9450 psi, 9460 psi, 9470 psi]"],
		],
		told: "practice.treatment.ladder",
	},
	{
		plan: "a line test below the maximum",
		changes: [["line_test: 10500 psi", "line_test: 9300 psi"]],
		told: "practice.treatment.ladder",
	},
	{
		plan: "a maximum above what the casing was tested to",
		changes: [["pressure_test: { pressure: 9800 psi", "pressure_test: { pressure: 8000 psi"]],
		told: "practice.treatment.ladder",
	},
	{
		plan: "an annulus stopped above what its strings are allowed",
		changes: [["relief: 450 psi, stop_above: 450 psi", "stop_above: 9000 psi"]],
		told: "practice.treatment.annulus-stop",
	},
	{
		plan: "no relief valve where the outer string cannot hold a leak",
		changes: [["relief: 450 psi, stop_above: 450 psi", "stop_above: 450 psi"]],
		told: "practice.treatment.leak-into-annulus",
	},
	{
		plan: "no second barrier that holds a leak while treating",
		changes: [["relief: 450 psi, stop_above: 450 psi", "stop_above: 450 psi"]],
		told: "practice.barriers.two",
	},
	{
		plan: "a production tree that may not be counted, and none in its stead",
		changes: [["element: production tree, test: 10000 psi", "element: production tree, counted: false"]],
		told: "practice.barriers.two",
	},
	{
		plan: "a casing head that does not hold what a leaking hanger seal brings",
		changes: [
			["relief: 450 psi, stop_above: 450 psi", "stop_above: 450 psi"],
			["wellhead: { drilling: 10000 psi", "wellhead: { drilling: 5000 psi"],
		],
		told: "practice.barriers.single-failure",
	},
	{
		plan: "a wellhead rated below the maximum",
		changes: [["stimulation: 15000 psi }", "stimulation: 5000 psi }"]],
		told: "practice.treatment.wellhead",
	},
	{
		plan: "water whose viscosity is not given",
		changes: [["density: 8.4 ppg, viscosity: 1.2 cP", "density: 8.4 ppg"]],
		told: "practice.treatment.friction-reduction",
	},
	{
		plan: "perforations in the confining bed",
		changes: [["top: 8850 ft TVD\n      base: 9010 ft TVD", "top: 8850 ft TVD\n      base: 8925 ft TVD"]],
		told: "calc/perforations-outside-target",
	},
	{
		plan: "a state whose rules are not known here",
		changes: [[/jurisdictions: \[[^\]]*\]/, "jurisdictions: [us-ut]"]],
		told: "rules/unknown-jurisdiction",
	},
	{
		plan: "a mistyped friction coefficient",
		changes: [["cased: [0.20, 0.30]", "cased: [0.20, 20]"]],
		told: "well/improbable-value",
	},
	{
		plan: "a hospital at twenty-two feet",
		changes: [["hospital_distance: 22 mi", "hospital_distance: 22 ft"]],
		told: "well/improbable-value",
	},
	{
		plan: "an azimuth turned round",
		changes: [["build: 10 deg/100 ft, azimuth: 158 deg", "build: 10 deg/100 ft, azimuth: 338 deg"]],
		told: "well/improbable-value",
	},
	{
		plan: "class A cement in hot, deep rock",
		changes: [inString("production", "role: tail, class: H", "role: tail, class: A")],
		told: "practice.cement.class-depth",
	},
	{
		plan: "no preventers over the surface casing",
		changes: [[/ {4}- \{ over: surface, working.*\n/, ""]],
		told: "practice.well-control.preventers",
	},
	{
		plan: "gas above the first preventers",
		changes: [
			[
				"{ name: Candler Sand, top: 180 ft TVD, lithology: sandstone,",
				"{ name: Candler Sand, top: 180 ft TVD, lithology: sandstone, flow_zone: gas,",
			],
		],
		told: "practice.well-control.preventers",
	},
	{
		plan: "no preventer test",
		changes: [[", test: { low: 250 psi, high: 7000 psi, hold: 10 min, test_plug: true }", ""]],
		told: "practice.well-control.preventer-test",
	},
	{
		plan: "no float equipment",
		changes: [inString("production", "    floats: [float shoe, float collar]\n", "")],
		told: "practice.cement.floats",
	},
	{
		plan: "one float only",
		changes: [inString("production", "floats: [float shoe, float collar]", "floats: [float shoe]")],
		told: "practice.cement.floats",
	},
	{
		plan: "no plugs",
		changes: [inString("production", "      plugs: [bottom, top]\n", "")],
		told: "practice.cement.plugs",
	},
	{
		plan: "a cementing line tested below the bump",
		changes: [inString("production", "line_test: 8000 psi", "line_test: 1500 psi")],
		told: "practice.cement.line-test",
	},
	{
		plan: "a cementing line without a test",
		changes: [inString("production", "      line_test: 8000 psi\n", "")],
		told: "practice.cement.line-test",
	},
	{
		plan: "water behind the plug whose viscosity is not given",
		changes: [inString("production", "plastic_viscosity: 1 cP, yield_point: 0 lbf/100ft2, last", "last")],
		told: "practice.cement.plug-bump",
	},
	{
		plan: "no excess for the surface string",
		changes: [
			inString("surface", "excess: 30 %", "excess: 0 %"),
			inString("surface", "excess: 20 %", "excess: 0 %"),
		],
		told: "practice.cement.excess",
	},
	{
		plan: "no test of the intermediate shoe",
		changes: [
			inString("intermediate", "    shoe_test: { kind: FIT, equivalent: 14.0 ppg, new_hole: 15 ft }\n", ""),
		],
		told: "practice.well-control.shoe-test",
	},
	{
		plan: "a shoe test planned above what the rock bears",
		changes: [inString("intermediate", "equivalent: 14.0 ppg", "equivalent: 17.5 ppg")],
		told: "practice.well-control.shoe-test-within-rock",
	},
	{
		plan: "the target's pore pressure left out",
		changes: [["      pore_pressure: 11.0 ppg\n", ""]],
		told: "practice.open-hole.mud-over-pore",
	},
	{
		plan: "the target's fracture gradient left out",
		changes: [
			[
				"      pore_pressure: 11.0 ppg\n      fracture_gradient: 0.82 psi/ft\n",
				"      pore_pressure: 11.0 ppg\n",
			],
		],
		told: "practice.cement.fracture-margin",
	},
	{
		plan: "the wellhead left out of the pressure boundary",
		changes: [["    - { element: wellhead, rating: 15000 psi, factor: 0.9 }\n", ""]],
		told: "practice.treatment.boundary",
	},
	{
		plan: "the casing left out of the pressure boundary",
		changes: [[/ {4}- \{ element: casing, factor: 0\.85 \}.*\n/, ""]],
		told: "practice.treatment.boundary",
	},
	{
		plan: "treating iron rated too low",
		changes: [
			[
				"{ element: treating iron, rating: 15000 psi, factor: 0.9 }",
				"{ element: treating iron, rating: 10000 psi, factor: 0.9 }",
			],
		],
		told: "practice.treatment.ladder",
	},
	{
		plan: "a rate that needs more than the pumps are stopped at",
		changes: [["      rate: 75 bbl/min\n", "      rate: 110 bbl/min\n"]],
		told: "practice.treatment.expected-pressure",
	},
	{
		plan: "nothing said of how the first stage is opened",
		changes: [["  toe: { kind: guns on coiled tubing, depth: 17110 ft }\n", ""]],
		told: "practice.treatment.toe",
	},
	{
		plan: "an annulus that is not watched",
		changes: [[/ {2}annuli:.*\n.*\n.*\n/, ""]],
		told: "practice.treatment.annulus-stop",
	},
	{
		plan: "a rise predicted above the stop",
		changes: [["predicted_rise: 60 psi, stop_above: 60 psi", "predicted_rise: 200 psi, stop_above: 60 psi"]],
		told: "practice.treatment.annulus-rise",
	},
	{
		plan: "a maximum pull beyond what the joints bear",
		changes: [["maximum_pull: 400000 lbf", "maximum_pull: 900000 lbf"]],
		told: "practice.strings.maximum-pull",
	},
	{
		plan: "a production packer above the cement",
		changes: [["packer: 8250 ft", "packer: 5000 ft"]],
		told: "practice.strings.production-packer",
	},
	{
		plan: "used pipe",
		changes: [inString("production", "condition: new", "condition: used")],
		told: "practice.strings.condition",
	},
	{
		plan: "wear of two fifths of the wall",
		changes: [["wear: 0 %", "wear: 40 %"]],
		told: "practice.strings.collapse",
	},
	{
		plan: "a connection whose ratings are not known",
		changes: [["grade: P110, connection: BTC", "grade: P110, connection: proprietary XT"]],
		told: "well/connection-unrated",
	},
	{
		plan: "a water well near the pad that nobody sampled",
		changes: [["depth: 340 ft below ground, sampled: 2026-03-11", "depth: 340 ft below ground"]],
		told: "practice.protected-water.samples",
	},
	{
		plan: "the next well of the pad being drilled meanwhile, and nobody named who is told",
		changes: [["status: planned }]", "status: being drilled }]"]],
		told: "practice.safety.simultaneous-work",
	},
	{
		plan: "work stated at the next well, and nobody named who is told",
		changes: [["status: planned }]", "status: drilled, work: wireline and perforating }]"]],
		told: "practice.safety.simultaneous-work",
	},
	{
		plan: "eight pounds of proppant in a gallon of slickwater",
		changes: [["concentration: 1.75 lb/gal", "concentration: 8 lb/gal"]],
		told: "practice.treatment.proppant-concentration",
	},
	{
		plan: "no word of what is done when a stage screens out",
		changes: [
			[
				"  if_it_screens_out: Stop at the first trip. Flow",
				"  # if_it_screens_out: Stop at the first trip. Flow",
			],
		],
		told: "practice.safety.returned",
	},
	{
		plan: "a house that hears more than the agreement allows",
		changes: [["limit: { level: 70 dBA", "limit: { level: 60 dBA"]],
		told: "practice.safety.noise",
	},
	{
		plan: "no bottom plug",
		changes: [inString("production", "plugs: [bottom, top]", "plugs: [top]")],
		told: "practice.cement.bottom-plug",
	},
	{
		plan: "a spacer of which no viscosity is given",
		changes: [inString("production", ", plastic_viscosity: 22 cP, yield_point: 10 lbf/100ft2 }", " }")],
		told: "practice.cement.spacer-rheology",
	},
	{
		plan: "a house at three hundred feet",
		changes: [["latitude: 31.478340, longitude: -98.774610", "latitude: 31.483540, longitude: -98.771204"]],
		told: "practice.safety.houses",
	},
	{
		plan: "a treatment dated before drilling ends",
		changes: [["{ phase: stimulation, days", "{ phase: stimulation, starts: 2026-06-25, days"]],
		told: "practice.safety.treatment-after-drilling",
	},
	{
		plan: "lead slurry across the first perforations",
		changes: [
			["class: H, from: 5400 ft, to: 8200 ft", "class: H, from: 5400 ft, to: 10000 ft"],
			["class: H, from: 8200 ft, to: 17245 ft", "class: H, from: 10000 ft, to: 17245 ft"],
		],
		told: "practice.cement.lead-foot",
	},
	{
		plan: "a casing test above the drilling wellhead",
		changes: [["wellhead: { drilling: 10000 psi", "wellhead: { drilling: 5000 psi"]],
		told: "practice.strings.wellhead-at-test",
	},
	{
		plan: "an area that was not searched",
		changes: [[/ {2}neighbors_complete: true.*\n/, ""]],
		told: "practice.neighboring-wells.search",
	},
	{
		plan: "no muster point for the other wind",
		changes: [[/ {4}- { id: south, at: South road[^\n]*\n/, ""]],
		told: "practice.safety.emergency",
	},
	{
		plan: "no gas alarms",
		changes: [[/ {2}gas_alarms:\n(?: {4}- .*\n)+/, ""]],
		told: "practice.safety.gas-alarms",
	},
	{
		plan: "no control of silica dust",
		changes: [[/ {2}silica: \{.*\n/, ""]],
		told: "practice.safety.treatment",
	},
	{
		plan: "no exclusion zone",
		changes: [[/ {2}exclusion: .*\n/, ""]],
		told: "practice.safety.distances",
	},
	{
		plan: "a validity that ends before spud",
		changes: [["valid_until: 2026-12-31", "valid_until: 2026-06-01"]],
		told: "definition/dates-out-of-order",
	},
	{
		plan: "a spud thirty years ahead",
		changes: [["spud: 2026-06-20", "spud: 2056-06-20"]],
		told: "definition/date-implausible",
	},
	{
		plan: "a spud thirty years ago, with nothing on record",
		changes: [["spud: 2026-06-20", "spud: 1996-06-20"]],
		told: "definition/date-implausible",
	},
];

const changed = (changes: readonly Change[]): string =>
	changes.reduce((text, [written, instead]) => {
		const next = text.replace(written, instead);
		if (next === text) throw new Error(`the starter has no ${String(written)}`);
		return next;
	}, starterText("horizontal"));

/** Everything that is told of a well: rules whose finding is open or to be confirmed, and codes of faults. */
const toldOf = (text: string): readonly string[] => {
	const { diagnostics, findings } = understandText(text);
	return [
		...diagnostics.map(({ code }) => code),
		...(findings?.judgement.findings ?? [])
			.filter(({ verdict }) => ["not met", "cannot tell", "needs judgement"].includes(verdict))
			.map(({ cite }) => cite.rule),
	];
};

describe("a plan that a good engineer would stop is told by name", () => {
	it("has eighty cases", () => expect(CASES.length).toBeGreaterThanOrEqual(80));
	it.each(sampleOf("changed wells", CASES, 10))("$plan: $told", ({ changes, told }) => {
		expect(toldOf(changed(changes))).toContain(told);
	});
});

/** What a rule says of a changed plan, in words, by its id. */
const saidOf = (changes: readonly Change[], rule: string): readonly string[] =>
	(understandText(changed(changes)).findings?.judgement.findings ?? [])
		.filter(({ cite }) => cite.rule === rule)
		.map((finding) => `${finding.verdict}: ${inWords(finding).because.replaceAll("\u00a0", " ")}`);

describe("what stands in for a danger lets the plan pass", () => {
	it("work at the next well, agreed with somebody who is named", () => {
		const said = saidOf(
			[["status: planned }]", "status: being drilled, agreed_with: rig manager of Tern 4 (fictional) }]"]],
			"practice.safety.simultaneous-work",
		);
		expect(said).toEqual([
			"met: Work goes on at the same time at Sorrel Bench Unit 4-16H, agreed with rig manager of Tern 4 (fictional).",
		]);
	});
	it("noise at its limit, and noise that nobody set a limit to", () => {
		const level = saidOf([], "practice.safety.noise")
			.join("")
			.match(/is ([\d.]+) dBA;/)?.[1];
		expect(Number(level)).toBeGreaterThan(60);
		const [atLimit] = saidOf(
			[["limit: { level: 70 dBA", `limit: { level: ${Number(level) + 0.5} dBA`]],
			"practice.safety.noise",
		);
		expect(atLimit).toMatch(/^met: /);
		expect(
			saidOf(
				[[", limit: { level: 70 dBA, source: surface use agreement (fictional) }", ""]],
				"practice.safety.noise",
			),
		).toEqual(["does not apply: No limit on noise at a dwelling is stated."]);
	});
	it("a test that is made on the treating head", () => {
		const said = saidOf(
			[
				["wellhead: { drilling: 10000 psi", "wellhead: { drilling: 5000 psi"],
				["pressure: 9800 psi, hold: 30 min", "pressure: 9800 psi, head: stimulation, hold: 30 min"],
			],
			"practice.strings.wellhead-at-test",
		);
		expect(said.every((each) => each.startsWith("met"))).toBe(true);
	});
	it("says how far a lead slurry reaches, and what has to be", () => {
		expect(
			saidOf(
				[
					["class: H, from: 5400 ft, to: 8200 ft", "class: H, from: 5400 ft, to: 10000 ft"],
					["class: H, from: 8200 ft, to: 17245 ft", "class: H, from: 10000 ft, to: 17245 ft"],
				],
				"practice.cement.lead-foot",
			),
		).toEqual([
			"not met: The foot of the lead slurry is 498 ft below the uppermost perforation; it has to be at or above that.",
		]);
	});
});

describe("a sound plan is not cried over", () => {
	it("has at most three practice findings, none of them broken", () => {
		const { findings, diagnostics } = understandText(starterText("horizontal"));
		const practice = (findings?.judgement.findings ?? []).filter(({ cite }) => cite.kind === "practice");
		expect(practice.filter(({ verdict }) => verdict === "not met" || verdict === "cannot tell")).toEqual([]);
		expect(practice.filter(({ verdict }) => verdict === "needs judgement").length).toBeLessThanOrEqual(3);
		expect(diagnostics).toEqual([]);
	});
	it("is not told of what the changes are told of", () => {
		const sound = new Set(toldOf(starterText("horizontal")));
		const also = new Set(CASES.map(({ told }) => told).filter((told) => sound.has(told)));
		expect([...also]).toEqual(["practice.treatment.friction-reduction"]);
	});
});
