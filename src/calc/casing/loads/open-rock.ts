import type { Known, KnownTable } from "../../../cite/known.ts";
import type { Formation, Hole, Well } from "../../../well/well.ts";
import { depthBelowGround } from "../../depths/marks.ts";
import { maximumTvd } from "../../trajectory/path-summary.ts";
import { porePressure } from "./surface-pressures.ts";

/** A formation open between a shoe and the bottom of a hole, with its pressure where that is greatest. */
interface OpenRock {
	readonly formation: Formation;
	readonly depth: Known<"true-vertical-depth">;
	readonly pressure: Known<"pressure">;
}

/**
 * Formations with a pore pressure that stand open below a shoe. Gas is lighter than what sets the pore pressure, so each
 * brings most from its base, or from the deepest the hole comes in it.
 */
export const openRock = (
	well: Well,
	path: KnownTable,
	shoe: Known<"true-vertical-depth">,
	hole: Hole,
): readonly OpenRock[] => {
	const bottom = maximumTvd.of({ path, MD: hole.bottom });
	return well.geology.formations.flatMap((formation, i) => {
		const base = formation.base ?? well.geology.formations[i + 1]?.top;
		const open = formation.top.value < bottom.value && (base === undefined || base.value > shoe.value);
		if (!open || formation.porePressure === undefined) return [];
		const depth = base === undefined || base.value > bottom.value ? bottom : base;
		const D = depthBelowGround.of({ TVD: depth, height: well.datum.aboveGround });
		return [{ formation, depth, pressure: porePressure.of({ ρ_pore: formation.porePressure, D }) }];
	});
};
