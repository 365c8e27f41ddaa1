import type { Path } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import { CHECK_LIMITS, type CheckId } from "./checks.ts";
import { type Desk, isBlock, onlyKeys, outOfPlace, readWord, report, shownValue, textOf } from "./fault.ts";
import { type Condition, type Limit, type LimitLeaf, PLACE_KINDS, type PlaceKind } from "./limit.ts";
import { isMeasuredOn, MEASURE_NAMES } from "./measures.ts";
import { readEvent, readForm } from "./read-form.ts";
import { readThreshold } from "./read-threshold.ts";
import { CONTINGENT_EVENTS, FACTS, STRING_FACTS } from "./vocabulary.ts";

const readFact = (desk: Desk, raw: unknown, at: Path, holds: boolean): Condition | undefined => {
	const fact = readWord(desk, raw, at, FACTS, message("limits/thing.fact"));
	if (fact !== undefined && STRING_FACTS.includes(fact) && (desk.subject ?? "string") !== "string")
		return outOfPlace(desk, at, fact);
	return fact && { kind: "fact", fact, holds };
};

/** `{ county: [Lea, Eddy] }`, `{ field: Spraberry }`. */
const readPlace = (
	desk: Desk,
	raw: Readonly<Record<string, unknown>>,
	at: Path,
	of: PlaceKind,
): Condition | undefined => {
	if (!onlyKeys(desk, raw, at, [of])) return undefined;
	const names: readonly unknown[] = Array.isArray(raw[of]) ? raw[of] : [raw[of]];
	if (names.length > 0 && names.every((name) => typeof name === "string" && name.trim() !== ""))
		return { kind: "place", of, names: names.map(String) };
	return report(desk, {
		code: "rules/limit-form",
		at: [...at, of],
		what: message("limits/named-place.what", { of }),
		expected: message("limits/named-place.expected", { of }),
		found: shownValue(raw[of]),
		mend: message("limits/named-place.mend"),
	});
};

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * `{ event: spud, from: 2014-01-01, before: 2020-07-01 }`, with one of the two days or both. An event that most wells
 * never see may go without: `{ event: fresh-water flow }` holds once the definition dates it.
 */
const readDated = (desk: Desk, raw: Readonly<Record<string, unknown>>, at: Path): Condition | undefined => {
	if (!onlyKeys(desk, raw, at, ["event", "from", "before"])) return undefined;
	const event = readEvent(desk, raw["event"], [...at, "event"]);
	const [from, before] = [raw["from"], raw["before"]];
	const given = [from, before].filter((day) => day !== undefined);
	const alone = given.length === 0 && event !== undefined && CONTINGENT_EVENTS.includes(event);
	if (!alone && (given.length === 0 || !given.every((day) => typeof day === "string" && DAY.test(day))))
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/dated.what"),
			expected: message("limits/dated.expected"),
			found: shownValue(raw),
			mend: message("limits/dated.mend"),
		});
	return (
		event && {
			kind: "dated",
			event,
			...(from === undefined ? {} : { from: textOf(from) }),
			...(before === undefined ? {} : { before: textOf(before) }),
		}
	);
};

const readSeveral = (
	desk: Desk,
	raw: Readonly<Record<string, unknown>>,
	at: Path,
	kind: "all" | "any",
): Condition | undefined => {
	if (!onlyKeys(desk, raw, at, [kind])) return undefined;
	const parts = raw[kind];
	if (!Array.isArray(parts) || parts.length < 2)
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, kind],
			what: message("limits/several.what"),
			expected: message("limits/several.expected", { kind }),
			found: shownValue(parts),
			mend: message("limits/several.mend"),
		});
	const of = parts.map((part: unknown, i) => readCondition(desk, part, [...at, kind, i]));
	return of.every((part) => part !== undefined) ? { kind, of } : undefined;
};

/** A fact, a comparison, a place, a day, their opposite (`not`), or several of them. */
export const readCondition = (desk: Desk, raw: unknown, at: Path): Condition | undefined => {
	if (typeof raw === "string") {
		return readFact(desk, raw, at, true);
	}
	if (isBlock(raw) && "not" in raw) {
		if (!onlyKeys(desk, raw, at, ["not"])) return undefined;
		if (typeof raw["not"] === "string") return readFact(desk, raw["not"], [...at, "not"], false);
		const of = readCondition(desk, raw["not"], [...at, "not"]);
		return of && { kind: "not", of };
	}
	const place = isBlock(raw) ? PLACE_KINDS.find((each) => each in raw) : undefined;
	if (isBlock(raw) && place !== undefined) return readPlace(desk, raw, at, place);
	if (isBlock(raw) && "event" in raw) return readDated(desk, raw, at);
	const joint = isBlock(raw) ? (["all", "any"] as const).find((each) => each in raw) : undefined;
	if (isBlock(raw) && joint !== undefined) return readSeveral(desk, raw, at, joint);
	if (isBlock(raw) && "measure" in raw) {
		const threshold = readThreshold(desk, raw, at, MEASURE_NAMES, "condition");
		if (threshold !== undefined && !isMeasuredOn(threshold.measure, desk.subject ?? "string"))
			return outOfPlace(desk, [...at, "measure"], threshold.measure);
		return threshold && { kind: "threshold", threshold };
	}
	return report(desk, {
		code: "rules/limit-form",
		at,
		what: message("limits/condition-form.what"),
		expected: message("limits/condition-form.expected", {
			names: FACTS.join(", "),
		}),
		found: shownValue(raw),
		mend: message("limits/condition-form.mend"),
	});
};

const readParts = (
	desk: Desk,
	raw: Readonly<Record<string, unknown>>,
	at: Path,
	key: "all_of" | "any_of",
	check: CheckId,
): Limit | undefined => {
	const parts = raw[key];
	if (!onlyKeys(desk, raw, at, [key])) return undefined;
	if (!Array.isArray(parts) || parts.length < 2)
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, key],
			what: message("limits/parts.what"),
			expected: message("limits/parts.expected"),
			found: shownValue(parts),
			mend: message("limits/parts.mend"),
		});
	const read = parts.map((part, i) => readLimit(desk, part, [...at, key, i], check));
	if (!read.every((part) => part !== undefined)) return undefined;
	return { form: key === "all_of" ? "all of" : "any of", parts: read };
};

/**
 * A limit in one of the closed forms, as far as its check takes that form. Faults go to the desk: `rules/limit-form`
 * for words and shapes, `rules/limit-unit` for numbers.
 */
export const readLimit = (desk: Desk, raw: unknown, at: Path, check: CheckId): Limit | undefined => {
	const { forms, measures } = CHECK_LIMITS[check];
	if (!isBlock(raw))
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/limit.what"),
			expected: message("limits/limit.expected", { names: forms.join(", ") }),
			found: shownValue(raw),
			mend: message("limits/limit.mend"),
		});
	if ("all_of" in raw) return readParts(desk, raw, at, "all_of", check);
	if ("any_of" in raw) return readParts(desk, raw, at, "any_of", check);
	if ("if" in raw) {
		if (!onlyKeys(desk, raw, at, ["if", "require"])) return undefined;
		const condition = readCondition(desk, raw["if"], [...at, "if"]);
		const required = readLimit(desk, raw["require"], [...at, "require"], check);
		return condition && required && { form: "if", condition, limit: required };
	}
	const leaf: LimitLeaf | undefined =
		"measure" in raw || (measures.length === 1 && hasOperator(raw))
			? readThreshold(desk, raw, at, measures)
			: readForm(desk, raw, at);
	if (leaf !== undefined && !forms.some((form) => form === leaf.form))
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/leaf.what", { check, form: leaf.form }),
			expected: message("limits/leaf.expected", { names: forms.join(", ") }),
			mend: message("limits/leaf.mend"),
		});
	return leaf;
};

const hasOperator = (raw: Readonly<Record<string, unknown>>): boolean =>
	["at_least", "more_than", "at_most", "less_than"].some((key) => key in raw);
