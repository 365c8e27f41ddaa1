import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { arcStep } from "./arc.ts";

const source = cite("taylor-mason-1972", "minimum curvature");
const inputs = {
	MD1: "measured-depth",
	I1: "angle",
	A1: "angle",
	MD2: "measured-depth",
	I2: "angle",
	A2: "angle",
} as const;
const validity = "MD2 > MD1; dogleg below 180°";

interface Stations {
	readonly MD1: number;
	readonly I1: number;
	readonly A1: number;
	readonly MD2: number;
	readonly I2: number;
	readonly A2: number;
}

const component = ({ MD1, I1, A1, MD2, I2, A2 }: Stations, i: 0 | 1 | 2): number =>
	MD2 > MD1
		? arcStep({ md: MD1, inclination: I1, azimuth: A1 }, { md: MD2, inclination: I2, azimuth: A2 })[i]
		: Number.NaN;

export const northStep = formula({
	id: "trajectory/north-step",
	name: "Northing between stations",
	expression: "ΔN = (ΔMD/2) · RF · (sin I1 cos A1 + sin I2 cos A2)",
	source,
	inputs,
	gives: "offset",
	validity,
	compute: (stations) => component(stations, 0),
});

export const eastStep = formula({
	id: "trajectory/east-step",
	name: "Easting between stations",
	expression: "ΔE = (ΔMD/2) · RF · (sin I1 sin A1 + sin I2 sin A2)",
	source,
	inputs,
	gives: "offset",
	validity,
	compute: (stations) => component(stations, 1),
});

export const verticalStep = formula({
	id: "trajectory/vertical-step",
	name: "True vertical depth between stations",
	expression: "ΔTVD = (ΔMD/2) · RF · (cos I1 + cos I2)",
	source,
	inputs,
	gives: "offset",
	validity,
	compute: (stations) => component(stations, 2),
});
