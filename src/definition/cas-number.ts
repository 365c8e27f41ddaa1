import * as z from "zod";
import { message } from "../messages/message.ts";
import type { Audience } from "./audience.ts";
import { field } from "./field.ts";

/**
 * The check digit of a CAS Registry Number: reading its other digits from the right, each is multiplied by its position;
 * the last digit of the sum is the check digit.
 *
 * @param digits  all but the check digit, as they are written
 *
 * The rule is the registry's own (memory: CAS, "Check Digit Verification of CAS Registry Numbers"); 7732-18-5, water,
 * is its usual example: 8·1 + 1·2 + 2·3 + 3·4 + 7·5 + 7·6 = 105, so 5.
 */
export const casDigit = (digits: readonly number[]): number =>
	digits.reduce((sum, digit, i) => sum + (digits.length - i) * digit, 0) % 10;

/** Whether a CAS Registry Number ends with the check digit that its others make. */
export const casCloses = (text: string): boolean => {
	const match = /^(\d{2,7})-(\d{2})-(\d)$/.exec(text.trim());
	if (match === null) return false;
	const [, registry = "", middle = "", check = ""] = match;
	return casDigit([...`${registry}${middle}`].map(Number)) === Number(check);
};

export const casNumber = (title: string, why: string, papers: Audience) =>
	field(z.string().refine(casCloses, { params: { fault: "cas-number" } }), {
		title,
		why,
		papers,
		expected: message("definition/expected.cas-number"),
		example: "7732-18-5",
	});
