import type { StringSelector } from "../catalog/limits/vocabulary.ts";
import type { Neighbor, OffsetWell } from "../definition/definition.ts";
import { message, type Said } from "../messages/message.ts";
import { rolesOf } from "../well/roles.ts";
import type { AnnulusLimit, CasingString, Hole, Well } from "../well/well.ts";

export { type Role, rolesOf } from "../well/roles.ts";

/** What one finding is made on. */
export type Subject =
	| { readonly kind: "well" }
	| { readonly kind: "string"; readonly string: CasingString }
	| {
			readonly kind: "annulus";
			readonly inner: CasingString;
			readonly outer: CasingString;
			readonly limit?: AnnulusLimit;
	  }
	| { readonly kind: "neighbor"; readonly neighbor: Neighbor }
	| { readonly kind: "hole"; readonly hole: Hole }
	| { readonly kind: "stack"; readonly stack: PreventerStack }
	| { readonly kind: "offset well"; readonly offset: OffsetWell };

/** Preventers mounted on one string. */
export type PreventerStack = NonNullable<NonNullable<Well["wellControl"]>["preventers"]>[number];

const SELECTOR_WORDS: Readonly<Record<StringSelector, Said>> = {
	conductor: message("rules/strings.conductor"),
	surface: message("rules/strings.surface"),
	"first surface": message("rules/strings.first-surface"),
	"second surface": message("rules/strings.second-surface"),
	intermediate: message("rules/strings.intermediate"),
	production: message("rules/strings.production"),
	liner: message("rules/strings.liner"),
	"below conductor": message("rules/strings.below-conductor"),
	"below surface": message("rules/strings.below-surface"),
	"treated through": message("rules/strings.treated-through"),
	"cement recorded": message("rules/strings.cement-recorded"),
	"shoe test recorded": message("rules/strings.shoe-test-recorded"),
	"pressure test recorded": message("rules/strings.pressure-test-recorded"),
	"bond log recorded": message("rules/strings.bond-log-recorded"),
	"squeeze recorded": message("rules/strings.squeeze-recorded"),
	"every string": message("rules/strings.every-string"),
	"every string but conductor": message("rules/strings.every-string-but-conductor"),
};

/** What a rule calls the strings that it picks. */
export const selectorWords = (selector: StringSelector): Said => SELECTOR_WORDS[selector];

export type StringSubject = Extract<Subject, { kind: "string" }>;

const isSelected = (string: CasingString, selector: StringSelector, well: Well): boolean => {
	const roles = rolesOf(string, well);
	switch (selector) {
		case "below conductor":
			return roles.length > 0 && !roles.includes("conductor") && !roles.includes("tieback");
		case "below surface":
			return (
				roles.length > 0 &&
				!roles.includes("conductor") &&
				!roles.includes("surface") &&
				!roles.includes("tieback")
			);
		case "first surface":
		case "second surface": {
			const several = well.strings.filter((each) => rolesOf(each, well).includes("surface"));
			return several[selector === "first surface" ? 0 : 1]?.id === string.id;
		}
		case "every string":
			return true;
		case "every string but conductor":
			return !roles.includes("conductor");
		case "treated through":
			return well.stimulation?.treatedThrough === string.id;
		case "cement recorded":
			// A conductor is grouted: it has no plug, no floats and no lift.
			return string.cement?.actual !== undefined && !roles.includes("conductor");
		case "shoe test recorded":
			return string.shoeTest?.actual !== undefined;
		case "pressure test recorded":
			return string.pressureTest?.actual !== undefined;
		case "bond log recorded":
			return string.cement?.actual?.seal?.bondLog !== undefined;
		case "squeeze recorded":
			return (string.cement?.actual?.seal?.squeezes ?? []).length > 0;
		default:
			return roles.includes(selector);
	}
};

/** Strings a rule picks, from the outermost inward. */
export const selectStrings = (well: Well, selectors: readonly StringSelector[]): readonly CasingString[] =>
	well.strings.filter((string) => selectors.some((selector) => isSelected(string, selector, well)));

/** Strings whose role cannot be told from the definition. */
export const unplacedStrings = (well: Well): readonly CasingString[] =>
	well.strings.filter((string) => rolesOf(string, well).length === 0);

/** The string outside this one, if any. */
export const outerOf = (string: CasingString, well: Well): CasingString | undefined =>
	string.within === undefined ? undefined : well.strings.find(({ id }) => id === string.within);

/** Every annulus that opens at the wellhead: between a string to surface and the next one outside it. */
export const annuliOf = (well: Well): readonly Extract<Subject, { kind: "annulus" }>[] =>
	well.strings.flatMap((inner) => {
		const outer = outerOf(inner, well);
		if (outer === undefined || inner.kind === "liner" || rolesOf(outer, well).includes("conductor"))
			return [];
		const limit = well.stimulation?.annuli.find(
			({ between }) => between.includes(inner.id) && between.includes(outer.id),
		);
		return [{ kind: "annulus" as const, inner, outer, ...(limit === undefined ? {} : { limit }) }];
	});

/** How a finding names what it was made on. */
export const subjectName = (subject: Subject): Said => {
	switch (subject.kind) {
		case "well":
			return message("rules/subject-well");
		case "string":
			return subject.string.id;
		case "annulus":
			return message("rules/annulus-named", { inner: subject.inner.id, outer: subject.outer.id });
		case "neighbor":
			return subject.neighbor.name;
		case "hole":
			return message("rules/subject-hole", { hole: subject.hole.id });
		case "stack":
			return message("rules/subject-preventers", { string: subject.stack.over });
		case "offset well":
			return subject.offset.name;
	}
};
