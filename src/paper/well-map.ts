import type { StageResults } from "../calc/results-of-stimulation.ts";
import type { Known, KnownTable } from "../cite/known.ts";
import type { MapFeature, MapPoint, WellMap } from "../document/map.ts";
import type { Findings, PadOfWells } from "./context.ts";
import { findingsFor } from "./findings-for.ts";
import type { Words } from "./words/words.ts";

/** Why a well has no map: its wellhead has no place, or one on a datum that map formats are not on. */
export type NoMap = "unplaced" | "NAD27";

/**
 * The wellhead, the path, the stages, the neighbors and the wells nearby, for a map of another program. It shows what the
 * regulator's paper may show: keep it from other readers.
 *
 * Map formats are on WGS 84. Places on NAD83 are taken as they stand, which is right to some 2 m; the map says so.
 */
export const wellMap = (asked: Findings, words: Words): WellMap | NoMap => {
	const { pad } = asked;
	return pad === undefined ? mapOfWell(asked, words) : mapOfPad(asked, pad, words);
};

/** The maps of all wells of a pad as one: each well's marks under its own name, what is nearby once. */
const mapOfPad = ({ well, digest }: Findings, { wells }: PadOfWells, words: Words): WellMap | NoMap => {
	const maps = wells.map((each) => mapOfWell(each, words));
	const none = maps.find((map) => typeof map === "string");
	const found = maps.filter((map) => typeof map !== "string");
	const [first] = found;
	if (none !== undefined || first === undefined) return none ?? "unplaced";
	const own = new Set(wells.map((each) => each.well.identity.name));
	const features = found.flatMap((map, i) =>
		map.features
			.filter(({ kind, name }) => kind !== "offset well" || !own.has(name))
			.map((feature) =>
				OF_WELL.test(feature.id) ? { ...feature, id: `well-${i + 1}-${feature.id}` } : feature,
			),
	);
	const { identity } = well;
	return {
		...first,
		well: identity.name,
		revision: identity.revisions?.at(-1)?.id ?? "–",
		issued: identity.issued,
		digest,
		features: [...new Map(features.map((feature) => [feature.id, feature])).values()],
	};
};

/** Features that are a well's own; the rest lies around all of them. */
const OF_WELL = /^(?:wellhead|landing|total-depth|path|stage-\d+)$/u;

const mapOfWell = (asked: Findings, words: Words): WellMap | NoMap => {
	const { well, results, digest } = findingsFor(asked, "regulator");
	const { label } = words;
	const home = well.site.surface_location;
	if (home === undefined) return "unplaced";
	if (home.datum === "NAD27") return "NAD27";
	const { identity } = well;
	const { stations, landing, total_depth } = results.site;
	const point = (latitude: Known, longitude: Known): { readonly point: MapPoint } => ({
		point: [longitude.value, latitude.value],
	});
	const marks: readonly (MapFeature | undefined)[] = [
		{
			id: "wellhead",
			kind: "wellhead",
			name: identity.name,
			shape: point(home.latitude, home.longitude),
			facts: {},
		},
		landing && {
			id: "landing",
			kind: "landing point",
			name: label("map.landing").replace("{well}", identity.name),
			shape: point(landing.latitude, landing.longitude),
			facts: {},
		},
		total_depth && {
			id: "total-depth",
			kind: "total depth",
			name: label("map.total_depth").replace("{well}", identity.name),
			shape: point(total_depth.latitude, total_depth.longitude),
			facts: {},
		},
	];
	const nearby = [...well.neighbors, ...well.offsetWells].flatMap((place): readonly MapFeature[] => {
		const { latitude, longitude } = place;
		if ("corners" in place && place.corners !== undefined)
			return [
				{
					id: place.id,
					kind: place.kind,
					name: place.name,
					shape: {
						line: place.corners.map((corner): MapPoint => [corner.longitude.value, corner.latitude.value]),
					},
					facts: {},
				},
			];
		if (latitude === undefined || longitude === undefined) return [];
		const kind = "kind" in place ? place.kind : "offset well";
		const facts = "status" in place ? { status: String(place.status) } : {};
		return [{ id: place.id, kind, name: place.name, shape: point(latitude, longitude), facts }];
	});
	return {
		well: identity.name,
		operator: identity.operator,
		revision: identity.revisions?.at(-1)?.id ?? "–",
		issued: identity.issued,
		digest,
		caution: label("imprint.caution"),
		datum: home.datum,
		note: label(home.datum === "WGS84" ? "map.note_wgs84" : "map.note_nad83"),
		features: [
			...marks.flatMap((mark) => mark ?? []),
			...(stations === undefined
				? []
				: pathAndStages(identity.name, stations, results.stimulation?.stages ?? [], words)),
			...nearby,
		],
	};
};

type Stations = KnownTable<"md" | "latitude" | "longitude">;

const pathAndStages = (
	name: string,
	stations: Stations,
	stages: readonly StageResults[],
	{ label }: Words,
): readonly MapFeature[] => [
	{
		id: "path",
		kind: "well path",
		name: label("map.path").replace("{well}", name),
		shape: { line: stations.rows.map(({ latitude, longitude }): MapPoint => [longitude, latitude]) },
		facts: { md_end_ft: stations.rows.at(-1)?.md ?? 0 },
	},
	...stages.flatMap(({ number, top, bottom, clusters }): readonly MapFeature[] => {
		const [from, to] = [top.md.value, bottom.md.value];
		const within = stations.rows.filter(({ md }) => md > from && md < to).map(({ md }) => md);
		return [
			{
				id: `stage-${number}`,
				kind: "stage",
				name: label("map.stage").replace("{number}", String(number)),
				shape: { line: [from, ...within, to].map((md) => placeAt(stations, md)) },
				facts: { md_top_ft: from, md_bottom_ft: to, clusters: clusters.length },
			},
		];
	}),
];

/** Between two stations the path is drawn straight, as on the plan view. */
const placeAt = ({ rows }: Stations, md: number): MapPoint => {
	const below = rows.findIndex((row) => row.md >= md);
	const [a, b] = below <= 0 ? [rows.at(below), rows.at(below)] : [rows[below - 1], rows[below]];
	if (a === undefined || b === undefined) return [Number.NaN, Number.NaN];
	const share = b.md === a.md ? 0 : Math.min(1, (md - a.md) / (b.md - a.md));
	return [a.longitude + share * (b.longitude - a.longitude), a.latitude + share * (b.latitude - a.latitude)];
};
