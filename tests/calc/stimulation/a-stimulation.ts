/** A small stimulation of round numbers, for tests: two stages of three clusters down a vertical well. */
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CasingResults } from "../../../src/calc/results.ts";
import { stimulationResults } from "../../../src/calc/stimulation/index.ts";
import type { Stage, Stimulation, TreatmentStep, Well } from "../../../src/well/well.ts";
import { hole, md, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

export const PER_FOOT = ((Math.PI / 4) * 12) / 9702;

export const only = hole("production", 8.5, 20, 9100, { mud: 10 });
export const pumped = string(
	"production",
	only,
	22,
	[
		[7, 6.094, 4000],
		[5.5, 4.67, 9000],
	],
	{ pressureTest: { pressure: given("pressure", 9000), hold: given("duration", 30) } },
);

export const step = (
	name: string,
	clean: number | "flush",
	more: Partial<TreatmentStep> = {},
): TreatmentStep => ({
	name,
	rate: given("flow-rate", 60),
	...(clean === "flush" ? { flushTo: "top cluster" as const } : { cleanVolume: given("volume", clean) }),
	...more,
});
export const sand = (c: number) => ({ proppant: "sand", concentration: given("proppant-concentration", c) });
export const steps = [
	step("acid", 20, { fluid: "acid", rate: given("flow-rate", 10) }),
	step("pad", 500),
	step("sand 1", 1000, sand(1)),
	step("sand 2", 800, sand(2)),
	step("flush", "flush"),
];

export const stage = (number: number, bottom: number, more: Partial<Stage> = {}): Stage => ({
	number,
	bottom: md(bottom),
	top: md(bottom - 100),
	clusters: [md(bottom - 10), md(bottom - 50), md(bottom - 90)],
	shotsPerCluster: given("count", 8),
	shotDiameter: given("diameter", 0.4),
	rate: given("flow-rate", 60),
	steps,
	...more,
});

export const planned = (more: Partial<Stimulation> = {}): Stimulation =>
	({
		method: "plug and perforate",
		treatedThrough: "production",
		baseFluid: {
			kind: "slickwater",
			density: given("density", 8.4),
			viscosity: given("plastic-viscosity", 1.2),
		},
		waterSources: [
			{ name: "Pond", share: given("share", 0.7), recycled: false },
			{ name: "Produced water", share: given("share", 0.3), recycled: true },
		],
		pressureModel: {
			net: given("pressure", 300),
			nearWellbore: given("pressure", 200),
			frictionReduction: given("share", 0.7),
			roughness: given("diameter", 0.0018),
			discharge: [given("ratio", 0.65), given("ratio", 0.85)],
		},
		boundary: [
			{ element: "treating iron", rating: given("pressure", 15_000), factor: given("ratio", 0.9) },
			{ element: "Casing", factor: given("ratio", 0.8) },
			{ element: "casing test", factor: given("ratio", 1) },
		],
		toe: { kind: "guns on coiled tubing", depth: md(8900) },
		stages: [stage(1, 8900), stage(2, 8700)],
		proppants: [{ id: "sand", material: "quartz", specificGravity: given("ratio", 2.65), cas: "14808-60-7" }],
		additives: [
			{
				id: "acid",
				name: "Acid",
				purpose: "acid",
				density: given("density", 8.96),
				ingredients: [
					{ name: "Hydrogen chloride", cas: "7647-01-0", maxShare: given("share", 0.15) },
					{ name: "Water", cas: "7732-18-5", maxShare: given("share", 0.85) },
				],
			},
			{
				id: "fr",
				name: "Friction reducer",
				purpose: "friction reducer",
				density: given("density", 8.6),
				rate: given("additive-rate", 1),
				ingredients: [
					{ name: "Polymer", maxShare: given("share", 0.3) },
					{ name: "Withheld", tradeSecret: "the maker" },
				],
			},
		],
		annuli: [],
		...more,
	}) as Stimulation;

export const geology = {
	formations: [
		{ id: "cap", name: "Cap", top: given("true-vertical-depth", 20), lithology: "shale" },
		{
			id: "pay",
			name: "Pay",
			top: given("true-vertical-depth", 8500),
			base: given("true-vertical-depth", 9000),
			lithology: "shale",
			mechanical: {
				closure: given("pressure-gradient", 0.7),
				stressContrast: given("pressure", 900),
				youngsModulus: given("pressure", 4e6),
				poissonsRatio: given("ratio", 0.25),
				leakoff: given("leakoff", 0.0008),
			},
		},
	],
	water: [],
} as unknown as Well["geology"];

export const results = (stimulation: Stimulation, more: Partial<Well> = {}, strings = [pumped]) => {
	const gaps = openGaps();
	const casing = Object.fromEntries(
		strings.map((s, i) => [
			s.id,
			{ least_internal_yield: given("pressure", 12_000 - 1000 * i) } as CasingResults,
		]),
	);
	const of = well([only], strings, { stimulation, geology, ...more });
	return { found: stimulationResults(of, straightDown, casing, gaps), gaps: gaps.undetermined };
};
