import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import type { CasingString } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { neighborsWithin, SEARCHED } from "../distances.ts";
import { distanceAlongHole, verticalDistance } from "../formulas.ts";
import { outerOf, type StringSubject } from "../subject.ts";
import { absent, belowOrAbove, known, lacking, type Measure } from "./reading.ts";

/** The string of a case made on one; anything else is a fault of the register. */
export const stringOf = ({ subject }: Case): CasingString => {
	if (subject.kind !== "string") throw new TypeError(`a measure of strings was asked of a ${subject.kind}`);
	return (subject as StringSubject).string;
};

/** What was computed of the case's string. */
export const casingOf = (the: Case) => the.results.casing[stringOf(the).id];

const shoeMissing = (the: Case) => missingOf(the, stringOf(the), message("rules/shoe-depth"), "pipe");

const below = (
	the: Case,
	upper: Known<"true-vertical-depth"> | undefined,
	missing: ReturnType<typeof missingAt>,
) => {
	const shoe = casingOf(the)?.shoe.tvd;
	if (shoe === undefined) return lacking(shoeMissing(the));
	return upper === undefined ? lacking(missing) : known(verticalDistance.of({ lower: shoe, upper }), missing);
};

export const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

const formationEdge =
	(edge: "top" | "base"): Measure["read"] =>
	(the, { formation = "" }) => {
		const found = the.well.geology.formations.find(({ name }) => sameName(name, formation));
		const missing = missingAt(
			message(edge === "top" ? "rules/top-of-formation" : "rules/base-of-formation", { formation }),
			"geology",
			"formations",
		);
		return below(the, found?.[edge], missing);
	};

const shoeClause =
	(place: (formation: string) => Said): Measure["say"] =>
	(said, _the, { formation = "" }) =>
		belowOrAbove(message("rules/shoe"), place(formation), said);

/** Length of the joints of a string, by its first run that states one. */
export const jointOf = (string: CasingString): Known<"length"> | undefined =>
	string.sections.find(({ joint }) => joint !== undefined)?.joint;

/** The deepest of the water wells within the distance asked, its bottom counted from this well's datum. */
const nearbyWaterWells: Measure["read"] = (the, { within }) => {
	const { results, well } = the;
	const near = neighborsWithin(the, ["water well", "public water supply"], "wellhead", within?.value ?? 0);
	if (near.unplaced.length > 0) return lacking(...near.unplaced);
	if (near.inside.length === 0)
		return near.complete
			? absent(message("rules/no-water-well-is-listed-within-distance"))
			: lacking(SEARCHED);
	const bottoms = near.inside.map(
		({ id }) => results.isolation.neighbor_wells.find((each) => each.id === id)?.bottom,
	);
	const unknown = near.inside.filter((_, i) => bottoms[i] === undefined);
	if (unknown.length > 0)
		return lacking(
			...unknown.map((neighbor) =>
				missingAt(
					message("rules/depth", { neighbor: neighbor.name }),
					"site",
					"neighbors",
					well.neighbors.indexOf(neighbor),
					"depth",
				),
			),
		);
	const known = bottoms.filter((bottom) => bottom !== undefined);
	const deepest = known.reduce((low, each) => (each.value > low.value ? each : low));
	return below(the, deepest, missingAt(message("rules/depth-each-water-well-nearby"), "site", "neighbors"));
};

const lap: Measure["read"] = (the) => {
	const string = stringOf(the);
	if (string.kind !== "liner") return absent(message("rules/string-is-not-liner", { string: string.id }));
	const outer = outerOf(string, the.well);
	const shoe = outer && the.results.casing[outer.id]?.shoe.md;
	const top = casingOf(the)?.top.md;
	if (top === undefined || shoe === undefined)
		return lacking(missingOf(the, string, message("rules/liner-top-and-shoe-before-it"), "pipe"));
	return known(
		distanceAlongHole.of({ lower: shoe, upper: top }),
		missingOf(the, string, message("rules/liner-top"), "pipe"),
	);
};

export const shoeMeasures = {
	"string length": {
		noun: message("rules/length-string"),
		read: (the) => known(casingOf(the)?.length, shoeMissing(the)),
		say: ({ part }) => [message("rules/string-is-long", { part })],
	},
	"joint length": {
		noun: message("rules/length-joint"),
		read: (the) =>
			known(jointOf(stringOf(the)), missingOf(the, stringOf(the), message("rules/joint-length"), "pipe")),
		say: ({ part }) => [message("rules/joint-is-long", { part })],
	},
	"shoe below ground": {
		noun: message("rules/vertical-depth-shoe-below-ground"),
		read: (the) => known(casingOf(the)?.shoe.below_ground, shoeMissing(the)),
		say: ({ part }) => [message("rules/shoe-is-below-ground-vertically", { part })],
	},
	"shoe vertical depth": {
		noun: message("rules/vertical-depth-shoe"),
		read: (the) => known(casingOf(the)?.shoe.tvd, shoeMissing(the)),
		say: ({ part }) => [message("rules/shoe-is-at-vertical-depth-from-datum", { part })],
	},
	"shoe along the hole": {
		noun: message("rules/measured-depth-shoe"),
		read: (the) => known(casingOf(the)?.shoe.md, shoeMissing(the)),
		say: ({ part }) => [message("rules/shoe-is-at-measured-depth", { part })],
	},
	"shoe below protected water": {
		noun: message("rules/depth-shoe-below-protected-water"),
		read: (the) =>
			below(
				the,
				the.results.geology.protected_water_base?.tvd ?? the.well.geology.protectedWater?.base,
				missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"),
			),
		say: shoeClause(() => message("rules/base-protected-water-2")),
		side: "below",
	},
	"shoe below formation top": {
		noun: message("rules/depth-shoe-below-formations-top"),
		read: formationEdge("top"),
		say: shoeClause((formation) => message("rules/top", { formation })),
		side: "below",
	},
	"shoe below formation base": {
		noun: message("rules/depth-shoe-below-formations-base"),
		read: formationEdge("base"),
		say: shoeClause((formation) => message("rules/base", { formation })),
		side: "below",
	},
	"shoe below top of competent rock": {
		noun: message("rules/depth-shoe-below-top-competent-rock"),
		read: (the) =>
			below(
				the,
				the.well.geology.formations.find(({ competent }) => competent === true)?.top,
				missingAt(message("rules/shallowest-formation-stated-to-be-competent"), "geology", "formations"),
			),
		say: shoeClause(() => message("rules/top-shallowest-formation-stated-to-be")),
		side: "below",
	},
	"shoe below nearby water wells": {
		noun: message("rules/depth-shoe-below-nearby-water-wells"),
		read: nearbyWaterWells,
		say: shoeClause(() => message("rules/deepest-water-well-listed")),
		side: "below",
	},
	"fracture pressure at the shoe": {
		noun: message("rules/fracture-pressure-at-shoe"),
		read: (the) =>
			known(
				casingOf(the)?.fracture_pressure_at_shoe,
				missingAt(
					message("rules/fracture-gradient-formation-at-shoe", { string: stringOf(the).id }),
					"geology",
					"formations",
				),
			),
		say: ({ part }) => [message("rules/rock-at-shoe-breaks-down-at", { part })],
	},
	"liner lap": {
		noun: message("rules/lap-liner"),
		read: lap,
		say: ({ part }) => [message("rules/liner-laps-into-string-before-it", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
