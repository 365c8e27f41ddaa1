import type { Known } from "../cite/known.ts";
import type { Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import { asWritten, measured } from "./said.ts";

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
	readonly what: Said;
	readonly expected: Said;
	readonly mend: Said;
	readonly source?: string;
	readonly beside?: { readonly value: Known; readonly at: Path; readonly label: Said };
}

const improbable = (value: Known, at: Path, telling: Improbable, desk: Desk): void => {
	const { what, expected, mend, source = "common practice, no source", beside } = telling;
	fault(desk, "well/improbable-value", placeOf(value, at), {
		what,
		expected,
		found: asWritten(value),
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
		what: message("well/collars-too-wide.what", { last: last.id }),
		expected: message("well/pipe-hole.expected", { diameter: asWritten(last.diameter) }),
		found: asWritten(collars),
		mend: message("well/collars-too-wide.mend"),
		related: [
			{
				at: placeOf(last.diameter, ["holes", holes.length - 1, "diameter"]),
				label: message("well/collars-too-wide.label"),
			},
		],
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
			what: message("well/section-direction.what"),
			expected: message("well/section-direction.expected", { along: asWritten(along) }),
			mend: message("well/section-direction.mend"),
			beside: {
				value: along,
				at: ["trajectory", "vertical_section_azimuth"],
				label: message("well/section-direction.label"),
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
			what:
				declination.value < 0
					? message("well/declination-of-place.what")
					: message("well/declination-of-place.compass-points-west-true-north"),
			expected:
				declination.value < 0
					? message("well/declination-of-place.expected")
					: message("well/declination-of-place.declination-to-west"),
			mend: message("well/declination-of-place.mend"),
			source: "common practice, no source: World Magnetic Model, from memory",
			beside: {
				value: place.longitude,
				at: ["site", "surface_location", "longitude"],
				label: message("well/declination-of-place.label"),
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
			what: message("well/unit-of-elevation.what"),
			expected: message("well/unit-of-elevation.expected", { other }),
			mend: message("well/unit-of-elevation.mend"),
			beside: {
				value: floor,
				at: ["site", "depth_datum", "above_ground"],
				label: message("well/unit-of-elevation.label"),
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
						what: message("well/strength-of-slurries.what", {
							density: asWritten(density),
							after: asWritten(after),
						}),
						expected: message("well/strength-of-slurries.expected", { most: measured("pressure", most) }),
						mend: message("well/strength-of-slurries.mend"),
						beside: {
							value: density,
							at: ["casing", i, "cement", "slurries", j, "density"],
							label: message("well/strength-of-slurries.label"),
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
			what: message("well/rate-per-perforation.what", {
				each: measured("flow-rate", each, each < least ? least : greatest),
			}),
			expected: message("well/rate-per-perforation.expected", {
				least: measured("flow-rate", least),
				greatest: measured("flow-rate", greatest),
				count: clusters.value * shots.value,
			}),
			mend: message("well/rate-per-perforation.mend"),
			beside: {
				value: shots,
				at: ["stimulation", "stages", "layout", "shots_per_cluster"],
				label: message("well/rate-per-perforation.label"),
			},
		},
		desk,
	);
};
