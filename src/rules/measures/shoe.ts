import type { Known } from "../../cite/known.ts";
import type { Said } from "../../messages/message.ts";
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

const shoeMissing = (the: Case) => missingOf(the, stringOf(the), "shoe depth", "pipe");

const below = (
	the: Case,
	upper: Known<"true-vertical-depth"> | undefined,
	missing: ReturnType<typeof missingAt>,
) => {
	const shoe = casingOf(the)?.shoe.tvd;
	if (shoe === undefined) return lacking(shoeMissing(the));
	return upper === undefined ? lacking(missing) : known(verticalDistance.of({ lower: shoe, upper }), missing);
};

const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

const formationEdge =
	(edge: "top" | "base"): Measure["read"] =>
	(the, { formation = "" }) => {
		const found = the.well.geology.formations.find(({ name }) => sameName(name, formation));
		const missing = missingAt(`${edge} of the ${formation}`, "geology", "formations");
		return below(the, found?.[edge], missing);
	};

const shoeClause =
	(place: (formation: string) => Said): Measure["say"] =>
	(said, _the, { formation = "" }) =>
		belowOrAbove("the shoe", place(formation), said);

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
			? absent(
					"no water well is listed within the distance, and the list of neighbors is stated to be complete",
				)
			: lacking(SEARCHED);
	const bottoms = near.inside.map(
		({ id }) => results.isolation.neighbor_wells.find((each) => each.id === id)?.bottom,
	);
	const unknown = near.inside.filter((_, i) => bottoms[i] === undefined);
	if (unknown.length > 0)
		return lacking(
			...unknown.map((neighbor) =>
				missingAt(
					`depth of ${neighbor.name}`,
					"site",
					"neighbors",
					well.neighbors.indexOf(neighbor),
					"depth",
				),
			),
		);
	const known = bottoms.filter((bottom) => bottom !== undefined);
	const deepest = known.reduce((low, each) => (each.value > low.value ? each : low));
	return below(the, deepest, missingAt("depth of each water well nearby", "site", "neighbors"));
};

const lap: Measure["read"] = (the) => {
	const string = stringOf(the);
	if (string.kind !== "liner") return absent(`the ${string.id} string is not a liner`);
	const outer = outerOf(string, the.well);
	const shoe = outer && the.results.casing[outer.id]?.shoe.md;
	const top = casingOf(the)?.top.md;
	if (top === undefined || shoe === undefined)
		return lacking(missingOf(the, string, "liner top and the shoe before it", "pipe"));
	return known(
		distanceAlongHole.of({ lower: shoe, upper: top }),
		missingOf(the, string, "liner top", "pipe"),
	);
};

export const shoeMeasures = {
	"string length": {
		noun: "length of the string",
		read: (the) => known(casingOf(the)?.length, shoeMissing(the)),
		say: ({ part }) => ["the string is ", part, " long"],
	},
	"joint length": {
		noun: "length of a joint",
		read: (the) => known(jointOf(stringOf(the)), missingOf(the, stringOf(the), "joint length", "pipe")),
		say: ({ part }) => ["a joint is ", part, " long"],
	},
	"shoe below ground": {
		noun: "vertical depth of the shoe below ground",
		read: (the) => known(casingOf(the)?.shoe.below_ground, shoeMissing(the)),
		say: ({ part }) => ["the shoe is ", part, " below ground, vertically"],
	},
	"shoe vertical depth": {
		noun: "vertical depth of the shoe",
		read: (the) => known(casingOf(the)?.shoe.tvd, shoeMissing(the)),
		say: ({ part }) => ["the shoe is at a vertical depth of ", part, " from the datum"],
	},
	"shoe along the hole": {
		noun: "measured depth of the shoe",
		read: (the) => known(casingOf(the)?.shoe.md, shoeMissing(the)),
		say: ({ part }) => ["the shoe is at a measured depth of ", part],
	},
	"shoe below protected water": {
		noun: "depth of the shoe below protected water",
		read: (the) =>
			below(
				the,
				the.results.geology.protected_water_base?.tvd ?? the.well.geology.protectedWater?.base,
				missingAt("base of protected water", "geology", "protected_water", "base"),
			),
		say: shoeClause(() => "the base of protected water"),
	},
	"shoe below formation top": {
		noun: "depth of the shoe below the formation's top",
		read: formationEdge("top"),
		say: shoeClause((formation) => `the top of the ${formation}`),
	},
	"shoe below formation base": {
		noun: "depth of the shoe below the formation's base",
		read: formationEdge("base"),
		say: shoeClause((formation) => `the base of the ${formation}`),
	},
	"shoe below top of competent rock": {
		noun: "depth of the shoe below the top of competent rock",
		read: (the) =>
			below(
				the,
				the.well.geology.formations.find(({ competent }) => competent === true)?.top,
				missingAt("shallowest formation stated to be competent", "geology", "formations"),
			),
		say: shoeClause(() => "the top of the shallowest formation stated to be competent"),
	},
	"shoe below nearby water wells": {
		noun: "depth of the shoe below nearby water wells",
		read: nearbyWaterWells,
		say: shoeClause(() => "the deepest water well listed"),
	},
	"fracture pressure at the shoe": {
		noun: "fracture pressure at the shoe",
		read: (the) =>
			known(
				casingOf(the)?.fracture_pressure_at_shoe,
				missingAt(
					`fracture gradient of the formation at the ${stringOf(the).id} shoe`,
					"geology",
					"formations",
				),
			),
		say: ({ part }) => ["the rock at the shoe breaks down at ", part],
	},
	"liner lap": {
		noun: "lap of the liner",
		read: lap,
		say: ({ part }) => ["the liner laps ", part, " into the string before it"],
	},
} as const satisfies Readonly<Record<string, Measure>>;
