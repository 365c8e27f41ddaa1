import { readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { getIssues } from "@placemarkio/check-geojson";
import { parse } from "yaml";
import { javaClasses, versionOnPath } from "./java.mjs";
import { isThere, root, run, versionInstalled, versionOf } from "./run.mjs";

const mapsOf = (outputs) =>
	outputs.flatMap(({ files }) =>
		files
			.filter((file) => file.endsWith(".geojson"))
			.map((geojson) => ({ geojson, kml: geojson.replace(/geojson$/, "kml") })),
	);

const linter = {
	name: "check-geojson",
	reads: "the maps (RFC 7946)",
	of: (outputs) => {
		const maps = mapsOf(outputs);
		const found = maps.flatMap(({ geojson }) =>
			getIssues(readFileSync(geojson, "utf8")).map(({ message }) => ({ where: geojson, what: message })),
		);
		return {
			version: versionInstalled("@placemarkio/check-geojson"),
			read: `${maps.length} GeoJSON`,
			checks: maps.length,
			found,
		};
	},
};

const kmlSchema = {
	name: "OGC's schema of KML",
	reads: "the maps as KML 2.2, by Java's validator",
	of: (outputs) => {
		const { absent, classPath } = javaClasses();
		if (absent !== undefined) return { absent };
		const maps = mapsOf(outputs).map(({ kml }) => kml);
		const { status, stdout, stderr } = run("java", ["-cp", classPath, "JudgeKml", ...maps]);
		if (status !== 0) throw new Error(`the schema of KML did not load: ${stderr}`);
		const lines = stdout.split("\n").filter((line) => line !== "");
		return {
			version: versionOnPath(classPath, "ogc-schemas"),
			read: `${maps.length} KML`,
			checks: maps.length,
			found: lines.map((line) => {
				const [where, at, what] = line.split("\t");
				return { where, what: `line ${at}: ${what}` };
			}),
		};
	},
};

/** Features that GDAL reads, all of them or those that touch a box. */
const features = (file, box = []) => {
	const { status, stdout, stderr } = run("ogrinfo", [
		...["-ro", "-al", "-q"],
		...(box.length > 0 ? ["-spat", ...box.map(String)] : []),
		file,
	]);
	return { status, stderr, count: stdout.split("\n").filter((line) => line.startsWith("OGRFeature")).length };
};

/** Every pair of latitude and longitude that a definition gives, wherever it stands. */
const placesIn = (value) => {
	if (typeof value !== "object" || value === null) return [];
	const { latitude, longitude } = value;
	return [
		...(typeof latitude === "number" && typeof longitude === "number" ? [{ latitude, longitude }] : []),
		...Object.values(value).flatMap(placesIn),
	];
};

/** A tenth of a meter, in degrees. */
const NEAR = 1e-6;

const starterOf = (file) => basename(dirname(file)).replace(/-(en|es)-(field|metric)$/, "");

/** Places of the site that a map has nothing at; where a helicopter lands is on the crew's sheet alone. */
const notDrawn = (file) => {
	const starter = parse(readFileSync(join(root, `seeds/starters/${starterOf(file)}.yaml`), "utf8"));
	const places = placesIn(starter.site);
	const lacking = places.filter(
		({ latitude, longitude }) =>
			features(file, [longitude - NEAR, latitude - NEAR, longitude + NEAR, latitude + NEAR]).count === 0,
	);
	return {
		places: places.length,
		faults: lacking.map(({ latitude, longitude }) => `nothing is drawn at ${latitude}, ${longitude}`),
	};
};

const gdal = {
	name: "GDAL",
	reads:
		"the maps: GeoJSON and KML open, hold the same number of features, and have something at every place of the site",
	of: (outputs) => {
		if (!isThere("ogrinfo")) return { absent: "no ogrinfo on this machine" };
		const maps = mapsOf(outputs);
		let checks = 0;
		const found = maps.flatMap(({ geojson, kml }) => {
			const [json, xml] = [geojson, kml].map((file) => features(file));
			const drawn = [geojson, kml].map(notDrawn);
			checks += json.count + xml.count + drawn.reduce((sum, { places }) => sum + places, 0);
			return [
				...(json.status !== 0 || json.stderr !== "" ? [`GeoJSON: ${json.stderr}`] : []),
				...(xml.status !== 0 || xml.stderr !== "" ? [`KML: ${xml.stderr}`] : []),
				...(json.count === 0 || json.count !== xml.count
					? [`${json.count} features, ${xml.count} in the KML`]
					: []),
				...drawn.flatMap(({ faults }) => faults),
			].map((what) => ({ where: geojson, what }));
		});
		return { version: versionOf("ogrinfo"), read: `${2 * maps.length} GeoJSON and KML`, checks, found };
	},
};

export const mapJudges = [linter, kmlSchema, gdal];
