import type { Code } from "../diagnostics/codes.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
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

const WHAT: Readonly<Record<QuantityReason, Said>> = {
	"no-unit": message("quantity/no-unit.what"),
	"unknown-unit": message("quantity/unknown-unit.what"),
	"letter-case": message("quantity/letter-case.what"),
	comma: message("quantity/comma.what"),
	"digit-space": message("quantity/digit-space.what"),
	"several-numbers": message("quantity/several-numbers.what"),
	"words-after-unit": message("quantity/words-after-unit.what"),
	"improper-fraction": message("quantity/improper-fraction.what"),
	"not-a-number": message("quantity/not-a-number.what"),
	negative: message("quantity/negative.what"),
	"not-finite": message("quantity/not-finite.what"),
	"unknown-reference": message("quantity/depth-reference.what"),
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

const alphabetNote = (written: string): { readonly why?: Said } => {
	const letter = otherAlphabet(written);
	return letter === undefined
		? {}
		: {
				why: message("quantity/unknown-unit.alphabet", {
					letter,
					number: `U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`,
				}),
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

const foundIn = (written: string, { failure: { found }, bare }: QuantityFault): Said => {
	const text = found === "" ? written : found;
	return bare === true ? message("quantity/depth-reference.found", { depth: text }) : text;
};

/** A bare number with the units it could have. */
const unitMend = (written: string, accepted: readonly string[], example: string): Said => {
	const first = withUnit(written, accepted);
	const second = withUnit(written, accepted.slice(1, 2));
	if (first === undefined)
		return second === undefined
			? message("quantity/no-unit.example", { example })
			: message("quantity/no-unit.second", { second, example });
	return second === undefined
		? message("quantity/write.mend", { written: first })
		: message("quantity/no-unit.mend", { first, second });
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
	const example = DIMENSIONS[dimension].example;
	const units = accepted.length > 0 ? listed(accepted) : "";
	const fault = {
		code: CODE_OF[reason],
		at,
		what: WHAT[reason],
		found: foundIn(written, quantityFault),
	};
	const due = meta?.expected ?? expectedQuantity(dimension);
	switch (reason) {
		case "no-unit":
			return faultAt({
				...fault,
				expected: message("quantity/no-unit.expected", { units }),
				mend: unitMend(written, accepted, example),
			});
		case "unknown-unit":
			return faultAt({
				...fault,
				...alphabetNote(found),
				expected: units === "" ? due : message("source/one-of", { names: units }),
				mend:
					cure === undefined
						? message("quantity/unknown-unit.mend", { example })
						: message("quantity/write.mend", { written: cure }),
			});
		case "several-numbers":
			return faultAt({
				...fault,
				expected: due,
				mend: message(
					typeof at.at(-1) === "number"
						? "quantity/several-numbers.in-list"
						: "quantity/several-numbers.mend",
					{ example: meta?.example ?? example },
				),
			});
		case "words-after-unit":
			return faultAt({
				...fault,
				expected: due,
				mend: /abs/i.test(found)
					? message("quantity/words-after-unit.gauge", { example: meta?.example ?? example })
					: message("quantity/words-after-unit.mend", { written: cure ?? "" }),
			});
		case "unknown-reference":
			return faultAt({
				...fault,
				expected: due,
				why: message("quantity/depth-reference.why"),
				mend:
					quantityFault.forms === undefined
						? message("quantity/depth-reference.work-out", {
								forms: { list: accepted.map((form) => `\`${form}\``), joined: "or" },
							})
						: message("quantity/depth-reference.mend", {
								forms: { list: quantityFault.forms, joined: "or" },
							}),
			});
		default:
			return faultAt({
				...fault,
				expected: due,
				mend:
					cure === undefined
						? UNKNOWN_YET.test(written.trim())
							? message("quantity/not-a-number.or-leave-out", { example: meta?.example ?? example })
							: message("definition/as-in.mend", { example: meta?.example ?? example })
						: alternative !== undefined && dimension === "diameter"
							? message("quantity/comma.or-thousands", { alternative, cure })
							: alternative === undefined
								? message("quantity/write.mend", { written: cure })
								: message("quantity/comma.or-decimals", { cure, alternative }),
			});
	}
};
