import type { Jurisdiction, RuleSetKind } from "../catalog/limits/limit.ts";
import type { Well } from "../well/well.ts";

/** A set of rules that was applied, as the first page names it. */
export interface AppliedRuleSet {
	readonly code: string;
	readonly name: string;
	readonly kind: RuleSetKind;
	/** Of a user's own file: the file, and its edition where it states one; absent for a set that ships. */
	readonly file?: string;
	readonly version?: string;
	readonly rules: number;
	/** Rows laid beside certified text, beside a public copy, beside a draft. */
	readonly certified: number;
	readonly publicCopy: number;
	readonly draft: number;
	/** Rows that a person named in the definition has laid beside the official text. */
	readonly byPerson: readonly { readonly by: string; readonly rules: number }[];
}

/** The sets that were applied, in their order, with how far each was compared and by whom. */
export const appliedRuleSets = (
	well: Well,
	jurisdictions: readonly Jurisdiction[],
): readonly AppliedRuleSet[] =>
	jurisdictions.map(({ code, name, kind, file, version, rules }) => {
		const ids = new Set(rules.map(({ id }) => id));
		const mine = (well.site.compared ?? []).filter(({ rule }) => ids.has(rule));
		const people = [...new Set(mine.map(({ by }) => by))];
		const copies = rules.flatMap(({ publicCopy }) => (publicCopy === undefined ? [] : [publicCopy.kind]));
		return {
			code,
			name,
			kind,
			...(file === undefined ? {} : { file }),
			...(version === undefined ? {} : { version }),
			rules: rules.length,
			certified: rules.filter(({ standing }) => standing === "compared").length,
			publicCopy: copies.filter((each) => each !== "draft").length,
			draft: copies.filter((each) => each === "draft").length,
			byPerson: people.map((by) => ({ by, rules: mine.filter((each) => each.by === by).length })),
		};
	});
