import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import type { OffsetWell } from "../../definition/definition.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingAt } from "../case.ts";
import { computedDistance } from "../computed-distance.ts";
import { placeWords, SEARCHED } from "../distances.ts";
import { allOf, cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import { listed } from "../reason.ts";
import type { Check } from "./check.ts";

/** A written consent, as recorded; where none is recorded there is none to lean on. */
const writtenConsent = ({ subject }: Case): Outcome => {
	if (subject.kind !== "neighbor") return doesNotApply(message("rules/no-neighbor-is-asked"));
	const { name, consent } = subject.neighbor;
	return consent === undefined
		? notMet(message("rules/no-written-consent-is-recorded-for", { name }))
		: met(
				message("rules/written-consent-for-was-given-on", { name, given: consent.given, cite: consent.cite }),
			);
};

/** Each offset well within the radius has to carry evidence of its condition. */
const offsetEvidence = (
	the: Case,
	{ radius, of }: Extract<LimitLeaf, { form: "evidence within" }>,
): Outcome => {
	const { offsetWells } = the.well;
	if (offsetWells.length === 0)
		return the.well.site.neighbors_complete === true
			? doesNotApply(message("rules/no-offset-well-is-listed-and-search"))
			: cannotTell(
					[missingAt(message("rules/offset-wells-nearby"), "site", "offset_wells"), SEARCHED],
					message("rules/no-offset-well-is-listed-and-nobody"),
				);
	const parts = offsetWells.map((well: OffsetWell, i): Outcome => {
		const distance = computedDistance(the, well, of);
		if (distance === undefined)
			return cannotTell([
				missingAt(
					message("rules/place-near-enough-to-measure-from", { well: well.name, placeWords: placeWords(of) }),
					"site",
					"offset_wells",
					i,
				),
			]);
		if (distance.value > radius.value)
			return doesNotApply(
				message("rules/is-from-outside-radius", { well: well.name, distance, placeWords: placeWords(of) }),
			);
		if (well.evidence === undefined)
			return cannotTell([
				missingAt(
					message("rules/evidence-condition", { well: well.name }),
					"site",
					"offset_wells",
					i,
					"evidence",
				),
			]);
		return met(
			message("rules/is-from-its-condition-rests-on", {
				well: well.name,
				distance,
				placeWords: placeWords(of),
				evidence: well.evidence,
			}),
		);
	});
	return allOf(parts);
};

/** No listed substance may be in any additive. An ingredient without a number cannot be cleared. */
const listedIngredients = (the: Case, { words }: Extract<LimitLeaf, { form: "none of" }>): Outcome => {
	const { stimulation } = the.well;
	if (stimulation === undefined) return doesNotApply(message("rules/no-stimulation-is-planned"));
	const { additives } = stimulation;
	if (additives.length === 0)
		return cannotTell([missingAt(message("rules/additives-treatment"), "stimulation", "additives")]);
	const found = additives.flatMap(({ name, ingredients }) =>
		ingredients.flatMap(({ name: ingredient, cas }) =>
			cas !== undefined && words.includes(cas.trim())
				? [message("rules/ingredient-in", { ingredient, cas, name })]
				: [],
		),
	);
	if (found.length > 0)
		return notMet(message("rules/on-rules-list", { count: found.length, found: listed(found) }));
	const unknown = additives.flatMap(({ name, ingredients }, i) => {
		const at = ["stimulation", "additives", i, "ingredients"] as const;
		if (ingredients.length === 0) return [missingAt(message("rules/ingredients", { name }), ...at)];
		return ingredients.flatMap(({ name: ingredient, cas }, j) =>
			cas === undefined
				? [missingAt(message("rules/cas-number-in", { ingredient, name }), ...at, j, "cas")]
				: [],
		);
	});
	if (unknown.length > 0) return cannotTell(unknown);
	const count = additives.reduce((sum, { ingredients }) => sum + ingredients.length, 0);
	return met(
		message("rules/none-ingredients-additives-has-cas-number-on", { count, additives: additives.length }),
	);
};

export const siteChecks = {
	setback: {
		title: "Setback",
		looksAt: "distance from the place the rule names to each listed neighbor of the kind it names",
		explain:
			"A surveyed distance stands before one computed from coordinates, and a distance surveyed from another place is not used. Boundaries are " +
			"taken as the rule words them: `2,000 ft or less` fails at 2,000 ft. Where no neighbor of the kind is listed, the check " +
			"cannot tell unless the list is stated to be complete. `consent: written` is met by a consent that the definition records for the " +
			"neighbor; beside a distance it stands in an `any_of`.",
		forms: { consent: writtenConsent },
	},
	"treatment-volume": {
		title: "Volume of the treatment",
		looksAt: "clean fluid of all stages and of the greatest stage",
		explain:
			"Some rules begin at a volume, of a stage or of all. The volumes are of clean fluid, water and acid, before proppant.",
	},
	"offset-wells": {
		title: "Offset wells",
		looksAt: "listed offset wells within the radius and the evidence of their condition",
		explain:
			"An old hole may be the way past every barrier. Each listed well within the radius has to carry evidence of its condition; the check cannot " +
			"see a well that nobody listed.",
		forms: { "evidence within": offsetEvidence },
	},
	"hydrogen-sulfide": {
		title: "Hydrogen sulfide",
		looksAt: "stated fraction of hydrogen sulfide in the gas",
		explain:
			"Above a fraction the rules ask for a plan, training and distances. The fraction is the operator's statement; a well whose gas nobody has " +
			"analyzed has none.",
	},
	"listed-ingredients": {
		title: "Ingredients on a list",
		looksAt: "CAS number of every ingredient of every additive",
		explain:
			"Fracturing with the substances on the list needs a permit of another kind. Ingredients are compared by CAS number; one without a number, a " +
			"trade secret included, cannot be cleared.",
		forms: { "none of": listedIngredients },
	},
} as const satisfies Readonly<Record<string, Check>>;
