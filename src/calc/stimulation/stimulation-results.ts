import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Stage, Stimulation, Well } from "../../well/well.ts";
import { treatedPath } from "../cement/bore.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { CasingResults, StageResults, StimulationResults } from "../results.ts";
import { annulusResults } from "./annulus-results.ts";
import { pumpCount, treatedLength } from "./averages.ts";
import { boundaryResults, limitingElement } from "./boundary.ts";
import { blendDensity, blendOff, brineDensityOfSolids } from "./brine.ts";
import { disclosureResults } from "./disclosure-results.ts";
import { fractureRange } from "./fracture-range.ts";
import { hardestStage } from "./hardest-stage.ts";
import { illustrativeHeight } from "./illustrative-height.ts";
import { pressureLadder } from "./pressure-ladder.ts";
import { sleeveResults } from "./sleeves.ts";
import { countOf, plugCount, sharedVolume } from "./slurry.ts";
import { type FrictionInputs, frictionDown, pressureInputs } from "./stage-pressure.ts";
import { type StageContext, stageResults, uppermost } from "./stage-results.ts";
import { toeOpening } from "./toe.ts";
import { hydraulicHorsepower, surfaceTreatingPressure } from "./treating-pressure.ts";
import { treatmentAsPumped } from "./treatment-as-pumped.ts";
import { averagesOf, volumesAsPlanned, volumesAsPumped } from "./treatment-volumes.ts";

/** The whole stimulation, every stage, or nothing where none is planned. */
export const stimulationResults = (
	well: Well,
	path: KnownTable,
	casing: Readonly<Record<string, CasingResults>>,
	gaps: Gaps,
): StimulationResults | undefined => {
	const { stimulation } = well;
	const [first] = stimulation?.stages ?? [];
	if (stimulation === undefined || first === undefined) return undefined;
	const context = { well, stimulation, path, gaps };
	const stages = stimulation.stages.map((stage) => stageResults(context, stage));
	const volumes = volumesAsPumped(stimulation, stages);
	const boundary = boundaryResults(well, stimulation, casing, gaps);
	const { top, bottom } = perforations(stimulation.stages, first);
	const disclosure = disclosureResults(
		stimulation,
		{ water: volumes.water_volume, neat: volumes.neat_volumes, proppants: volumes.proppant_by_type },
		gaps,
	);
	const hard = hardest(context, stages);
	const height = illustrativeHeight(context, top);
	const count = countOf.of({ number: stages.map((s) => stageNumber(s.number)) });
	const length = treatedLength.of({ MD_top: top, MD_bottom: bottom });
	const { pumps, limits, flowback } = stimulation;
	const returned = flowback?.returned;
	return {
		stages,
		top_perforation: holeMark(path, top, well.datum),
		bottom_perforation: holeMark(path, bottom, well.datum),
		stage_count: count,
		...volumes,
		boundary,
		...maybe("limiting", limitingElement(boundary)),
		...hard,
		...maybe("ladder", pressureLadder(stimulation, boundary, hard.expected_treating_pressure)),
		...maybe("toe_opens_at_surface", toeOpening(context)),
		...maybe("sleeves", sleeveResults(context)),
		...maybe(
			"pumps",
			pumps &&
				hard.expected_horsepower &&
				pumpCount.of({
					HHP: hard.expected_horsepower,
					h: pumps.horsepowerEach,
					s: pumps.load,
					n_s: pumps.spare ?? NO_SPARE,
				}),
		),
		averages: averagesOf(volumes, count, length),
		...maybe("water_blend", waterBlend(stimulation)),
		annuli: annulusResults(context, limits?.maximumTreatingPressure ?? hard.expected_treating_pressure),
		plugs: plugCount.of({
			number: stages.flatMap((s) => (s.plug === undefined ? [] : [stageNumber(s.number)])),
		}),
		...maybe(
			"returned",
			returned && {
				low: sharedVolume.of({ V: volumes.water_volume, s: returned[0] }),
				high: sharedVolume.of({ V: volumes.water_volume, s: returned[1] }),
			},
		),
		...maybe("illustrative_height", height),
		...maybe("fractures", fractureRange(context, stages, top, height)),
		...maybe("disclosure", disclosure),
		...maybe(
			"as_pumped",
			treatmentAsPumped(stimulation, stages, volumes, {
				...volumesAsPlanned(stimulation, stages),
				count,
				length,
			}),
		),
	};
};

const NO_SPARE = constant("count", 0, "no spare pumps are stated", cite("definition"));

const stageNumber = (number: number): Known<"count"> =>
	constant("count", number, "number of the stage", cite("definition"));

/** The shallowest and the deepest opening. */
const perforations = (stages: readonly Stage[], first: Stage) => {
	const openings = stages.flatMap((s) => (s.clusters.length > 0 ? s.clusters : [s.top, s.bottom]));
	const by = (deeper: boolean) =>
		openings.reduce(
			(found, md) => (md.value > found.value === deeper ? md : found),
			openings[0] ?? first.top,
		);
	return { top: by(false), bottom: by(true) };
};

/** New coated casing, and commercial steel [in]. */
const ROUGHNESS = [
	["coated", 0.0006],
	["commercial-steel", 0.0018],
] as const;

/** How much of the stated friction reduction is had: a reducer is late, too little, or not pumped. */
const REDUCTIONS = [
	["reduction-as-stated", 1, ""],
	["half-the-reduction", 0.5, "half of the stated friction reduction"],
	["no-reduction", 0, "none of the stated friction reduction"],
] as const;

type Hardest = Pick<
	StimulationResults,
	| "expected_treating_pressure"
	| "expected_horsepower"
	| "hardest_stage"
	| "roughness_sensitivity"
	| "reduction_sensitivity"
>;

/** The stage that needs the greatest pressure, and how far that figure moves with the pipe's roughness and the fluid's friction reduction. */
const hardest = (context: StageContext, stages: readonly StageResults[]): Hardest => {
	const by = (s: StageResults) => s.pressure?.treating_fresh.value ?? Number.NEGATIVE_INFINITY;
	const [worst] = [...stages].sort((a, b) => by(b) - by(a));
	const stage = context.stimulation.stages.find((s) => s.number === worst?.number);
	if (worst?.pressure === undefined || stage === undefined) return {};
	const { pressure } = worst;
	const inputs = pressureInputs(context, stage, worst.perforations);
	const down = treatedPath(context.well, uppermost(stage));
	const withFriction = (changed: Partial<Pick<FrictionInputs, "roughness" | "reduction">>) => {
		const friction =
			inputs && frictionDown(down, { ...inputs, ρ: context.stimulation.baseFluid.density, ...changed });
		return (
			friction && {
				pipe_friction: friction.pumped,
				treating_pressure: surfaceTreatingPressure.of({
					P_frac: pressure.fracturing,
					P_h: pressure.hydrostatic,
					ΔP_pipe: friction.pumped,
					ΔP_perf: pressure.perforation_friction_fresh,
					ΔP_nwb: pressure.near_wellbore,
				}),
			}
		);
	};
	const byRoughness = ROUGHNESS.map(([id, inches]) => {
		const roughness = constant(
			"diameter",
			inches,
			`roughness of ${id.replace("-", " ")} pipe`,
			cite("common-practice"),
		);
		const found = withFriction({ roughness });
		return found && { id, roughness, ...found };
	});
	const stated = inputs?.reduction;
	const byReduction =
		stated === undefined || stated.value === 0
			? []
			: REDUCTIONS.map(([id, share, name]) => {
					const reduction =
						share === 1 ? stated : constant("share", stated.value * share, name, cite("definition"));
					const found = withFriction({ reduction });
					return found && { id, reduction, ...found };
				});
	const through = inputs && hardestStage(context, { stage, worked: worst, down, inputs, pressure });
	const greatest = through?.greatest;
	return {
		expected_treating_pressure: greatest ?? pressure.treating_fresh,
		expected_horsepower:
			greatest === undefined || inputs === undefined
				? pressure.horsepower
				: hydraulicHorsepower.of({ P: greatest, Q: inputs.rate }),
		...maybe("hardest_stage", through),
		roughness_sensitivity: byRoughness.filter((s) => s !== undefined),
		reduction_sensitivity: byReduction.filter((s) => s !== undefined),
	};
};

/** Nothing where the dissolved solids of a source are not given. */
const waterBlend = ({ waterSources, baseFluid }: Stimulation): StimulationResults["water_blend"] => {
	const known = waterSources.flatMap(({ share, dissolvedSolids: C }) =>
		C === undefined ? [] : [{ share, density: brineDensityOfSolids.of({ C }) }],
	);
	if (known.length === 0 || known.length < waterSources.length) return undefined;
	const density = blendDensity.of({
		s_i: known.map(({ share }) => share),
		ρ_i: known.map((each) => each.density),
	});
	return { density, off: blendOff.of({ ρ_f: baseFluid.density, ρ_b: density }) };
};
