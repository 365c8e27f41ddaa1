import { type Given, isTable, type Known, type KnownTable } from "../cite/known.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import type { ChangedInput } from "./changed-inputs.ts";

/** Positions in the list of changed inputs. */
type Causes = ReadonlySet<number>;

/** Which changed inputs a value of one side rests on. */
export type CausesOf = (value: Known | KnownTable) => Causes;

const NONE: Causes = new Set();

/**
 * Follows a value to all that it was worked from, down to what was typed, read from a file or assumed. Values share
 * their inputs, so each is followed once.
 *
 * @param side  whose places the values know: list items may have moved between the two
 */
export const followed = (changed: readonly ChangedInput[], side: "before" | "after"): CausesOf => {
	const { at, above, files, assumed } = placesOf(changed, side);
	const typed = (path: Path): readonly number[] => [
		...path.flatMap((_, i) => at.get(pathKey(path.slice(0, i + 1))) ?? []),
		...(above.get(pathKey(path)) ?? []),
	];
	const own = (value: Known | KnownTable): readonly number[] => {
		const { from } = value;
		if (from.kind === "definition")
			return [...typed(from.at), ...(from.file === undefined ? [] : (files.get(from.file) ?? []))];
		return from.kind === "assumed" ? (assumed.get(from.id) ?? []) : [];
	};
	const found = new Map<Known | KnownTable, Causes>();
	const causes = (value: Known | KnownTable): Causes => {
		const before = found.get(value);
		if (before !== undefined) return before;
		const { from } = value;
		const all = new Set(own(value));
		if (from.kind === "worked")
			for (const input of Object.values(from.inputs).flatMap(valuesOf))
				for (const each of causes(input)) all.add(each);
		const set = all.size === 0 ? NONE : all;
		found.set(value, set);
		return set;
	};
	return causes;
};

/** What an input of a formula holds. */
export const valuesOf = (given: Given): readonly (Known | KnownTable)[] =>
	isSeveral(given) ? given : isTable(given) ? [given] : [given];

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);

interface Places {
	/** Inputs by the place where they stand. */
	readonly at: ReadonlyMap<string, readonly number[]>;
	/** The same by every place above that one: a depth may be read with what it is measured from. */
	readonly above: ReadonlyMap<string, readonly number[]>;
	readonly files: ReadonlyMap<string, readonly number[]>;
	readonly assumed: ReadonlyMap<string, readonly number[]>;
}

const placesOf = (changed: readonly ChangedInput[], side: "before" | "after"): Places => {
	const [at, above, files, assumed] = [0, 1, 2, 3].map(() => new Map<string, number[]>()) as [
		Map<string, number[]>,
		Map<string, number[]>,
		Map<string, number[]>,
		Map<string, number[]>,
	];
	const put = (map: Map<string, number[]>, key: string, i: number): void =>
		void map.set(key, [...(map.get(key) ?? []), i]);
	for (const [i, input] of changed.entries()) {
		if (input.what === "file") put(files, input.file, i);
		else if (input.what === "assumption") put(assumed, input.id, i);
		else {
			const path = input[side];
			if (path === undefined) continue;
			put(at, pathKey(path), i);
			for (let length = 1; length < path.length; length++) put(above, pathKey(path.slice(0, length)), i);
		}
	}
	return { at, above, files, assumed };
};
