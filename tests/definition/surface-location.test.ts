import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { GRID_CODES, placeOnGrid } from "../../src/definition/grids.ts";
import { validate } from "../../src/definition/validate.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

const SURVEY_FOOT = 1200 / 3937;
const FOOT = 0.3048;

/** Worked by PROJ (gdaltransform of GDAL 3.6.2, which reads the EPSG registry), to the datum of each grid. */
const PLACES = [
	["EPSG:2277", SURVEY_FOOT, 2_600_000, 10_350_000, -99.364265357216, 31.0584256876911],
	["EPSG:32139", 1, 750_000, 3_100_000, -99.8120842309114, 30.5676848182641],
	["EPSG:2232", SURVEY_FOOT, 3_150_000, 1_700_000, -104.966503534987, 39.7540961259387],
	["EPSG:2266", FOOT, 1_500_000, 500_000, -102.3786362407, 47.0223317617573],
	["EPSG:2257", SURVEY_FOOT, 700_000, 600_000, -103.817841422113, 32.6483892288371],
	["EPSG:2272", SURVEY_FOOT, 1_350_000, 400_000, -79.9713076995509, 40.4100143655125],
	["EPSG:3738", SURVEY_FOOT, 2_000_000, 700_000, -108.633334641606, 42.4211392293696],
	["EPSG:26913", 1, 623_456.7, 3_600_000.5, -103.685385671604, 32.5304883803698],
	["EPSG:26714", 1, 650_000, 3_500_000, -97.4184408679086, 31.6270704355265],
	["EPSG:32614", 1, 650_000, 3_500_000, -97.4184359025526, 31.6253903031424],
] as const;

const starter = readFileSync(new URL("../../seeds/starters/horizontal.yaml", import.meta.url), "utf8");
const withPlace = (place: string) =>
	validate(
		readYaml(starter.replace(/surface_location: \{[^}]*\}/u, `surface_location: ${place}`), "w.yaml").value
			?.value,
	);

describe("a place on a grid", () => {
	it.each(PLACES)("%s is where an outside program has it", (code, unit, east, north, longitude, latitude) => {
		const place = placeOnGrid(code, east * unit, north * unit);
		// A ten-millionth of a degree is a centimeter.
		expect(place?.longitude).toBeCloseTo(longitude, 7);
		expect(place?.latitude).toBeCloseTo(latitude, 7);
	});
	it("is on the datum of its grid", () => {
		expect(placeOnGrid("EPSG:26714", 650_000, 3_500_000)?.datum).toBe("NAD27");
		expect(placeOnGrid("EPSG:2277", 650_000, 3_500_000)?.datum).toBe("NAD83");
		expect(placeOnGrid("EPSG:9999", 1, 1)).toBeUndefined();
	});
	it("can be on each zone, and both codes of a state plane zone give the same place", () => {
		expect(new Set(GRID_CODES).size).toBe(GRID_CODES.length);
		for (const code of GRID_CODES) expect(placeOnGrid(code, 600_000, 500_000), code).toBeDefined();
		expect(placeOnGrid("EPSG:2277", 7e5, 3e6)).toEqual(placeOnGrid("EPSG:32139", 7e5, 3e6));
	});
});

describe("surface_location", () => {
	it("takes easting and northing with their units, which become latitude and longitude", () => {
		const { value, diagnostics } = withPlace(
			"{ easting: 2600000 usft, northing: 10350000 usft, grid: EPSG:2277 }",
		);
		expect(diagnostics).toEqual([]);
		const place = value?.site.surface_location;
		expect(place?.latitude.value).toBeCloseTo(31.0584256876911, 7);
		expect(place?.longitude.value).toBeCloseTo(-99.364265357216, 7);
		expect(place?.datum).toBe("NAD83");
		expect(place?.latitude.from).toMatchObject({
			at: ["site", "surface_location", "latitude"],
			text: "2600000 usft, 10350000 usft, EPSG:2277",
		});
	});
	it("in meters is the same place as in survey feet", () => {
		const meters = withPlace(
			`{ easting: ${2_600_000 * SURVEY_FOOT} m, northing: ${10_350_000 * SURVEY_FOOT} m, grid: EPSG:32139 }`,
		);
		expect(meters.value?.site.surface_location?.latitude.value).toBeCloseTo(31.0584256876911, 7);
	});
	it("says what is wrong where it stands: no unit, no such grid, half of each form", () => {
		const told = (place: string) =>
			withPlace(place).diagnostics.map(({ code, at }) => [code, at.path.slice(2).join(".")]);
		expect(told("{ easting: 2600000, northing: 10350000 usft, grid: EPSG:2277 }")).toEqual([
			["quantity/no-unit", "easting"],
		]);
		expect(told("{ easting: 2600000 usft, northing: 10350000 usft, grid: EPSG:1234 }")).toEqual([
			["definition/wrong-form", "grid"],
		]);
		expect(told("{ easting: 2600000 usft, northing: 10350000 usft }")).toEqual([
			["definition/missing", "grid"],
		]);
		expect(told("{ latitude: 31.4, datum: NAD83 }")).toEqual([["definition/missing", "longitude"]]);
	});
});
