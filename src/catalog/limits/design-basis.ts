import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import { message } from "../../messages/message.ts";
import { CHECK_LIMITS } from "./checks.ts";
import { type Desk, report } from "./fault.ts";
import type { Jurisdiction, Rule } from "./limit.ts";
import { readLimit } from "./read-limit.ts";

/** A limit of the company's own design basis, as the definition has it; its limit is still to be read. */
export interface DesignBasisLimit {
	/** Id of the practice rule it stands in for. */
	readonly replaces: string;
	readonly limit: unknown;
	/** Whose decision it is, and why: printed beside the verdict. */
	readonly by: string;
	readonly why: string;
}

/**
 * Practice with the company's own limits in place of those it names. Only practice may be replaced this way: a rule of law
 * takes a variance.
 *
 * Faults are located in the definition: `rules/unknown-rule`, and those of the limit's form.
 */
export const applyDesignBasis = (
	practice: readonly Jurisdiction[],
	written: readonly DesignBasisLimit[],
): Checked<readonly Jurisdiction[]> => {
	const faults: Diagnostic[] = [];
	const replaced = new Map<string, Rule>();
	const rules = practice.flatMap((set) => set.rules);
	for (const [i, { replaces, limit: raw, by, why }] of written.entries()) {
		const at = ["design_basis", "limits", i];
		const desk: Desk = { faults, originOf: (path, text) => ({ kind: "definition", at: path, text }) };
		const rule = rules.find(({ id }) => id === replaces);
		if (rule === undefined) {
			const ids = rules.map(({ id }) => id);
			const near = nearestName(replaces, ids);
			report(desk, {
				code: "rules/unknown-rule",
				at: [...at, "replaces"],
				what: message("limits/basis.what"),
				expected: message("limits/basis.expected", { names: ids.slice(0, 3).join(", ") }),
				found: replaces,
				mend: near === undefined ? message("limits/basis.mend") : message("limits/replaces.near", { near }),
			});
			continue;
		}
		const { subject } = CHECK_LIMITS[rule.check];
		const limit = readLimit({ ...desk, subject }, raw, [...at, "limit"], rule.check);
		if (limit === undefined) continue;
		// The lesser limit that practice lets an engineer confirm goes with the limit it belongs to.
		const { confirm: _confirm, ...rest } = rule;
		replaced.set(replaces, {
			...rest,
			limit,
			requirement: message("limits/basis.requirement", { why: `${why.replace(/\.$/, "")}.` }),
			citation: message("limits/basis.citation", { by, citation: rule.citation }),
			howKnown: { way: "read" },
		});
	}
	const value = practice.map((set) => ({
		...set,
		rules: set.rules.map((rule) => replaced.get(rule.id) ?? rule),
	}));
	return { value, diagnostics: faults };
};
