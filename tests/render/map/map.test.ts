import { Geodesic } from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { mapsOf } from "../../../src/pipeline.ts";
import { JSDOM } from "../../run/jsdom.ts";
import { findingsOf, starterText, understandText } from "../../starters.ts";

interface Feature {
	readonly type: string;
	readonly id: string;
	readonly geometry: { readonly type: string; readonly coordinates: number[][] };
	readonly properties: Readonly<Record<string, string | number>>;
}

const FEET = 0.3048;
const feetBetween = ([lon1 = 0, lat1 = 0]: number[], [lon2 = 0, lat2 = 0]: number[]): number =>
	(Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2).s12 ?? 0) / FEET;

const written = async (...edits: readonly (readonly [string, string])[]) => {
	const text = edits.reduce((whole, [from, to]) => {
		expect(whole).toContain(from);
		return whole.replaceAll(from, to);
	}, starterText("horizontal"));
	const { findings } = understandText(text);
	if (findings === undefined) throw new Error("the starter has faults");
	return mapsOf(findings, "en", ["geojson", "kml"]);
};

describe("the map of a well", () => {
	const made = mapsOf(findingsOf("horizontal"), "en", ["geojson", "kml"]);
	const texts = async () => {
		const maps = await made;
		if ("noMap" in maps) throw new Error(maps.noMap);
		return maps.files.map(({ text }) => text);
	};

	it("is GeoJSON whose lengths on the ground are those of the plan", async () => {
		const [geojson = ""] = await texts();
		const read = JSON.parse(geojson);
		expect(read.type).toBe("FeatureCollection");
		expect(read.caution).toContain("licensed engineer");
		const features: readonly Feature[] = read.features;
		expect(new Set(features.map(({ id }) => id)).size).toBe(features.length);
		const of = (id: string) => {
			const found = features.find((feature) => feature.id === id);
			if (found === undefined) throw new Error(`no ${id}`);
			return found.geometry.coordinates;
		};
		/** Of a point. */
		const at = (id: string): unknown => of(id);
		// As typed: site › surface_location, and the neighbor's own place.
		expect(at("wellhead")).toEqual([-98.771204, 31.482716]);
		expect(at("ww-1")).toEqual([-98.768811, 31.484902]);
		const path = of("path");
		expect(path.at(0)).toEqual(at("wellhead"));
		expect(feetBetween(path.at(-1) ?? [], at("total-depth") as number[])).toBeLessThan(1);
		// The lateral is level and straight: 196 ft of a stage along the hole are 196 ft on the ground.
		const stages = features.filter(({ properties }) => properties["kind"] === "stage");
		expect(stages).toHaveLength(39);
		for (const { geometry, properties } of stages) {
			const length = geometry.coordinates.reduce(
				(sum, to, i, all) => (i === 0 ? 0 : sum + feetBetween(all[i - 1] ?? [], to)),
				0,
			);
			expect(length).toBeCloseTo(Number(properties["md_bottom_ft"]) - Number(properties["md_top_ft"]), 0);
		}
	});

	it("is KML with the same placemarks, well formed", async () => {
		const [geojson = "", kml = ""] = await texts();
		const { features }: { features: readonly Feature[] } = JSON.parse(geojson);
		const document = new JSDOM(kml, { contentType: "application/xml" }).window.document;
		expect(document.documentElement.namespaceURI).toBe("http://www.opengis.net/kml/2.2");
		const names = [...document.getElementsByTagName("Placemark")].map(
			(each) => each.getElementsByTagName("name")[0]?.textContent,
		);
		expect(names).toEqual(features.map(({ properties }) => properties["name"]));
		expect(kml).toContain("NAD83, as given");
	});

	it("has nothing that is kept from the agency", async () => {
		const maps = await written([
			"kind: dwelling, name: Nearest house,",
			"kind: dwelling, name: Nearest house, papers: [landowner],",
		]);
		if ("noMap" in maps) throw new Error(maps.noMap);
		for (const { text } of maps.files) expect(text).not.toContain("Nearest house");
		expect((await texts())[0]).toContain("Nearest house");
	});

	it("is refused on a datum that map formats are not on, and without a place", async () => {
		expect(await written(["datum: NAD83", "datum: NAD27"])).toEqual({ noMap: "NAD27" });
		expect(
			await written([
				"  surface_location: { latitude: 31.482716, longitude: -98.771204, datum: NAD83 }\n",
				"",
			]),
		).toEqual({ noMap: "unplaced" });
	});
});
