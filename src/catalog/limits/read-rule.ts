import * as z from "zod";
import type { Path } from "../../diagnostics/path.ts";
import { PAPERS } from "../../document/document.ts";
import { type Desk, isBlock, mendWord, onlyKeys, readWord, readWords, report, shownValue } from "./fault.ts";
import { type AppliesTo, COPY_KINDS, IN_FORCE_BY, type Rule, STANDINGS, WAYS_KNOWN } from "./limit.ts";
import { readCondition, readLimit } from "./read-limit.ts";
import { CHECK_IDS, CHECK_LIMITS, SETBACK_KINDS, STRING_SELECTORS } from "./vocabulary.ts";

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
	tell: z.exactOptional(z.array(z.enum(PAPERS)).min(1)),
	note: z.exactOptional(sentence),
});

/** Shapes that a rules file must have: every fault of `issues` becomes one located diagnostic. */
export const reportShape = (
	desk: Desk,
	issues: readonly z.core.$ZodIssue[],
	at: Path,
	raw: unknown,
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
					? `"${strange}" has no meaning here`
					: value === undefined
						? `${String(path.at(-1))} is missing`
						: `${String(path.at(-1))} is not written as a rules file has it`,
			expected: expectation(issue, String(path.at(-1))),
			...(value === undefined || strange !== undefined ? {} : { found: shownValue(value) }),
			mend:
				strange !== undefined
					? "take it out, or spell it as the file's layout has it"
					: "write it as expected; write unknown for a date that is not known",
		});
	}
	return undefined;
};

/** What is due, by the key: the shape alone would say "a string". */
const DUE: Readonly<Record<string, string>> = {
	jurisdiction: "a code of lower-case words joined by hyphens, such as us-tx",
	id: "an id of lower-case letters, digits, dots and hyphens, beginning with the code of the file",
	limit: "a limit, such as { measure: …, at_least: … }",
	check: "the name of a check (`casebound list checks`)",
	requirement: "one sentence in your own words",
	citation: "the section and its paragraph, in quotes where it has a colon",
	official_text: "{ text: the whole paragraph, dated: year-month-day }",
	public_copy: "{ at: address, dated: year-month-day, kind: …, read: which part }",
	how_known: "{ way: read, of: what was read }",
	in_force: "{ from: year-month-day or unknown }",
	rules: "a list of rows",
};

const expectation = (issue: z.core.$ZodIssue, key: string): string => {
	if (issue.code === "unrecognized_keys") return "only the keys that the layout of rules files names";
	if (issue.code === "invalid_value") return `one of: ${issue.values.map(String).join(", ")}`;
	const due = DUE[key];
	if (due !== undefined) return due;
	if (issue.code === "invalid_type")
		return ["object", "array", "number", "boolean"].includes(issue.expected)
			? { object: "a block", array: "a list", number: "a number", boolean: "true or false" }[
					issue.expected as "object"
				]
			: "some text";
	if (issue.code === "invalid_union" || issue.code === "invalid_format")
		return "a date written year-month-day, or the word unknown";
	return "some text";
};

const APPLIES_KEYS = ["string", "annulus", "neighbor", "when"];

const readAppliesTo = (desk: Desk, raw: unknown, at: Path): AppliesTo | undefined => {
	const block = raw ?? {};
	if (!isBlock(block))
		return report(desk, {
			code: "rules/file-shape",
			at,
			what: "what the rule applies to is not a block",
			expected: `a block with any of: ${APPLIES_KEYS.join(", ")}`,
			found: shownValue(raw),
			mend: "write it as a block, such as { string: surface }",
		});
	if (!onlyKeys(desk, block, at, APPLIES_KEYS)) return undefined;
	const before = desk.faults.length;
	const strings =
		block["string"] === undefined
			? []
			: readWords(desk, block["string"], [...at, "string"], STRING_SELECTORS, "a kind of string");
	const neighbors =
		block["neighbor"] === undefined
			? []
			: readWords(desk, block["neighbor"], [...at, "neighbor"], SETBACK_KINDS, "a kind of neighbor");
	const between = block["annulus"] ?? {};
	const sides = isBlock(between) ? between : {};
	onlyKeys(desk, sides, [...at, "annulus"], ["inside", "outside"]);
	const roleAt = (key: "inside" | "outside") =>
		sides[key] === undefined
			? undefined
			: readWord(desk, sides[key], [...at, "annulus", key], STRING_SELECTORS, "a kind of string");
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
			what: `a rule for the check ${check} does not say which ${subject} it applies to`,
			expected:
				subject === "string" ? "applies_to: { string: surface }" : "applies_to: { neighbor: dwelling }",
			mend: `name the ${subject}s`,
		});
	return short;
};

/** One row of a rules file. Faults: `rules/file-shape`, `unknown-check`, `standing`, `limit-form`, `limit-unit`. */
export const readRule = (plain: Desk, raw: unknown, at: Path): Rule | undefined => {
	const row = rowShape.safeParse(raw);
	if (!row.success) return reportShape(plain, row.error.issues, at, raw);
	const { data } = row;
	const check = CHECK_IDS.find((id) => id === data.check);
	if (check === undefined)
		return report(plain, {
			code: "rules/unknown-check",
			at: [...at, "check"],
			what: `there is no check called "${data.check}"`,
			expected: `one of: ${CHECK_IDS.join(", ")}`,
			mend: mendWord(
				data.check,
				CHECK_IDS,
				"name a check of the list; a new kind of limit needs a check written for it",
			),
		});
	const desk: Desk = { ...plain, subject: CHECK_LIMITS[check].subject };
	if (data.standing === "compared" && data.official_text === undefined)
		return report(desk, {
			code: "rules/standing",
			at: [...at, "standing"],
			what: "the row says that it was compared, and carries no official text with its date",
			expected: "official_text: { text: the whole paragraph, dated: year-month-day }",
			found: data.standing,
			mend: "add the whole official paragraph with its date, or write not compared",
		});
	const { from, to } = data.in_force;
	if (to !== undefined && from !== "unknown" && to < from)
		return report(desk, {
			code: "rules/date",
			at: [...at, "in_force", "to"],
			what: "the rule goes out of force before it comes into force",
			expected: `a day on or after ${from}`,
			found: to,
			mend: "change the two round, if that is meant",
		});
	const named = data.public_copy !== undefined;
	if (named !== (data.standing === "compared with a public copy"))
		return report(desk, {
			code: "rules/standing",
			at: [...at, "standing"],
			what: named
				? "the row names a public copy, and its standing does not say that it was compared with it"
				: "the row says that it was compared with a public copy, and names none",
			expected: "standing: compared with a public copy, and public_copy: { at, dated, kind, read }",
			found: data.standing,
			mend: named ? "write the standing, or take the copy out" : "name the copy, or write not compared",
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
		...(if_not_met === undefined ? {} : { ifNotMet: if_not_met }),
	};
};
