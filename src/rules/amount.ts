import type { Amount } from "../catalog/limits/limit.ts";
import type { MeasureName } from "../catalog/limits/measures.ts";
import type { TopMethod } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import { type Fact, message, type Said } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import { type Case, missingAt } from "./case.ts";
import type { MissingInput } from "./finding.ts";
import { clampBetween, greatestOf, leastOf, multiple, sumOf } from "./formulas.ts";
import { holds } from "./holds.ts";
import { topMethodOf } from "./measures/cement.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import { stringOf } from "./measures/shoe.ts";
import { listed, type Reason } from "./reason.ts";

/** What the number of a limit comes to here, and how, in words; or what is missing for it. */
type Worth =
	| { readonly value: Known; readonly how: Reason }
	| { readonly missing: readonly MissingInput[]; readonly because?: Reason }
	/** The value it is taken from has no meaning here. */
	| { readonly absent: Reason };

const read = (the: Case, name: MeasureName): Worth => {
	const reading = MEASURE_CODE[name].read(the, {});
	if (reading.state === "known") return { value: reading.value, how: [] };
	if (reading.state === "absent") return { absent: reading.because };
	return { missing: reading.missing };
};

/** How a part of an expression is said inside it: its number, and where that comes from, in round brackets or square ones inside. */
const inside = ({ value, how }: Extract<Worth, { value: Known }>, depth: number): Reason => {
	const [open, close] = depth === 0 ? [" (", ")"] : [" [", "]"];
	return how.length === 0 ? [value] : [value, open, ...how, close];
};

/** A top by each method, as it is said before the distance that goes with it. */
export const TOP_BY: Readonly<Record<TopMethod, Said>> = {
	"returns seen": message("rules/top-known-by-returns"),
	calculated: message("rules/calculated-top"),
	"temperature survey": message("rules/top-by-temperature-survey"),
	"bond log": message("rules/top-by-bond-log"),
	tagged: message("rules/tagged-top"),
};

const COMBINE = { "greatest of": greatestOf, "least of": leastOf, "sum of": sumOf } as const;

/** `the greater of 50 ft and 5 ft`, by how many there are to choose from. */
const choice = (kind: keyof typeof COMBINE, among: readonly Fact[]): Reason => {
	if (kind === "sum of")
		return among.flatMap((each, i) => (i === 0 ? [each] : [" ", message("rules/plus"), " ", each]));
	const facts = { count: among.length, among: listed(among) };
	return [kind === "greatest of" ? message("rules/greatest-of", facts) : message("rules/least-of", facts)];
};

const several = (
	the: Case,
	{ kind: way, among }: Extract<Amount, { readonly among: readonly Amount[] }>,
	kind: Dimension,
	depth: number,
): Worth => {
	const worths = among.map((amount) => worth(the, amount, kind, depth + 1));
	const failed = worths.filter((each) => !("value" in each));
	const absent = failed.find((each) => "absent" in each);
	if (absent !== undefined) return absent;
	if (failed.length > 0)
		return { missing: failed.flatMap((each) => ("missing" in each ? each.missing : [])) };
	const known = worths.filter((each) => "value" in each);
	const value = COMBINE[way](
		kind,
		known.map((each) => each.value),
	);
	return {
		value,
		how: choice(
			way,
			known.map((each) => ({ parts: inside(each, depth) })),
		),
	};
};

const clamped = (
	the: Case,
	amount: Extract<Amount, { kind: "clamp" }>,
	kind: Dimension,
	depth: number,
): Worth => {
	const [x, from, to] = [amount.amount, amount.from, amount.to].map((each) =>
		worth(the, each, kind, depth + 1),
	);
	for (const each of [x, from, to]) if (each !== undefined && !("value" in each)) return each;
	if (!x || !from || !to || !("value" in x) || !("value" in from) || !("value" in to)) return { missing: [] };
	return {
		value: clampBetween(kind, x.value, from.value, to.value),
		how: [
			message("rules/held-between-and", {
				inside: { parts: inside(x, depth) },
				from: from.value,
				to: to.value,
			}),
		],
	};
};

/** The step of a table that the measure falls in: at its end, taken in or left out as the rule words it. */
const byStep = (
	the: Case,
	{ by, steps, beyond }: Extract<Amount, { kind: "steps" }>,
	kind: Dimension,
	depth: number,
): Worth => {
	const found = read(the, by);
	if (!("value" in found)) return found;
	const { value } = found.value;
	const step = steps.find(({ end, including }) =>
		holds(value, including ? "at most" : "less than", end.value),
	);
	const amount = worth(the, step?.amount ?? beyond, kind, depth + 1);
	if (!("value" in amount)) return amount;
	const noun = MEASURE_CODE[by].noun;
	const how = message("rules/step-of-a-table", { noun, value: found.value });
	return { ...amount, how: amount.how.length === 0 ? [how] : [...amount.how, ", ", how] };
};

const byMethod = (the: Case, { cases }: Extract<Amount, { kind: "by method" }>, kind: Dimension): Worth => {
	const method = topMethodOf(the);
	const string = stringOf(the);
	const at = ["casing", the.well.strings.indexOf(string), "cement", "top_method"] as const;
	if (method === undefined) return { missing: [missingAt(message("rules/way-cement-top-is-found"), ...at)] };
	const amount = cases[method];
	if (amount === undefined)
		return {
			missing: [missingAt(message("rules/way-cement-top-is-found-as"), ...at)],
			because: [message("rules/rule-gives-no-distance-for", { topBy: TOP_BY[method] })],
		};
	const found = worth(the, amount, kind);
	return "value" in found ? { ...found, how: [message("rules/for", { topBy: TOP_BY[method] })] } : found;
};

/** Works the number of a limit for one case. Nothing is guessed; a missing part is named. */
export const worth = (the: Case, amount: Amount, kind: Dimension, depth = 0): Worth => {
	switch (amount.kind) {
		case "constant":
			return { value: amount.value, how: [] };
		case "measure": {
			const found = read(the, amount.of);
			return "value" in found
				? { ...found, how: [message("rules/missing", { what: MEASURE_CODE[amount.of].noun })] }
				: found;
		}
		case "times": {
			const found = read(the, amount.of);
			if (!("value" in found)) return found;
			const noun = MEASURE_CODE[amount.of].noun;
			const whole = amount.factor.dimension === "ratio" && practicallyEqual(amount.factor.value, 1);
			const how: Reason = whole
				? [message("rules/missing", { what: noun })]
				: [message("rules/multiple", { factor: { factor: amount.factor }, value: found.value, noun })];
			return { value: multiple(kind, amount.factor, found.value), how };
		}
		case "greatest of":
		case "least of":
		case "sum of":
			return several(the, amount, kind, depth);
		case "clamp":
			return clamped(the, amount, kind, depth);
		case "steps":
			return byStep(the, amount, kind, depth);
		case "by method":
			return byMethod(the, amount, kind);
	}
};
