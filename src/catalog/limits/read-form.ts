import type { Path } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import {
	type Desk,
	isBlock,
	ON,
	onlyKeys,
	readWord,
	readWords,
	report,
	shownValue,
	textOf,
} from "./fault.ts";
import {
	type CentralizerPattern,
	type Deadline,
	type LimitLeaf,
	SPAN_UNITS,
	type SpanUnit,
} from "./limit.ts";
import { readQuantity } from "./read-amount.ts";
import { COVERED, EVENTS, type EventName, FIELDS, MEASURED_FROM, STRING_EVENTS } from "./vocabulary.ts";

type Block = Readonly<Record<string, unknown>>;

const textList = (desk: Desk, raw: unknown, at: Path): readonly string[] | undefined => {
	const list = Array.isArray(raw) ? raw : [raw];
	if (list.length > 0 && list.every((item) => typeof item === "string")) return list;
	return report(desk, {
		code: "rules/limit-form",
		at,
		what: message("limits/words.what"),
		expected: message("limits/words.expected"),
		found: shownValue(raw),
		mend: message("limits/words.mend"),
	});
};

const readPattern = (desk: Desk, raw: unknown, at: Path): CentralizerPattern | undefined => {
	if (isBlock(raw) && "bottom_joints" in raw && onlyKeys(desk, raw, at, ["bottom_joints"])) {
		const joints = readQuantity(desk, raw["bottom_joints"], [...at, "bottom_joints"], "count");
		return joints && { kind: "bottom joints", joints };
	}
	if (isBlock(raw) && "every_joints" in raw && onlyKeys(desk, raw, at, ["every_joints"])) {
		const joints = readQuantity(desk, raw["every_joints"], [...at, "every_joints"], "count");
		return joints && { kind: "every joints", joints };
	}
	if (isBlock(raw) && "first_within" in raw && onlyKeys(desk, raw, at, ["first_within", "then_every"])) {
		const firstWithin = readQuantity(desk, raw["first_within"], [...at, "first_within"], "length");
		const thenEvery = readQuantity(desk, raw["then_every"], [...at, "then_every"], "length");
		return firstWithin && thenEvery && { kind: "first and then", firstWithin, thenEvery };
	}
	if (isBlock(raw) && raw["through"] === "protected water" && onlyKeys(desk, raw, at, ["through"]))
		return { kind: "through protected water" };
	return report(desk, {
		code: "rules/limit-form",
		at,
		what: message("limits/pattern.what"),
		expected: message("limits/pattern.expected"),
		found: shownValue(raw),
		mend: message("limits/use-one"),
	});
};

/** An event; those of one string only in a rule on a string. */
export const readEvent = (desk: Desk, raw: unknown, at: Path): EventName | undefined => {
	const name = readWord(desk, raw, at, EVENTS, message("limits/thing.event"));
	if (name !== undefined && STRING_EVENTS.includes(name) && (desk.subject ?? "string") !== "string")
		return report(desk, {
			code: "rules/limit-form",
			at,
			key: true,
			what: message("limits/event.what", { event: name, subject: ON[desk.subject ?? "well"] }),
			expected: message("limits/event.expected"),
			found: name,
			mend: message("limits/event.mend"),
		});
	return name;
};

/** `30 days`, `6 months`; one of a thing may be written so. */
const readSpan = (desk: Desk, raw: unknown, at: Path, days: Deadline["days"]) => {
	const [, number, word = ""] = /^(\d+) ([a-z]+)$/.exec(textOf(raw)) ?? [];
	const unit: SpanUnit | undefined = SPAN_UNITS.find((each) => each === word || each === `${word}s`);
	if (number === undefined || unit === undefined)
		return report(desk, {
			code: "rules/limit-unit",
			at,
			what: message("limits/span.what"),
			expected: message("limits/span.expected"),
			found: shownValue(raw),
			mend: message("limits/span.mend"),
		});
	if (days === "business" && unit !== "days" && unit !== "hours")
		return report(desk, {
			code: "rules/limit-unit",
			at,
			what: message("limits/span-business.what", { unit }),
			expected: message("limits/span-business.expected"),
			found: shownValue(raw),
			mend: message("limits/span-business.mend"),
		});
	const count = readQuantity(desk, Number(number), at, "count");
	return count && { count, unit };
};

const readDeadline = (desk: Desk, raw: unknown, at: Path): Deadline | undefined => {
	const side = isBlock(raw) ? (["before", "after"] as const).find((each) => each in raw) : undefined;
	if (!isBlock(raw) || side === undefined)
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/deadline.what"),
			expected: "{ before: { spud: 2 days }, days: business }",
			found: shownValue(raw),
			mend: message("limits/deadline.mend"),
		});
	const events = raw[side];
	const place = [...at, side];
	const days =
		raw["days"] === undefined
			? "calendar"
			: readWord(
					desk,
					raw["days"],
					[...at, "days"],
					["calendar", "business"] as const,
					message("limits/thing.day"),
				);
	if (!onlyKeys(desk, raw, at, [side, "days", ...(side === "before" ? ["no_sooner"] : [])])) return undefined;
	if (!isBlock(events) || Object.keys(events).length === 0)
		return report(desk, {
			code: "rules/limit-form",
			at: place,
			what: message("limits/counted.what", { side }),
			expected: message("limits/counted.expected", { side }),
			found: shownValue(events),
			mend: message("limits/counted.mend"),
		});
	if (!onlyKeys(desk, events, place, EVENTS) || days === undefined) return undefined;
	const of = Object.entries(events).map(([event, span]) => {
		const name = readEvent(desk, event, [...place, event]);
		const length = readSpan(desk, span, [...place, event], days);
		return name && length && { event: name, ...length };
	});
	const noSooner =
		raw["no_sooner"] === undefined
			? undefined
			: readSpan(desk, raw["no_sooner"], [...at, "no_sooner"], "calendar");
	if (!of.every((each) => each !== undefined)) return undefined;
	if (raw["no_sooner"] === undefined) return { form: "deadline", side, of, days };
	if (of.length > 1)
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, "no_sooner"],
			what: message("limits/no-sooner.what"),
			expected: message("limits/no-sooner.expected"),
			found: shownValue(raw["no_sooner"]),
			mend: message("limits/no-sooner.mend"),
		});
	return noSooner && { form: "deadline", side, of, days, noSooner };
};

const readWithin = (desk: Desk, raw: unknown, at: Path, extra: readonly string[]) => {
	if (!isBlock(raw)) {
		report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/within.what"),
			expected: "{ radius: 1000 ft, of: lateral }",
			found: shownValue(raw),
			mend: message("limits/within.mend"),
		});
		return undefined;
	}
	if (!onlyKeys(desk, raw, at, ["radius", "of", ...extra])) return undefined;
	const radius = readQuantity(desk, raw["radius"], [...at, "radius"], "distance");
	const of = readWord(desk, raw["of"], [...at, "of"], MEASURED_FROM, message("limits/thing.measured-from"));
	return radius && of && { radius, of };
};

const FORM_READERS: Readonly<Record<string, (desk: Desk, raw: Block, at: Path) => LimitLeaf | undefined>> = {
	at: (desk, raw, at) =>
		readWord(desk, raw["at"], [...at, "at"], ["surface"] as const, message("limits/thing.surface")) && {
			form: "at surface",
		},
	one_of: (desk, raw, at) => {
		const words = textList(desk, raw["one_of"], [...at, "one_of"]);
		return words && { form: "one of", words };
	},
	none_of: (desk, raw, at) => {
		const words = textList(desk, raw["none_of"], [...at, "none_of"]);
		return words && { form: "none of", words };
	},
	includes: (desk, raw, at) => {
		const words = textList(desk, raw["includes"], [...at, "includes"]);
		return words && { form: "includes", words };
	},
	present: (desk, raw, at) => {
		const fields = readWords(desk, raw["present"], [...at, "present"], FIELDS, message("limits/thing.field"));
		return fields && { form: "present", fields };
	},
	covers: (desk, raw, at) => {
		const list = textList(desk, raw["covers"], [...at, "covers"]) ?? [];
		const formations = list.filter((each) => each.startsWith("formation "));
		const what = readWords(
			desk,
			list.filter((each) => !formations.includes(each)),
			[...at, "covers"],
			COVERED,
			message("limits/thing.zone"),
		);
		if (what === undefined || list.length === 0) return undefined;
		return {
			form: "covers",
			what,
			formations: formations.map((each) => each.slice("formation ".length)),
		};
	},
	pattern: (desk, raw, at) => {
		const pattern = readPattern(desk, raw["pattern"], [...at, "pattern"]);
		return pattern && { form: "pattern", pattern };
	},
	deadline: (desk, raw, at) => readDeadline(desk, raw["deadline"], [...at, "deadline"]),
	evidence_within: (desk, raw, at) => {
		const within = readWithin(desk, raw["evidence_within"], [...at, "evidence_within"], []);
		return within && { form: "evidence within", ...within };
	},
	evidence_beside: (desk, raw, at) => {
		const what = readWord(
			desk,
			raw["evidence_beside"],
			[...at, "evidence_beside"],
			["fractures"] as const,
			message("limits/thing.shut-off"),
		);
		return what && { form: "evidence beside", what };
	},
	samples_within: (desk, raw, at) => {
		const place = [...at, "samples_within"];
		const block = raw["samples_within"];
		const within = readWithin(desk, block, place, ["before", "months", "days"]);
		if (within === undefined || !isBlock(block)) return undefined;
		const before = readEvent(desk, block["before"], [...place, "before"]);
		const countAt = (key: "months" | "days") =>
			block[key] === undefined ? undefined : readQuantity(desk, block[key], [...place, key], "count");
		const [months, days] = [countAt("months"), countAt("days")];
		return (
			before && {
				form: "samples within",
				...within,
				before,
				...(months === undefined ? {} : { months }),
				...(days === undefined ? {} : { days }),
			}
		);
	},
	consent: (desk, raw, at) =>
		readWord(
			desk,
			raw["consent"],
			[...at, "consent"],
			["written"] as const,
			message("limits/thing.consent"),
		) && {
			form: "consent",
		},
	question: (desk, raw, at) => {
		const [question] = textList(desk, raw["question"], [...at, "question"]) ?? [];
		return question === undefined ? undefined : { form: "judgement", question };
	},
};

/** Any single limit that is not a comparison: the key names the form. */
export const readForm = (desk: Desk, raw: Block, at: Path): LimitLeaf | undefined => {
	const key = Object.keys(FORM_READERS).find((each) => each in raw);
	const read = key === undefined ? undefined : FORM_READERS[key];
	if (key === undefined || read === undefined)
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/form.what"),
			expected: message("limits/form.expected", { names: Object.keys(FORM_READERS).join(", ") }),
			found: shownValue(raw),
			mend: message("limits/amount.mend"),
		});
	return onlyKeys(desk, raw, at, [key]) ? read(desk, raw, at) : undefined;
};
