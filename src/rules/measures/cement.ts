import type { CementResults, HoleMark } from "../../calc/results.ts";
import type { Along, CementZone } from "../../catalog/limits/limit.ts";
import type { TopMethod } from "../../catalog/limits/vocabulary.ts";
import type { Known } from "../../cite/known.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { annulusFilling, distanceAlongHole, verticalDistance } from "../formulas.ts";
import { openZones } from "../open-zones.ts";
import { practicallyEqual } from "../practically-equal.ts";
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
import { casingOf, stringOf } from "./shoe.ts";

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

const topMissing = (the: Case) => missingOf(the, stringOf(the), "cement top", "cement", "slurries");

/** How the cement top is, or will be, known. */
export const topMethodOf = (the: Case): TopMethod | undefined => {
	const { cement } = stringOf(the);
	const { actual } = cement ?? {};
	if (cementOf(the)?.top_basis === "calculated") return "calculated";
	if (actual?.top !== undefined) return actual.top.method;
	return actual?.returnsToSurface === undefined ? cement?.topMethod : "returns seen";
};

/** Says whose top it is, so that a plan is never read as a record. */
export const topNoun = (the: Case): string =>
	({
		recorded: "the recorded cement top",
		calculated: "the cement top calculated from the volumes pumped",
		planned: "the planned cement top",
	})[cementOf(the)?.top_basis ?? "planned"];

const axis = ({ along }: Parameters): string => (along === "hole" ? ", along the hole" : ", vertically");

const reaches = (foot: number, mark: number): boolean => foot > mark || practicallyEqual(foot, mark);

/** Top of the column that reaches a mark from below: cement above a stretch without any seals nothing below it. */
const topAbove = ({ columns, top }: CementResults, { md, tvd }: Mark): HoleMark =>
	columns.find(({ bottom }) =>
		md === undefined ? reaches(bottom.tvd.value, tvd?.value ?? 0) : reaches(bottom.md.value, md.value),
	)?.top ??
	columns.at(-1)?.top ??
	top;

/** Height of the cement top above a mark; the mark may be missing, or have no meaning here. */
const above = (place: string, find: (the: Case) => Mark | Reading): Pick<Measure, "read" | "say"> => ({
	read: (the, parameters) => {
		const mark = find(the);
		if ("state" in mark) return mark;
		const cement = cementOf(the);
		if (cement === undefined) return lacking(topMissing(the));
		const top = topAbove(cement, mark);
		const height = heightBetween(mark, top, parameters.along ?? "hole");
		return known(height, missingAt(`measured depth of ${place}`, "geology", "formations"));
	},
	say: (said, the, parameters) => [...aboveOrBelow(topNoun(the), place, said), axis(parameters)],
});

const shoeMark = (the: Case): Mark | Reading =>
	casingOf(the)?.shoe ?? lacking(missingOf(the, stringOf(the), "shoe depth", "pipe"));

const flowZone = (the: Case): Mark | Reading => {
	const [shallowest] = openZones(the);
	return (
		shallowest?.top ??
		absent(
			`no formation open between the ${stringOf(the).id} shoe and the shoe before it is marked as a flow zone or as the target`,
		)
	);
};

const previousShoe = (the: Case): Mark | Reading => {
	const outer = outerOf(stringOf(the), the.well);
	if (outer === undefined) return absent("there is no string outside this one");
	return the.results.casing[outer.id]?.shoe ?? lacking(missingOf(the, outer, "shoe depth", "pipe"));
};

const perforations = (the: Case): Mark | Reading =>
	the.results.stimulation?.top_perforation ??
	(the.well.stimulation === undefined
		? absent("no interval is to be perforated")
		: lacking(missingAt("uppermost perforation", "stimulation", "stages")));

const kickoff = (the: Case): Mark | Reading =>
	the.results.trajectory.kickoff ?? absent("the hole has no kickoff");

const waterBase = (the: Case): Mark | Reading =>
	the.results.geology.protected_water_base ??
	lacking(missingAt("base of protected water", "geology", "protected_water", "base"));

/** Slurry that reaches the shoe: its length is the length of the cement meant for the shoe. */
const shoeSlurry = (the: Case) =>
	[...(cementOf(the)?.slurries ?? [])].sort((a, b) => b.bottom.md.value - a.bottom.md.value)[0];

export const cementHeights = {
	"cement top above shoe": { noun: "height of cement above the shoe", ...above("the shoe", shoeMark) },
	"cement top above flow zone": {
		noun: "height of cement above the shallowest flow zone",
		...above("the top of the shallowest flow zone or target open above the shoe", flowZone),
	},
	"cement top above previous shoe": {
		noun: "height of cement above the previous shoe",
		...above("the previous shoe", previousShoe),
	},
	"cement top above perforations": {
		noun: "height of cement above the uppermost perforation",
		...above("the uppermost perforation", perforations),
	},
	"cement top above kickoff": {
		noun: "height of cement above the kickoff",
		...above("the kickoff", kickoff),
	},
	"cement top above protected water": {
		noun: "height of cement above the base of protected water",
		...above("the base of protected water", waterBase),
	},
	"cement pumped over calculated": {
		noun: "cement pumped to cement calculated",
		read: (the) => {
			const cement = cementOf(the);
			if (cement === undefined) return lacking(topMissing(the));
			const parts = cement.slurries.flatMap(({ open_hole_volume, cased_volume }) => [
				open_hole_volume,
				cased_volume,
			]);
			return known(annulusFilling.of({ parts, annulus: cement.annulus_volume }), topMissing(the));
		},
		say: ({ part }) => ["the slurry planned for the annulus is ", part, " times its calculated volume"],
	},
	"shoe cement length": {
		noun: "length of the cement placed at the shoe",
		read: (the, { along = "hole" }) => {
			const slurry = shoeSlurry(the);
			if (slurry === undefined) return lacking(topMissing(the));
			return known(heightBetween(slurry.bottom, slurry.top, along), topMissing(the));
		},
		say: ({ part }, the, parameters) => [
			`the ${shoeSlurry(the)?.id ?? "lowest"} slurry covers `,
			part,
			" above the shoe",
			axis(parameters),
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
