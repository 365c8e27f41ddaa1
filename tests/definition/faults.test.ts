import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { validate } from "../../src/definition/validate.ts";
import { CODES, type Code } from "../../src/diagnostics/codes.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import { changed, STARTERS, type Starter, starterTree } from "./starter-trees.ts";

/** A change to a starter, and the one message it must bring. */
interface Planted {
	readonly code: Code;
	/** Where the change is made. */
	readonly path: Path;
	/** `undefined` takes the entry out. */
	readonly value: unknown;
	/** Where the message points, if not at the change. */
	readonly at?: Path;
	readonly starter?: Starter;
	/** What the message must help with. */
	readonly mend?: RegExp;
}

const PLANTED: readonly Planted[] = [
	// Names
	{ code: "definition/unknown-key", path: ["casing", 1, "pipe", 0, "colour"], value: "red" },
	{ code: "definition/unknown-key", path: ["wellheads"], value: {}, mend: /take it out|use one/ },
	{
		code: "definition/unknown-key",
		path: ["well", "api_nubmer"],
		value: "x",
		mend: /names listed|take it out/,
	},
	{ code: "definition/unknown-key", path: ["well", "Technical-Contactor"], value: "x" },
	{
		code: "definition/unknown-key",
		path: ["site", "working_pressure"],
		value: "1 psi",
		mend: /well_control\.preventers/,
	},
	{ code: "definition/unknown-key", path: ["site", "stock"], value: null, mend: /quotes/ },
	// Missing and empty
	{ code: "definition/missing", path: ["well", "name"], value: undefined },
	{ code: "definition/missing", path: ["definition"], value: undefined },
	{ code: "definition/missing", path: ["casing", 2, "cement", "slurries", 1, "excess"], value: undefined },
	{ code: "definition/missing", path: ["trajectory", "plan", "lateral"], value: undefined },
	{ code: "definition/missing", path: ["safety", "gas_alarms", 0, "gas"], value: undefined },
	{ code: "definition/empty", path: ["casing", 1, "shoe_track"], value: null },
	{ code: "definition/empty", path: ["well", "operator"], value: "  " },
	{ code: "definition/empty", path: ["holes"], value: [] },
	// Kinds
	{ code: "definition/wrong-kind", path: ["casing"], value: { surface: {} } },
	{ code: "definition/wrong-kind", path: ["casing", 1], value: "surface" },
	{ code: "definition/wrong-kind", path: ["site"], value: [] },
	{ code: "definition/wrong-kind", path: ["safety", "radio_channel"], value: 4, mend: /"4"/ },
	{ code: "definition/wrong-kind", path: ["geology", "formations", 2, "competent"], value: "yes" },
	{ code: "definition/wrong-kind", path: ["design_basis", "design_factors", "burst"], value: "1.1" },
	{ code: "definition/wrong-kind", path: ["stimulation", "stages", "layout", "count"], value: 38.5 },
	{ code: "definition/wrong-kind", path: ["schedule", 0, "days"], value: "three weeks" },
	{ code: "definition/wrong-kind", path: ["casing", 1, "loads", "evacuation"], value: 3 },
	{
		code: "quantity/depth-reference",
		path: ["casing", 1, "loads", "evacuation"],
		value: { fluid_level: "600 ft", fluid: "8.8 ppg" },
		at: ["casing", 1, "loads", "evacuation", "fluid_level"],
	},
	{ code: "definition/not-one-of", path: ["casing", 1, "loads", "evacuation"], value: "fulll", mend: /full/ },
	{ code: "definition/wrong-kind", path: ["trajectory", "plan"], value: "horizontal" },
	// Words and forms
	{
		code: "definition/not-one-of",
		path: ["well", "state"],
		value: "issued for revue",
		mend: /issued for review/,
	},
	{
		code: "definition/not-one-of",
		path: ["geology", "formations", 0, "lithology"],
		value: "gravle",
		mend: /gravel/,
	},
	{
		code: "definition/not-one-of",
		path: ["safety", "gas_alarms", 0, "gas"],
		value: "hydrogen sulphide",
		mend: /hydrogen sulfide/,
	},
	{ code: "definition/not-one-of", path: ["safety", "jobs", 1], value: "casing running" },
	{ code: "definition/not-one-of", path: ["site", "north", "reference"], value: "north" },
	{ code: "definition/version", path: ["definition"], value: 2 },
	{ code: "definition/wrong-form", path: ["casing", 1, "id"], value: "Surface casing" },
	{
		code: "definition/wrong-form",
		path: ["casing", 1, "centralizers", "bow_spring", 0, "every"],
		value: "40 ft",
	},
	{ code: "definition/date", path: ["well", "valid_until"], value: "2026-02-30" },
	{ code: "definition/date", path: ["site", "neighbors", 0, "sampled"], value: "11/03/2026" },
	{ code: "definition/wrong-count", path: ["stimulation", "flowback", "returned"], value: ["10 %"] },
	{ code: "definition/wrong-count", path: ["schedule", 0, "days"], value: [18, 28] },
	{ code: "definition/out-of-range", path: ["site", "surface_location", "latitude"], value: 131.48 },
	{ code: "definition/out-of-range", path: ["stimulation", "stages", "layout", "clusters"], value: 0 },
	{ code: "definition/over-whole", path: ["logistics", "water_by_pipeline"], value: "120 %" },
	{
		code: "definition/over-whole",
		path: ["stimulation", "additives", 0, "ingredients", 0, "max_share"],
		value: "600 %",
	},
	// Numbers of the public record
	{ code: "definition/api-number", path: ["well", "api_number"], value: "42-000-0000" },
	{ code: "definition/api-number", path: ["site", "offset_wells", 0, "api_number"], value: "42-000-O0001" },
	{ code: "definition/cas-number", path: ["stimulation", "proppants", 0, "cas"], value: "14808-60-6" },
	{
		code: "definition/cas-number",
		path: ["stimulation", "additives", 1, "ingredients", 0, "cas"],
		value: "111-03-8",
	},
	// Quantities
	{ code: "quantity/no-unit", path: ["casing", 1, "pressure_test", "pressure"], value: 1000, mend: /psi/ },
	{ code: "quantity/no-unit", path: ["holes", 1, "diameter"], value: "17 1/2" },
	{
		code: "quantity/no-unit",
		path: ["stimulation", "stages", "treatment", "steps", 1, "clean_volume"],
		value: 700,
	},
	{ code: "quantity/no-unit", path: ["site", "ground_elevation"], value: 0 },
	{ code: "quantity/unknown-unit", path: ["casing", 1, "pressure_test", "pressure"], value: "1000 bbl" },
	{ code: "quantity/unknown-unit", path: ["casing", 0, "pipe", 0, "to"], value: "106 fathoms" },
	{ code: "quantity/comma", path: ["geology", "formations", 3, "top"], value: "3,250 ft TVD", mend: /3250/ },
	{ code: "quantity/digit-space", path: ["holes", 2, "to"], value: "6 500 ft" },
	{
		code: "quantity/improper-fraction",
		path: ["casing", 2, "pipe", 0, "od"],
		value: "95/8 in",
		mend: /9 5\/8/,
	},
	{
		code: "quantity/letter-case",
		path: ["stimulation", "limits", "relief_valve"],
		value: "64.8 mpa",
		mend: /MPa/,
	},
	{ code: "quantity/negative", path: ["casing", 1, "shoe_track"], value: "-42 ft" },
	{ code: "quantity/not-a-number", path: ["well_control", "kick", "intensity"], value: "half a pound" },
	{ code: "quantity/not-finite", path: ["design_basis", "overpull"], value: "1e999 lbf" },
	{
		code: "quantity/depth-reference",
		path: ["geology", "formations", 3, "top"],
		value: "3250 ft",
		mend: /TVD/,
	},
	{ code: "quantity/depth-reference", path: ["casing", 1, "pipe", 0, "to"], value: "1185 ft TVD" },
	{
		code: "quantity/depth-reference",
		path: ["site", "neighbors", 0, "depth"],
		value: "285 ft TVD",
		mend: /below ground/,
	},
	{ code: "quantity/depth-reference", path: ["casing", 1, "pipe", 0, "to"], value: "1185 ft TVDSS" },
	// Between the entries of a topic
	{ code: "definition/duplicate-id", path: ["casing", 2, "id"], value: "surface" },
	{ code: "definition/duplicate-id", path: ["site", "neighbors", 1, "id"], value: "ww-1" },
	{ code: "definition/duplicate-id", path: ["stimulation", "proppants", 1, "id"], value: "100-mesh" },
	{ code: "definition/dates-out-of-order", path: ["well", "valid_until"], value: "2026-01-01" },
	{
		code: "definition/dates-out-of-order",
		path: ["well", "revisions", 0, "date"],
		value: "2026-05-05",
		at: ["well", "revisions", 1, "date"],
	},
	{ code: "definition/dates-out-of-order", path: ["schedule", 2, "starts"], value: "2026-05-01" },
	{
		code: "definition/dates-out-of-order",
		starter: "horizontal-as-built",
		path: ["trajectory", "actual", "dates", 1],
		value: "2025-11-01",
	},
	{
		code: "definition/dates-out-of-order",
		starter: "horizontal-as-built",
		path: ["schedule", 2, "actual", "ended"],
		value: "2026-01-11",
	},
	{
		code: "definition/shares-of-whole",
		path: ["stimulation", "water_sources", 0, "share"],
		value: "45 %",
		at: ["stimulation", "water_sources"],
	},
	{ code: "definition/low-above-high", path: ["schedule", 1, "days"], value: [19, 16, 26] },
	{
		code: "definition/low-above-high",
		path: ["stimulation", "flowback", "returned"],
		value: ["30 %", "10 %"],
	},
	{
		code: "definition/low-above-high",
		path: ["well_control", "preventers", 0, "test", "low"],
		value: "6000 psi",
		at: ["well_control", "preventers", 0, "test"],
	},
	{
		code: "definition/one-of-keys",
		path: ["stimulation", "stages", "rows"],
		value: { file: "stages.csv" },
		at: ["stimulation", "stages"],
	},
	{
		code: "definition/one-of-keys",
		path: ["casing", 0, "pipe", 0, "weight"],
		value: undefined,
		at: ["casing", 0, "pipe", 0],
	},
	{
		code: "definition/one-of-keys",
		starter: "horizontal-as-built",
		path: ["trajectory", "actual", "survey", "file"],
		value: undefined,
		at: ["trajectory", "actual", "survey"],
	},
	{ code: "definition/method-and-stages", path: ["stimulation", "method"], value: "single interval" },
	{
		code: "definition/method-and-stages",
		starter: "vertical-metric",
		path: ["stimulation", "method"],
		value: "sliding sleeve",
	},
	{ code: "definition/papers-widened", path: ["well", "prepared_by", "papers", 0], value: "handout" },
];

const trees = new Map(STARTERS.map((starter) => [starter, starterTree(starter)] as const));
const tree = (starter: Starter = "horizontal"): unknown => trees.get(starter);

const nameOfFirst = (): string => {
	const definition = validate(tree()).value;
	return definition?.geology.formations[0]?.name ?? "";
};

describe("one fault gives one message at its place", () => {
	it.each(PLANTED.map((planted) => [`${planted.code} at ${pathKey(planted.path)}`, planted] as const))(
		"%s",
		(_, planted) => {
			const { value, diagnostics } = validate(changed(tree(planted.starter), planted.path, planted.value));
			expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
				[planted.code, pathKey(planted.at ?? planted.path)],
			]);
			expect(value).toBeUndefined();
			expect(diagnostics[0]?.severity).toBe("error");
			if (planted.mend !== undefined) expect(diagnostics[0]?.mend).toMatch(planted.mend);
		},
	);

	it("shows every error of this stage", () => {
		const mine = Object.entries(CODES)
			.filter(([code, { severity }]) => /^(definition|quantity)\//.test(code) && severity === "error")
			.map(([code]) => code);
		const shown = new Set<string>(PLANTED.map(({ code }) => code));
		expect(mine.filter((code) => !shown.has(code))).toEqual([]);
	});

	it("warns of a name that stands twice in a list, whatever its case and spaces", () => {
		const { value, diagnostics } = validate(
			changed(tree(), ["geology", "formations", 1, "name"], ` ${nameOfFirst().toUpperCase()}  `),
		);
		expect(diagnostics.map(({ code, severity, at }) => [code, severity, pathKey(at.path)])).toEqual([
			["definition/same-name", "warning", "geology.formations[1].name"],
		]);
		expect(value).toBeDefined();
	});

	it("tells a date that crosses several others once, at that date", () => {
		const late = changed(tree("horizontal-as-built"), ["casing", 1, "actual", "date"], "2026-02-01");
		const { diagnostics } = validate(late);
		expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
			["definition/dates-out-of-order", "casing[1].actual.date"],
		]);
	});

	it("tells a misspelled required name once, and says which was meant", () => {
		const good = tree();
		const without = changed(good, ["casing", 1, "pressure_test", "pressure"], undefined);
		const { diagnostics } = validate(changed(without, ["casing", 1, "pressure_test", "presure"], "1000 psi"));
		expect(diagnostics.map(({ code }) => code)).toEqual(["definition/unknown-key"]);
		expect(diagnostics[0]?.mend).toContain("`pressure`");
		expect(diagnostics[0]?.at.key).toBe(true);
	});

	it("judges a plan by the kind it is nearest to", () => {
		const plan = { vertical: true };
		const { diagnostics } = validate(changed(tree(), ["trajectory", "plan"], plan));
		expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
			["definition/missing", "trajectory.plan.to"],
		]);
	});
});

describe("all faults in one run", () => {
	const single = PLANTED.filter(
		({ code, starter, path, value, at }) =>
			starter === undefined &&
			code !== "definition/duplicate-id" &&
			at === undefined &&
			value !== undefined &&
			path.length > 2,
	);

	it("tells every one of many", () => {
		// Later plants may overwrite what earlier ones hit; keep the first at each block.
		const taken = new Set<string>();
		const apart = single.filter(({ path }) => {
			const block = pathKey(path.slice(0, 3));
			return !taken.has(block) && taken.add(block);
		});
		expect(apart.length).toBeGreaterThan(20);
		const broken = apart.reduce((each, { path, value }) => changed(each, path, value), tree());
		const found = validate(broken).diagnostics.map(({ code, at }) => `${code} ${pathKey(at.path)}`);
		expect([...found].sort()).toEqual(apart.map(({ code, path }) => `${code} ${pathKey(path)}`).sort());
	});
});

describe("whatever the tree", () => {
	const sound = (found: ReturnType<typeof validate>): void => {
		expect(found.value === undefined).toBe(found.diagnostics.length > 0);
		for (const each of found.diagnostics) {
			expect(each.what).not.toBe("");
			expect(each.mend).not.toBe("");
			expect(each.expected).not.toBe("");
			// The schema library's own words never reach a reader.
			expect(`${each.what} ${each.expected} ${each.mend}`).not.toMatch(
				/Invalid|received|Unrecognized|Too (small|big)/,
			);
		}
	};

	it("never throws and always explains", () => {
		fc.assert(
			fc.property(fc.anything({ withNullPrototype: true, maxDepth: 4 }), (anything) =>
				sound(validate(anything)),
			),
			{ numRuns: 300 },
		);
	});

	it("never throws on a starter with anything put anywhere", () => {
		const good = tree();
		const paths: Path[] = [];
		const collect = (node: unknown, path: Path): void => {
			if (path.length > 0) paths.push(path);
			if (typeof node !== "object" || node === null) return;
			for (const [key, child] of Object.entries(node))
				collect(child, [...path, Array.isArray(node) ? Number(key) : key]);
		};
		collect(good, []);
		fc.assert(
			fc.property(fc.constantFrom(...paths), fc.anything({ maxDepth: 2 }), (path, value) => {
				const found = validate(changed(good, path, value === undefined ? null : value));
				sound(found);
			}),
			{ numRuns: 300 },
		);
	});

	it("survives a tree that contains itself", () => {
		const loop: Record<string, unknown> = { definition: 1 };
		loop["well"] = loop;
		loop["casing"] = [loop];
		sound(validate(loop));
	});
});
