import { isRating } from "../cite/is-rating.ts";
import { isTable, type Known, type KnownTable } from "../cite/known.ts";
import { quantityString, type UnitSystem } from "../units/format.ts";
import { type CausesOf, valuesOf } from "./causes.ts";
import { sameValue } from "./changed-inputs.ts";
import type { Sides } from "./side.ts";

type Value = Known | KnownTable;

/** A result that is not what it was: both states of it, or the one that there is. */
export interface MovedResult {
	readonly key: string;
	readonly before?: Value;
	readonly after?: Value;
	/** Changed inputs that it rests on, by position. */
	readonly causes: readonly number[];
	/** The causes are choices, such as a grade: no value holds them, and the result may rest on any one of them. */
	readonly byChoice?: true;
	/** Rows of shipped tables that it rests on now and did not before: a grade in words picks them. */
	readonly rows: readonly string[];
}

export interface MovedResults {
	readonly moved: readonly MovedResult[];
	/** How many results both states have and were laid side by side. */
	readonly compared: number;
	/** How many differ by less than is printed. */
	readonly smaller: number;
}

/**
 * Results that moved beyond what rounding prints, in the order of the well, each once: a value that two places share is
 * told under its own key. What was typed is no result, and numbers inside verdicts are told with their verdicts.
 */
export const movedResults = (
	{ before, after, units }: Sides,
	causes: { readonly before: CausesOf; readonly after: CausesOf },
	choices: readonly number[],
): MovedResults => {
	const moved: MovedResult[] = [];
	const told = new Set<Value>();
	let [compared, smaller] = [0, 0];
	for (const key of new Set([...after.index.byKey.keys(), ...before.index.byKey.keys()])) {
		if (key.startsWith("findings.")) continue;
		const [old, now] = [before.index.byKey.get(key), after.index.byKey.get(key)];
		const given = now ?? old;
		if (given === undefined || told.has(given)) continue;
		told.add(given);
		if (isTyped(old) || isTyped(now)) continue;
		if (old !== undefined && now !== undefined) {
			compared++;
			if (sameValue(old, now)) continue;
			if (!isToBeSeen(old, now, units)) {
				smaller++;
				continue;
			}
		}
		const traced = sorted([
			...(old === undefined ? [] : causes.before(old)),
			...(now === undefined ? [] : causes.after(now)),
		]);
		moved.push({
			key,
			...(old === undefined ? {} : { before: old }),
			...(now === undefined ? {} : { after: now }),
			causes: traced.length === 0 ? choices : traced,
			...(traced.length === 0 && choices.length > 0 ? { byChoice: true as const } : {}),
			rows: now === undefined ? [] : newRows(old, now),
		});
	}
	return { moved, compared, smaller };
};

const sorted = (positions: readonly number[]): readonly number[] =>
	[...new Set(positions)].sort((a, b) => a - b);

const isTyped = (value: Value | undefined): boolean => value?.from.kind === "definition";

/** Rounding of a value where papers print it with fewer digits than its dimension has. */
export const roundingOf = (value: Known): { readonly nearest?: number } =>
	isRating(value) ? { nearest: 10 } : {};

/** A value as it is printed; nothing where it is no number that can be. */
export const printed = (value: Known, units: UnitSystem): string | undefined =>
	Number.isFinite(value.value)
		? quantityString({ dimension: value.dimension, value: value.value, style: roundingOf(value) }, units)
		: undefined;

/**
 * Keys of the later state, as papers carry them, whose value prints differently or was not there before: what was typed
 * as well as what was worked.
 */
export const keysThatMoved = ({ before, after, units }: Sides): ReadonlySet<string> => {
	const keys = new Set<string>();
	for (const [key, now] of after.index.byKey) {
		if (key.startsWith("findings.")) continue;
		const old = before.index.byKey.get(key);
		if (old !== undefined && (sameValue(old, now) || !isToBeSeen(old, now, units))) continue;
		keys.add(after.index.keyOf(now) ?? key);
	}
	return keys;
};

/** Whether two states print differently; of tables, whether any row does. */
const isToBeSeen = (old: Value, now: Value, units: UnitSystem): boolean => {
	if (isTable(old) !== isTable(now)) return true;
	if (!isTable(old) || !isTable(now)) return printed(old as Known, units) !== printed(now as Known, units);
	if (old.rows.length !== now.rows.length) return true;
	return old.rows.some((row, i) =>
		Object.entries(old.columns).some(([name, dimension]) => {
			const cells = [row[name], now.rows[i]?.[name]].map((value) =>
				printed({ dimension, value, from: old.from } as Known, units),
			);
			return cells[0] !== cells[1];
		}),
	);
};

/** Rows of shipped tables and constants behind a value, each with its figure. */
const rowsBehind = (value: Value): ReadonlySet<string> => {
	const known = behind.get(value);
	if (known !== undefined) return known;
	const rows = new Set<string>();
	const { from } = value;
	if (from.kind === "catalogue") rows.add(`${from.table}: ${from.row}, ${from.column}`);
	if (from.kind === "worked")
		for (const input of Object.values(from.inputs).flatMap(valuesOf))
			for (const row of rowsBehind(input)) rows.add(row);
	behind.set(value, rows);
	return rows;
};

/** Values share their inputs: each is followed once, and forgotten with its well. */
const behind = new WeakMap<Value, ReadonlySet<string>>();

const newRows = (old: Value | undefined, now: Value): readonly string[] => {
	const was = old === undefined ? new Set<string>() : rowsBehind(old);
	return [...rowsBehind(now)].filter((row) => !was.has(row));
};
