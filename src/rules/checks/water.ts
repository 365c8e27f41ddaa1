import type { LimitLeaf, Threshold } from "../../catalog/limits/limit.ts";
import { message } from "../../messages/message.ts";
import { worth } from "../amount.ts";
import { addDays, daysBetween, monthsBefore } from "../calendar.ts";
import { type Case, missingAt } from "../case.ts";
import { operatorWords } from "../compare.ts";
import { neighborsWithin, SEARCHED } from "../distances.ts";
import { EVENT_WORDS, eventDate } from "../events.ts";
import { holds } from "../holds.ts";
import { allOf, cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import { listed } from "../reason.ts";
import type { Check } from "./check.ts";

/** Every listed water zone that the rule calls protected has to lie within the protected water the well is built for. */
const definedWater = (the: Case, threshold: Threshold): Outcome => {
	const { geology } = the.well;
	const limit = worth(the, threshold.amount, "dissolved-solids");
	if (!("value" in limit)) return cannotTell("missing" in limit ? limit.missing : []);
	const base = geology.protectedWater?.base;
	if (base === undefined)
		return cannotTell([
			missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"),
		]);
	if (geology.water.length === 0)
		return cannotTell([missingAt(message("rules/water-zones"), "geology", "water")]);
	const common = { required: limit.value, comparison: threshold.operator };
	const below = geology.water
		.map((zone, i) => ({ zone, i }))
		.filter(({ zone }) => zone.base.value > base.value);
	const unknown = below.filter(({ zone }) => zone.dissolvedSolids === undefined);
	const fresh = below.filter(
		({ zone }) =>
			zone.dissolvedSolids !== undefined &&
			holds(zone.dissolvedSolids.value, threshold.operator, limit.value.value),
	);
	const [worst] = fresh;
	if (worst !== undefined)
		return {
			...common,
			verdict: "not met",
			...(worst.zone.dissolvedSolids === undefined ? {} : { measured: worst.zone.dissolvedSolids }),
			reason: [
				message("rules/carries-dissolved-solids-and-reaches-to-tvd", {
					zone: worst.zone.name,
					detail: worst.zone.dissolvedSolids ?? "",
					base: worst.zone.base,
					base2: base,
					operatorWords: operatorWords(threshold.operator),
					limit: limit.value,
				}),
			],
			missing: [],
		};
	if (unknown.length > 0)
		return cannotTell(
			unknown.map(({ zone, i }) =>
				missingAt(
					message("rules/dissolved-solids-2", { zone: zone.name }),
					"geology",
					"water",
					i,
					"dissolved_solids",
				),
			),
		);
	return {
		...common,
		verdict: "met",
		reason: [
			message("rules/water-zones-listed-none-dissolved-solids-lies", {
				water: listed(geology.water.map(({ name }) => name)),
				operatorWords: operatorWords(threshold.operator),
				limit: limit.value,
				base,
			}),
		],
		missing: [],
	};
};

/** How long before the event a sample was taken that is too old, by whether the event is on record. */
const EARLY = {
	planned: { days: "rules/sampled-days-before", months: "rules/sampled-months-before" },
	recorded: { days: "rules/sampled-days-before-recorded", months: "rules/sampled-months-before-recorded" },
} as const;

const samples = (the: Case, leaf: Extract<LimitLeaf, { form: "samples within" }>): Outcome => {
	const { radius, of, before, months, days } = leaf;
	const near = neighborsWithin(the, ["water well", "public water supply", "spring"], of, radius.value);
	const parts: Outcome[] = near.inside.map((neighbor) => {
		const at = ["site", "neighbors", the.well.neighbors.indexOf(neighbor), "sampled"] as const;
		if (neighbor.sampled === undefined)
			return cannotTell([
				missingAt(message("rules/date-on-which-was-sampled", { neighbor: neighbor.name }), ...at),
			]);
		const event = eventDate(the.well, before);
		if ("missing" in event) return cannotTell([event.missing]);
		const late = daysBetween(neighbor.sampled, event.date) < 0;
		const first =
			months !== undefined
				? monthsBefore(event.date, months.value)
				: days !== undefined
					? addDays(event.date, -days.value)
					: undefined;
		const early = first !== undefined && daysBetween(first, neighbor.sampled) < 0;
		const said = message("rules/sampled-on", { name: neighbor.name, sampled: neighbor.sampled });
		if (late)
			return notMet(
				message(event.basis === "recorded" ? "rules/after-recorded" : "rules/after-planned-for", {
					said,
					eventWords: EVENT_WORDS[before],
					date: event.date,
				}),
			);
		if (early)
			return notMet(
				message(EARLY[event.basis][months === undefined ? "days" : "months"], {
					said,
					count: (months ?? days)?.value ?? 0,
					event: EVENT_WORDS[before],
					date: event.date,
				}),
			);
		return met(
			message(event.basis === "recorded" ? "rules/before-recorded" : "rules/before-planned-for", {
				said,
				eventWords: EVENT_WORDS[before],
				date: event.date,
			}),
		);
	});
	if (near.unplaced.length > 0) parts.push(cannotTell(near.unplaced));
	if (parts.length > 0) return allOf(parts);
	return near.complete
		? doesNotApply(message("rules/no-water-source-is-listed-within-and", { radius }))
		: cannotTell([SEARCHED], message("rules/no-water-source-is-listed-within-and-2", { radius }));
};

export const waterChecks = {
	separation: {
		title: "Separation of treated rock and protected water",
		looksAt: "vertical distance from the base of protected water down to the uppermost perforation",
		explain:
			"The vertical rock between protected water and the treated interval. Where a rule has a least separation, a smaller one brings further " +
			"duties. Growth of the fracture above the perforations is not taken off here; the isolation figures show it beside.",
	},
	"water-definition": {
		title: "Water that the rule protects",
		looksAt: "dissolved solids and base of each listed water zone against the base of protected water",
		explain:
			"Rules define protected water by dissolved solids, by use, by a formation or by an agency's letter. The check asks whether a listed zone " +
			"that the rule would protect lies deeper than the base the well is built for. It cannot see a zone that is not listed.",
		forms: { threshold: definedWater },
	},
	"water-samples": {
		title: "Water sampled before the work",
		looksAt: "water sources within the radius, the date each was sampled, and the planned date of the work",
		explain:
			"A sample before the work is the baseline for any later question. The check asks for one of every source listed within the rule's radius; " +
			"where none is listed, the definition has to state that the list of neighbors is complete.",
		forms: { "samples within": samples },
	},
} as const satisfies Readonly<Record<string, Check>>;
