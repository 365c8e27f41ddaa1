import { tableFormula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { PATH_COLUMNS, pathStationsOf } from "./path.ts";
import { radians } from "./tangent.ts";

/** A path whose vertical section is counted from another place than the wellhead. */
export const sectionFromOrigin = tableFormula({
	id: "trajectory/section-from-origin",
	name: "Well path, vertical section from a chosen origin",
	expression: "VS = (N − N_0) cos Avs + (E − E_0) sin Avs",
	source: cite("api-d20", "vertical section"),
	inputs: { path: { table: "path" }, N_0: "offset", E_0: "offset", Avs: "angle" },
	gives: PATH_COLUMNS,
	compute: ({ path, N_0, E_0, Avs }) =>
		pathStationsOf(path).map((station) => ({
			...station,
			vertical_section:
				(station.north - N_0) * Math.cos(radians(Avs)) + (station.east - E_0) * Math.sin(radians(Avs)),
		})),
});
