import type { Code } from "../../src/diagnostics/codes.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import type { Starter } from "./starter-trees.ts";

/** A change to a starter, and the one message it must bring. */
export interface Planted {
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

export const PLANTED: readonly Planted[] = [
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
	{ code: "quantity/several-numbers", path: ["holes", 2, "to"], value: "6400 to 6500 ft", mend: /one value/ },
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
	{ code: "definition/emergency-number", path: ["safety", "emergency", "number"], value: "91" },
	{
		code: "definition/spud-and-schedule",
		starter: "horizontal-as-built",
		path: ["well", "spud"],
		value: "2025-11-01",
	},
	{ code: "definition/papers-widened", path: ["well", "prepared_by", "papers", 0], value: "handout" },
];
