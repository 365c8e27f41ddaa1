import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Hole, Well } from "../../well/well.ts";
import { openRock } from "../casing/loads/open-rock.ts";
import { depthBelowGround, verticalMark } from "../depths/marks.ts";
import type { DepthMark } from "../results.ts";
import { fracturePressure } from "./fracture-gradient.ts";
import { equivalentMudWeight, HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

type Tvd = Known<"true-vertical-depth">;

/** What the mud has over the strongest flow, or the weakest rock over the mud; below zero the wrong way round [lb/gal]. */
export const densityMargin = formula({
	id: "pressure/density-margin",
	name: "Margin as a density",
	expression: "Δρ = ρ_upper − ρ_lower",
	source: cite("definition"),
	inputs: { ρ_upper: "density", ρ_lower: "density" },
	gives: "density",
	compute: ({ ρ_upper, ρ_lower }) => ρ_upper - ρ_lower,
});

/** A margin in pressure as a density of the column above it, so that margins at different depths compare [lb/gal]. */
export const marginAsDensity = formula({
	id: "pressure/margin-as-density",
	name: "Margin as an equivalent density",
	expression: "Δρ = Δp / (0.052 D)",
	source: cite("lapeyrouse", "ch. 1, pressure to equivalent mud weight"),
	inputs: { Δp: "pressure-difference", D: "true-vertical-depth" },
	gives: "density",
	validity: "below the datum",
	compute: ({ Δp, D }) => (D > 0 ? Δp / (HYDROSTATIC_CONSTANT * D) : Number.NaN),
});

/** Rock of an open hole with its pressure as a density from the depth datum. */
export interface RockDensity {
	readonly formation: string;
	readonly at: DepthMark;
	readonly density: Known<"density">;
}

/** The formation of a hole that the mud has most to hold back; undefined where no pore pressure is given. */
export const highestPore = (well: Well, path: KnownTable, from: Tvd, hole: Hole): RockDensity | undefined =>
	openRock(well, path, from, hole)
		.map(({ formation, depth, pressure }) => ({
			formation: formation.name,
			at: verticalMark(path, depth, well.datum),
			density: equivalentMudWeight.of({ p: pressure, D: depth }),
		}))
		.filter(({ density }) => Number.isFinite(density.value))
		.sort((a, b) => b.density.value - a.density.value)[0];

/** Tops of the formations between two depths with what each bears as a density, from the shallowest down. */
export const rockBetween = (well: Well, path: KnownTable, from: Tvd, to: Tvd): readonly RockDensity[] =>
	well.geology.formations.flatMap(({ name, top, fractureGradient: F }) => {
		if (F === undefined || top.value <= from.value || top.value >= to.value) return [];
		const D = depthBelowGround.of({ TVD: top, height: well.datum.aboveGround });
		const density = equivalentMudWeight.of({ p: fracturePressure.of({ F, D }), D: top });
		return [{ formation: name, at: verticalMark(path, top, well.datum), density }];
	});
