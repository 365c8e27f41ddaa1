import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { CasingString, Hole, Well } from "../../../well/well.ts";
import { depthBelowGround } from "../../depths/marks.ts";
import { maximumTvd } from "../../trajectory/path-summary.ts";
import {
	gasToSurface,
	greatestGasPressure,
	maximumSurfacePressure,
	porePressure,
	shoeLimitedPressure,
} from "./surface-pressures.ts";

/** Weight of a column of gas where none is stated. */
const GAS = constant("pressure-gradient", 0.1, "gas gradient, simple", cite("devereux", "Table 1-2"));

export const gasGradient = (well: Well): Known<"pressure-gradient"> =>
	well.wellControl?.kick?.gas_gradient ?? GAS;

/**
 * Gas to surface from the formation that brings most, of those open between a shoe and the bottom of a hole.
 *
 * @returns undefined where no pore pressure is given there
 */
export const gasPressureBelow = (
	well: Well,
	path: KnownTable,
	shoe: Known<"true-vertical-depth">,
	hole: Hole,
): Known<"pressure"> | undefined => {
	const bottom = maximumTvd.of({ path, MD: hole.bottom });
	const pressures = well.geology.formations.flatMap((formation, i) => {
		const base = formation.base ?? well.geology.formations[i + 1]?.top;
		const open = formation.top.value < bottom.value && (base === undefined || base.value > shoe.value);
		if (!open || formation.porePressure === undefined) return [];
		// Gas is lighter than what sets the pore pressure, so a formation brings most from its base.
		const D_res = base === undefined || base.value > bottom.value ? bottom : base;
		const D = depthBelowGround.of({ TVD: D_res, height: well.datum.aboveGround });
		return [
			gasToSurface.of({
				P_res: porePressure.of({ ρ_pore: formation.porePressure, D }),
				g: gasGradient(well),
				D_res,
			}),
		];
	});
	return pressures.length === 0 ? undefined : greatestGasPressure.of({ P: pressures });
};

/** What a string may see at surface while the hole below it is drilled; undefined where an input is missing. */
export const surfacePressureWhileDrilling = (
	well: Well,
	path: KnownTable,
	string: {
		readonly shoe: Known<"true-vertical-depth">;
		readonly fracture: Known<"pressure"> | undefined;
		readonly below: Hole | undefined;
	},
): Known<"pressure"> | undefined => {
	if (string.below === undefined || string.fracture === undefined) return undefined;
	const gas = gasPressureBelow(well, path, string.shoe, string.below);
	return (
		gas &&
		maximumSurfacePressure.of({
			gas,
			shoe: shoeLimitedPressure.of({ p_frac: string.fracture, g: gasGradient(well), D_shoe: string.shoe }),
		})
	);
};

/** Whether preventers are closed on a string: on those named, or on all but the outermost where none is named. */
export const carriesPreventers = (well: Well, string: CasingString): boolean => {
	const { preventers } = well.wellControl ?? {};
	return preventers === undefined || preventers.length === 0
		? well.strings[0]?.id !== string.id
		: preventers.some(({ over }) => over === string.id);
};
