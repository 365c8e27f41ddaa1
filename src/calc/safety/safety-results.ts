import type { Known } from "../../cite/known.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { SafetyResults, SiteResults } from "../results.ts";
import { soundLevelAtDistance } from "./noise.ts";

/** Noise at the neighbors; nothing where no level is stated. */
export const safetyResults = (well: Well, site: SiteResults, gaps: Gaps): SafetyResults | undefined => {
	const noise = well.safety?.noise;
	if (noise === undefined) return undefined;
	const levels = well.neighbors.flatMap((neighbor) => {
		const distance = distanceOf(neighbor, site);
		if (distance === undefined || distance.value <= 0) return [];
		const level = soundLevelAtDistance.of({ L_1: noise.source_level, r_1: noise.at, r_2: distance });
		return [{ id: neighbor.id, name: neighbor.name, kind: neighbor.kind, distance, level }];
	});
	const [dwelling] = levels
		.filter(({ kind }) => kind === "dwelling")
		.sort((a, b) => a.distance.value - b.distance.value);
	if (dwelling === undefined)
		gaps.missing("safety.noise_at_nearest_dwelling", "No dwelling is listed whose distance is known.", [
			["site", "neighbors"],
		]);
	return {
		...maybe("noise_at_nearest_dwelling", dwelling && withoutKind(dwelling)),
		noise_at_neighbors: levels.map(withoutKind),
	};
};

const withoutKind = <T extends { readonly kind: string }>({ kind: _, ...rest }: T): Omit<T, "kind"> => rest;

/**
 * The shorter of what was surveyed and what the coordinates give: sound comes from the near side of the pad, and a
 * neighbor is told the louder figure.
 */
const distanceOf = (
	{ id, surveyed = [] }: Well["neighbors"][number],
	site: SiteResults,
): Known<"distance"> | undefined => {
	const computed = site.neighbors.find((place) => place.id === id)?.from_wellhead;
	return [...surveyed.map((s) => s.distance), ...(computed === undefined ? [] : [computed])].sort(
		(a, b) => a.value - b.value,
	)[0];
};
