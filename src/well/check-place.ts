import type { StateRow } from "../catalog/state-table.ts";
import type { Known } from "../cite/known.ts";
import type { Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import { asWritten, listOf, measured } from "./said.ts";

interface Position {
	readonly latitude: Known<"angle">;
	readonly longitude: Known<"angle">;
	/** `the wellhead`, `Windmill well` */
	readonly called: Said;
}

/** A wellhead may lie on the line; neighbors and old wells across it [deg]. */
const AT_THE_LINE = 0.05;
const ACROSS_THE_LINE = 0.5;
/** Farther from the wellhead than this nothing bears on the well, be it at the end of a three-mile lateral: some 5 miles [deg]. */
const NEAR = 0.08;

/** The API number and the coordinates against the state whose rules the well is under. Warnings only. */
export const checkPlace = ({ well, site, safety }: Definition, desk: Desk): void => {
	const named = desk.catalog.states.filter(({ code }) => site.jurisdictions.includes(code));
	if (named.length > 0 && well.api_number !== undefined) checkApiState(well.api_number, named, desk);
	const byNumber = desk.catalog.states.filter(({ api }) => well.api_number?.startsWith(api));
	const states = named.length > 0 ? named : byNumber;
	const wellhead: Position | undefined = site.surface_location && {
		...site.surface_location,
		called: message("well/the-wellhead"),
	};
	if (wellhead !== undefined && !liesNear(wellhead, states, AT_THE_LINE)) {
		outsideState(wellhead, states, AT_THE_LINE, desk);
		return;
	}
	const landing = safety?.emergency?.landing_site;
	const others = [...(site.neighbors ?? []), ...(site.offset_wells ?? [])].flatMap(
		({ name, latitude, longitude }): Position[] =>
			latitude === undefined || longitude === undefined ? [] : [{ called: name, latitude, longitude }],
	);
	for (const place of landing === undefined
		? others
		: [...others, { ...landing, called: message("well/the-landing-site") }])
		if (!liesNear(place, states, ACROSS_THE_LINE)) outsideState(place, states, ACROSS_THE_LINE, desk);
		else if (wellhead !== undefined) checkNear(place, wellhead, desk);
};

const checkApiState = (number: string, named: readonly StateRow[], desk: Desk): void => {
	const written = number.trim().slice(0, 2);
	if (named.some(({ api }) => api === written)) return;
	const other = desk.catalog.states.find(({ api }) => api === written);
	const at: Path = ["well", "api_number"];
	fault(desk, "well/api-state", at, {
		what:
			other === undefined
				? message("well/api-state.what", { written })
				: message("well/api-state.api-number-begins-with-code", { written, other: other.name }),
		expected: message("well/any-of", {
			choices: {
				list: named.map(({ api, name }) => message("well/api-state.for", { number: api, state: name })),
				joined: "or",
			},
		}),
		found: number,
		mend: message("well/api-state.mend"),
		related: [{ at: { path: ["site", "jurisdictions"] }, label: message("well/api-state.label") }],
	});
};

const inBox = (latitude: number, longitude: number, state: StateRow, margin: number): boolean =>
	latitude >= state.south - margin &&
	latitude <= state.north + margin &&
	longitude >= state.west - margin &&
	longitude <= state.east + margin;

const inAny = (latitude: number, longitude: number, states: readonly StateRow[], margin: number): boolean =>
	states.some((state) => inBox(latitude, longitude, state, margin));

const liesNear = ({ latitude, longitude }: Position, states: readonly StateRow[], margin: number): boolean =>
	states.length === 0 || inAny(latitude.value, longitude.value, states, margin);

const outsideState = (place: Position, states: readonly StateRow[], margin: number, desk: Desk): void => {
	const { latitude, longitude, called } = place;
	const within = (lat: number, lon: number): boolean => inAny(lat, lon, states, margin);
	const [lat, lon] = [latitude.value, longitude.value];
	const latitudeFits = states.some(({ south, north }) => lat >= south - margin && lat <= north + margin);
	const value = latitudeFits ? longitude : latitude;
	const mend: Said = within(lat, -lon)
		? message("well/coordinates-astray.sign", { lon: String(-lon) })
		: within(lon, lat)
			? message("well/coordinates-astray.exchanged")
			: message("well/coordinates-astray.correct");
	fault(desk, "well/coordinates-astray", placeOf(value, ["site", "surface_location"]), {
		what: message("well/coordinates-astray.what", { called, states: listOf(states.map(({ name }) => name)) }),
		expected: message("well/any-of", {
			choices: listOf(
				states.map(({ name, south, north, west, east }) =>
					message("well/coordinates-astray.box", {
						name,
						south: String(south),
						north: String(north),
						west: String(west),
						east: String(east),
					}),
				),
			),
		}),
		found: asWritten(value),
		mend,
		source: "census-boundaries",
	});
};

const checkNear = (place: Position, wellhead: Position, desk: Desk): void => {
	const value = (["latitude", "longitude"] as const)
		.filter((side) => Math.abs(place[side].value - wellhead[side].value) > NEAR)
		.map((side) => ({ written: place[side], own: wellhead[side] }))
		.at(0);
	if (value === undefined) return;
	const { written, own } = value;
	fault(desk, "well/coordinates-astray", placeOf(written, ["site", "neighbors"]), {
		what: message("well/coordinates-astray.lies-from-wellhead-too-far", {
			called: place.called,
			abs: measured("angle", Math.abs(written.value - own.value)),
		}),
		expected: message("well/coordinates-astray.expected", {
			near: measured("angle", NEAR),
			own: asWritten(own),
		}),
		found: asWritten(written),
		mend: message("well/coordinates-astray.mend"),
		related: [
			{ at: placeOf(own, ["site", "surface_location"]), label: message("well/coordinates-astray.label") },
		],
	});
};
