import type { Known } from "../../cite/known.ts";
import type { PaperContext } from "../context.ts";
import { asGiven } from "../parts/part.ts";
import { about, compassPoint, say, sayDate } from "./say.ts";

/** Kinds of places that give water. */
const WATER: ReadonlySet<string> = new Set(["water well", "public water supply", "spring"]);

/** Words about the one place that an edition is made for. A measured distance stands before a computed one. */
export const neighborWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results, neighbor: edition } = context;
	const place = well.neighbors.find(({ id }) => id === edition?.id);
	const found = results.site.neighbors.find(({ id }) => id === edition?.id);
	const water = results.isolation.neighbor_wells.find(({ id }) => id === edition?.id);
	const bore = place?.surveyed?.find(({ from }) => from === "wellbore");
	const wellhead = place?.surveyed?.find(({ from }) => from === "wellhead");
	return {
		own_place: place?.name ?? false,
		own_gives_water: place !== undefined && WATER.has(place.kind),
		own_depth: say(context, place?.depth?.depth),
		own_from_wellhead: about(context, wellhead?.distance ?? found?.from_wellhead),
		own_direction:
			found?.direction === undefined
				? false
				: context.words.label(`compass.${compassPoint(found.direction.value)}`),
		own_from_path: about(context, bore?.distance ?? found?.from_path),
		own_path_depth: about(context, bore === undefined ? deep(found?.nearest?.below_ground) : undefined),
		own_surveyed: (place?.surveyed ?? [])
			.filter(({ from }) => from !== "wellhead" && from !== "wellbore")
			.map(({ from, distance }) => ({ from: asGiven(context, from), distance: say(context, distance) })),
		own_gap: about(context, water?.above_top_perforation),
		own_sampled: sayDate(context, edition?.sampled),
	};
};

/** Where the path is nearest at its very top, it has no depth worth telling. */
const deep = (depth: Known<"depth-below-ground"> | undefined): Known<"depth-below-ground"> | undefined =>
	depth !== undefined && depth.value > 0 ? depth : undefined;
