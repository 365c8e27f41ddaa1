import { isTable, type Known, type KnownTable } from "../cite/known.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import type { Said } from "../messages/message.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import type { Assumption } from "../well/well.ts";
import { type ChangedEntry, changedEntries } from "./changed-entries.ts";
import type { Sides } from "./side.ts";

/** Something that a calculation starts from and that is not what it was. */
export type ChangedInput = WrittenInput | FileInput | AssumedInput;

/** An entry of the definition. */
interface WrittenInput extends ChangedEntry {
	readonly what: "entry";
	/** Written otherwise, and the same amount. */
	readonly sameAmount?: true;
}

/** A file that the definition names; of one that is named anew, the entry that names it has changed. */
interface FileInput {
	readonly what: "file";
	readonly kind: "changed";
	readonly file: string;
	/** Where the definition names it. */
	readonly at: Path;
	/** Keys of what was read from it and is not what it was. */
	readonly keys: readonly string[];
	/** Rows of its tables that are new, gone or not what they were. */
	readonly rows: number;
}

/** What was assumed because the definition is silent. */
interface AssumedInput {
	readonly what: "assumption";
	readonly kind: "changed" | "added" | "removed";
	readonly id: string;
	readonly at: Path;
	readonly from?: Said;
	readonly to?: Said;
}

/** Every input that differs: of the definition, then of the files that it names, then what is assumed in their place. */
export const changedInputs = (sides: Sides): readonly ChangedInput[] => [
	...writtenInputs(sides),
	...fileInputs(sides),
	...assumedInputs(sides),
];

type Value = Known | KnownTable;

const writtenInputs = ({ before, after }: Sides): readonly WrittenInput[] => {
	const [was, is] = [typedIn(before.index.byKey), typedIn(after.index.byKey)];
	return changedEntries(before.written, after.written).map((entry): WrittenInput => {
		const old = entry.before === undefined ? undefined : was.get(pathKey(entry.before));
		const now = entry.after === undefined ? undefined : is.get(pathKey(entry.after));
		const same = old !== undefined && now !== undefined && sameValue(old, now);
		return { what: "entry", ...entry, ...(same ? { sameAmount: true as const } : {}) };
	});
};

/** Values by the place of the definition where they are typed. */
const typedIn = (byKey: ReadonlyMap<string, Value>): ReadonlyMap<string, Value> => {
	const typed = new Map<string, Value>();
	for (const value of byKey.values())
		if (value.from.kind === "definition" && value.from.file === undefined)
			typed.set(pathKey(value.from.at), value);
	return typed;
};

const fileInputs = ({ before, after }: Sides): readonly FileInput[] => {
	const found = new Map<string, { readonly at: Path; readonly keys: string[]; rows: number }>();
	for (const key of new Set([...after.index.byKey.keys(), ...before.index.byKey.keys()])) {
		const [old, now] = [before.index.byKey.get(key), after.index.byKey.get(key)];
		const [was, is] = [fileOf(old), fileOf(now)];
		const file = is ?? was;
		// What was read from another file before, or typed, is told of where the definition says so.
		if (file === undefined || (old !== undefined && now !== undefined && was !== is)) continue;
		if (!reads(before.index.byKey, file) || !reads(after.index.byKey, file)) continue;
		if (old !== undefined && now !== undefined && sameValue(old, now)) continue;
		const given = now ?? old;
		if (given?.from.kind !== "definition") continue;
		const input = found.get(file) ?? { at: given.from.at, keys: [], rows: 0 };
		input.keys.push(key);
		input.rows += rowsThatDiffer(old, now);
		found.set(file, input);
	}
	return [...found].map(([file, input]) => ({ what: "file", kind: "changed", file, ...input }));
};

const fileOf = (value: Value | undefined): string | undefined =>
	value?.from.kind === "definition" ? value.from.file : undefined;

const known = new WeakMap<ReadonlyMap<string, Value>, ReadonlySet<string | undefined>>();

/** Whether anything was read from a file. */
const reads = (byKey: ReadonlyMap<string, Value>, file: string): boolean => {
	const files = known.get(byKey) ?? new Set([...byKey.values()].map(fileOf));
	known.set(byKey, files);
	return files.has(file);
};

const rowsThatDiffer = (old: Value | undefined, now: Value | undefined): number => {
	const [was, is] = [rowsOf(old), rowsOf(now)];
	return Array.from({ length: Math.max(was.length, is.length) }, (_, i) => i).filter((i) => {
		const [one, other] = [was[i], is[i]];
		return one === undefined || other === undefined || !sameRow(one, other);
	}).length;
};

const rowsOf = (value: Value | undefined): KnownTable["rows"] =>
	value !== undefined && isTable(value) ? value.rows : [];

type Row = Readonly<Record<string, number>>;

const sameRow = (a: Row, b: Row): boolean =>
	Object.keys(a).length === Object.keys(b).length &&
	Object.entries(a).every(([name, number]) => practicallyEqual(number, b[name] ?? Number.NaN));

/** Whether two values, or two tables row by row, are the same but for the noise of arithmetic. */
export const sameValue = (a: Value, b: Value): boolean => {
	if (isTable(a) && isTable(b))
		return a.rows.length === b.rows.length && a.rows.every((row, i) => sameRow(row, b.rows[i] ?? {}));
	if (isTable(a) || isTable(b) || a.dimension !== b.dimension) return false;
	return a.value === b.value || practicallyEqual(a.value, b.value);
};

const assumedInputs = ({ before, after }: Sides): readonly AssumedInput[] => {
	const nameOf = ({ id, at }: Assumption) => `${id} ${pathKey(at)}`;
	const [was, is] = [before.well.assumptions, after.well.assumptions].map(
		(all) => new Map(all.map((each) => [nameOf(each), each])),
	) as [Map<string, Assumption>, Map<string, Assumption>];
	return [...new Set([...is.keys(), ...was.keys()])].flatMap((name): readonly AssumedInput[] => {
		const [old, now] = [was.get(name), is.get(name)];
		const given = now ?? old;
		if (given === undefined || (old !== undefined && now !== undefined && sameAssumed(old, now))) return [];
		return [
			{
				what: "assumption",
				kind: old === undefined ? "added" : now === undefined ? "removed" : "changed",
				id: given.id,
				at: given.at,
				...(old === undefined ? {} : { from: old.what }),
				...(now === undefined ? {} : { to: now.what }),
			},
		];
	});
};

/** An assumption that holds no value is the same as long as it is made. */
const sameAssumed = (old: Assumption, now: Assumption): boolean =>
	old.value === undefined || now.value === undefined
		? old.value === now.value
		: sameValue(old.value, now.value);
