import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { CasingString, Hole, Well } from "../../../well/well.ts";
import { openRock } from "./open-rock.ts";
import {
	gasToSurface,
	greatestGasPressure,
	maximumSurfacePressure,
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
	const pressures = openRock(well, path, shoe, hole).map(({ depth, pressure }) =>
		gasToSurface.of({ P_res: pressure, g: gasGradient(well), D_res: depth }),
	);
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
