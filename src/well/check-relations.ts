import type { Known } from "../cite/known.ts";
import type { Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { asWritten, type Desk, fault, placeOf } from "./desk.ts";

/*
 * Values that are each within their band and do not go with each other: a factor of ten, an exchanged sign, a unit that
 * the rest of the block does not use. Warnings, but for what no arithmetic can use. Limits are common practice, wide on
 * purpose.
 */

/** Values of the definition against each other. */
export const checkRelations = (definition: Definition, desk: Desk): void => {
	collarsPassTheHole(definition, desk);
	directions(definition, desk);
	declinationOfPlace(definition, desk);
	unitOfElevation(definition, desk);
	strengthOfSlurries(definition, desk);
	ratePerPerforation(definition, desk);
};

interface Improbable {
	readonly what: string;
	readonly expected: string;
	readonly mend: string;
	readonly source?: string;
	readonly beside?: { readonly value: Known; readonly at: Path; readonly label: string };
}

const improbable = (value: Known, at: Path, telling: Improbable, desk: Desk): void => {
	const { what, expected, mend, source = "common practice, no source", beside } = telling;
	fault(desk, "well/improbable-value", placeOf(value, at), {
		what,
		expected,
		found: asWritten(value, ""),
		mend,
		source,
		...(beside === undefined
			? {}
			: { related: [{ at: placeOf(beside.value, beside.at), label: beside.label }] }),
	});
};

/** Collars that do not go into the last hole: nothing beside them can be worked. */
const collarsPassTheHole = ({ drill_string, holes }: Definition, desk: Desk): void => {
	const collars = drill_string?.collars?.od;
	const last = holes.at(-1);
	if (collars === undefined || last === undefined || collars.value < last.diameter.value) return;
	fault(desk, "well/collars-too-wide", placeOf(collars, ["drill_string", "collars", "od"]), {
		what: `the drill collars do not go into the ${last.id} hole`,
		expected: `less than ${asWritten(last.diameter, "in")}`,
		found: asWritten(collars, "in"),
		mend: "correct the diameter of the collars or of the hole",
		related: [{ at: placeOf(last.diameter, ["holes", holes.length - 1, "diameter"]), label: "the hole" }],
	});
};

/** Degrees between two directions, 0 to 180. */
const between = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/** A section is drawn along the way the well goes; one that points backward is a direction turned about. */
const directions = ({ trajectory }: Definition, desk: Desk): void => {
	const along = trajectory.vertical_section_azimuth;
	const plan = trajectory.plan;
	const azimuth =
		plan !== undefined && "azimuth" in plan ? (plan.azimuth as Known<"angle"> | undefined) : undefined;
	if (along === undefined || azimuth === undefined || between(azimuth.value, along.value) <= 90) return;
	improbable(
		azimuth,
		["trajectory", "plan", "azimuth"],
		{
			what: "the well goes backward along its own vertical section",
			expected: `within 90 degrees of ${asWritten(along, "deg")}`,
			mend: "one of the two is turned about, often by 180 degrees; correct it",
			beside: {
				value: along,
				at: ["trajectory", "vertical_section_azimuth"],
				label: "the azimuth of the vertical section",
			},
		},
		desk,
	);
};

/** Between these longitudes a compass points nearly true; west of them it points east of true north, east of them west. */
const AGONIC = { west: -98, east: -84 } as const;
const UNITED_STATES = { west: -125, east: -66, south: 24, north: 50 } as const;

const declinationOfPlace = ({ site }: Definition, desk: Desk): void => {
	const declination = site.north?.declination;
	const place = site.surface_location;
	if (declination === undefined || place === undefined) return;
	const [latitude, longitude] = [place.latitude.value, place.longitude.value];
	const { west, east, south, north } = UNITED_STATES;
	if (longitude < west || longitude > east || latitude < south || latitude > north) return;
	const wrong =
		(longitude < AGONIC.west && declination.value < 0) || (longitude > AGONIC.east && declination.value > 0);
	if (!wrong) return;
	improbable(
		declination,
		["site", "north", "declination"],
		{
			what: `a compass points ${declination.value < 0 ? "east" : "west"} of true north at this longitude`,
			expected: declination.value < 0 ? "a declination to the east" : "a declination to the west",
			mend: "correct the sign, or the coordinates; the line of no declination runs near 90 degrees west",
			source: "common practice, no source: World Magnetic Model, from memory",
			beside: {
				value: place.longitude,
				at: ["site", "surface_location", "longitude"],
				label: "the longitude",
			},
		},
		desk,
	);
};

/** `ft` or `m`, as a length was written. */
const lengthUnit = ({ from }: Known): "ft" | "m" | undefined => {
	if (from.kind !== "definition") return undefined;
	if (/\d\s*(?:ft|feet|')/u.test(from.text)) return "ft";
	return /\d\s*m\b/u.test(from.text) ? "m" : undefined;
};

/** Two heights of one place, in two systems of units: a figure of one, and the unit of the other. */
const unitOfElevation = ({ site }: Definition, desk: Desk): void => {
	const ground = site.ground_elevation;
	const floor = site.depth_datum.above_ground;
	if (ground === undefined || floor === undefined) return;
	const [mine, other] = [lengthUnit(ground), lengthUnit(floor)];
	if (mine === undefined || other === undefined || mine === other) return;
	improbable(
		ground,
		["site", "ground_elevation"],
		{
			what: "the elevation is written in another unit than the height of the datum above it",
			expected: `${other}, as the height of the datum is written`,
			mend: "correct the unit, or convert the figure; leave it if both are right",
			beside: {
				value: floor,
				at: ["site", "depth_datum", "above_ground"],
				label: "the datum above the ground",
			},
		},
		desk,
	);
};

/** Strength that a slurry does not reach so early [psi], by hours, and below or above a density [lb/gal]. */
const LIGHT_BELOW = 13.5;
const STRONGEST = {
	light: [
		{ hours: 12, psi: 1000 },
		{ hours: 24, psi: 2000 },
		{ hours: Number.POSITIVE_INFINITY, psi: 3500 },
	],
	heavy: [
		{ hours: 12, psi: 3500 },
		{ hours: 24, psi: 7000 },
		{ hours: Number.POSITIVE_INFINITY, psi: 12_000 },
	],
} as const;

const strengthOfSlurries = ({ casing }: Definition, desk: Desk): void => {
	for (const [i, string] of casing.entries())
		for (const [j, slurry] of (string.cement?.slurries ?? []).entries()) {
			const density = slurry.density;
			if (density === undefined) continue;
			const kind = density.value < LIGHT_BELOW ? "light" : "heavy";
			for (const [k, { value, after }] of (slurry.strength ?? []).entries()) {
				const most = STRONGEST[kind].find(({ hours }) => after.value <= hours * 60)?.psi ?? 0;
				if (value.value <= most) continue;
				improbable(
					value,
					["casing", i, "cement", "slurries", j, "strength", k, "value"],
					{
						what: `a slurry of ${asWritten(density, "lb/gal")} is not so strong ${asWritten(after, "min")} after it was placed`,
						expected: `at most about ${most} psi`,
						mend: "check the figure; a digit too many lets a crew drill out of soft cement",
						beside: {
							value: density,
							at: ["casing", i, "cement", "slurries", j, "density"],
							label: "its density",
						},
					},
					desk,
				);
			}
		}
};

/** Rate through one perforation of a plug-and-perforate stage, least and greatest [bbl/min]. */
const PER_PERFORATION = { least: 0.3, greatest: 6 } as const;

const ratePerPerforation = ({ stimulation }: Definition, desk: Desk): void => {
	const stages = stimulation?.stages;
	const layout = stages?.layout;
	const rate = stages?.treatment?.rate;
	const [clusters, shots] = [layout?.clusters, layout?.shots_per_cluster];
	if (stimulation?.method !== "plug and perforate") return;
	if (rate === undefined || clusters === undefined || shots === undefined) return;
	const each = rate.value / (clusters.value * shots.value);
	const { least, greatest } = PER_PERFORATION;
	if (each >= least && each <= greatest) return;
	improbable(
		rate,
		["stimulation", "stages", "treatment", "rate"],
		{
			what: `the rate through one perforation comes to ${each.toPrecision(2)} bbl/min`,
			expected: `${least} to ${greatest} bbl/min through each of ${clusters.value * shots.value} perforations`,
			mend: "check the rate, the clusters and the shots; a digit is often lost",
			beside: {
				value: shots,
				at: ["stimulation", "stages", "layout", "shots_per_cluster"],
				label: "the shots",
			},
		},
		desk,
	);
};
