import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * A closed annulus full of water: what its pressure does when the string inside it swells, and when it warms. Nothing
 * bleeds off and no gas is in it, so each is the greater side; the outer wall is the one that cannot be known. Free pipe
 * swells and takes up the most; cement and rock behind it hold it, and at their stiffest let it give nothing.
 */

/** Young's modulus of steel [psi] and its Poisson's ratio, as the casing formulas take them. */
const STEEL = { E: 30e6, ν: 0.3 } as const;
/** Of water: a part in volume for each psi, and for each °F near 120 °F. */
const WATER = { compressibility: 3.0e-6, expansion: 2.5e-4 } as const;

const geometry = { d: "diameter", D: "diameter", d_o: "diameter", D_o: "diameter" } as const;
type Geometry = { readonly [S in keyof typeof geometry]: number };

const source = cite(
	"lame-1852",
	"thick cylinders in plane strain: E = 30·10⁶ psi, ν = 0.3; water 3.0·10⁻⁶/psi, 2.5·10⁻⁴/°F by common practice",
);
const closed = "a closed annulus full of water, nothing bled off; pipe held along its length";
const free = `${closed}; free pipe both sides`;
const held = `${closed}; the outer wall does not give, as behind it stands cement and rock`;

type OuterWall = "free" | "held";

/** Part by which the annulus gives way for each psi in it: water pressed, inner string pressed in, outer swelled. */
const give = ({ d, D, d_o, D_o }: Geometry, wall: OuterWall): number => {
	const area = d_o ** 2 - D ** 2;
	const inner =
		(((2 * (1 + STEEL.ν)) / STEEL.E) * D ** 2 * ((1 - 2 * STEEL.ν) * D ** 2 + d ** 2)) /
		(area * (D ** 2 - d ** 2));
	const outer =
		(((2 * (1 + STEEL.ν)) / STEEL.E) * d_o ** 2 * ((1 - 2 * STEEL.ν) * d_o ** 2 + D_o ** 2)) /
		(area * (D_o ** 2 - d_o ** 2));
	return WATER.compressibility + inner + (wall === "free" ? outer : 0);
};

const nests = ({ d, D, d_o, D_o }: Geometry): boolean => d > 0 && d < D && D < d_o && d_o < D_o;

const swelling = (given: Geometry & { readonly P: number }, wall: OuterWall): number => {
	if (!nests(given)) return Number.NaN;
	const { P, d, D, d_o } = given;
	const share =
		(4 * (1 - STEEL.ν ** 2) * d ** 2 * D ** 2) / (STEEL.E * (D ** 2 - d ** 2) * (d_o ** 2 - D ** 2));
	return (P * share) / give(given, wall);
};

const warming = (
	given: Geometry & { readonly T_1: number; readonly T_2: number },
	wall: OuterWall,
): number =>
	nests(given) && given.T_2 >= given.T_1
		? (WATER.expansion * (given.T_2 - given.T_1)) / give(given, wall)
		: Number.NaN;

const ofSwelling = { source, inputs: { P: "pressure", ...geometry }, gives: "pressure" } as const;
const ofHeat = {
	source,
	inputs: { T_1: "temperature", T_2: "temperature", ...geometry },
	gives: "pressure",
} as const;

/** [psi] */
export const riseFromSwelling = formula({
	id: "stimulation/annulus-rise-from-pressure",
	name: "Annulus pressure rise as the string inside swells, outer pipe free",
	expression: "Δp = P (4 (1 − ν²) d² D² / (E (D² − d²)(d_o² − D²))) / (c_w + s_i + s_o)",
	...ofSwelling,
	validity: free,
	compute: (given) => swelling(given, "free"),
});

/** [psi] */
export const riseFromSwellingHeld = formula({
	id: "stimulation/annulus-rise-from-pressure-held",
	name: "Annulus pressure rise as the string inside swells, outer wall held",
	expression: "Δp = P (4 (1 − ν²) d² D² / (E (D² − d²)(d_o² − D²))) / (c_w + s_i)",
	...ofSwelling,
	validity: held,
	compute: (given) => swelling(given, "held"),
});

/** [psi] */
export const riseFromHeat = formula({
	id: "stimulation/annulus-rise-from-heat",
	name: "Annulus pressure rise as it warms, outer pipe free",
	expression: "Δp = α_w (T_2 − T_1) / (c_w + s_i + s_o)",
	...ofHeat,
	validity: `${free}; it warms, from between 60 and 200 °F`,
	compute: (given) => warming(given, "free"),
});

/** [psi] */
export const riseFromHeatHeld = formula({
	id: "stimulation/annulus-rise-from-heat-held",
	name: "Annulus pressure rise as it warms, outer wall held",
	expression: "Δp = α_w (T_2 − T_1) / (c_w + s_i)",
	...ofHeat,
	validity: `${held}; it warms, from between 60 and 200 °F`,
	compute: (given) => warming(given, "held"),
});

/** [psi] */
export const totalRise = formula({
	id: "stimulation/annulus-rise",
	name: "Annulus pressure rise",
	expression: "Δp = Σ Δp_i",
	source: cite("definition"),
	inputs: { Δp_i: { many: "pressure" } },
	gives: "pressure",
	compute: ({ Δp_i }) => Δp_i.reduce<number>((sum, p) => sum + p, 0),
});
