import type { Origin } from "../../cite/known.ts";
import type { Code } from "../../diagnostics/codes.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import type { Path } from "../../diagnostics/path.ts";
import { type Message, message, type Said } from "../../messages/message.ts";
import type { SubjectKind } from "./measures.ts";

export interface Fault {
	readonly code: Code;
	readonly at: Path;
	/** Point at the key rather than at its value. */
	readonly key?: boolean;
	readonly what: Said;
	readonly expected: Said;
	readonly found?: Said;
	readonly mend: Said;
}

/** Where a limit is read from: it names its file, gives each number its origin, and gathers the faults. */
export interface Desk {
	/** Of a shipped or user's rules file; absent for the conditions in the definition itself. */
	readonly file?: string;
	readonly originOf: (at: Path, text: string) => Origin;
	/** What the row's check is made on: other measures and facts have no meaning in it. */
	readonly subject?: SubjectKind;
	readonly faults: Diagnostic[];
}

/** Files a fault and gives nothing, so that a reader can `return report(…)`. */
export const report = (desk: Desk, fault: Fault): undefined => {
	const { code, at, key, what, expected, found, mend } = fault;
	desk.faults.push({
		code,
		severity: "error",
		at: {
			path: at,
			...(desk.file === undefined ? {} : { file: desk.file }),
			...(key === undefined ? {} : { key }),
		},
		what,
		expected,
		...(found === undefined ? {} : { found }),
		mend,
	});
	return undefined;
};

/** A value as it stands in the file, short enough for a message. */
export const shownValue = (value: unknown): Said => {
	const text = typeof value === "string" ? value : JSON.stringify(value);
	return text === undefined ? message("limits/nothing") : text.length > 80 ? `${text.slice(0, 77)}…` : text;
};

/** A value as text: a block or a list where a word belongs is shown as what it holds, and matches no word. */
export const textOf = (value: unknown): string =>
	typeof value === "object" && value !== null ? JSON.stringify(value) : String(value);

export const isBlock = (value: unknown): value is Readonly<Record<string, unknown>> =>
	typeof value === "object" && value !== null && !Array.isArray(value);

/** The word probably meant, or what to do where none is near. */
export const mendWord = (found: unknown, words: readonly string[], otherwise: Message): Message => {
	const near = typeof found === "string" ? nearestName(found, words) : undefined;
	return near === undefined ? otherwise : message("limits/near.mend", { near });
};

/** Refuses keys that are not in the list; true where there were none. */
export const onlyKeys = (
	desk: Desk,
	block: Readonly<Record<string, unknown>>,
	at: Path,
	allowed: readonly string[],
): boolean => {
	const strange = Object.keys(block).filter((key) => !allowed.includes(key));
	for (const key of strange)
		report(desk, {
			code: "rules/limit-form",
			at: [...at, key],
			key: true,
			what: message("limits/key.what", { key }),
			expected: message("source/one-of", { names: allowed.join(", ") }),
			mend: mendWord(key, allowed, message("limits/key.mend", { key })),
		});
	return strange.length === 0;
};

/** One word of a closed list. */
export const readWord = <W extends string>(
	desk: Desk,
	value: unknown,
	at: Path,
	words: readonly W[],
	thing: Message,
): W | undefined => {
	const found = words.find((word) => word === value);
	return (
		found ??
		report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/word.what", { thing }),
			expected: message("source/one-of", { names: words.join(", ") }),
			found: shownValue(value),
			mend: mendWord(value, words, message("limits/word.mend")),
		})
	);
};

/** A list of words of a closed list; one word alone is a list of one. */
export const readWords = <W extends string>(
	desk: Desk,
	value: unknown,
	at: Path,
	words: readonly W[],
	thing: Message,
): readonly W[] | undefined => {
	const list = Array.isArray(value) ? value : [value];
	const read = list.map((item, i) =>
		readWord(desk, item, Array.isArray(value) ? [...at, i] : at, words, thing),
	);
	return read.every((word) => word !== undefined) ? read : undefined;
};

/** What a check is made on, in the reader's words. */
export const ON: Readonly<Record<SubjectKind, Message>> = {
	string: message("limits/subject.string"),
	annulus: message("limits/subject.annulus"),
	neighbor: message("limits/subject.neighbor"),
	well: message("limits/subject.well"),
	hole: message("limits/subject.hole"),
	stack: message("limits/subject.stack"),
	"offset well": message("limits/subject.offset-well"),
};

/** Refuses a measure, a fact or a form that has no meaning for what the row's check is made on. */
export const outOfPlace = (desk: Desk, at: Path, word: string): undefined =>
	report(desk, {
		code: "rules/limit-form",
		at,
		what: message("limits/place.what", { word, subject: ON[desk.subject ?? "well"] }),
		expected: message("limits/place.expected"),
		found: word,
		mend: message("limits/place.mend"),
	});
