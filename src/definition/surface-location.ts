import * as z from "zod";
import { message } from "../messages/message.ts";
import { FOOT } from "../units/factors.ts";
import { EVERY } from "./audience.ts";
import { field, group, oneOf } from "./field.ts";
import { GRID_CODES, placeOnGrid } from "./grids.ts";
import { DATUMS } from "./neighbors.ts";
import { coordinate, q, typed } from "./quantity-field.ts";

const onEarth = group("Surface location", "Distances and the map start here.", EVERY, {
	latitude: coordinate(90, "Latitude", "Distances are computed from it.", EVERY),
	longitude: coordinate(180, "Longitude", "Distances are computed from it; west is negative.", EVERY),
	datum: oneOf(DATUMS, "Horizontal datum", "The same figures in another datum are another place.", EVERY),
});

const grid = field(z.string().regex(new RegExp(`^(?:${GRID_CODES.join("|")})$`, "u")), {
	title: "Grid",
	why: "The zone of UTM or state plane that the figures are of, by EPSG code; the datum goes with it.",
	papers: EVERY,
	expected: message("definition/expected.grid"),
	example: "EPSG:2277",
});

const onGrid = group("Surface location on a grid", "As a plat gives it.", EVERY, {
	easting: q("distance", "Easting", "Turned to longitude.", EVERY),
	northing: q("distance", "Northing", "Turned to latitude.", EVERY),
	grid,
});

const onGridTurned = onGrid.transform(({ easting, northing, grid: code }, ctx): z.output<typeof onEarth> => {
	const place = placeOnGrid(code, easting.value * FOOT, northing.value * FOOT);
	if (place === undefined) {
		ctx.issues.push({ code: "invalid_format", format: "grid", input: code, path: ["grid"] });
		return z.NEVER;
	}
	const written = [easting, northing]
		.map(({ from }) => (from.kind === "definition" ? from.text : ""))
		.join(", ");
	return {
		latitude: typed("angle", place.latitude, `${written}, ${code}`),
		longitude: typed("angle", place.longitude, `${written}, ${code}`),
		datum: place.datum,
	};
});

/** Where the wellhead is: latitude and longitude, or easting and northing on a grid, which become such. */
export const surfaceLocation = field(z.union([onEarth, onGridTurned]), {
	title: "Surface location",
	why: "Latitude, longitude and datum, or easting, northing and grid. The crew reads it to a helicopter.",
	papers: EVERY,
	expected: message("definition/expected.block"),
	kind: "block",
});
