import { formula, tableFormula } from "../../cite/formula.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Site } from "../../definition/definition.ts";
import { type Message, message } from "../../messages/message.ts";
import { stationsOf } from "./path.ts";
import { STATION_COLUMNS } from "./planned-stations.ts";
import { wholeCircle } from "./tangent.ts";

export type North = "grid" | "true" | "magnetic";

const TRUE_NORTH = constant("angle", 0, "true north lies at true north", cite("definition"));

/** How far east of true north a north lies, as the site states it; undefined where it does not. */
export const northOfTrue = (north: North, site: Site): Known<"angle"> | undefined => {
	if (north === "true") return TRUE_NORTH;
	return north === "grid" ? site.north?.convergence : site.north?.declination;
};

/** Where the figure that turns a north to true is written. */
export const turnOf = (north: Exclude<North, "true">): readonly [name: Message, key: string] =>
	north === "grid"
		? [message("calc/north.convergence"), "convergence"]
		: [message("calc/north.declination"), "declination"];

/** What takes an azimuth from one north to another [°]. */
export const turnBetweenNorths = formula({
	id: "trajectory/turn-between-norths",
	name: "Turn from one north to another",
	expression: "turn = δ_from − δ_to, each the angle of that north east of true north",
	source: cite("api-d20", "north references: grid convergence and magnetic declination, east positive"),
	inputs: { δ_from: "angle", δ_to: "angle" },
	gives: "angle",
	compute: ({ δ_from, δ_to }) => δ_from - δ_to,
});

/** Stations whose azimuths are counted from another north than the well's, counted from the well's. */
export const turnedStations = tableFormula({
	id: "trajectory/turned-stations",
	name: "Stations, azimuths from the well's north",
	expression: "A = A_survey + turn, brought into 0 to 360°",
	source: cite("api-d20", "north references: grid convergence and magnetic declination, east positive"),
	inputs: { stations: { table: "md, inclination, azimuth" }, turn: "angle" },
	gives: STATION_COLUMNS,
	compute: ({ stations, turn }) =>
		stationsOf(stations).map((station) => ({ ...station, azimuth: wholeCircle(station.azimuth + turn) })),
});
