import { indexValues } from "../cite/index-values.ts";
import { type Given, isTable, type Known } from "../cite/known.ts";
import { diagnose } from "../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import { message } from "../messages/message.ts";
import { listOf } from "../well/said.ts";
import { REGISTER } from "./register.ts";
import type { Results } from "./results.ts";
import { writtenAt } from "./written-at.ts";

/** A value that a formula gave no number for, though all that it was given are numbers. */
type Root = Known & { readonly from: Extract<Known["from"], { kind: "worked" }> };

const isNumber = (given: Known): boolean => Number.isFinite(given.value);

const scalarsOf = (given: Given): readonly Known[] =>
	Array.isArray(given) ? given : isTable(given as Known) ? [] : [given as Known];

/** The values at the bottom of one without a number; those of one formula count once. */
const rootsOf = (value: Known, seen: Set<Known>, roots: Map<string, Root>): void => {
	if (seen.has(value) || value.from.kind !== "worked") return;
	seen.add(value);
	const without = Object.values(value.from.inputs)
		.flatMap(scalarsOf)
		.filter((given) => !isNumber(given));
	if (without.length === 0 && !roots.has(value.from.formula)) roots.set(value.from.formula, value as Root);
	for (const given of without) rootsOf(given, seen, roots);
};

/** Where the first of the values was written that something was worked from, near before far. */
const placeOf = (values: readonly Known[]): Place => {
	const queue = [...values];
	const seen = new Set<Known>();
	for (const value of queue) {
		if (seen.has(value)) continue;
		seen.add(value);
		const { from } = value;
		if (from.kind === "definition") return writtenAt(value, []);
		if (from.kind === "worked") queue.push(...Object.values(from.inputs).flatMap(scalarsOf));
	}
	return { path: [] };
};

/** Inputs told with a fault. */
const MOST_INPUTS = 4;

const faultOf = (root: Root): Diagnostic => {
	const { inputs, formula } = root.from;
	const given = Object.entries(inputs).flatMap(([symbol, each]) =>
		scalarsOf(each).map((value) => [symbol, value] as const),
	);
	const said = given
		.slice(0, MOST_INPUTS)
		.map(([symbol, value]) => message("calc/symbol-and-value", { symbol, value }));
	const { name = formula, validity } = REGISTER.get(formula) ?? {};
	return diagnose("calc/outside-validity", placeOf(given.map(([, value]) => value)), {
		what: message("calc/outside-validity.no-number-comes-out-for", { name }),
		expected: validity ?? message("calc/outside-validity.values-that-formula-has-result"),
		found: message("well/any-of", { choices: listOf(said) }),
		mend: message("calc/outside-validity.correct-what-it-is-worked"),
	});
};

/**
 * One fault for each formula that was left without a number by what it was given, so that no paper is made of it: most
 * topics note such a gap where they meet it; this is the net below them.
 */
export const validityFaults = (results: Results): readonly Diagnostic[] => {
	const [seen, roots] = [new Set<Known>(), new Map<string, Root>()];
	for (const value of indexValues({ results }).byKey.values())
		if (!isTable(value) && !isNumber(value)) rootsOf(value, seen, roots);
	return [...roots.values()].map(faultOf);
};
