import type { Known } from "../cite/known.ts";
import { LITHOLOGIES } from "../definition/lithologies.ts";

export interface Geology {
	readonly surfaceTemperature?: Known<"temperature">;
	readonly temperatureGradient?: Known<"temperature-gradient">;
	readonly overburden?: Known<"pressure-gradient">;
	readonly formations: readonly Formation[];
	readonly water: readonly WaterZone[];
	readonly protectedWater?: ProtectedWater;
}

export interface Formation {
	/** Kebab-case of the name. */
	readonly id: string;
	readonly name: string;
	readonly top: Known<"true-vertical-depth">;
	/** The prognosis, where `top` is as found. */
	readonly plannedTop?: Known<"true-vertical-depth">;
	/** As given, else the next formation's top; absent for the last. */
	readonly base?: Known<"true-vertical-depth">;
	readonly lithology: Lithology;
	readonly porePressure?: Known<"density">;
	readonly fractureGradient?: Known<"pressure-gradient">;
	/** Where no gradient is given: how it is to be worked. */
	readonly fractureFrom?: {
		readonly method: "Eaton" | "Hubbert-Willis lower" | "Hubbert-Willis upper" | "Matthews-Kelly";
		readonly poissonsRatio?: Known<"ratio">;
		readonly matrixStressCoefficient?: Known<"ratio">;
	};
	readonly flowZone?: "gas" | "oil" | "water" | "brine";
	readonly competent?: boolean;
	/** Whether it creeps onto the pipe, where stated. */
	readonly mobile?: boolean;
	readonly confining: boolean;
	readonly target: boolean;
	readonly mechanical?: {
		readonly youngsModulus?: Known<"pressure">;
		readonly poissonsRatio?: Known<"ratio">;
		readonly closure?: Known<"pressure-gradient">;
		readonly stressContrast?: Known<"pressure">;
		readonly leakoff?: Known<"leakoff">;
	};
}

export { LITHOLOGIES };

export type Lithology = (typeof LITHOLOGIES)[number];

export interface WaterZone {
	readonly id: string;
	readonly name: string;
	readonly top: Known<"true-vertical-depth">;
	readonly base: Known<"true-vertical-depth">;
	readonly dissolvedSolids?: Known<"dissolved-solids">;
	readonly use?: string;
}

interface ProtectedWater {
	/** From the depth datum. */
	readonly base: Known<"true-vertical-depth">;
	readonly determinedBy?: string;
	readonly reference?: string;
	readonly dated?: string;
}
