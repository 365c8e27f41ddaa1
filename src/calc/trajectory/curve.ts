import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { intervalLength } from "../cement/capacity.ts";
import { verticalSeparation } from "../isolation/separation.ts";
import type { CurveResults, HoleMark } from "../results.ts";
import { placeAt } from "./at-depth.ts";
import { doglegAngle } from "./dogleg.ts";
import { pathStationsOf } from "./path.ts";

const inputs = { path: { table: "path" }, MD_1: "measured-depth", MD_2: "measured-depth" } as const;

const between = (path: KnownTable, md1: number, md2: number) => {
	const stations = pathStationsOf(path);
	const [upper, lower] = [placeAt(stations, md1), placeAt(stations, md2)];
	return upper === undefined || lower === undefined || !(md2 > md1) ? undefined : { upper, lower };
};

/** Of a plan that is one arc it is that arc's radius; of any other, the radius of an arc as long that turns as far. */
export const meanRadius = formula({
	id: "trajectory/mean-radius",
	name: "Mean radius of the curve",
	expression: "R = ΔMD / β, β the angle between the directions at its ends [rad]",
	source: cite("geometry", "arc length over angle"),
	inputs,
	gives: "length",
	validity: "MD_2 > MD_1; the hole changes direction between them",
	compute: ({ path, MD_1, MD_2 }) => {
		const ends = between(path, MD_1, MD_2);
		if (ends === undefined) return Number.NaN;
		const { upper, lower } = ends;
		const β = doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth);
		return β > 0 ? (MD_2 - MD_1) / β : Number.NaN;
	},
});

export const departureBetween = formula({
	id: "trajectory/departure-between",
	name: "Horizontal distance made between two depths",
	expression: "√(ΔN² + ΔE²)",
	source: cite("geometry"),
	inputs,
	gives: "length",
	validity: "MD_2 > MD_1",
	compute: ({ path, MD_1, MD_2 }) => {
		const ends = between(path, MD_1, MD_2);
		if (ends === undefined) return Number.NaN;
		return Math.hypot(ends.lower.north - ends.upper.north, ends.lower.east - ends.upper.east);
	},
});

/** From kickoff to landing: how long, how far down, how far away, how tight. */
export const curveResults = (
	path: KnownTable,
	kickoff: HoleMark | undefined,
	landing: HoleMark | undefined,
): CurveResults | undefined => {
	if (kickoff === undefined || landing === undefined || landing.md.value <= kickoff.md.value)
		return undefined;
	const ends: { MD_1: Known<"measured-depth">; MD_2: Known<"measured-depth"> } = {
		MD_1: kickoff.md,
		MD_2: landing.md,
	};
	const radius = meanRadius.of({ path, ...ends });
	return {
		length: intervalLength.of({ MD_top: kickoff.md, MD_bottom: landing.md }),
		depth_gained: verticalSeparation.of({ TVD_lower: landing.tvd, TVD_upper: kickoff.tvd }),
		departure: departureBetween.of({ path, ...ends }),
		...(Number.isFinite(radius.value) ? { radius } : {}),
	};
};
