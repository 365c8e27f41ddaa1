import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { degrees, radians, wholeCircle } from "./tangent.ts";

/** What of a horizontal distance lies along a direction [°]. */
export const along = (N: number, E: number, Avs: number): number =>
	N * Math.cos(radians(Avs)) + E * Math.sin(radians(Avs));

/** Distance along the plane of vertical section, from the wellhead [ft]. */
export const verticalSection = formula({
	id: "trajectory/vertical-section",
	name: "Vertical section",
	expression: "VS = N cos Avs + E sin Avs",
	source: cite("api-d20", "vertical section"),
	inputs: { N: "offset", E: "offset", Avs: "angle" },
	gives: "offset",
	compute: ({ N, E, Avs }) => along(N, E, Avs),
});

export const closure = formula({
	id: "trajectory/closure",
	name: "Closure distance",
	expression: "√(N² + E²)",
	source: cite("api-d20", "closure"),
	inputs: { N: "offset", E: "offset" },
	gives: "length",
	compute: ({ N, E }) => Math.hypot(N, E),
});

export const closureAzimuth = formula({
	id: "trajectory/closure-azimuth",
	name: "Closure azimuth",
	expression: "atan2(E, N), brought into 0 to 360°",
	source: cite("api-d20", "closure"),
	inputs: { N: "offset", E: "offset" },
	gives: "angle",
	compute: ({ N, E }) => wholeCircle(degrees(Math.atan2(E, N))),
});
