import type { WellStep } from "../../drawing/sequence/steps.ts";
import type { CasingString, Stage, Stimulation } from "../../well/well.ts";
import type { PaperContext } from "../context.ts";
import { asGiven, namedInWords } from "../parts/part.ts";
import { isWaterShownProtected } from "../water-verdict.ts";
import { isBuilt } from "./done.ts";
import { about, say, sayText } from "./say.ts";

/** Words about one step of the well being built: its string, its hole, and what has its record already. */
export const stepWords = (context: PaperContext, step: WellStep): Record<string, unknown> => ({
	...stringWords(context, step),
	...treatmentStepWords(context),
	pad_after: about(context, context.well.site.pad?.area_after),
});

const stringWords = (context: PaperContext, step: WellStep): Record<string, unknown> => {
	const { well, results } = context;
	const last = well.strings.at(-1);
	// With the wellhead the last string is tested.
	const string = well.strings.find(({ id }) => id === (step.kind === "wellhead" ? last?.id : step.string));
	const casing = string && results.casing[string.id];
	const cement = string && results.cement[string.id];
	const hole = results.pressure.holes.find(({ id }) => id === string?.hole.id)?.bottom;
	const base = results.geology.protected_water_base;
	const gallons = context.units === "metric" ? undefined : "gal";
	const test = string?.pressureTest;
	const actual = string?.cement?.actual;
	const returned = actual?.returnsToSurface;
	const preventer = well.wellControl?.preventers?.find(({ over }) => over === string?.id);
	const guards = string !== undefined && string.id === results.isolation.protecting_string;
	return {
		string: string === undefined ? false : namedInWords(context, string.id),
		hole_size: say(context, string?.hole.diameter, { pipeSize: true }),
		pipe_size: say(context, string?.sections.at(-1)?.outsideDiameter, { pipeSize: true }),
		// A string of two sizes is told with both, the upper one first.
		pipe_size_above:
			string !== undefined && widest(string) !== string.sections.at(-1)?.outsideDiameter.value
				? say(context, string.sections[0]?.outsideDiameter, { pipeSize: true })
				: false,
		hole_depth: say(context, hole?.below_ground),
		shoe_depth: say(context, casing?.shoe.below_ground),
		length: about(context, casing?.length, 3),
		fluid: string === well.strings.at(-1) ? false : sayText(asGiven(context, string?.hole.fluid?.kind)),
		through_water: base !== undefined && hole !== undefined && hole.tvd.value >= base.tvd.value,
		below_water:
			guards && isWaterShownProtected(context)
				? say(context, results.isolation.shoe_below_protected_water)
				: false,
		cement_volume: about(context, cement?.pumped_volume ?? cement?.slurry_volume, 2, gallons),
		gap_volume: about(context, cement?.annulus_volume, 2, gallons),
		returned: returned !== undefined && returned.value > 0 ? about(context, returned, 2, gallons) : false,
		to_surface: cement?.to_surface === true,
		cement_top: about(context, cement?.top.below_ground),
		cement_top_exact: say(context, cement?.top.below_ground),
		wait: say(context, string?.cement?.waitOnCement, { unit: "hr", decimals: 0 }),
		compares_pressure: context.units === "field",
		test: say(context, test?.actual?.pressure ?? test?.pressure),
		minutes: say(context, test?.actual === undefined ? test?.hold : test.actual.hold),
		preventer_test: say(context, preventer?.actual?.high ?? preventer?.test?.high),
		drilled: isBuilt(context),
		run: string?.plannedShoe !== undefined || string?.landed !== undefined || isBuilt(context),
		cemented: actual !== undefined,
		tested: test?.actual !== undefined,
		drilled_on: isBuilt(context),
	};
};

const widest = ({ sections }: CasingString): number | undefined => sections[0]?.outsideDiameter.value;

const treatmentStepWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const gallons = context.units === "metric" ? undefined : "gal";
	const stage = results.stimulation?.stages[0];
	const plan = well.stimulation?.stages[0];
	const record = stage?.as_pumped;
	const plug = results.stimulation?.stages.find((each) => each.plug !== undefined)?.plug;
	return {
		kickoff: about(context, results.trajectory.kickoff?.below_ground),
		shots: say(context, stage?.perforations),
		toe_on_coil: well.stimulation?.toe?.kind === "guns on coiled tubing",
		opening_depth: about(context, stage?.top.below_ground),
		stage_recorded: record?.clean_volume !== undefined,
		stage_water: about(context, record?.clean_volume ?? stage?.clean_volume, 2, gallons),
		stage_sand: about(context, record?.proppant_mass ?? stage?.proppant_mass),
		acid_first: opensWithAcid(well.stimulation, plan),
		stage_pressure: say(context, plan?.actual?.maximumPressure),
		plugs_out: well.schedule?.some(
			({ phase, actual }) => phase === "plug drill-out" && actual?.ended !== undefined,
		),
		plug_depth: about(context, plug?.below_ground),
	};
};

/** Whether the first thing pumped is an acid that these readers are told of: its own step, or an additive of it. */
const opensWithAcid = (stimulation: Stimulation | undefined, stage: Stage | undefined): boolean => {
	const fluid = stage?.steps[0]?.fluid;
	return /\bacid\b/iu.test(stimulation?.additives.find(({ id }) => id === fluid)?.purpose ?? "");
};
