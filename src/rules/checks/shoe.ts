import { message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { casingOf, stringOf } from "../measures/shoe.ts";
import { cannotTell, needsJudgement, type Outcome } from "../outcome.ts";
import type { Check } from "./check.ts";

/** Rock at the shoe, and what the numbers say of it. Whether it is competent is for a geologist. */
const shoeSeat = (the: Case): Outcome => {
	const string = stringOf(the);
	const casing = casingOf(the);
	if (casing === undefined) return cannotTell([missingOf(the, string, message("rules/shoe-depth"), "pipe")]);
	const { formations } = the.well.geology;
	const rock = formations.filter(({ top }) => top.value <= casing.shoe.tvd.value).at(-1);
	if (rock === undefined)
		return cannotTell([missingAt(message("rules/formation-at-shoe"), "geology", "formations")]);
	const stated =
		rock.competent === undefined
			? message("rules/competence-not-stated")
			: rock.competent
				? message("rules/stated-competent")
				: message("rules/stated-not-competent");
	const { fracture_pressure_at_shoe: fracture, mud_hydrostatic_at_shoe: mud } = casing;
	return needsJudgement(
		message("rules/shoe-stands-in-geologist-has-to-say", {
			string: string.id,
			rock: rock.name,
			lithology: rock.lithology,
			stated,
			detail: {
				parts: fracture === undefined ? [] : [message("rules/rock-at-shoe-is-taken-to-break", { fracture })],
			},
			detail2: {
				parts: mud === undefined ? [] : [message("rules/drilling-fluids-column-to-shoe-weighs", { mud })],
			},
		}),
	);
};

export const shoeChecks = {
	"surface-shoe-depth": {
		title: "Surface shoe below protected water",
		looksAt:
			"vertical depth of the surface shoe against the base of protected water, a named formation, or water wells",
		explain:
			"Surface casing is the first steel across fresh water, so it has to end below it; some rules also say how far below it may " +
			"go. The base of protected water is the agency's finding, typed in from its letter; this check cannot confirm it. " +
			"Distances are vertical.",
	},
	"shoe-depth": {
		title: "Depth of a shoe",
		looksAt: "measured or vertical depth of a shoe",
		explain:
			"Some rules give a least or greatest depth of a string, or ask for approval beyond one. A rule that counts from ground level " +
			"is compared with the depth below ground, not with the rig's depth.",
	},
	"shoe-seat": {
		title: "Rock at the shoe",
		looksAt: "formation at the shoe, its stated competence, its breakdown pressure and the mud's column",
		explain:
			"Rules ask for a shoe in competent or impervious rock. No arithmetic can pass such a word: the check shows the rock and the " +
			"numbers, and a person decides.",
		forms: { judgement: shoeSeat },
	},
	"shoe-test": {
		title: "Shoe test",
		looksAt:
			"new hole drilled before the shoe test, and its equivalent density against the fluid planned below",
		explain:
			"Testing the rock below a shoe shows whether it stands the fluid the next hole needs. The check compares the planned test, or " +
			"the recorded one where it was made, with the rule's length of new hole and with the heaviest fluid planned below.",
	},
	"shoe-strength": {
		title: "Strength of the rock at the shoe",
		looksAt: "formation breakdown pressure at the shoe, from the fracture gradient there",
		explain:
			"Some rules ask that the rock at a shoe holds a pressure. The pressure is worked out from the fracture gradient of the formation at the " +
			"shoe; a leak-off or integrity test is judged by the shoe test.",
	},
	"liner-lap": {
		title: "Lap of a liner",
		looksAt: "liner top against the shoe of the string it hangs in",
		explain:
			"A liner seals where it overlaps the string before it; rules give the least overlap, along the hole.",
	},
} as const satisfies Readonly<Record<string, Check>>;
