import type { Code } from "../diagnostics/codes.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { DIMENSIONS } from "../units/dimensions.ts";
import { parseQuantity, type QuantityReason } from "../units/parse.ts";
import { faultAt } from "./fault.ts";
import type { FieldMeta } from "./field.ts";
import { expectedQuantity, type QuantityFault } from "./quantity-field.ts";

const CODE_OF = {
	"no-unit": "quantity/no-unit",
	"unknown-unit": "quantity/unknown-unit",
	"letter-case": "quantity/letter-case",
	comma: "quantity/comma",
	"digit-space": "quantity/digit-space",
	"several-numbers": "quantity/several-numbers",
	"words-after-unit": "quantity/unknown-unit",
	"improper-fraction": "quantity/improper-fraction",
	"not-a-number": "quantity/not-a-number",
	negative: "quantity/negative",
	"not-finite": "quantity/not-finite",
	"unknown-reference": "quantity/depth-reference",
} as const satisfies Record<QuantityReason, Code>;

const WHAT: Readonly<Record<QuantityReason, string>> = {
	"no-unit": "a number without its unit",
	"unknown-unit": "a unit that does not measure this",
	"letter-case": "a unit whose letters in this case mean something else",
	comma: "a comma in a number",
	"digit-space": "a space or a mark between the digits of a number",
	"several-numbers": "more than one number where one is due",
	"words-after-unit": "there is more than a number and its unit",
	"improper-fraction": "a fraction that is one or more, which is usually a size with its space lost",
	"not-a-number": "this cannot be read as a number and a unit",
	negative: "a value below zero, which means nothing here",
	"not-finite": "not a finite number",
	"unknown-reference": "a depth counted from a place that does not fit here",
};

const listed = (words: readonly string[]): string => words.join(", ");

/** The number and the unit inside words that surround them: `40 ft` of `about 40 ft`. */
const quantityWithin = (written: string, { dimension }: QuantityFault): string | undefined => {
	const [inner] = /[-+.]?\d.*$/s.exec(written) ?? [];
	if (dimension === "true-vertical-depth" || dimension === "depth-below-ground") return undefined;
	return inner !== undefined && inner !== written && parseQuantity(inner, dimension).ok
		? inner.trim()
		: undefined;
};

/** A bare number with the first unit it could have. */
const withUnit = (written: string, accepted: readonly string[]): string | undefined =>
	accepted[0] !== undefined &&
	// Nobody means five times the whole by 5.
	!(accepted[0] === "fraction" && Number(written) > 1) &&
	/^[-+]?[\d.\s/-]+$/.test(written)
		? `${written.trim()} ${accepted[0]}`
		: undefined;

/** What people write where they do not know a value yet. */
const UNKNOWN_YET = /^(?:tb[cda]|n\/?a|none|unknown|pending|not known|to be .*|[-?x]+)$/i;

/** A letter that looks like one of the Latin alphabet and is of another. */
const otherAlphabet = (written: string): string | undefined =>
	/[\p{Script=Cyrillic}\p{Script=Greek}]/u.exec(written.replace(/[µμΩ]/g, ""))?.[0];

const alphabetNote = (written: string): { readonly why?: string } => {
	const letter = otherAlphabet(written);
	return letter === undefined
		? {}
		: {
				why: `the letter \`${letter}\` is of another alphabet (U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}), though it may look the same`,
			};
};

/** What is not in the text as it stands but would be right, where that can be said. */
const guess = (written: string, fault: QuantityFault): string | undefined => {
	const { failure } = fault;
	if (failure.cure !== undefined) return failure.cure;
	if (failure.reason === "negative")
		return written.trim().replace(/^[-\u2010-\u2014\u2212\ufe63\uff0d]\s*/u, "");
	return failure.reason === "not-a-number" ? quantityWithin(written, fault) : undefined;
};

/** The message for a quantity that could not be taken. */
export const quantityDiagnostic = (
	at: Path,
	written: string,
	quantityFault: QuantityFault,
	meta: FieldMeta | undefined,
): Diagnostic => {
	const { dimension, failure } = quantityFault;
	const { reason, found, accepted } = failure;
	const cure = guess(written, quantityFault);
	const { alternative } = failure;
	const otherwise = alternative === undefined ? "" : `, or \`${alternative}\` if the comma marks decimals`;
	const example = DIMENSIONS[dimension].example;
	const units = accepted.length > 0 ? listed(accepted) : "";
	const fault = {
		code: CODE_OF[reason],
		at,
		what: WHAT[reason],
		found: found === "" ? written : found,
	};
	const due = meta?.expected ?? expectedQuantity(dimension);
	switch (reason) {
		case "no-unit":
			return faultAt({
				...fault,
				expected: `one of these units after the number: ${units}`,
				mend: [
					withUnit(written, accepted),
					...accepted.slice(1, 2).flatMap((unit) => withUnit(written, [unit]) ?? []),
				]
					.filter((each) => each !== undefined)
					.map((each, i) => (i === 0 ? `write \`${each}\`` : `or \`${each}\``))
					.concat(
						withUnit(written, accepted) === undefined
							? [`write the unit after the number, as in \`${example}\``]
							: [],
					)
					.join(", "),
			});
		case "unknown-unit":
			return faultAt({
				...fault,
				...alphabetNote(found),
				expected: units === "" ? due : `one of: ${units}`,
				mend: cure === undefined ? `use one of these units, as in \`${example}\`` : `write \`${cure}\``,
			});
		case "several-numbers":
			return faultAt({
				...fault,
				expected: due,
				mend: `write one value, as in \`${meta?.example ?? example}\`${typeof at.at(-1) === "number" ? ", or a comma between two" : ""}`,
			});
		case "words-after-unit":
			return faultAt({
				...fault,
				expected: due,
				mend: /abs/i.test(found)
					? `write the gauge pressure, as in \`${meta?.example ?? example}\``
					: `write \`${cure}\`, and the rest in a remark: a space and \`# \` at the end of the line`,
			});
		case "unknown-reference":
			return faultAt({
				...fault,
				expected: due,
				why: "depths along the hole, straight down from the datum and below ground are different depths",
				mend:
					cure === undefined
						? `work out the depth as it is counted here, and write it as in ${accepted.map((form) => `\`${form}\``).join(" or ")}`
						: `say what the depth is counted from: ${cure}`,
			});
		default:
			return faultAt({
				...fault,
				expected: due,
				mend:
					cure === undefined
						? `write it as in \`${meta?.example ?? example}\`${UNKNOWN_YET.test(written.trim()) ? ", or leave it out while it is not known" : ""}`
						: // No pipe is thousands of inches wide: there the comma marks decimals.
							alternative !== undefined && dimension === "diameter"
							? `write \`${alternative}\`, or \`${cure}\` if the comma marks thousands`
							: `write \`${cure}\`${otherwise}`,
			});
	}
};
