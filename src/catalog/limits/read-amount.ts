import type { Known } from "../../cite/known.ts";
import type { Path } from "../../diagnostics/path.ts";
import { type Message, message } from "../../messages/message.ts";
import type { Dimension } from "../../units/dimensions.ts";
import { DIMENSIONS } from "../../units/dimensions.ts";
import { parseQuantity } from "../../units/parse.ts";
import { quantity } from "../../units/quantity.ts";
import { type Desk, isBlock, onlyKeys, outOfPlace, readWord, report, shownValue } from "./fault.ts";
import type { Amount, Step } from "./limit.ts";
import {
	COMPUTED_KINDS,
	FACTORS,
	isMeasuredOn,
	MEASURE_NAMES,
	MEASURES,
	type MeasureName,
} from "./measures.ts";
import { TOP_METHODS } from "./vocabulary.ts";

/** An example of a kind as a limit writes it: the measure says what a depth is counted from, so the amount does not. */
export const exampleAmount = (dimension: Dimension): string =>
	DIMENSIONS[dimension].example.replace(/ (?:TVD|below ground)$/, "").replace(/^-/, "");

/** A number with its unit, as text; bare only for counts and ratios. */
export const readQuantity = <D extends Dimension>(
	desk: Desk,
	value: unknown,
	at: Path,
	dimension: D,
): Known<D> | undefined => {
	const text = typeof value === "number" ? String(value) : value;
	const read = typeof text === "string" ? parseQuantity(text, dimension) : undefined;
	if (typeof text === "string" && read?.ok)
		return {
			dimension,
			value: quantity(dimension, read.value),
			from: desk.originOf(at, text),
		};
	return report(desk, {
		code: "rules/limit-unit",
		at,
		what: message("limits/quantity.what"),
		expected: message("limits/quantity.expected", { example: exampleAmount(dimension) }),
		found: shownValue(value),
		mend: message("limits/quantity.mend"),
	});
};

/** What a factor must be so that factor × measure gives the wanted dimension. */
const factorFor = (of: Dimension, wanted: Dimension): Dimension | undefined =>
	FACTORS.find((factor) => factor.of === of && factor.gives === wanted)?.factor;

const isComputed = (dimension: Dimension): boolean => COMPUTED_KINDS.some((kind) => kind === dimension);

const refused = (desk: Desk, at: Path, found: unknown, what: Message): undefined =>
	report(desk, {
		code: "rules/limit-form",
		at,
		what,
		expected: message("limits/amount.forms"),
		found: shownValue(found),
		mend: message("limits/amount.mend"),
	});

/** A factor with its unit; a bare ratio may be written as a percentage. */
const readFactorValue = (desk: Desk, value: unknown, at: Path, kind: Dimension): Known | undefined => {
	const share = kind === "ratio" && typeof value === "string" && value.trim().endsWith("%");
	if (!share) return readQuantity(desk, value, at, kind);
	const read = readQuantity(desk, value, at, "share");
	return read && { dimension: kind, value: quantity(kind, read.value), from: read.from };
};

const readFactor = (
	desk: Desk,
	block: Readonly<Record<string, unknown>>,
	at: Path,
	dimension: Dimension,
): Amount | undefined => {
	if (!onlyKeys(desk, block, at, ["times", "of"])) return undefined;
	const of: MeasureName | undefined = readWord(
		desk,
		block["of"],
		[...at, "of"],
		MEASURE_NAMES,
		message("limits/thing.measure"),
	);
	if (of === undefined) return undefined;
	if (!isMeasuredOn(of, desk.subject ?? "string")) return outOfPlace(desk, [...at, "of"], of);
	const { dimension: measured } = MEASURES[of];
	if (block["times"] === undefined)
		return measured === dimension
			? { kind: "measure", of }
			: refused(
					desk,
					at,
					block,
					message("limits/amount.not-of-kind", { of, example: exampleAmount(dimension) }),
				);
	const kind = factorFor(measured, dimension);
	if (kind === undefined)
		return refused(
			desk,
			[...at, "of"],
			of,
			message("limits/amount.no-multiple", { of, example: exampleAmount(dimension) }),
		);
	const factor = readFactorValue(desk, block["times"], [...at, "times"], kind);
	return factor && { kind: "times", factor, of };
};

/** A number that a sum takes off: a depth or a pressure is never written below zero. */
const readMinus = (
	desk: Desk,
	block: Readonly<Record<string, unknown>>,
	at: Path,
	dimension: Dimension,
): Amount | undefined => {
	if (!onlyKeys(desk, block, at, ["minus"])) return undefined;
	const value = readQuantity(desk, block["minus"], [...at, "minus"], dimension);
	return value && { kind: "constant", value: { ...value, value: quantity(dimension, -value.value) } };
};

const AMONG = { greatest_of: "greatest of", least_of: "least of", sum_of: "sum of" } as const;

const readAmong = (
	desk: Desk,
	block: Readonly<Record<string, unknown>>,
	at: Path,
	key: keyof typeof AMONG,
	dimension: Dimension,
): Amount | undefined => {
	const items = block[key];
	if (!isComputed(dimension))
		return refused(
			desk,
			at,
			block,
			message("limits/amount.not-computed", { example: exampleAmount(dimension) }),
		);
	if (!onlyKeys(desk, block, at, [key])) return undefined;
	if (!Array.isArray(items) || items.length < 2)
		return refused(desk, [...at, key], items, message("limits/amount.two"));
	const among = items.map((item, i) =>
		key === "sum_of" && isBlock(item) && "minus" in item
			? readMinus(desk, item, [...at, key, i], dimension)
			: readAmount(desk, item, [...at, key, i], dimension),
	);
	if (!among.every((amount) => amount !== undefined)) return undefined;
	return { kind: AMONG[key], among };
};

const STEP_KEYS = ["up_to", "under"] as const;

/** One line of a table: `{ up_to: 2500 ft, is: 100 ft }`, or the last, `{ beyond: 300 ft }`. */
const readStep = (
	desk: Desk,
	raw: unknown,
	at: Path,
	by: MeasureName,
	dimension: Dimension,
): Step | undefined => {
	const key = isBlock(raw) ? STEP_KEYS.find((each) => each in raw) : undefined;
	if (!isBlock(raw) || key === undefined)
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/step.what"),
			expected: message("limits/step.expected", { example: exampleAmount(MEASURES[by].dimension) }),
			found: shownValue(raw),
			mend: message("limits/step.mend"),
		});
	if (!onlyKeys(desk, raw, at, [key, "is"])) return undefined;
	const end = readQuantity(desk, raw[key], [...at, key], MEASURES[by].dimension);
	const amount = readAmount(desk, raw["is"], [...at, "is"], dimension);
	return end && amount && { end, including: key === "up_to", amount };
};

/** A table by a measure; its steps rise, and the last says what holds beyond them. */
const readSteps = (
	desk: Desk,
	raw: Readonly<Record<string, unknown>>,
	at: Path,
	dimension: Dimension,
): Amount | undefined => {
	if (!onlyKeys(desk, raw, at, ["steps", "by"])) return undefined;
	const by = readWord(desk, raw["by"], [...at, "by"], MEASURE_NAMES, message("limits/thing.measure"));
	if (by === undefined) return undefined;
	if (!isMeasuredOn(by, desk.subject ?? "string")) return outOfPlace(desk, [...at, "by"], by);
	const lines = raw["steps"];
	const last: unknown = Array.isArray(lines) ? lines.at(-1) : undefined;
	if (!Array.isArray(lines) || lines.length < 2 || !isBlock(last) || !("beyond" in last))
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, "steps"],
			what: message("limits/steps.what"),
			expected: message("limits/steps.expected"),
			found: shownValue(lines),
			mend: message("limits/steps.mend"),
		});
	const end = lines.length - 1;
	const steps = lines
		.slice(0, end)
		.map((line: unknown, i) => readStep(desk, line, [...at, "steps", i], by, dimension));
	const beyond = onlyKeys(desk, last, [...at, "steps", end], ["beyond"])
		? readAmount(desk, last["beyond"], [...at, "steps", end, "beyond"], dimension)
		: undefined;
	if (beyond === undefined || !steps.every((step) => step !== undefined)) return undefined;
	const falls = steps.findIndex((step, i) => i > 0 && step.end.value <= (steps[i - 1]?.end.value ?? 0));
	if (falls > 0)
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, "steps", falls],
			what: message("limits/steps-order.what"),
			expected: message("limits/steps-order.expected"),
			found: shownValue(lines[falls]),
			mend: message("limits/steps-order.mend"),
		});
	return { kind: "steps", by, steps, beyond };
};

/** The number of a limit on a measure of this dimension, whichever of the closed forms it is written in. */
export const readAmount = (desk: Desk, raw: unknown, at: Path, dimension: Dimension): Amount | undefined => {
	if (!isBlock(raw)) {
		const value = readQuantity(desk, raw, at, dimension);
		return value && { kind: "constant", value };
	}
	if ("of" in raw) return readFactor(desk, raw, at, dimension);
	for (const key of ["greatest_of", "least_of", "sum_of"] as const)
		if (key in raw) return readAmong(desk, raw, at, key, dimension);
	if ("clamp" in raw) {
		if (!onlyKeys(desk, raw, at, ["clamp", "from", "to"])) return undefined;
		if (!isComputed(dimension))
			return refused(
				desk,
				at,
				raw,
				message("limits/amount.not-computed", { example: exampleAmount(dimension) }),
			);
		const [amount, from, to] = (["clamp", "from", "to"] as const).map((key) =>
			readAmount(desk, raw[key], [...at, key], dimension),
		);
		if (from?.kind === "constant" && to?.kind === "constant" && from.value.value > to.value.value)
			return report(desk, {
				code: "rules/limit-form",
				at: [...at, "from"],
				what: message("limits/clamp.what"),
				expected: message("limits/clamp.expected"),
				found: message("limits/clamp.found", { from: shownValue(raw["from"]), to: shownValue(raw["to"]) }),
				mend: message("limits/clamp.mend"),
			});
		return amount && from && to && { kind: "clamp", amount, from, to };
	}
	if ("steps" in raw) return readSteps(desk, raw, at, dimension);
	if ("by_method" in raw) {
		if ((desk.subject ?? "string") !== "string") return outOfPlace(desk, [...at, "by_method"], "by_method");
		const cases = raw["by_method"];
		const place = [...at, "by_method"];
		if (!isBlock(cases)) return refused(desk, place, cases, message("limits/method.what"));
		if (!onlyKeys(desk, raw, at, ["by_method"]) || !onlyKeys(desk, cases, place, TOP_METHODS))
			return undefined;
		const read = Object.entries(cases).map(
			([method, amount]) => [method, readAmount(desk, amount, [...place, method], dimension)] as const,
		);
		if (read.some(([, amount]) => amount === undefined)) return undefined;
		return { kind: "by method", cases: Object.fromEntries(read) };
	}
	return refused(desk, at, raw, message("limits/amount.unknown"));
};
