import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import { message } from "../../messages/message.ts";
import type { Jurisdiction, Rule } from "./limit.ts";

/** A rules file of the user's own, and where it was read from. */
export interface OwnRules {
	readonly file: string;
	readonly jurisdiction: Jurisdiction;
}

type Fault = Pick<Diagnostic, "code" | "what" | "expected" | "found" | "mend">;

/**
 * Sets that apply together: the shipped ones, and beside them the user's own. An own row stands in for a shipped one only where
 * it says so (`replaces: <id>`); nothing is dropped because two files have one code.
 *
 * Faults, each located in the own file: an id that a shipped row has already, a row that replaces one that is not there, and a
 * text dated after the paper that rests on it was issued.
 *
 * @param issued  ISO date of the definition's issue
 */
export const withOwnRules = (
	shipped: readonly Jurisdiction[],
	own: readonly OwnRules[],
	issued: string,
): Checked<readonly Jurisdiction[]> => {
	const diagnostics: Diagnostic[] = [];
	const ids = shipped.flatMap(({ rules }) => rules.map(({ id }) => id));
	const rows = own.flatMap(({ file, jurisdiction }) =>
		jurisdiction.rules.map((rule, i) => ({ file, rule, i })),
	);
	for (const { file, rule, i } of rows)
		for (const [key, fault] of faultsOf(rule, ids, issued))
			diagnostics.push({ severity: "error", at: { path: ["rules", i, key], file }, ...fault });
	const replaced = new Set(rows.flatMap(({ rule }) => (rule.replaces === undefined ? [] : [rule.replaces])));
	return {
		value: [
			...shipped.map((set) => ({ ...set, rules: set.rules.filter(({ id }) => !replaced.has(id)) })),
			...own.map(({ file, jurisdiction }) => ({ ...jurisdiction, file })),
		],
		diagnostics,
	};
};

const faultsOf = (
	{ id, replaces, textAsOf }: Rule,
	shipped: readonly string[],
	issued: string,
): readonly (readonly [key: string, fault: Fault])[] => {
	const faults: (readonly [string, Fault])[] = [];
	if (shipped.includes(id) && replaces !== id)
		faults.push([
			"id",
			{
				code: "rules/id",
				what: message("limits/own.id"),
				expected: message("limits/own.id-expected", { id }),
				found: id,
				mend: message("limits/own.id-mend", { id }),
			},
		]);
	if (replaces !== undefined && !shipped.includes(replaces)) {
		const near = nearestName(replaces, shipped);
		faults.push([
			"replaces",
			{
				code: "rules/unknown-rule",
				what: message("limits/own.replaces"),
				expected: message("limits/own.replaces-expected"),
				found: replaces,
				mend:
					near === undefined
						? message("limits/own.replaces-mend")
						: message("limits/replaces.near", { near }),
			},
		]);
	}
	if (textAsOf !== "unknown" && textAsOf > issued)
		faults.push([
			"text_as_of",
			{
				code: "rules/date",
				what: message("limits/own.date"),
				expected: message("limits/own.date-expected", { issued }),
				found: textAsOf,
				mend: message("limits/own.date-mend"),
			},
		]);
	return faults;
};
