import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Gallons a person uses at home in a day. */
const AT_HOME = 82;

/** People whose use at home over a year is as much as a volume of water [count]. */
export const peopleForAYear = formula({
	id: "logistics/people-for-a-year",
	name: "People whose home use of a year is as much water",
	expression: "n = 42 V / (82 · 365)",
	source: cite("usgs-domestic-water-2015", "82 gal a person a day at home, United States, 2015"),
	inputs: { V: "volume" },
	gives: "count",
	validity: "a national mean of 2015; states ran from 35 to 184 gal a person a day",
	compute: ({ V }) => (42 * V) / (AT_HOME * 365),
});

/** Ground that an inch of rain wets with as much water [acre]. */
export const groundUnderAnInch = formula({
	id: "logistics/ground-under-an-inch",
	name: "Ground under an inch of rain that is as much water",
	expression: "A = 42 V / 27154",
	source: cite("usgs-rain", "one inch of rain on one acre is 27,154 gal"),
	inputs: { V: "volume" },
	gives: "land-area",
	compute: ({ V }) => (42 * V) / 27154,
});
