import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
import type { CasingString, Hole, PipeSection, Well } from "../../well/well.ts";
import { intervalLength, pipeCapacity } from "../cement/capacity.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe, siblingOf } from "../gaps.ts";
import { verticalSeparation } from "../isolation/separation.ts";
import { fracturePressure } from "../pressure/fracture-gradient.ts";
import { hydrostaticPressure } from "../pressure/hydrostatic.ts";
import { shoeTestSurfacePressure } from "../pressure/shoe-strength.ts";
import type { CasingResults, HoleMark, PipeSectionResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { buoyancyFactor, buoyedWeight, totalWeight, weightInAir } from "./axial.ts";
import {
	ductileRupture,
	hardeningIndex,
	leastCollapse,
	leastInternalYield,
	wornRating,
} from "./internal-yield.ts";
import { allowedPull, leastTension, maximumPull } from "./joint-strength.ts";
import { askOfSalt } from "./loads/mobile-salt.ts";
import { openRock } from "./loads/open-rock.ts";
import { stringLoads } from "./loads/string-loads.ts";
import { carriesPreventers, surfacePressureWhileDrilling } from "./loads/surface-pressure-of-string.ts";
import { plainEndMass } from "./pipe-body.ts";
import { sectionRatings } from "./section-ratings.ts";
import { greatestGasSeen, type SourExposure, sourServiceOf } from "./sour-service.ts";
import { clearance, jointsInSection, jointsInString, leastDrift, sectionMass, stringMass } from "./tally.ts";

const FLAW = constant(
	"share",
	0.05,
	"depth of the flaw that inspection may pass, part of the wall",
	cite("common-practice"),
);

/**
 * Each string: where it stands, what it weighs and withstands, and what acts at its shoe. By string id, in order.
 *
 * A pipe that no published formula covers is an error; a string that falls short of a factor is a warning; what lacks
 * an input is a gap.
 */
export const casingResults = (
	well: Well,
	path: KnownTable,
	gaps: Gaps,
): {
	readonly value: Readonly<Record<string, CasingResults>>;
	readonly diagnostics: readonly Diagnostic[];
} => {
	const diagnostics: Diagnostic[] = [];
	askOfSalt(well, gaps);
	const entries = well.strings.map((string) => {
		const pressure = greatestGasOn(well, path, string);
		const sections = string.sections.map((section) => {
			const key = `casing.${string.id}.sections.${section.number}`;
			const { ratings, diagnostics: outside } = sectionRatings(section, key, gaps);
			diagnostics.push(...outside);
			return sectionResults(section, ratings, path, { pressure, string, well });
		});
		const results = stringResults(string, sections, { well, path, gaps });
		return [string.id, results] as const;
	});
	if (well.safety?.hydrogen_sulfide === undefined)
		gaps.missing("casing.sour_service", message("calc/whether-hydrogen-sulfide-is-expected-is"), [
			["safety", "hydrogen_sulfide"],
		]);
	return { value: Object.fromEntries(entries), diagnostics };
};

const sectionResults = (
	section: PipeSection,
	ratings: ReturnType<typeof sectionRatings>["ratings"],
	path: KnownTable,
	exposure: SourExposure,
): PipeSectionResults => {
	const { well } = exposure;
	const top = holeMark(path, section.top, well.datum);
	const bottom = holeMark(path, section.bottom, well.datum);
	return {
		number: section.number,
		top,
		bottom,
		length: intervalLength.of({ MD_top: section.top, MD_bottom: section.bottom }),
		internal_yield: ratings.internalYield,
		...maybe("coupling_internal_yield", ratings.couplingInternalYield),
		...maybe("ductile_rupture", ruptureOf(section)),
		collapse: ratings.collapse,
		body_yield: ratings.bodyYield,
		...maybe("joint_strength", ratings.jointStrength),
		...maybe(
			"tension",
			ratings.jointStrength && leastTension.of({ ratings: [ratings.bodyYield, ratings.jointStrength] }),
		),
		weight_in_air: weightInAir.of({
			w: section.nominalWeight,
			ΔTVD: verticalSeparation.of({ TVD_lower: bottom.tvd, TVD_upper: top.tvd }),
		}),
		capacity: pipeCapacity.of({ d: section.insideDiameter }),
		plain_end_mass: plainEndMass.of({ D: section.outsideDiameter, t: section.wall }),
		sour_service: sourServiceOf(section, top, exposure),
	};
};

/** Nothing where the steel is outside what its hardening is known for. */
const ruptureOf = ({
	outsideDiameter: D,
	wall: t,
	minimumYield: Y_p,
	minimumTensile: U_p,
}: PipeSection): Known<"pressure"> | undefined => {
	const rupture = ductileRupture.of({
		D,
		t,
		U_p,
		n: hardeningIndex.of({ Y_p }),
		a: FLAW,
	});
	return Number.isFinite(rupture.value) ? rupture : undefined;
};

interface Context {
	readonly well: Well;
	readonly path: KnownTable;
	readonly gaps: Gaps;
}

const stringResults = (
	string: CasingString,
	sections: readonly PipeSectionResults[],
	{ well, path, gaps }: Context,
): CasingResults => {
	const shoe = holeMark(path, string.shoe, well.datum);
	const weight = totalWeight.of({ F: sections.map((s) => s.weight_in_air) });
	const mud = string.hole.fluid?.density;
	const joints = jointCount(string, sections);
	const mass = string.sections.map((s, i) => massOf(s, sections[i]));
	const fracture = fractureAtShoe(well, string, shoe, gaps);
	const internalYield = leastInternalYield.of({
		ratings: sections.flatMap((s) => [
			s.internal_yield,
			...(s.coupling_internal_yield === undefined ? [] : [s.coupling_internal_yield]),
		]),
	});
	const wear = string.wear ?? well.designBasis.wear;
	const results = {
		id: string.id,
		top: holeMark(path, string.top, well.datum),
		shoe,
		length: intervalLength.of({ MD_top: string.top, MD_bottom: string.shoe }),
		...maybe("joints", joints),
		weight_in_air: weight,
		...maybe(
			"weight_in_mud",
			mud === undefined ? undefined : buoyedWeight.of({ W: weight, BF: buoyancyFactor.of({ ρ: mud }) }),
		),
		pipe_mass: stringMass.of({ m: mass.filter((m) => m !== undefined) }),
		sections,
		least_internal_yield: internalYield,
		...maybe("worn_internal_yield", wear.value > 0 ? wornRating.of({ P: internalYield, wear }) : undefined),
		least_collapse: leastCollapse.of({ ratings: sections.map((s) => s.collapse) }),
		drift: leastDrift.of({ drifts: string.sections.map((s) => s.drift) }),
		...pull(string, sections),
		...maybe("mud_hydrostatic_at_shoe", mud && hydrostaticPressure.of({ ρ: mud, D: shoe.tvd })),
		...maybe("fracture_pressure_at_shoe", fracture),
		...maybe("shoe_test_surface_pressure", shoeTestPressure(well, string, shoe, gaps)),
		...maybe("hole_clearance", narrowest(string, string.hole.diameter)),
		...maybe("drift_clearance", driftClearance(well, string)),
		...maybe(
			"maximum_surface_pressure",
			carriesPreventers(well, string)
				? surfacePressureWhileDrilling(well, path, {
						shoe: shoe.tvd,
						fracture,
						below: holeBelow(well, string),
					})
				: undefined,
		),
	};
	return { ...results, ...stringLoads({ well, path, gaps, string, results }) };
};

/**
 * The least tension rating, pipe and connection both, and the most that may be pulled. Neither, where a connection's
 * strength is not known: the pipe alone may be the stronger.
 */
const pull = (
	string: CasingString,
	sections: readonly PipeSectionResults[],
): Pick<CasingResults, "least_tension" | "maximum_pull"> => {
	const ratings = sections.flatMap(({ tension }) => (tension === undefined ? [] : [tension]));
	if (ratings.length < sections.length || ratings.length === 0) return {};
	const rating = leastTension.of({ ratings });
	const stated = string.running?.maximumPull;
	const allowed = allowedPull.of({ rating, DF: string.designFactors.tension });
	return {
		least_tension: rating,
		maximum_pull: stated === undefined ? allowed : maximumPull.of({ F: [stated, allowed] }),
	};
};

/** The greatest pressure of the rock open below a string's shoe; of the last string, of the rock it is set across. */
const greatestGasOn = (well: Well, path: KnownTable, string: CasingString): Known<"pressure"> | undefined => {
	const below = holeBelow(well, string);
	const above = well.strings.find(({ id }) => id === string.within);
	const shoe = below === undefined ? (above?.shoe ?? string.top) : string.shoe;
	const P = openRock(well, path, tvdAt(path, shoe), below ?? string.hole).map(({ pressure }) => pressure);
	return P.length === 0 ? undefined : greatestGasSeen.of({ P });
};

const massOf = (section: PipeSection, results: PipeSectionResults | undefined): Known<"mass"> | undefined =>
	results && sectionMass.of({ w: section.nominalWeight, L: results.length });

const jointCount = (
	string: CasingString,
	sections: readonly PipeSectionResults[],
): Known<"count"> | undefined => {
	const counts = string.sections.map(({ joint }, i) => {
		const length = sections[i]?.length;
		return joint === undefined || length === undefined ? undefined : jointsInSection.of({ L: length, joint });
	});
	const known = counts.filter((n) => n !== undefined);
	return known.length < counts.length || known.length === 0 ? undefined : jointsInString.of({ n: known });
};

/** The largest part of the pipe: its couplings, or the body where there are none. */
const largest = ({ couplingDiameter, outsideDiameter }: PipeSection): Known<"diameter"> =>
	couplingDiameter !== undefined && couplingDiameter.value > outsideDiameter.value
		? couplingDiameter
		: outsideDiameter;

const narrowest = (string: CasingString, hole: Known<"diameter">): Known<"diameter"> | undefined => {
	const [widest] = string.sections.map(largest).sort((a, b) => b.value - a.value);
	return widest && clearance.of({ hole, pipe: widest });
};

const driftClearance = (well: Well, string: CasingString): Known<"diameter"> | undefined => {
	const outer = well.strings.find((s) => s.id === string.within);
	if (outer === undefined || outer.sections.length === 0) return undefined;
	return narrowest(string, leastDrift.of({ drifts: outer.sections.map((s) => s.drift) }));
};

/** The formation the shoe stands in, by vertical depth. */
const formationAt = (well: Well, tvd: number) =>
	well.geology.formations.findLast(({ top }) => top.value <= tvd);

const fractureAtShoe = (
	well: Well,
	string: CasingString,
	shoe: HoleMark,
	gaps: Gaps,
): Known<"pressure"> | undefined => {
	const formation = formationAt(well, shoe.tvd.value);
	if (formation?.fractureGradient !== undefined)
		return fracturePressure.of({ F: formation.fractureGradient, D: shoe.below_ground });
	return gaps.missing(
		`casing.${string.id}.fracture_pressure_at_shoe`,
		formation === undefined
			? message("calc/no-formation-is-given-at-shoe")
			: message("calc/no-fracture-gradient-is-given-for", { formation: formation.name }),
		[
			formation === undefined
				? ["geology", "formations"]
				: siblingOf(formation.top, "fracture_gradient", ["geology", "formations"]),
		],
	);
};

/** The hole drilled out below a shoe, if any. */
const holeBelow = (well: Well, string: CasingString): Hole | undefined =>
	well.holes.find((hole) => hole.bottom.value > string.hole.bottom.value);

/** Tested with the mud that the hole below is drilled with. */
const shoeTestPressure = (
	well: Well,
	string: CasingString,
	shoe: HoleMark,
	gaps: Gaps,
): Known<"pressure"> | undefined => {
	if (string.shoeTest === undefined) return undefined;
	const key = `casing.${string.id}.shoe_test_surface_pressure`;
	const density = holeBelow(well, string)?.fluid?.density ?? string.hole.fluid?.density;
	const holes = [["holes"]];
	if (density === undefined) return gaps.missing(key, message("calc/no-mud-density-for-shoe-test"), holes);
	return gaps.finite(
		key,
		shoeTestSurfacePressure.of({ EMW: string.shoeTest.equivalent, ρ: density, D_shoe: shoe.tvd }),
		message("calc/mud-is-heavier-than-shoe-test"),
		holes,
	);
};
