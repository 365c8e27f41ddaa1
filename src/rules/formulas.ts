import { COMPUTED_KINDS, type ComputedKind, FACTORS, MEASURES } from "../catalog/limits/measures.ts";
import { type AnyFormula, formula } from "../cite/formula.ts";
import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { Dimension } from "../units/dimensions.ts";

/**
 * Arithmetic of limits and of the few measures that the calculation core does not make. Each is declared as a formula,
 * so that `explain` and the regulator's appendix can show how a required or a measured value came about.
 */

/** Vertical distance from a shallower place down to a deeper one; negative where the order is the other way [ft]. */
export const verticalDistance = formula({
	id: "rules/vertical-distance",
	name: "Vertical distance",
	expression: "TVD_lower − TVD_upper",
	source: cite("definition", "both from the same datum"),
	inputs: { lower: "true-vertical-depth", upper: "true-vertical-depth" },
	gives: "offset",
	compute: ({ lower, upper }) => lower - upper,
});

/** The same, along the hole [ft]. */
export const distanceAlongHole = formula({
	id: "rules/distance-along-hole",
	name: "Distance along the hole",
	expression: "MD_lower − MD_upper",
	source: cite("definition", "both from the same datum"),
	inputs: { lower: "measured-depth", upper: "measured-depth" },
	gives: "offset",
	compute: ({ lower, upper }) => lower - upper,
});

/** Clearance on each side of a centered pipe or coupling [in]. */
export const clearanceEachSide = formula({
	id: "rules/clearance-each-side",
	name: "Clearance on each side",
	expression: "(D_hole − D) / 2",
	source: cite("geometry", "the pipe centered in a hole of bit size"),
	inputs: { hole: "diameter", pipe: "diameter" },
	gives: "diameter",
	compute: ({ hole, pipe }) => (hole - pipe) / 2,
});

/** Clearance on diameter [in]. */
export const clearanceOnDiameter = formula({
	id: "rules/clearance-on-diameter",
	name: "Clearance on diameter",
	expression: "D_hole − D",
	source: cite("geometry", "a hole of bit size"),
	inputs: { hole: "diameter", pipe: "diameter" },
	gives: "diameter",
	compute: ({ hole, pipe }) => hole - pipe,
});

/** How far a shoe test exceeds a fluid; negative where it does not [lb/gal]. */
export const densityOver = formula({
	id: "rules/density-over",
	name: "Shoe test over the fluid below the shoe",
	expression: "EMW − ρ",
	source: cite("definition"),
	inputs: { EMW: "density", ρ: "density" },
	gives: "density",
	compute: ({ EMW, ρ }) => EMW - ρ,
});

/** A fall given as a share of the test pressure, as a pressure [psi]. */
export const fallInPressure = formula({
	id: "rules/fall-in-pressure",
	name: "Fall in pressure",
	expression: "share × P",
	source: cite("definition"),
	inputs: { share: "share", pressure: "pressure" },
	gives: "pressure",
	compute: ({ share, pressure }) => share * pressure,
});

/** Slurry planned for the annulus to the annulus itself, without excess [–]. */
export const annulusFilling = formula({
	id: "rules/annulus-filling",
	name: "Slurry for the annulus to the volume of the annulus",
	expression: "(V_open hole + V_cased) / V_annulus",
	source: cite(
		"definition",
		"the shoe track and the hole below the shoe left out; the annulus without excess",
	),
	inputs: { parts: { many: "volume" }, annulus: "volume" },
	gives: "ratio",
	validity: "an annulus above zero",
	compute: ({ parts, annulus }) =>
		annulus > 0 ? parts.reduce<number>((sum, part) => sum + part, 0) / annulus : Number.NaN,
});

/** Height of pipe so many joints long [ft]. */
export const jointsLength = formula({
	id: "rules/joints-length",
	name: "Length of so many joints",
	expression: "n · joint",
	source: cite("definition"),
	inputs: { joints: "count", joint: "length" },
	gives: "length",
	compute: ({ joints, joint }) => joints * joint,
});

/** Least design factor over the one that is asked [–]. */
export const factorReached = formula({
	id: "rules/factor-reached",
	name: "Design factor reached over the one asked",
	expression: "SF / DF",
	source: cite("definition"),
	inputs: { SF: "ratio", DF: "ratio" },
	gives: "ratio",
	compute: ({ SF, DF }) => (DF > 0 ? SF / DF : Number.NaN),
});

/** What may still be pulled over the greatest pick-up before the weakest part reaches its factor [lbf]. */
export const overpullLeft = formula({
	id: "rules/overpull-left",
	name: "Overpull left at the greatest pick-up",
	expression: "least F_i / DF − P",
	source: cite("common-practice", "rating of pipe and joint over the overpull factor, less the hook load"),
	inputs: { F_i: { many: "force" }, DF: "ratio", P: "force" },
	gives: "force",
	validity: "at least one rating; the traveling block not counted",
	compute: ({ F_i, DF, P }) => (F_i.length === 0 ? Number.NaN : Math.min(...F_i) / DF - P),
});

/** What may be pulled before the weakest part reaches its factor [lbf]. */
export const allowedPull = formula({
	id: "rules/allowed-pull",
	name: "Pull that the string allows",
	expression: "least F_i / DF",
	source: cite("common-practice", "rating of pipe and joint over the overpull factor"),
	inputs: { F_i: { many: "force" }, DF: "ratio" },
	gives: "force",
	validity: "at least one rating",
	compute: ({ F_i, DF }) => (F_i.length === 0 || DF <= 0 ? Number.NaN : Math.min(...F_i) / DF),
});

/** Step of density from one fluid of the train to the next; negative where the next is lighter [lb/gal]. */
export const densityStep = formula({
	id: "rules/density-step",
	name: "Step of density",
	expression: "ρ_2 − ρ_1",
	source: cite("definition"),
	inputs: { ρ_2: "density", ρ_1: "density" },
	gives: "density",
	compute: ({ ρ_2, ρ_1 }) => ρ_2 - ρ_1,
});

/** Time left between two [min]; negative where the first is the later. */
export const durationLeft = formula({
	id: "rules/duration-left",
	name: "Time left",
	expression: "t_2 − t_1",
	source: cite("definition"),
	inputs: { t_2: "duration", t_1: "duration" },
	gives: "duration",
	compute: ({ t_2, t_1 }) => t_2 - t_1,
});

const rule = cite("cited-rule");
const words = (kind: Dimension): string => kind.replace(/-/g, " ");

const greatest = (kind: ComputedKind) =>
	formula({
		id: `rules/greatest-${kind}`,
		name: `Greatest of several (${words(kind)})`,
		expression: "max(a, b, …)",
		source: rule,
		inputs: { of: { many: kind } },
		gives: kind,
		compute: ({ of }) => Math.max(...of),
	});

const least = (kind: ComputedKind) =>
	formula({
		id: `rules/least-${kind}`,
		name: `Least of several (${words(kind)})`,
		expression: "min(a, b, …)",
		source: rule,
		inputs: { of: { many: kind } },
		gives: kind,
		compute: ({ of }) => Math.min(...of),
	});

const sum = (kind: ComputedKind) =>
	formula({
		id: `rules/sum-${kind}`,
		name: `Sum of several (${words(kind)})`,
		expression: "a + b + …",
		source: rule,
		inputs: { of: { many: kind } },
		gives: kind,
		compute: ({ of }) => of.reduce<number>((total, each) => total + each, 0),
	});

const clamp = (kind: ComputedKind) =>
	formula({
		id: `rules/clamp-${kind}`,
		name: `Held between a least and a greatest (${words(kind)})`,
		expression: "min(max(x, from), to)",
		source: rule,
		inputs: { x: kind, from: kind, to: kind },
		gives: kind,
		validity: "from ≤ to",
		compute: ({ x, from, to }) => (from <= to ? Math.min(Math.max(x, from), to) : Number.NaN),
	});

const product = ({ of, gives, factor }: (typeof FACTORS)[number]) =>
	formula({
		id: `rules/${gives}-from-${of}`,
		name:
			factor === "pressure-gradient" ? "Pressure per length, over a length" : `Multiple of a ${words(of)}`,
		expression: "k · x",
		source: rule,
		inputs: { k: factor, x: of },
		gives,
		compute: ({ k, x }) => k * x,
	});

/** What a difference of two values is measured as, where it is not their own kind. */
const DIFFERENCES: Partial<Readonly<Record<Dimension, Dimension>>> = {
	length: "offset",
	distance: "offset",
	"measured-depth": "offset",
	"true-vertical-depth": "offset",
	"depth-below-ground": "offset",
	pressure: "pressure-difference",
	temperature: "temperature-difference",
};

const margin = (kind: Dimension) =>
	formula({
		id: `rules/margin-${kind}`,
		name: `Margin to a limit (${words(kind)})`,
		expression: "limit − value, or value − limit",
		source: rule,
		inputs: { larger: kind, smaller: kind },
		gives: DIFFERENCES[kind] ?? kind,
		compute: ({ larger, smaller }) => larger - smaller,
	});

const MARGINS = [...new Set(Object.values(MEASURES).map(({ dimension }) => dimension))].map(margin);

const GREATEST = COMPUTED_KINDS.map(greatest);
const LEAST = COMPUTED_KINDS.map(least);
const SUMS = COMPUTED_KINDS.map(sum);
const CLAMPS = COMPUTED_KINDS.map(clamp);
const PRODUCTS = FACTORS.map(product);

/** The reader of rules files lets through only the kinds listed, so a miss here is our own fault. */
const pick = (list: readonly AnyFormula[], id: string): ((inputs: object) => Known) => {
	const found = list.find((each) => each.id === id);
	if (found === undefined) throw new RangeError(`no formula ${id}`);
	return (inputs) => found.of(inputs as never) as Known;
};

export const greatestOf = (kind: Dimension, of: readonly Known[]): Known =>
	pick(GREATEST, `rules/greatest-${kind}`)({ of });
export const leastOf = (kind: Dimension, of: readonly Known[]): Known =>
	pick(LEAST, `rules/least-${kind}`)({ of });
export const sumOf = (kind: Dimension, of: readonly Known[]): Known =>
	pick(SUMS, `rules/sum-${kind}`)({ of });
export const clampBetween = (kind: Dimension, x: Known, from: Known, to: Known): Known =>
	pick(CLAMPS, `rules/clamp-${kind}`)({ x, from, to });
/** A factor on another value. */
export const multiple = (kind: Dimension, k: Known, x: Known): Known =>
	pick(PRODUCTS, `rules/${kind}-from-${x.dimension}`)({ k, x });

/** From the smaller to the larger of two values of a kind; negative where they are the other way round. */
export const marginBetween = (kind: Dimension, larger: Known, smaller: Known): Known =>
	pick(MARGINS, `rules/margin-${kind}`)({ larger, smaller });

/** Everything declared here, for the register. */
export const RULE_FORMULAS: readonly AnyFormula[] = [
	verticalDistance,
	distanceAlongHole,
	clearanceEachSide,
	clearanceOnDiameter,
	fallInPressure,
	densityOver,
	annulusFilling,
	jointsLength,
	factorReached,
	overpullLeft,
	allowedPull,
	densityStep,
	durationLeft,
	...GREATEST,
	...LEAST,
	...SUMS,
	...CLAMPS,
	...PRODUCTS,
	...MARGINS,
];
