import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { HydrogenSulfideResults, SafetyResults, SiteResults } from "../results.ts";
import { everydaySounds } from "./everyday-sounds.ts";
import {
	continuousRadiusDay,
	continuousRadiusNight,
	hydrogenSulfideRate,
	ruleRadius100,
	ruleRadius500,
} from "./hydrogen-sulfide.ts";
import { soundLevelAtDistance } from "./noise.ts";

/** Radii of exposure, and noise at the neighbors; nothing where neither is stated. */
export const safetyResults = (well: Well, site: SiteResults, gaps: Gaps): SafetyResults | undefined => {
	const hydrogenSulfide = exposure(well, gaps);
	const noise = noiseResults(well, site, gaps);
	return hydrogenSulfide === undefined && noise === undefined
		? undefined
		: { noise_at_neighbors: [], ...noise, ...maybe("hydrogen_sulfide", hydrogenSulfide) };
};

/** Both methods, each by itself. Gas that carries none has no radius; a rate that is not stated is told. */
const exposure = ({ safety }: Well, gaps: Gaps): HydrogenSulfideResults | undefined => {
	const { fraction, gas_rate: rate } = safety?.hydrogen_sulfide ?? {};
	if (fraction === undefined || fraction.value <= 0) return undefined;
	if (rate === undefined)
		return gaps.missing("safety.hydrogen_sulfide", message("calc/rate-gas-that-could-escape-is"), [
			["safety", "hydrogen_sulfide", "gas_rate"],
		]);
	if (rate.value <= 0) return undefined;
	const released = hydrogenSulfideRate.of({ Q: rate, ppm: fraction });
	return {
		rule: {
			to_100_ppm: ruleRadius100.of({ MF: fraction, Q: rate }),
			to_500_ppm: ruleRadius500.of({ MF: fraction, Q: rate }),
		},
		practice: {
			released,
			by_day: continuousRadiusDay.of({ q: released }),
			at_night: continuousRadiusNight.of({ q: released }),
		},
	};
};

const noiseResults = (
	well: Well,
	site: SiteResults,
	gaps: Gaps,
): Omit<SafetyResults, "hydrogen_sulfide"> | undefined => {
	const noise = well.safety?.noise;
	if (noise === undefined) return undefined;
	const levels = well.neighbors.flatMap((neighbor) => {
		const distance = distanceOf(neighbor, site);
		if (distance === undefined || distance.value <= 0) return [];
		const level = soundLevelAtDistance.of({ L_1: noise.source_level, r_1: noise.at, r_2: distance });
		const { id, name, kind } = neighbor;
		return [{ id, name, kind, distance, level, ...everydaySounds(level) }];
	});
	const [dwelling] = levels
		.filter(({ kind }) => kind === "dwelling")
		.sort((a, b) => a.distance.value - b.distance.value);
	if (dwelling === undefined)
		gaps.missing("safety.noise_at_nearest_dwelling", message("calc/no-dwelling-is-listed-whose-distance"), [
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
 * neighbor is told the louder figure. A distance from the hole under the ground is none that sound travels.
 */
const distanceOf = (
	{ id, surveyed = [] }: Well["neighbors"][number],
	site: SiteResults,
): Known<"distance"> | undefined => {
	const computed = site.neighbors.find((place) => place.id === id)?.from_wellhead;
	const overGround = surveyed.filter(({ from }) => from !== "wellbore");
	return [...overGround.map((s) => s.distance), ...(computed === undefined ? [] : [computed])].sort(
		(a, b) => a.value - b.value,
	)[0];
};
