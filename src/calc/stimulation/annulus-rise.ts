import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * A closed annulus full of water: what its pressure does when the string inside it swells, and when it warms. Both are
 * the greater side, since nothing bleeds off, no gas is in it, and no rock or cement takes part.
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
const validity =
	"a closed annulus full of water; free pipe both sides, held along its length; nothing bled off";

/** Part by which the annulus gives way for each psi in it: water pressed, inner string pressed in, outer swelled. */
const give = ({ d, D, d_o, D_o }: Geometry): number => {
	const area = d_o ** 2 - D ** 2;
	const inner =
		(((2 * (1 + STEEL.ν)) / STEEL.E) * D ** 2 * ((1 - 2 * STEEL.ν) * D ** 2 + d ** 2)) /
		(area * (D ** 2 - d ** 2));
	const outer =
		(((2 * (1 + STEEL.ν)) / STEEL.E) * d_o ** 2 * ((1 - 2 * STEEL.ν) * d_o ** 2 + D_o ** 2)) /
		(area * (D_o ** 2 - d_o ** 2));
	return WATER.compressibility + inner + outer;
};

const nests = ({ d, D, d_o, D_o }: Geometry): boolean => d > 0 && d < D && D < d_o && d_o < D_o;

/** [psi] */
export const riseFromSwelling = formula({
	id: "stimulation/annulus-rise-from-pressure",
	name: "Annulus pressure rise as the treated string swells",
	expression: "Δp = P (4 (1 − ν²) d² D² / (E (D² − d²)(d_o² − D²))) / (c_w + s_i + s_o)",
	source,
	inputs: { P: "pressure", ...geometry },
	gives: "pressure",
	validity,
	compute: (given) => {
		const { P, d, D, d_o } = given;
		if (!nests(given)) return Number.NaN;
		const swelling =
			(4 * (1 - STEEL.ν ** 2) * d ** 2 * D ** 2) / (STEEL.E * (D ** 2 - d ** 2) * (d_o ** 2 - D ** 2));
		return (P * swelling) / give(given);
	},
});

/** [psi] */
export const riseFromHeat = formula({
	id: "stimulation/annulus-rise-from-heat",
	name: "Annulus pressure rise as it warms",
	expression: "Δp = α_w (T_2 − T_1) / (c_w + s_i + s_o)",
	source,
	inputs: { T_1: "temperature", T_2: "temperature", ...geometry },
	gives: "pressure",
	validity: `${validity}; it warms, from between 60 and 200 °F`,
	compute: (given) =>
		nests(given) && given.T_2 >= given.T_1
			? (WATER.expansion * (given.T_2 - given.T_1)) / give(given)
			: Number.NaN,
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
