import type { Catalog } from "../catalog/catalog.ts";
import type { Definition, Schedule } from "../definition/definition.ts";
import type { Checked } from "../diagnostics/diagnostic.ts";
import { message } from "../messages/message.ts";
import { checkCementColumns } from "./check-cement-columns.ts";
import { checkDepths } from "./check-depths.ts";
import { checkDistances } from "./check-distances.ts";
import { checkLanding } from "./check-landing.ts";
import { checkNesting } from "./check-nesting.ts";
import { checkPassage } from "./check-passage.ts";
import { checkPlace } from "./check-place.ts";
import { checkPlausibility } from "./check-plausibility.ts";
import { checkRecords } from "./check-records.ts";
import { checkRelations } from "./check-relations.ts";
import { checkSleeves } from "./check-sleeves.ts";
import { checkSlurryFigures } from "./check-slurry-figures.ts";
import { checkStages } from "./check-stages.ts";
import { checkStrings } from "./check-strings.ts";
import { checkTallies } from "./check-tally.ts";
import { resolveDatum } from "./datum.ts";
import { type Desk, fault, maybe, placeOf } from "./desk.ts";
import { resolveEndOfLife } from "./end-of-life.ts";
import type { ReadFile } from "./read-file.ts";
import { unknownReference } from "./references.ts";
import { resolveDesignBasis } from "./resolve-design-basis.ts";
import { resolveGeology } from "./resolve-geology.ts";
import { resolveHoles } from "./resolve-holes.ts";
import { resolveOffsetWells } from "./resolve-offset-wells.ts";
import { resolveStimulation } from "./resolve-stimulation.ts";
import { resolveStrings } from "./resolve-strings.ts";
import { resolveTrajectory } from "./resolve-trajectory.ts";
import { asWritten, measured } from "./said.ts";
import { keepClearOfCouplings } from "./stage-couplings.ts";
import { resolveTreatingString } from "./treating-string.ts";
import type { Geology, Hole, Well } from "./well.ts";
import { withoutConsequences } from "./without-consequences.ts";

/*
 * takes  a definition that reads well, the catalogue, and a way to the files it names
 * gives  the well as understood, every assumption recorded, and what its parts disagree on
 * may not calculate what a paper prints, or compare with a rule
 */

/**
 * Understands a definition: names joined, pipe found in the catalogue, datums reduced to one, gaps filled and each
 * filling recorded, recorded work before planned. Then its parts are held against each other.
 *
 * The value is there even where parts disagree, so that a caller can show what was understood; a string whose pipe or
 * hole is not known is left out of it. Never throws for anything written in a definition.
 *
 * @param files gives the survey and stage files that the definition names
 */
export const resolveWell = (definition: Definition, catalog: Catalog, files: ReadFile): Checked<Well> => {
	const desk: Desk = { catalog, faults: [], assumptions: [] };
	const datum = resolveDatum(definition.site, desk);
	const geology = resolveGeology(
		definition.geology,
		datum,
		Math.max(...definition.holes.map(({ to }) => to.value)),
		desk,
	);
	const holes = resolveHoles(definition.holes, datum, files, desk);
	const trajectory = resolveTrajectory(
		definition.trajectory,
		descending(holes) ? deepest(holes) : undefined,
		files,
		desk,
	);
	const designBasis = resolveDesignBasis(definition.design_basis, desk);
	const { strings: found, leftOut } = resolveStrings(
		definition.casing,
		{ holes, datum, basis: designBasis, files },
		desk,
	);
	const stringIds = definition.casing.map(({ id }) => id);
	const pumped = definition.stimulation && resolveStimulation(definition.stimulation, stringIds, files, desk);
	const treatingString =
		pumped &&
		definition.stimulation?.treating_string &&
		resolveTreatingString(
			definition.stimulation.treating_string,
			{ stimulation: pumped, strings: found, datum },
			desk,
		);
	const stimulation = pumped && { ...pumped, ...maybe("treatingString", treatingString) };

	const astray = checkStrings(found, datum, desk);
	// A string left out would make its neighbors look as if they did not nest.
	const whole = found.length === definition.casing.length;
	const loose = whole ? checkNesting(found, astray, desk) : new Set(stringIds);
	checkPassage(found, loose, holes, desk);
	checkCementColumns(found, new Set([...astray, ...(whole ? loose : [])]), datum, desk);
	checkCementColumns(leftOut, checkStrings(leftOut, datum, desk), datum, desk);
	const treated = found.find(
		({ string }) => string.id === stimulation?.treatedThrough && !astray.has(string.id),
	)?.string;
	if (stimulation !== undefined) {
		checkStages(stimulation, treated, desk);
		checkSleeves(stimulation, treated, desk);
		checkLanding(stimulation, trajectory, desk);
		keepClearOfCouplings(definition.stimulation?.stages.couplings, stimulation.stages, files, desk);
	}
	if (descending(holes) && astray.size === 0) checkDepths(definition, desk);
	checkTallies(
		definition,
		found.filter(({ string }) => !astray.has(string.id)),
		files,
		desk,
	);
	checkWater(geology, holes, stimulation !== undefined, desk);
	checkSlurryFigures(definition, desk);
	checkPlace(definition, desk);
	checkDistances(definition, desk);
	checkRelations(definition, desk);
	checkNames(definition, stringIds, desk);
	checkRecords(definition, stimulation, desk);
	checkPlausibility(definition, desk);
	const offsetPaths = resolveOffsetWells(
		definition.site.offset_wells ?? [],
		definition.trajectory.uncertainty,
		files,
		desk,
	);

	const faults = withoutConsequences(desk.faults);

	const { site } = definition;
	assumeNeighborGround(site.neighbors, desk);
	assumeTrucks(definition, desk);
	return {
		diagnostics: faults,
		value: {
			identity: definition.well,
			site,
			datum,
			geology,
			trajectory,
			holes,
			strings: found.map(({ string }) => string),
			designBasis,
			...maybe("stimulation", stimulation),
			...maybe("drillString", definition.drill_string),
			...maybe("wellControl", definition.well_control),
			...maybe("wellhead", definition.wellhead),
			barriers: definition.well_barriers ?? [],
			neighbors: site.neighbors ?? [],
			offsetWells: site.offset_wells ?? [],
			offsetPaths,
			conditions: site.conditions ?? [],
			schedule: withSpud(definition),
			...maybe("logistics", definition.logistics),
			...maybe("agency", definition.agency),
			...maybe("community", definition.community),
			...maybe("safety", definition.safety),
			...maybe("endOfLife", resolveEndOfLife(definition.end_of_life, datum, desk)),
			assumptions: desk.assumptions,
		},
	};
};

/** Drilling begins with spud where the phase has no start of its own, so that every paper counts from one day. */
const withSpud = ({ well: { spud }, schedule = [] }: Definition): Schedule =>
	schedule.map((phase) =>
		phase.phase === "drilling" && spud !== undefined && phase.starts === undefined
			? { ...phase, starts: spud }
			: phase,
	);

/** A count of truck loads without a share by pipeline is a count of all the water. */
const assumeTrucks = ({ logistics, stimulation }: Definition, desk: Desk): void => {
	if (logistics === undefined || stimulation === undefined || logistics.water_by_pipeline !== undefined)
		return;
	desk.assumptions.push({
		id: "water-by-truck",
		at: ["logistics", "water_by_pipeline"],
		what: message("well/trucks.what"),
		why: message("well/trucks.why"),
	});
};

/** A neighbor's well is given below its own ground; how high that ground lies is not asked. */
const assumeNeighborGround = (neighbors: Definition["site"]["neighbors"], desk: Desk): void => {
	if (!neighbors?.some(({ depth }) => depth !== undefined)) return;
	desk.assumptions.push({
		id: "neighbor-ground",
		at: ["site", "neighbors"],
		what: message("well/neighbor-ground.what"),
		why: message("well/neighbor-ground.why"),
	});
};

/** Whether the holes tell where the well ends; out of order they do not, and that is told already. */
const descending = (holes: readonly Hole[]): boolean =>
	holes.every(({ bottom, top }) => bottom.value > top.value);

/** Bottom of the deepest hole, whatever their order. */
const deepest = (holes: readonly Hole[]): Hole["bottom"] | undefined =>
	holes.map(({ bottom }) => bottom).reduce((a, b) => (b.value > a.value ? b : a));

/**
 * A hole is nowhere deeper than it is long, so water below its whole length is below the well; and no rock is treated that
 * lies above water to be protected.
 */
const checkWater = (
	{ protectedWater, formations }: Geology,
	holes: readonly Hole[],
	treated: boolean,
	desk: Desk,
): void => {
	const bottom = deepest(holes);
	if (protectedWater === undefined || bottom === undefined) return;
	const target = formations.find((formation) => formation.target);
	if (protectedWater.base.value < bottom.value) {
		if (
			treated &&
			target !== undefined &&
			protectedWater.base.value > target.top.value &&
			desk.faults.every(({ code }) => code !== "well/formation-order")
		)
			fault(
				desk,
				"well/target-above-water",
				{ path: ["geology", "protected_water", "base"] },
				{
					what: message("well/target-above-water.what", { target: target.name }),
					expected: message("well/target-above-water.expected", {
						top: measured("true-vertical-depth", target.top.value, protectedWater.base.value),
					}),
					found: message("well/true-vertical-depth", { depth: protectedWater.base }),
					mend: message("well/target-above-water.mend"),
					related: [
						{
							at: { path: ["geology", "formations", formations.indexOf(target), "top"] },
							label: message("well/target-above-water.label", { target: target.name }),
						},
					],
				},
			);
		return;
	}
	fault(
		desk,
		"well/water-below-well",
		{ path: ["geology", "protected_water", "base"] },
		{
			what: message("well/water-below-well.what"),
			expected: message("well/water-below-well.expected", { bottom: asWritten(bottom) }),
			found: message("well/true-vertical-depth", { depth: protectedWater.base }),
			mend: message("well/water-below-well.mend"),
			related: [{ at: placeOf(bottom, ["holes"]), label: message("well/beyond-total-depth.label") }],
		},
	);
};

/** Names of strings used outside the casing itself. */
const checkNames = (definition: Definition, stringIds: readonly string[], desk: Desk): void => {
	for (const [i, { string }] of (definition.site.conditions ?? []).entries())
		if (string !== undefined && !stringIds.includes(string))
			unknownReference(
				desk,
				["site", "conditions", i, "string"],
				message("well/thing.string"),
				string,
				stringIds,
			);
	const named = [...new Set([...stringIds, ...definition.holes.map(({ id }) => id)])];
	for (const [i, { of }] of (definition.well_barriers ?? []).entries())
		if (of !== undefined && !named.includes(of))
			unknownReference(desk, ["well_barriers", i, "of"], message("well/thing.string"), of, named);
	for (const [i, { over }] of (definition.well_control?.preventers ?? []).entries())
		if (!stringIds.includes(over))
			unknownReference(
				desk,
				["well_control", "preventers", i, "over"],
				message("well/thing.string"),
				over,
				stringIds,
			);
};
