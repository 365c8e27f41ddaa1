import type { CementResults, HoleMark } from "../../calc/results.ts";
import type { Along, CementZone } from "../../catalog/limits/limit.ts";
import type { TopMethod } from "../../catalog/limits/vocabulary.ts";
import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import { practicallyEqual } from "../../units/practically-equal.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { annulusFilling, distanceAlongHole, verticalDistance } from "../formulas.ts";
import { openZones } from "../open-zones.ts";
import { outerOf } from "../subject.ts";
import {
	aboveOrBelow,
	absent,
	known,
	lacking,
	type Measure,
	type Parameters,
	type Reading,
} from "./reading.ts";
import { casingOf, sameName, stringOf } from "./shoe.ts";

export const cementOf = (the: Case) => the.results.cement[stringOf(the).id];

/** A place in the hole, on whichever of its two axes is known. */
interface Mark {
	readonly md?: Known<"measured-depth">;
	readonly tvd?: Known<"true-vertical-depth">;
}

/** Height of the upper mark above the lower one, along the axis the limit names. */
export const heightBetween = (lower: Mark, upper: Mark, along: Along): Known<"offset"> | undefined => {
	if (along === "hole")
		return lower.md && upper.md && distanceAlongHole.of({ lower: lower.md, upper: upper.md });
	return lower.tvd && upper.tvd && verticalDistance.of({ lower: lower.tvd, upper: upper.tvd });
};

const topMissing = (the: Case) =>
	missingOf(the, stringOf(the), message("rules/cement-top"), "cement", "slurries");

/** That nothing came back, and how much was pumped where the record says. */
export const noCementReturned = (the: Case): Said => {
	const over = cementOf(the)?.pumped_over_calculated;
	return over === undefined
		? message("rules/record-shows-that-no-cement-returned-to")
		: message("rules/no-cement-returned-of", { over });
};

/** How the cement top is, or will be, known. */
export const topMethodOf = (the: Case): TopMethod | undefined => {
	const { cement } = stringOf(the);
	const { actual } = cement ?? {};
	if (cementOf(the)?.top_basis === "calculated") return "calculated";
	if (actual?.top !== undefined) return actual.top.method;
	return actual?.returnsToSurface === undefined ? cement?.topMethod : "returns seen";
};

/** Says whose top it is, so that a plan is never read as a record. */
export const topNoun = (the: Case): Said =>
	({
		recorded: message("rules/recorded-cement-top"),
		calculated: message("rules/calculated-cement-top"),
		planned: message("rules/planned-cement-top"),
	})[cementOf(the)?.top_basis ?? "planned"];

const axis = ({ along }: Parameters): Said =>
	along === "hole" ? message("rules/along-hole") : message("rules/vertically");

const reaches = (foot: number, mark: number): boolean => foot > mark || practicallyEqual(foot, mark);

/** Top of the column that reaches a mark from below: cement above a stretch without any seals nothing below it. */
const topAbove = ({ columns, top }: CementResults, { md, tvd }: Mark): HoleMark =>
	columns.find(({ bottom }) =>
		md === undefined ? reaches(bottom.tvd.value, tvd?.value ?? 0) : reaches(bottom.md.value, md.value),
	)?.top ??
	columns.at(-1)?.top ??
	top;

/** Height of the cement top above a mark; the mark may be missing, or have no meaning here. */
const above = (place: Said, find: (the: Case) => Mark | Reading): Pick<Measure, "read" | "say" | "side"> => ({
	side: "above",
	read: (the, parameters) => {
		const mark = find(the);
		if ("state" in mark) return mark;
		const cement = cementOf(the);
		if (cement === undefined) return lacking(topMissing(the));
		const top = topAbove(cement, mark);
		const height = heightBetween(mark, top, parameters.along ?? "hole");
		return known(height, missingAt(message("rules/measured-depth", { place }), "geology", "formations"));
	},
	say: (said, the, parameters) => [...aboveOrBelow(topNoun(the), place, said), axis(parameters)],
});

const shoeMark = (the: Case): Mark | Reading =>
	casingOf(the)?.shoe ?? lacking(missingOf(the, stringOf(the), message("rules/shoe-depth"), "pipe"));

const flowZone = (the: Case): Mark | Reading => {
	const [shallowest] = openZones(the);
	return (
		shallowest?.top ??
		absent(message("rules/no-formation-open-between-shoe-and-shoe", { string: stringOf(the).id }))
	);
};

const previousShoe = (the: Case): Mark | Reading => {
	const outer = outerOf(stringOf(the), the.well);
	if (outer === undefined) return absent(message("rules/there-is-no-string-outside-this-one"));
	return (
		the.results.casing[outer.id]?.shoe ?? lacking(missingOf(the, outer, message("rules/shoe-depth"), "pipe"))
	);
};

const perforations = (the: Case): Mark | Reading =>
	the.results.stimulation?.top_perforation ??
	(the.well.stimulation === undefined
		? absent(message("rules/no-interval-is-to-be-perforated"))
		: lacking(missingAt(message("rules/uppermost-perforation"), "stimulation", "stages")));

const kickoff = (the: Case): Mark | Reading =>
	the.results.trajectory.kickoff ?? absent(message("rules/hole-has-no-kickoff"));

const waterBase = (the: Case): Mark | Reading =>
	the.results.geology.protected_water_base ??
	lacking(missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"));

/** Height above the top or the base of a formation that the limit names. */
const aboveFormation = (edge: "top" | "base"): Pick<Measure, "read" | "say"> => {
	const code = edge === "top" ? "rules/top-of-formation" : "rules/base-of-formation";
	const find =
		(formation: string) =>
		({ results }: Case): Mark | Reading => {
			const found = results.geology.formations.find(({ name }) => sameName(name, formation));
			return found?.[edge] ?? lacking(missingAt(message(code, { formation }), "geology", "formations"));
		};
	const place = (formation: string) => message(edge === "top" ? "rules/top" : "rules/base", { formation });
	return {
		read: (the, parameters) => {
			const { formation = "" } = parameters;
			return above(place(formation), find(formation)).read(the, parameters);
		},
		say: (said, the, parameters) => {
			const { formation = "" } = parameters;
			return above(place(formation), find(formation)).say(said, the, parameters);
		},
	};
};

/** Slurry that reaches the shoe: its length is the length of the cement meant for the shoe. */
const shoeSlurry = (the: Case) =>
	[...(cementOf(the)?.slurries ?? [])].sort((a, b) => b.bottom.md.value - a.bottom.md.value)[0];

export const cementHeights = {
	"cement top above shoe": {
		noun: message("rules/height-cement-above-shoe"),
		...above(message("rules/shoe"), shoeMark),
	},
	"cement top above flow zone": {
		noun: message("rules/height-cement-above-shallowest-flow-zone"),
		...above(message("rules/top-shallowest-flow-zone-or-target"), flowZone),
	},
	"cement top above previous shoe": {
		noun: message("rules/height-cement-above-previous-shoe"),
		...above(message("rules/previous-shoe"), previousShoe),
	},
	"cement top above perforations": {
		noun: message("rules/height-cement-above-uppermost-perforation"),
		...above(message("rules/uppermost-perforation-2"), perforations),
	},
	"cement top above kickoff": {
		noun: message("rules/height-cement-above-kickoff"),
		...above(message("rules/kickoff"), kickoff),
	},
	"cement top above protected water": {
		noun: message("rules/height-cement-above-base-protected-water"),
		...above(message("rules/base-protected-water-2"), waterBase),
	},
	"cement top above formation top": {
		noun: message("rules/height-cement-above-formations-top"),
		...aboveFormation("top"),
	},
	"cement top above formation base": {
		noun: message("rules/height-cement-above-formations-base"),
		...aboveFormation("base"),
	},
	"cement pumped over calculated": {
		noun: message("rules/cement-pumped-to-cement-calculated"),
		read: (the) => {
			const cement = cementOf(the);
			if (cement === undefined) return lacking(topMissing(the));
			const parts = cement.slurries.flatMap(({ open_hole_volume, cased_volume }) => [
				open_hole_volume,
				cased_volume,
			]);
			return known(annulusFilling.of({ parts, annulus: cement.annulus_volume }), topMissing(the));
		},
		say: ({ part }) => [message("rules/slurry-planned-for-annulus-is-times-its", { part })],
	},
	"sacks of cement": {
		noun: message("rules/sacks-of-cement"),
		read: (the) => known(cementOf(the)?.sacks, topMissing(the)),
		say: ({ part }) => [message("rules/sacks-planned", { part })],
	},
	"shoe cement length": {
		noun: message("rules/length-cement-placed-at-shoe"),
		read: (the, { along = "hole" }) => {
			const slurry = shoeSlurry(the);
			if (slurry === undefined) return lacking(topMissing(the));
			return known(heightBetween(slurry.bottom, slurry.top, along), topMissing(the));
		},
		say: ({ part }, the, parameters) => [
			message("rules/slurry-covers-above-shoe", {
				detail: shoeSlurry(the)?.id ?? "lowest",
				part,
				axis: axis(parameters),
			}),
		],
	},
} as const satisfies Readonly<Record<string, Measure>>;

/** A stretch of the string, from its upper to its lower mark. */
export interface Stretch {
	readonly top: HoleMark;
	readonly bottom: HoleMark;
}

/** Whether a slurry reaches into a zone whose height above the shoe is known. */
export const reachesInto = (
	slurry: Stretch,
	shoe: HoleMark,
	zone: Extract<CementZone, { kind: "bottom" | "above bottom" }>,
	height: number,
): boolean => {
	const lowest = heightBetween(shoe, slurry.bottom, zone.along)?.value ?? 0;
	const highest = heightBetween(shoe, slurry.top, zone.along)?.value ?? 0;
	if (practicallyEqual(zone.kind === "bottom" ? lowest : highest, height)) return false;
	return zone.kind === "bottom" ? lowest < height : highest > height;
};
