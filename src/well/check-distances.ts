import type { Definition } from "../definition/definition.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import { asWritten, measured } from "./said.ts";

/** Feet to a degree of latitude, and of longitude at the equator: near enough to find a slip. */
const FEET_TO_LATITUDE = 364_567;
const FEET_TO_LONGITUDE = 365_221;
const SQUARE_FEET_TO_ACRE = 43_560;
/** A plat and coordinates of a telephone differ by as much, and by this share of the distance [ft]. */
const LOOSE = 150;
const LOOSE_SHARE = 0.1;
/** How far from the wellhead the edge of a pad may be where its area is not given [ft]. */
const WIDE_PAD = 1000;

/**
 * A surveyed distance and the coordinates of the same neighbor tell of one place. Where they cannot both be right, one of
 * them has a slip: this finds a place that is off by less than the miles that would put it out of the neighborhood.
 */
export const checkDistances = ({ site }: Definition, desk: Desk): void => {
	const wellhead = site.surface_location;
	if (wellhead === undefined) return;
	const area = site.pad?.area?.value;
	// The corner of a square pad of that area with the wellhead in another corner.
	const pad = area === undefined ? WIDE_PAD : Math.sqrt(2 * area * SQUARE_FEET_TO_ACRE);
	for (const { name, latitude, longitude, surveyed = [] } of site.neighbors ?? []) {
		if (latitude === undefined || longitude === undefined) continue;
		const north = (latitude.value - wellhead.latitude.value) * FEET_TO_LATITUDE;
		const east =
			(longitude.value - wellhead.longitude.value) *
			FEET_TO_LONGITUDE *
			Math.cos((latitude.value * Math.PI) / 180);
		const far = Math.hypot(north, east);
		const loose = LOOSE + LOOSE_SHARE * far;
		for (const { from, distance } of surveyed) {
			if (from === "wellbore") continue;
			const least = Math.max(0, far - loose - (from === "wellhead" ? 0 : pad));
			const most = far + loose;
			if (distance.value >= least && distance.value <= most) continue;
			fault(desk, "well/distance-astray", placeOf(distance, ["site", "neighbors"]), {
				what: message("well/distance-astray.what", { name, from, far: measured("distance", far) }),
				expected: message("well/distance-astray.expected", {
					least: measured("distance", least),
					most: measured("distance", most),
				}),
				found: asWritten(distance),
				mend: message("well/distance-astray.mend"),
				related: [
					{ at: placeOf(latitude, ["site", "neighbors"]), label: message("well/distance-astray.label") },
				],
			});
		}
	}
};
