import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { CRITICAL_REYNOLDS, VELOCITY_CONSTANT } from "../pressure/bingham-flow.ts";
import { HYDROSTATIC_CONSTANT } from "../pressure/hydrostatic.ts";

const laminar = (at: string) => cite("couturier-1990", `effective laminar displacement, ${at}; from memory`);

/** How much more of something the fluid behind has than the fluid ahead [share]; negative where it has less. */
const step = <D extends "density" | "pressure-gradient">(
	id: string,
	name: string,
	dimension: D,
	symbol: string,
	at: string,
) =>
	formula({
		id: `cement/${id}`,
		name,
		expression: `${symbol}_2 / ${symbol}_1 − 1`,
		source: laminar(at),
		inputs: { x_1: dimension, x_2: dimension },
		gives: "share",
		validity: "x_1 of the fluid ahead, above zero; x_2 of the one that displaces it",
		compute: ({ x_1, x_2 }) => (x_1 > 0 ? x_2 / x_1 - 1 : Number.NaN),
	});

/** [share] */
export const densityStep = step(
	"density-step",
	"Density over that of the fluid ahead",
	"density",
	"ρ",
	"density 10 %",
);

/** [share] */
export const frictionStep = step(
	"friction-step",
	"Friction gradient over that of the fluid ahead",
	"pressure-gradient",
	"G",
	"friction 20 %",
);

/** Gradient that moves a fluid with a yield point on the narrow side of an annulus [psi/ft]. */
export const narrowSideYield = formula({
	id: "cement/narrow-side-yield",
	name: "Gradient that moves the fluid on the narrow side",
	expression: "G_y = YP / (300 (D − d) S)",
	source: cite("lapeyrouse", "ch. 4, pressure to break gel in an annulus, with the gap on the narrow side"),
	inputs: { YP: "yield-point", D: "diameter", d: "diameter", S: "share" },
	gives: "pressure-gradient",
	validity: "inner diameter less than outer; standoff above 0, 1 in the middle of the hole",
	compute: ({ YP, D, d, S }) => (D > d && S > 0 ? YP / (300 * (D - d) * S) : Number.NaN),
});

/** What drives the fluid ahead on the narrow side, over what it takes to move it. */
export const narrowSideDrive = formula({
	id: "cement/narrow-side-drive",
	name: "Drive over yield on the narrow side",
	expression: "(G_2 + 0.052 (ρ_2 − ρ_1) cos I) / G_y",
	source: laminar("minimum pressure gradient"),
	inputs: {
		G_2: "pressure-gradient",
		ρ_1: "density",
		ρ_2: "density",
		I: "angle",
		G_y: "pressure-gradient",
	},
	gives: "ratio",
	validity:
		"1 or more moves the fluid on the narrow side; buoyancy helps in steep hole and not in level hole",
	compute: ({ G_2, ρ_1, ρ_2, I, G_y }) =>
		G_y > 0
			? (G_2 + HYDROSTATIC_CONSTANT * (ρ_2 - ρ_1) * Math.max(0, Math.cos((I * Math.PI) / 180))) / G_y
			: Number.NaN,
});

/** Rate from which a Bingham fluid flows turbulent in an annulus [bbl/min]. */
export const turbulentRate = formula({
	id: "cement/turbulent-rate",
	name: "Rate of turbulent flow in the annulus",
	expression: "Q = v (D² − d²) / 17.157, 757 ρ (D − d) v² − 2,100 PV v − 10,500 YP (D − d) = 0",
	source: cite("bourgoyne-1986", "ch. 4, Bingham plastic, turbulence criteria"),
	inputs: { ρ: "density", PV: "plastic-viscosity", YP: "yield-point", D: "diameter", d: "diameter" },
	gives: "flow-rate",
	validity: "pipe in the middle of the hole; on the narrow side it takes more",
	compute: ({ ρ, PV, YP, D, d }) => {
		const gap = D - d;
		if (!(gap > 0 && ρ > 0)) return Number.NaN;
		const [a, b, c] = [757 * ρ * gap, CRITICAL_REYNOLDS * PV, 5 * CRITICAL_REYNOLDS * YP * gap];
		const v = (b + Math.sqrt(b ** 2 + 4 * a * c)) / (2 * a);
		return (v * (D ** 2 - d ** 2)) / VELOCITY_CONSTANT;
	},
});

/** What is asked of each fluid that displaces another in laminar flow. */
export const ASKED = { density: 0.1, friction: 0.2, drive: 1, standoff: 0.7 } as const;

/** How many of four criteria of displacement a place misses: 0 is the least risk of a channel, 4 the most. */
export const channelIndex = formula({
	id: "cement/channel-index",
	name: "Channel risk index",
	expression:
		"how many of: x_ρ < 10 %, x_G < 20 %, drive < 1, S < 70 %; none but the last where the flow is turbulent",
	source: laminar("each criterion; to count them is ours"),
	inputs: {
		x_ρ: "share",
		x_G: "share",
		drive: "ratio",
		S: "share",
		Q: "flow-rate",
		Q_t: "flow-rate",
	},
	gives: "count",
	validity: "an index for comparison of places, and no forecast of a channel",
	compute: ({ x_ρ, x_G, drive, S, Q, Q_t }) => {
		const standoff = S < ASKED.standoff ? 1 : 0;
		if (Q >= Q_t) return standoff;
		const missed = [x_ρ < ASKED.density, x_G < ASKED.friction, drive < ASKED.drive];
		return standoff + missed.filter(Boolean).length;
	},
});

/** The greatest of several indices. */
export const greatestIndex = formula({
	id: "cement/greatest-channel-index",
	name: "Greatest channel risk index",
	expression: "max n_i",
	source: cite("definition"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	validity: "at least one",
	compute: ({ n_i }) => (n_i.length === 0 ? Number.NaN : Math.max(...n_i)),
});
