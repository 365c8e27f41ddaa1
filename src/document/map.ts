/** A place on the map: longitude first, as open map formats have it [°, east and north]. */
export type MapPoint = readonly [longitude: number, latitude: number];

export interface MapFeature {
	/** Stable: `path`, `stage-3`, `ww-1`. */
	readonly id: string;
	/** `well path`, `stage`, `water well`: words of the definition and of the trade, in English as data. */
	readonly kind: string;
	readonly name: string;
	readonly shape:
		| { readonly point: MapPoint }
		/** Pieces of a path, in order down the hole. */
		| { readonly line: readonly MapPoint[] };
	/** Further facts, a number with its unit in its name: `md_top_ft`. */
	readonly facts: Readonly<Record<string, string | number>>;
}

/** What of a well and its surroundings lies where, for another program's map. */
export interface WellMap {
	readonly well: string;
	readonly operator: string;
	readonly revision: string;
	readonly issued: string;
	readonly digest: string;
	readonly caution: string;
	/** Datum that the places were stated on; see the note. */
	readonly datum: string;
	/** Where places on that datum lie beside those on WGS 84, which map formats are on. */
	readonly note: string;
	readonly features: readonly MapFeature[];
}
