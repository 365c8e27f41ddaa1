import { formula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { pathStationsOf } from "../../trajectory/path.ts";
import { leastRow } from "./least-factor.ts";
import { collapseAt, stressAt } from "./load-lines.ts";
import { loadSectionsOf } from "./load-sections.ts";
import { type LoadStation, stationAt } from "./stations.ts";

const shared = {
	line: { table: "load and rating" },
	path: { table: "path" },
	sections: { table: "sections" },
} as const;
const validity = "some depth is loaded";

/** The station where a line's factor is least. */
const stationOf = (line: KnownTable, path: KnownTable, sections: KnownTable): LoadStation | undefined => {
	const row = leastRow(line);
	const number = row?.["section"] ?? Number.NaN;
	const section = loadSectionsOf(sections)[number - 1];
	const md = row?.["md"];
	return section === undefined || md === undefined
		? undefined
		: stationAt(pathStationsOf(path), { section, number }, md);
};

/** The collapse rating there, with the regime that gives it. */
export const collapseRatingAtLeast = formula({
	id: "casing/collapse-rating-at-least-factor",
	name: "Collapse rating at the depth of the least design factor",
	expression: "the four regimes with Y_pa(σ_a) where rating / load is least",
	source: cite("api-5c3", "collapse under axial tension, before the 2015 addendum"),
	inputs: {
		...shared,
		temperature: { table: "temperature" },
		r: "share-per-temperature",
		force: { table: "force" },
	},
	gives: "pressure",
	validity,
	compute: ({ line, path, sections, temperature, r, force }) => {
		const station = stationOf(line, path, sections);
		return station === undefined ? Number.NaN : collapseAt(station, temperature, r, force);
	},
});

/** The triaxial stress there, with the wall it is greatest at. */
export const triaxialStressAtLeast = formula({
	id: "casing/triaxial-stress-at-least-factor",
	name: "Triaxial stress at the depth of the least design factor",
	expression: "greatest VME in the wall where Y_p(T) / VME is least",
	source: cite("api-5c3", "triaxial yield of pipe body, with bending"),
	inputs: {
		...shared,
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		force: { table: "force" },
	},
	gives: "pressure",
	validity,
	compute: ({ line, path, sections, inside, outside, force }) => {
		const station = stationOf(line, path, sections);
		return station === undefined ? Number.NaN : stressAt(station, inside, outside, force);
	},
});
