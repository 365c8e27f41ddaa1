import * as z from "zod";
import type { Path } from "../../diagnostics/path.ts";
import { READER_PAPERS } from "../../document/document.ts";
import { type Message, message, type Said } from "../../messages/message.ts";
import { CHECK_IDS, CHECK_LIMITS } from "./checks.ts";
import {
	type Desk,
	isBlock,
	mendWord,
	onlyKeys,
	readWord,
	readWords,
	report,
	shownValue,
	textOf,
} from "./fault.ts";
import { type AppliesTo, COPY_KINDS, IN_FORCE_BY, type Rule, STANDINGS, WAYS_KNOWN } from "./limit.ts";
import { readCondition, readLimit } from "./read-limit.ts";
import { FORM_TOPICS, SETBACK_KINDS, STRING_SELECTORS } from "./vocabulary.ts";

const sentence = z.string().trim().min(1);
const day = z.union([z.iso.date(), z.literal("unknown")]);

export const howKnownShape = z.strictObject({
	way: z.enum(WAYS_KNOWN),
	of: z.exactOptional(sentence),
	confidence: z.exactOptional(z.enum(["high", "medium", "low"])),
});

const rowShape = z.strictObject({
	id: z.string().regex(/^[a-z0-9]+(?:[.-][a-z0-9]+)*$/),
	check: z.string(),
	applies_to: z.exactOptional(z.unknown()),
	limit: z.unknown(),
	requirement: sentence,
	citation: sentence,
	standing: z.enum(STANDINGS),
	official_text: z.exactOptional(z.strictObject({ text: sentence, dated: z.iso.date() })),
	public_copy: z.exactOptional(
		z.strictObject({
			at: sentence,
			dated: day,
			kind: z.enum(COPY_KINDS),
			read: sentence,
			differed: z.exactOptional(sentence),
		}),
	),
	sought: z.exactOptional(sentence),
	forms: z.exactOptional(z.array(sentence).min(1)),
	filled_from: z.exactOptional(z.array(z.enum(FORM_TOPICS)).min(1)),
	how_known: howKnownShape,
	text_as_of: day,
	in_force: z.strictObject({
		from: day,
		to: z.exactOptional(z.iso.date()),
		by: z.exactOptional(z.enum(IN_FORCE_BY)),
	}),
	replaces: z.exactOptional(sentence),
	soft: z.exactOptional(sentence),
	unless: z.exactOptional(sentence),
	if_not_met: z.exactOptional(z.literal("needs judgement")),
	confirm: z.exactOptional(z.unknown()),
	stop: z.exactOptional(z.array(z.string()).min(1)),
	tell: z.exactOptional(z.array(z.enum(READER_PAPERS)).min(1)),
	note: z.exactOptional(sentence),
});

/** Shapes that a rules file must have: every fault of `issues` becomes one located diagnostic. */
export const reportShape = (
	desk: Desk,
	issues: readonly z.core.$ZodIssue[],
	at: Path,
	raw: unknown,
	/** Keys of the whole block. */
	keys: readonly string[],
): undefined => {
	for (const issue of issues) {
		const path = [...at, ...issue.path.filter((step) => typeof step !== "symbol")];
		const strange = issue.code === "unrecognized_keys" ? issue.keys[0] : undefined;
		const value = issue.path.reduce<unknown>(
			(node, step) => (typeof node === "object" && node !== null ? Reflect.get(node, step) : undefined),
			raw,
		);
		report(desk, {
			code: "rules/file-shape",
			at: strange === undefined ? path : [...path, strange],
			key: strange !== undefined,
			what:
				strange !== undefined
					? message("limits/key.what", { key: strange })
					: value === undefined
						? message("limits/shape.missing", { key: String(path.at(-1)) })
						: path.length === 0
							? message("limits/shape.no-block")
							: message("limits/shape.wrong", { key: String(path.at(-1)) }),
			expected: expectation(issue, path, keys),
			...(value === undefined || strange !== undefined ? {} : { found: shownValue(value) }),
			mend: mendOf(issue, path, value, keys),
		});
	}
	return undefined;
};

/** Keys of the blocks inside a row or a head, by the key that holds them. */
const INSIDE: Readonly<Record<string, readonly string[]>> = {
	official_text: ["text", "dated"],
	public_copy: ["at", "dated", "kind", "read", "differed"],
	how_known: ["way", "of", "confidence"],
	in_force: ["from", "to", "by"],
	holidays: ["covers", "dates", "how_known"],
};

const keysAt = (path: Path, keys: readonly string[]): readonly string[] =>
	INSIDE[String(path.at(-1))] ?? keys;

/** What to do about a fault: the word or key that is near, the key that is missing, or the form of a date. */
const mendOf = (issue: z.core.$ZodIssue, path: Path, value: unknown, keys: readonly string[]): Message => {
	if (issue.code === "unrecognized_keys")
		return mendWord(issue.keys[0], keysAt(path, keys), message("limits/shape.strange-mend"));
	if (value === undefined) return message("limits/shape.add", { key: String(path.at(-1)) });
	if (issue.code === "invalid_value")
		return mendWord(textOf(value).toLowerCase(), issue.values.map(String), message("limits/word.mend"));
	return issue.code === "invalid_union" || issue.code === "invalid_format"
		? message("limits/shape.mend")
		: message("limits/shape.form-mend");
};

/** What is due, by the key: the shape alone would say "a string". */
const DUE: Readonly<Record<string, Message>> = {
	jurisdiction: message("limits/due.jurisdiction"),
	id: message("limits/due.id"),
	limit: message("limits/due.limit"),
	check: message("limits/due.check"),
	requirement: message("limits/due.requirement"),
	citation: message("limits/due.citation"),
	official_text: message("limits/due.official-text"),
	public_copy: message("limits/due.public-copy"),
	how_known: message("limits/due.how-known"),
	in_force: message("limits/due.in-force"),
	rules: message("limits/due.rules"),
};

const TYPES: Readonly<Record<string, Message>> = {
	object: message("limits/type.object"),
	array: message("limits/type.array"),
	number: message("limits/type.number"),
	boolean: message("limits/type.boolean"),
};

const expectation = (issue: z.core.$ZodIssue, path: Path, keys: readonly string[]): Said => {
	const key = String(path.at(-1));
	if (issue.code === "unrecognized_keys")
		return message("source/one-of", { names: keysAt(path, keys).join(", ") });
	if (issue.code === "invalid_value")
		return message("source/one-of", { names: issue.values.map(String).join(", ") });
	const due = DUE[key];
	if (due !== undefined) return due;
	if (issue.code === "invalid_type") return TYPES[issue.expected] ?? message("limits/type.text");
	if (issue.code === "invalid_union" || issue.code === "invalid_format") return message("limits/type.date");
	return message("limits/type.text");
};

const APPLIES_KEYS = ["string", "annulus", "neighbor", "when"];

const readAppliesTo = (desk: Desk, raw: unknown, at: Path): AppliesTo | undefined => {
	const block = raw ?? {};
	if (!isBlock(block))
		return report(desk, {
			code: "rules/file-shape",
			at,
			what: message("limits/applies.what"),
			expected: message("limits/applies.expected", { names: APPLIES_KEYS.join(", ") }),
			found: shownValue(raw),
			mend: message("limits/applies.mend"),
		});
	if (!onlyKeys(desk, block, at, APPLIES_KEYS)) return undefined;
	const before = desk.faults.length;
	const strings =
		block["string"] === undefined
			? []
			: readWords(
					desk,
					block["string"],
					[...at, "string"],
					STRING_SELECTORS,
					message("limits/thing.string-kind"),
				);
	const neighbors =
		block["neighbor"] === undefined
			? []
			: readWords(
					desk,
					block["neighbor"],
					[...at, "neighbor"],
					SETBACK_KINDS,
					message("limits/thing.neighbor-kind"),
				);
	const between = block["annulus"] ?? {};
	const sides = isBlock(between) ? between : {};
	onlyKeys(desk, sides, [...at, "annulus"], ["inside", "outside"]);
	const roleAt = (key: "inside" | "outside") =>
		sides[key] === undefined
			? undefined
			: readWord(
					desk,
					sides[key],
					[...at, "annulus", key],
					STRING_SELECTORS,
					message("limits/thing.string-kind"),
				);
	const [inside, outside] = [roleAt("inside"), roleAt("outside")];
	const listed =
		block["when"] === undefined ? [] : Array.isArray(block["when"]) ? block["when"] : [block["when"]];
	const when = listed.map((condition, i) =>
		readCondition(desk, condition, Array.isArray(block["when"]) ? [...at, "when", i] : [...at, "when"]),
	);
	if (desk.faults.length > before) return undefined;
	return {
		strings: strings ?? [],
		neighbors: neighbors ?? [],
		...(inside === undefined && outside === undefined
			? {}
			: {
					annulus: {
						...(inside === undefined ? {} : { inside }),
						...(outside === undefined ? {} : { outside }),
					},
				}),
		when: when.filter((condition) => condition !== undefined),
	};
};

/** What a check is made on has to be said where it is one of several. */
const subjectFault = (
	desk: Desk,
	applies: AppliesTo,
	check: keyof typeof CHECK_LIMITS,
	at: Path,
): boolean => {
	const { subject } = CHECK_LIMITS[check];
	const short =
		(subject === "string" && applies.strings.length === 0) ||
		(subject === "neighbor" && applies.neighbors.length === 0);
	if (short)
		report(desk, {
			code: "rules/file-shape",
			at: [...at, "applies_to"],
			what: message(subject === "string" ? "limits/applies.lacks-string" : "limits/applies.lacks-neighbor", {
				check,
			}),
			expected:
				subject === "string" ? "applies_to: { string: surface }" : "applies_to: { neighbor: dwelling }",
			mend: message(subject === "string" ? "limits/applies.name-strings" : "limits/applies.name-neighbors"),
		});
	return short;
};

/** One row of a rules file. Faults: `rules/file-shape`, `unknown-check`, `standing`, `limit-form`, `limit-unit`. */
export const readRule = (plain: Desk, raw: unknown, at: Path): Rule | undefined => {
	const row = rowShape.safeParse(raw);
	if (!row.success) return reportShape(plain, row.error.issues, at, raw, Object.keys(rowShape.shape));
	const { data } = row;
	const check = CHECK_IDS.find((id) => id === data.check);
	if (check === undefined)
		return report(plain, {
			code: "rules/unknown-check",
			at: [...at, "check"],
			what: message("limits/check.what", { check: data.check }),
			expected: message("source/one-of", { names: CHECK_IDS.join(", ") }),
			mend: mendWord(data.check, CHECK_IDS, message("limits/check.new")),
		});
	const desk: Desk = { ...plain, subject: CHECK_LIMITS[check].subject };
	if (data.standing === "compared" && data.official_text === undefined)
		return report(desk, {
			code: "rules/standing",
			at: [...at, "standing"],
			what: message("limits/compared.what"),
			expected: message("limits/compared.expected"),
			found: data.standing,
			mend: message("limits/compared.mend"),
		});
	const { from, to } = data.in_force;
	if (to !== undefined && from !== "unknown" && to < from)
		return report(desk, {
			code: "rules/date",
			at: [...at, "in_force", "to"],
			what: message("limits/in-force.what"),
			expected: message("limits/in-force.expected", { from }),
			found: to,
			mend: message("limits/clamp.mend"),
		});
	const named = data.public_copy !== undefined;
	if (named !== (data.standing === "compared with a public copy"))
		return report(desk, {
			code: "rules/standing",
			at: [...at, "standing"],
			what: named ? message("limits/copy.unsaid") : message("limits/copy.unnamed"),
			expected: message("limits/copy.expected"),
			found: data.standing,
			mend: named ? message("limits/copy.say") : message("limits/copy.name"),
		});
	const appliesTo = readAppliesTo(desk, data.applies_to, [...at, "applies_to"]);
	if (appliesTo !== undefined && subjectFault(desk, appliesTo, check, at)) return undefined;
	const limit = readLimit(desk, data.limit, [...at, "limit"], check);
	const confirm =
		data.confirm === undefined ? undefined : readLimit(desk, data.confirm, [...at, "confirm"], check);
	if (appliesTo === undefined || limit === undefined) return undefined;
	if (data.confirm !== undefined && confirm === undefined) return undefined;
	const {
		official_text,
		public_copy,
		how_known,
		text_as_of,
		in_force,
		if_not_met,
		filled_from,
		applies_to: _applies,
		confirm: _confirm,
		...rest
	} = data;
	return {
		...rest,
		check,
		appliesTo,
		limit,
		...(confirm === undefined ? {} : { confirm }),
		howKnown: how_known,
		textAsOf: text_as_of,
		inForce: in_force,
		...(official_text === undefined ? {} : { officialText: official_text }),
		...(public_copy === undefined ? {} : { publicCopy: public_copy }),
		...(filled_from === undefined ? {} : { filledFrom: filled_from }),
		...(if_not_met === undefined ? {} : { ifNotMet: if_not_met }),
	};
};
