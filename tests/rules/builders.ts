import { readFileSync } from "node:fs";
import { calculate } from "../../src/calc/calculate.ts";
import type { Results } from "../../src/calc/results.ts";
import type { Jurisdiction, Rule } from "../../src/catalog/limits/limit.ts";
import { readJurisdiction } from "../../src/catalog/limits/read-jurisdiction.ts";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { validate } from "../../src/definition/validate.ts";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { resolveWell } from "../../src/well/resolve-well.ts";
import type { Well } from "../../src/well/well.ts";
import { told } from "../told.ts";
import { judged as judge, type Told } from "./told.ts";

const ROOT = new URL("../../", import.meta.url);
const BASE = readFileSync(new URL("fixtures/wells/limits.yaml", ROOT), "utf8");
const shipped = loadCatalog().value;

/** A change of the written well before it is read: a value set, or an entry taken out. */
export interface Edit {
	readonly at: Path;
	readonly to?: unknown;
}

export const set = (path: string, to: unknown): Edit => ({ at: steps(path), to });
export const without = (path: string): Edit => ({ at: steps(path) });

const steps = (path: string): Path =>
	path.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** A well that is kicked off at 6,000 ft and runs level, where the fixture has a straight one. */
export const KICKED: readonly Edit[] = [
	set("trajectory.plan", {
		kickoff: "6000 ft",
		build: "10 deg/100 ft",
		azimuth: "0 deg",
		landing_inclination: "90 deg",
		lateral: "2000 ft",
	}),
	set("holes.3.to", "8900 ft"),
	set("casing.3.pipe.0.to", "8890 ft"),
	set("casing.3.cement.slurries.0.to", "8890 ft"),
	set("stimulation.stages.interval", { from: "8000 ft", to: "8100 ft" }),
];

const apply = (tree: unknown, { at, to }: Edit): void => {
	const last = at.at(-1);
	const parent = at.slice(0, -1).reduce<unknown>((node, step) => Reflect.get(node as object, step), tree);
	if (last === undefined || typeof parent !== "object" || parent === null)
		throw new Error(`nothing stands at ${at.join(".")}`);
	if (to === undefined && !(last in parent)) throw new Error(`nothing to take out at ${at.join(".")}`);
	if (to !== undefined) Reflect.set(parent, last, to);
	else if (Array.isArray(parent) && typeof last === "number") parent.splice(last, 1);
	else Reflect.deleteProperty(parent, last);
};

/** The round-numbered well of `fixtures/wells/limits.yaml`, changed, understood and calculated. */
export const wellWith = (...edits: readonly Edit[]): Understood => {
	const key = JSON.stringify(edits);
	const known = understood.get(key) ?? understand(edits);
	understood.set(key, known);
	return known;
};

interface Understood {
	readonly well: Well;
	readonly results: Results;
}

const understood = new Map<string, Understood>();

const understand = (edits: readonly Edit[]): Understood => {
	const tree = structuredClone(plain(readYaml(BASE, "limits.yaml").value?.value));
	for (const edit of edits) apply(tree, edit);
	const definition = validate(tree);
	if (definition.value === undefined || shipped === undefined)
		throw new Error(
			definition.diagnostics.map(({ what, at }) => `${at.path.join(".")}: ${told(what)}`).join("; "),
		);
	const { value: well } = resolveWell(definition.value, shipped, () => {
		throw new Error("the well names no files");
	});
	const results = well && calculate(well).value;
	if (well === undefined || results === undefined) throw new Error("the well cannot be calculated");
	return { well, results };
};

/** `readYaml` gives maps without a prototype, which cannot be cloned as they stand. */
const plain = (value: unknown): unknown => {
	if (Array.isArray(value)) return value.map(plain);
	if (typeof value !== "object" || value === null) return value;
	return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, plain(each)]));
};

/** A row with what every row must have, and the parts a test is about. */
export const row = (parts: Readonly<Record<string, unknown>>): Record<string, unknown> => ({
	id: "xx-one.rule",
	requirement: "Made up for a test.",
	citation: "Made-up Code § 1",
	standing: "not compared",
	how_known: { way: "memory" },
	text_as_of: "unknown",
	in_force: { from: "unknown" },
	...parts,
});

export const read = (
	rows: readonly Readonly<Record<string, unknown>>[],
	more: Readonly<Record<string, unknown>> = {},
): { readonly value?: Jurisdiction; readonly diagnostics: readonly Diagnostic[] } =>
	readJurisdiction(
		{
			jurisdiction: "xx-one",
			name: "Made-up State",
			kind: "state",
			agency: "Made-up Agency",
			...more,
			rules: rows,
		},
		"made-up.yaml",
	);

/** The only row of a jurisdiction that reads without fault. */
export const rule = (
	parts: Readonly<Record<string, unknown>>,
): Jurisdiction & { readonly rules: readonly [Rule] } => {
	const { value, diagnostics } = read([row(parts)]);
	const [only] = value?.rules ?? [];
	if (value === undefined || only === undefined)
		throw new Error(diagnostics.map(({ what, at }) => `${at.path.join(".")}: ${told(what)}`).join("; "));
	return { ...value, rules: [only] };
};

/** Findings of one made-up row on the changed well. */
export const findings = (
	parts: Readonly<Record<string, unknown>>,
	...edits: readonly Edit[]
): readonly Told[] => {
	const { well, results } = wellWith(...edits);
	return judge(well, results, [rule(parts)]).findings.filter(({ cite }) => cite.jurisdiction !== "permit");
};

/** The one finding of a row that is asked of one thing. */
export const finding = (parts: Readonly<Record<string, unknown>>, ...edits: readonly Edit[]): Told => {
	const all = findings(parts, ...edits);
	const [only] = all;
	if (only === undefined || all.length > 1) throw new Error(`${all.length} findings, not one`);
	return only;
};
