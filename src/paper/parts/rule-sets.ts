import type { AppliedRuleSet } from "../../rules/rule-sets.ts";
import type { PaperContext } from "../context.ts";

/** Where a set comes from: it ships with this version, or it is a file of the user's with its edition. */
const sourceOf = ({ file, version: edition }: AppliedRuleSet, { words, version }: PaperContext): string =>
	file === undefined
		? `${words.label("phrases.rule_set_shipped")} ${version}`
		: [file, ...(edition === undefined ? [] : [edition])].join(", ");

/** How far the rows of a set were compared, and by whom. */
const comparedOf = (set: AppliedRuleSet, { words: { label } }: PaperContext): string => {
	const counted = (key: string, n: number): string[] =>
		n === 0 ? [] : [label(`phrases.${key}`).replace("{n}", String(n))];
	const ways = [
		...counted("rule_set_certified", set.certified),
		...counted("rule_set_copy", set.publicCopy),
		...counted("rule_set_draft", set.draft),
		...set.byPerson.map(({ by, rules }) =>
			label("phrases.rule_set_person").replace("{n}", String(rules)).replace("{by}", by),
		),
	];
	return ways.join(", ") || label("phrases.rule_set_none");
};

/** Practice ships as several files on one topic each; a reader asks how many checks are not law. */
const practice = (sets: readonly AppliedRuleSet[], context: PaperContext): readonly string[] => {
	const [first] = sets;
	if (first === undefined) return [];
	const rules = sets.reduce((sum, set) => sum + set.rules, 0);
	return [
		context.words
			.label("phrases.rule_set_practice")
			.replace("{source}", sourceOf(first, context))
			.replace("{rules}", String(rules)),
	];
};

/** Every rule set that was applied, each with its source and how far it was compared; one that is not known says so. */
export const appliedRuleSets = (context: PaperContext): string => {
	const { well, judgement, words } = context;
	const { label } = words;
	const isPractice = ({ kind }: AppliedRuleSet): boolean => kind === "practice";
	const law = judgement.ruleSets
		.filter((set) => !isPractice(set))
		.map((set) =>
			label("phrases.rule_set_applied")
				.replace("{code}", set.code)
				.replace("{name}", set.name)
				.replace("{source}", sourceOf(set, context))
				.replace("{rules}", String(set.rules))
				.replace("{compared}", comparedOf(set, context)),
		);
	const unknown = well.site.jurisdictions
		.filter((code) => judgement.unknownJurisdictions.includes(code))
		.map((code) => label("phrases.rule_set_unknown").replace("{code}", code));
	return [...law, ...unknown, ...practice(judgement.ruleSets.filter(isPractice), context)].join("; ");
};

/** By what the well was judged, for the first page: each set, its source, and how many of its limits are compared and by whom. */
export const ruleSetsInShort = (context: PaperContext): string => {
	const { well, judgement, words } = context;
	const { label } = words;
	const law = judgement.ruleSets
		.filter(({ kind }) => kind !== "practice")
		.map((set) =>
			[
				label("phrases.rule_set_short")
					.replace("{code}", set.code)
					.replace("{source}", sourceOf(set, context))
					.replace("{compared}", String(set.certified + set.publicCopy))
					.replace("{rules}", String(set.rules)),
				...set.byPerson.map(({ by, rules }) =>
					label("phrases.rule_set_person").replace("{n}", String(rules)).replace("{by}", by),
				),
			].join(", "),
		);
	const unknown = well.site.jurisdictions
		.filter((code) => judgement.unknownJurisdictions.includes(code))
		.map((code) => label("phrases.rule_set_unknown").replace("{code}", code));
	return [...law, ...unknown].join("; ");
};
