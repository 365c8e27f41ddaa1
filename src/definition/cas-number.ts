import * as z from "zod";
import type { Audience } from "./audience.ts";
import { field } from "./field.ts";

/**
 * Whether a CAS Registry Number closes: reading the digits from the right, leaving the last, each is multiplied by its
 * position; the last digit of the sum is the check digit.
 *
 * The rule is the registry's own (memory: CAS, "Check Digit Verification of CAS Registry Numbers"); 7732-18-5, water,
 * is its usual example: 8·1 + 1·2 + 2·3 + 3·4 + 7·5 + 7·6 = 105, so 5.
 */
export const casCloses = (text: string): boolean => {
	const match = /^(\d{2,7})-(\d{2})-(\d)$/.exec(text.trim());
	if (match === null) return false;
	const [, registry = "", middle = "", check = ""] = match;
	const digits = [...`${registry}${middle}`].reverse();
	const sum = digits.reduce((total, digit, i) => total + Number(digit) * (i + 1), 0);
	return sum % 10 === Number(check);
};

export const casNumber = (title: string, why: string, papers: Audience) =>
	field(z.string().refine(casCloses, { params: { fault: "cas-number" } }), {
		title,
		why,
		papers,
		expected: "a CAS number whose check digit closes, such as `7732-18-5`",
		example: "7732-18-5",
	});
