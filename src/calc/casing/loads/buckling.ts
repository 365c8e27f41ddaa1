import { formula } from "../../../cite/formula.ts";
import { cite } from "../../../cite/source.ts";
import { STEEL_MODULUS } from "../triaxial.ts";

/*
 * Pipe pressed together in a hole: at what push it snakes along the low side, at what push it coils, how hard the coil
 * lies against the wall, and beyond what push no more gets through.
 *
 * What holds pipe straight is the load w_c with which it lies on the wall: w sin I in straight hole. In a build the push
 * itself adds to it, F κ, which is how curved hole holds more; so one form serves straight, inclined and curved hole.
 */

/** E J of pipe [lbf·in²]. */
export const stiffnessOf = (D: number, t: number): number =>
	STEEL_MODULUS * (Math.PI / 64) * (D ** 4 - (D - 2 * t) ** 4);

/** Helical over sinusoidal in a hole that lies. */
const COIL = 2 * Math.SQRT2 - 1;

export interface Held {
	/** E J [lbf·in²]. */
	readonly stiffness: number;
	/** Weight in mud [lb/ft]. */
	readonly w: number;
	/** Load on the wall [lb/ft]. */
	readonly w_c: number;
	/** Radial clearance [in]. */
	readonly r: number;
}

const lying = ({ stiffness, w_c, r }: Held): number => 2 * Math.sqrt((stiffness * (w_c / 12)) / r);
const standing = ({ stiffness, w }: Held): number => Math.cbrt(stiffness * (w / 12) ** 2);

export const sinusoidalLimit = (held: Held): number => Math.max(lying(held), 1.94 * standing(held));
export const helicalLimit = (held: Held): number => Math.max(COIL * lying(held), 5.55 * standing(held));

/** Load of a coil on the wall [lb/ft]. */
export const coiledLoad = (F: number, { stiffness, r }: Pick<Held, "stiffness" | "r">): number =>
	(12 * r * F ** 2) / (4 * stiffness);

const inputs = {
	D: "diameter",
	t: "diameter",
	w: "linear-weight",
	w_c: "linear-weight",
	r: "diameter",
} as const;
const validity = "frictionless wall; pipe heavier than what it displaces; r above zero; w_c at least zero";

interface Given {
	readonly D: number;
	readonly t: number;
	readonly w: number;
	readonly w_c: number;
	readonly r: number;
}

const heldOf = ({ D, t, w, w_c, r }: Given): Held => ({ stiffness: stiffnessOf(D, t), w, w_c, r });
const usable = ({ w, w_c, r }: Given): boolean => w > 0 && r > 0 && w_c >= 0;

const withBranch = (limit: number, least: number) =>
	limit > least ? { value: limit, branch: "lying on the wall" } : { value: limit, branch: "vertical hole" };

/** Push at which pipe begins to snake [lbf]. */
export const sinusoidalBucklingForce = formula({
	id: "casing/sinusoidal-buckling-force",
	name: "Compression of sinusoidal buckling",
	expression: "F = 2 √(E J w_c / r), w_c = w sin I + F κ; at least 1.94 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64",
	source: cite("dawson-paslay-1984", "inclined hole; the least is Lubinski's of vertical hole; from memory"),
	inputs,
	gives: "force",
	validity,
	compute: (given) => {
		if (!usable(given)) return Number.NaN;
		const held = heldOf(given);
		return withBranch(sinusoidalLimit(held), 1.94 * standing(held));
	},
});

/** Push at which pipe coils round the hole [lbf]. */
export const helicalBucklingForce = formula({
	id: "casing/helical-buckling-force",
	name: "Compression of helical buckling",
	expression:
		"F = 2 (2√2 − 1) √(E J w_c / r), w_c = w sin I + F κ; at least 5.55 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64",
	source: cite("wu-juvkam-wold-1995", "inclined hole; vertical hole as the least; from memory"),
	inputs,
	gives: "force",
	validity,
	compute: (given) => {
		if (!usable(given)) return Number.NaN;
		const held = heldOf(given);
		return withBranch(helicalLimit(held), 5.55 * standing(held));
	},
});

/** What coiled pipe adds to its load on the wall [lb/ft]. */
export const helicalContactLoad = formula({
	id: "casing/helical-contact-load",
	name: "Load of coiled pipe on the wall",
	expression: "N = r F² / (4 E J)",
	source: cite("mitchell-1986", "contact force of a fully developed helix; from memory"),
	inputs: { D: "diameter", t: "diameter", r: "diameter", F: "force" },
	gives: "linear-weight",
	validity: "compression above that of helical buckling; r above zero",
	compute: ({ D, t, r, F }) => (r > 0 ? coiledLoad(F, { stiffness: stiffnessOf(D, t), r }) : Number.NaN),
});

/** Push that coiled pipe cannot pass on in vertical hole: what its weight adds, the coil's drag takes [lbf]. */
export const lockUpForce = formula({
	id: "casing/lock-up-force",
	name: "Lock-up force of coiled pipe in vertical hole",
	expression: "F = √(4 E J w / (μ r))",
	source: cite(
		"wu-juvkam-wold-1993",
		"frictional drag of helically buckled pipe, w = μ r F² / (4 E J); from memory",
	),
	inputs: { D: "diameter", t: "diameter", w: "linear-weight", r: "diameter", μ: "ratio" },
	gives: "force",
	validity: "coiled pipe in vertical hole; μ, r and w above zero",
	compute: ({ D, t, w, r, μ }) =>
		μ > 0 && r > 0 && w > 0 ? Math.sqrt((4 * stiffnessOf(D, t) * (w / 12)) / (μ * r)) : Number.NaN,
});
