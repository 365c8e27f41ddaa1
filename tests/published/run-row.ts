import { expect } from "vitest";
import { REGISTER } from "../../src/calc/register.ts";
import type { AnyFormula } from "../../src/cite/formula.ts";
import type { Known, KnownTable } from "../../src/cite/known.ts";
import { isKnownTable } from "../../src/cite/known.ts";
import { fromCanonical } from "../../src/units/convert.ts";
import { DIMENSIONS, type Dimension } from "../../src/units/dimensions.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { nearestMultiple } from "../../src/units/round-decimal.ts";
import type { Check, Row, RowInput } from "./rows.ts";

const from = {
	kind: "constant",
	name: "published check",
	source: { key: "definition" },
} as const;

interface Quantity {
	readonly value: number;
	readonly unit: string;
}

const read = (written: string | number, dimension: Dimension): Quantity => {
	const result = parseQuantity(String(written), dimension);
	if (!result.ok) throw new Error(`${written} is not a ${dimension}: ${result.reason}`);
	return result;
};

const known = (written: string | number, dimension: Dimension): Known =>
	({ dimension, value: read(written, dimension).value, from }) as Known;

const tableOf = (written: Extract<RowInput, { rows: unknown }>): KnownTable => {
	const names = Object.keys(written.columns);
	const row = (cells: readonly number[]) =>
		Object.fromEntries(
			names.map((name, i) => {
				const [dimension, unit] = written.columns[name] ?? ["", ""];
				return [name, read(`${cells[i]} ${unit}`, dimension as Dimension).value];
			}),
		);
	const columns = Object.fromEntries(names.map((name) => [name, written.columns[name]?.[0] as Dimension]));
	return { columns, rows: written.rows.map(row), from };
};

type Results = ReadonlyMap<string, Known | KnownTable>;

const given = (name: string, kind: AnyFormula["inputs"][string], written: RowInput, earlier: Results) => {
	if (typeof written === "object" && "from" in written) {
		const result = earlier.get(written.from);
		if (result === undefined) throw new Error(`${name}: no earlier check is named ${written.from}`);
		return result;
	}
	if (typeof kind === "string") {
		if (typeof written === "object") throw new Error(`${name} takes one ${kind}`);
		return known(written, kind);
	}
	if ("many" in kind) {
		if (!Array.isArray(written)) throw new Error(`${name} takes a list of ${kind.many}`);
		return written.map((one: string | number) => known(one, kind.many));
	}
	if (typeof written !== "object" || !("rows" in written)) throw new Error(`${name} takes a table`);
	return tableOf(written);
};

const branchOf = (result: Known | KnownTable): string | undefined =>
	result.from.kind === "worked" ? result.from.branch : undefined;

/** Compares one check's result with its published value; gives the names of the row's inputs that it used. */
const compare = (check: Check, formula: AnyFormula, result: Known | KnownTable): void => {
	if (check.branch !== undefined) expect(branchOf(result), "branch").toBe(check.branch);
	if (check.expected === undefined) {
		expect(check.name, "a check without an expected value must be named for a later one").toBeTruthy();
		return;
	}
	expect(check.tolerance, "tolerance").toBeGreaterThanOrEqual(0);
	const tolerance = (check.tolerance ?? 0) * (1 + 1e-9) + 1e-9;
	const [dimension, value] = cell(check, formula, result);
	const published = read(check.expected, dimension);
	const inUnit = (canonical: number) => fromCanonical(canonical, dimension, published.unit);
	const rounded = (number: number) =>
		check.rounded_to === undefined ? number : nearestMultiple(number, check.rounded_to);
	const computed = rounded(inUnit(value));
	const difference = Math.abs(computed - inUnit(published.value));
	const says = `published ${check.expected}, formula gives ${computed} ${published.unit}`;
	expect(Number.isFinite(computed), says).toBe(true);
	if (check.formula_gives === undefined) {
		expect(difference, says).toBeLessThanOrEqual(tolerance);
		return;
	}
	expect(check.why, "a disagreement says why").toBeTruthy();
	expect(difference, `marked as disagreeing, but agrees: ${says}`).toBeGreaterThan(tolerance);
	if (check.within !== undefined) expect(difference, says).toBeLessThanOrEqual(check.within + 1e-9);
	const own = inUnit(read(check.formula_gives, dimension).value);
	expect(Math.abs(computed - own), `formula_gives: ${says}`).toBeLessThanOrEqual(
		Math.max(tolerance, lastDigit(check.formula_gives) / 2 + 1e-9),
	);
};

/** One unit of the last digit written, so that `4754.0` is held to a tenth. */
const lastDigit = (written: string | number): number => {
	const decimals = /^[^.]*\.(\d+)/.exec(String(written))?.[1]?.length ?? 0;
	return 10 ** -decimals;
};

const cell = (check: Check, formula: AnyFormula, result: Known | KnownTable): [Dimension, number] => {
	if (!isKnownTable(result)) return [result.dimension, result.value];
	const column = check.column ?? "";
	const dimension = (formula.gives as Readonly<Record<string, Dimension>>)[column];
	if (dimension === undefined || !(dimension in DIMENSIONS)) throw new Error(`no column ${column}`);
	return [dimension, result.rows.at(check.row ?? -1)?.[column] ?? Number.NaN];
};

/**
 * Runs every check of a row, in order; fails on the first that does not hold.
 *
 * @returns the ids of the formulas whose result was compared with an outside value
 */
export const runRow = (row: Row): readonly string[] => {
	const results = new Map<string, Known | KnownTable>();
	const used = new Set<string>();
	const compared: string[] = [];
	for (const check of row.checks) {
		const formula = REGISTER.get(check.formula);
		if (formula === undefined) throw new Error(`no formula ${check.formula} in the register`);
		const written = { ...row.inputs, ...check.inputs };
		for (const extra of Object.keys(check.inputs ?? {}))
			if (!(extra in formula.inputs)) throw new Error(`${formula.id} takes no ${extra}`);
		const inputs = Object.fromEntries(
			Object.entries(formula.inputs).map(([name, kind]) => {
				const value = written[name];
				if (value === undefined) throw new Error(`${formula.id} needs ${name}`);
				used.add(name);
				return [name, given(name, kind, value, results)];
			}),
		);
		const result = formula.of(inputs as never);
		compare(check, formula, result);
		if (check.expected !== undefined) compared.push(formula.id);
		if (check.name !== undefined) results.set(check.name, result);
	}
	expect(Object.keys(row.inputs).filter((name) => !used.has(name))).toEqual([]);
	expect(compared.length, "a row compares something").toBeGreaterThan(0);
	return compared;
};
