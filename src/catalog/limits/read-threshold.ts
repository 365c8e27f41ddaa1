import type { Path } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import { type Desk, isBlock, onlyKeys, readWord, report, shownValue, textOf } from "./fault.ts";
import type { Along, CementZone, Operator, Threshold } from "./limit.ts";
import { MEASURES, type MeasureEntry, type MeasureName, type Parameter } from "./measures.ts";
import { wrongSide } from "./protective-side.ts";
import { readAmount, readQuantity } from "./read-amount.ts";
import { MEASURED_FROM } from "./vocabulary.ts";

const OPERATOR_KEYS = {
	at_least: "at least",
	more_than: "more than",
	at_most: "at most",
	less_than: "less than",
} as const satisfies Record<string, Operator>;

const ALONG: readonly Along[] = ["hole", "vertical"];

const readZone = (desk: Desk, raw: unknown, at: Path): CementZone | undefined => {
	if (raw === "shoe" || raw === "whole" || raw === "filler") return { kind: raw };
	const key = isBlock(raw) ? (["bottom", "above_bottom"] as const).find((each) => each in raw) : undefined;
	if (!isBlock(raw) || key === undefined)
		return report(desk, {
			code: "rules/limit-form",
			at,
			what: message("limits/zone.what"),
			expected: message("limits/zone.expected"),
			found: shownValue(raw),
			mend: message("limits/use-one"),
		});
	if (!onlyKeys(desk, raw, at, [key, "along"])) return undefined;
	const height = readAmount(desk, raw[key], [...at, key], "offset");
	const along =
		raw["along"] === undefined
			? "hole"
			: readWord(desk, raw["along"], [...at, "along"], ALONG, message("limits/thing.direction"));
	return (
		height &&
		along && {
			kind: key === "bottom" ? "bottom" : "above bottom",
			height,
			along,
		}
	);
};

/** A comparison of one measure with one amount. `measure` may be left out where the check has only one. */
export const readThreshold = (
	desk: Desk,
	raw: Readonly<Record<string, unknown>>,
	at: Path,
	measures: readonly MeasureName[],
	use: "limit" | "condition" = "limit",
): Threshold | undefined => {
	const [only] = measures;
	const measure =
		raw["measure"] === undefined && measures.length === 1
			? only
			: readWord(
					desk,
					raw["measure"],
					[...at, "measure"],
					measures,
					message("limits/thing.measure-of-check"),
				);
	if (measure === undefined) return undefined;
	const entry: MeasureEntry = MEASURES[measure];
	const needs = entry.needs ?? [];
	const allowed: readonly Parameter[] = [...needs, ...(entry.may ?? [])];
	const operators = Object.keys(OPERATOR_KEYS) as (keyof typeof OPERATOR_KEYS)[];
	if (!onlyKeys(desk, raw, at, ["measure", ...operators, "about", ...allowed])) return undefined;
	const missing = needs.filter((parameter) => raw[parameter] === undefined);
	const given = operators.filter((key) => raw[key] !== undefined);
	const [operator] = given;
	if (missing.length > 0 || given.length !== 1 || operator === undefined)
		return report(desk, {
			code: "rules/limit-form",
			at,
			what:
				missing.length > 0
					? message("limits/threshold.lacks", { measure, missing: { list: missing, joined: "and" } })
					: message("limits/threshold.one"),
			expected: `{ measure: ${measure}, ${[...needs.map((each) => `${each}: …`), "at_least | more_than | at_most | less_than"].join(", ")} }`,
			found: shownValue(raw),
			mend:
				missing.length > 0
					? message("limits/threshold.add", { missing: { list: missing, joined: "and" } })
					: message("limits/threshold.one-mend"),
		});
	const protects = use === "limit" ? wrongSide(measure, OPERATOR_KEYS[operator]) : undefined;
	if (protects !== undefined)
		return report(desk, {
			code: "rules/limit-form",
			at: [...at, operator],
			key: true,
			what: message("limits/side.what", { operator: OPERATOR_KEYS[operator], measure }),
			expected: message("limits/side.expected", {
				protects,
				other: protects === "at_least" ? "more_than" : "less_than",
			}),
			found: operator,
			mend: message("limits/side.mend", { protects }),
		});
	const amount = readAmount(desk, raw[operator], [...at, operator], entry.dimension);
	const read = {
		about:
			raw["about"] === undefined
				? undefined
				: readQuantity(desk, raw["about"], [...at, "about"], entry.dimension),
		along:
			raw["along"] === undefined
				? undefined
				: readWord(desk, raw["along"], [...at, "along"], ALONG, message("limits/thing.direction")),
		zone: raw["zone"] === undefined ? undefined : readZone(desk, raw["zone"], [...at, "zone"]),
		after:
			raw["after"] === undefined ? undefined : readQuantity(desk, raw["after"], [...at, "after"], "duration"),
		curedAt:
			raw["cured_at"] === undefined
				? undefined
				: readQuantity(desk, raw["cured_at"], [...at, "cured_at"], "temperature"),
		formation: raw["formation"] === undefined ? undefined : textOf(raw["formation"]),
		within:
			raw["within"] === undefined
				? undefined
				: readQuantity(desk, raw["within"], [...at, "within"], "distance"),
		from:
			raw["from"] === undefined
				? undefined
				: readWord(desk, raw["from"], [...at, "from"], MEASURED_FROM, message("limits/thing.measured-from")),
	};
	const keyOf = (name: string) => (name === "curedAt" ? "cured_at" : name);
	const entries = Object.entries(read).filter(([, value]) => value !== undefined);
	const complete = Object.entries(read).every(
		([name, value]) => value !== undefined || raw[keyOf(name)] === undefined,
	);
	if (amount === undefined || !complete) return undefined;
	return {
		form: "threshold",
		measure,
		operator: OPERATOR_KEYS[operator],
		amount,
		...(Object.fromEntries(entries) as Omit<Threshold, "form" | "measure" | "operator" | "amount">),
	};
};
