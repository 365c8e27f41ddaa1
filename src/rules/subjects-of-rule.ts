import { CHECK_LIMITS } from "../catalog/limits/checks.ts";
import type { Rule } from "../catalog/limits/limit.ts";
import type { SubjectKind } from "../catalog/limits/measures.ts";
import { BY_WHAT_IT_HAS, type StringSelector } from "../catalog/limits/vocabulary.ts";
import { message, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import { missingAt } from "./case.ts";
import { SEARCHED } from "./distances.ts";
import { cannotTell, doesNotApply, type Outcome } from "./outcome.ts";
import { listed, orListed } from "./reason.ts";
import { annuliOf, type Subject, selectorWords, selectStrings, unplacedStrings } from "./subject.ts";

const NONE_HAS: Readonly<Partial<Record<StringSelector, Said>>> = {
	"treated through": message("rules/no-string-is-treated-through"),
	"cement recorded": message("rules/no-cement-job-is-recorded"),
	"shoe test recorded": message("rules/no-shoe-test-is-recorded"),
	"pressure test recorded": message("rules/no-casing-test-is-recorded"),
	"bond log recorded": message("rules/no-bond-log-is-recorded"),
	"squeeze recorded": message("rules/no-squeeze-is-recorded"),
};

/** Lines that bound every well's land, near or far. */
const EVERYWHERE: ReadonlySet<string> = new Set(["lease line", "property line"]);

/** What a rule is asked of in this well, or why of nothing. */
export const subjectsOfRule = (rule: Rule, well: Well): readonly Subject[] | Outcome => {
	const { subject } = CHECK_LIMITS[rule.check];
	const { strings, annulus, neighbors } = rule.appliesTo;
	switch (subject) {
		case "well":
			return [{ kind: "well" }];
		case "string": {
			const found = selectStrings(well, strings);
			if (found.length > 0) return found.map((string) => ({ kind: "string" as const, string }));
			const unplaced = unplacedStrings(well);
			const named = orListed(strings.map(selectorWords));
			if (unplaced.length > 0 && !strings.every((selector) => BY_WHAT_IT_HAS.includes(selector)))
				return cannotTell(
					unplaced.map(({ id }) => ({
						what: message("rules/name-of-string", { id }),
						at: ["casing", well.strings.findIndex((string) => string.id === id), "id"],
					})),
				);
			const [selector] = strings;
			return doesNotApply((selector && NONE_HAS[selector]) ?? message("rules/well-has-no-string", { named }));
		}
		case "annulus": {
			const all = annuliOf(well);
			const found =
				annulus === undefined
					? all
					: all.filter(
							({ inner, outer }) =>
								(annulus.inside === undefined || selectStrings(well, [annulus.inside]).includes(inner)) &&
								(annulus.outside === undefined || selectStrings(well, [annulus.outside]).includes(outer)),
						);
			return found.length > 0 ? found : doesNotApply(message("rules/well-has-no-such-annulus-at-wellhead"));
		}
		case "neighbor": {
			const found = well.neighbors.filter(({ kind }) => neighbors.some((each) => each === kind));
			if (found.length > 0) return found.map((neighbor) => ({ kind: "neighbor" as const, neighbor }));
			return noneListed(well, neighbors);
		}
		case "hole":
			return well.holes.map((hole) => ({ kind: "hole" as const, hole }));
		case "stack": {
			const stacks = well.wellControl?.preventers ?? [];
			return stacks.length > 0
				? stacks.map((stack) => ({ kind: "stack" as const, stack }))
				: cannotTell([{ what: message("rules/subjects-of-rule.what"), at: ["well_control", "preventers"] }]);
		}
		case "offset well":
			return well.offsetWells.length > 0
				? well.offsetWells.map((offset) => ({ kind: "offset well" as const, offset }))
				: doesNotApply(message("rules/no-offset-well-is-listed"));
	}
};

/** Of a rule on neighbors of which none is listed: whether that means that there are none. */
export const noneListed = (well: Well, kinds: readonly string[]): Outcome => {
	const named = orListed(kinds.map((kind) => ({ declared: kind })));
	const always = kinds.find((kind) => EVERYWHERE.has(kind));
	// What every well has near it is not absent because nobody listed it.
	if (always !== undefined)
		return cannotTell(
			[missingAt(message("rules/distance-to", { always: { declared: always } }), "site", "neighbors")],
			message("rules/no-is-listed-every-well-has-one", { named }),
		);
	return well.site.neighbors_complete === true
		? doesNotApply(message("rules/no-is-listed-and-list-neighbors-is", { named }))
		: cannotTell([SEARCHED], message("rules/no-is-listed-and-nobody-has-stated", { named }));
};

const SUBJECT_WORDS: Readonly<Record<Exclude<SubjectKind, "string" | "neighbor">, Said>> = {
	well: message("rules/subject-well"),
	annulus: message("rules/subject-annulus"),
	hole: message("rules/subject-any-hole"),
	stack: message("rules/subject-any-preventers"),
	"offset well": message("rules/subject-offset-well"),
};

/** What a rule is about where the well has none of it. */
export const ruleSubject = ({ check, appliesTo }: Rule): Said => {
	const { subject } = CHECK_LIMITS[check];
	if (subject === "string")
		return message("rules/listed", { listed: listed(appliesTo.strings.map(selectorWords)) });
	return subject === "neighbor"
		? message("rules/listed", { listed: listed(appliesTo.neighbors.map((kind) => ({ declared: kind }))) })
		: SUBJECT_WORDS[subject];
};
