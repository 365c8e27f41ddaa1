import { toKML } from "@placemarkio/tokml";
import type { MapFeature, MapPoint, WellMap } from "../../document/map.ts";

/** About half an inch on the ground, and fewer digits than two machines might differ in. */
const DECIMALS = 7;

const rounded = ([longitude, latitude]: MapPoint) => [
	Number(longitude.toFixed(DECIMALS)),
	Number(latitude.toFixed(DECIMALS)),
];

const featureOf = ({ id, kind, name, shape, facts }: MapFeature, { well, digest }: WellMap) => ({
	type: "Feature" as const,
	id,
	geometry:
		"point" in shape
			? { type: "Point" as const, coordinates: rounded(shape.point) }
			: { type: "LineString" as const, coordinates: shape.line.map(rounded) },
	properties: { name, kind, ...facts, well, document_id: digest },
});

const collectionOf = (map: WellMap) => ({
	type: "FeatureCollection" as const,
	features: map.features.map((feature) => featureOf(feature, map)),
});

/** GeoJSON after RFC 7946, with what the map is of as foreign members of the collection. */
export const renderGeoJson = (map: WellMap): string => {
	const { features, ...about } = map;
	const { type, features: drawn } = collectionOf(map);
	return `${JSON.stringify({ type, ...about, features: drawn }, undefined, "\t")}\n`;
};

/** KML 2.2 (OGC 07-147r2): a placemark a feature; lines follow the ground, for a path below it has no height there. */
export const renderKml = (map: WellMap): string => {
	const { well, operator, revision, issued, digest, caution, note } = map;
	const described = collectionOf(map);
	const about = `${operator} · ${well} · ${revision} · ${issued} · ${digest}. ${note} ${caution}`;
	const [first, ...rest] = described.features;
	// The description of the first placemark tells what the whole file is: the form has no other place that is shown.
	const features =
		first === undefined
			? []
			: [{ ...first, properties: { ...first.properties, description: about } }, ...rest];
	return `${toKML({ ...described, features })}\n`;
};
