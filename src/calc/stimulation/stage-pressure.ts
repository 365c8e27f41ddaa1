import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { type Message, message } from "../../messages/message.ts";
import { listOf } from "../../well/said.ts";
import type { Stage } from "../../well/well.ts";
import type { BoreInterval } from "../cement/bore.ts";
import { verticalMark } from "../depths/marks.ts";
import { totalLoss } from "../pressure/bingham-flow.ts";
import { columnPressure } from "../pressure/hydrostatic.ts";
import type { StagePressure } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import {
	colebrookFrictionFactor,
	dragReduction,
	FULLY_TURBULENT,
	pipeFriction,
	reducedFrictionFactor,
	reynoldsNumber,
	virkFrictionFactor,
} from "./pipe-friction.ts";
import { type StageContext, uppermost } from "./stage-results.ts";
import {
	fracturePressureAtDepth,
	hydraulicHorsepower,
	perforationFriction,
	surfaceTreatingPressure,
} from "./treating-pressure.ts";

/** Where the model of pressures is written, for the gaps. */
const MODEL = ["stimulation", "pressure_model"];

/**
 * The surface pressure that a stage is expected to need, with clean base fluid in the casing at the stage's rate.
 *
 * Clean fluid is the lightest, so this is the greater side of the range over a stage. Closure is taken at the uppermost
 * cluster, from the formation there; fluid stands from the casing's top.
 */
export const stagePressure = (
	context: StageContext,
	stage: Stage,
	down: readonly BoreInterval[],
	perforations: Known<"count"> | undefined,
): StagePressure | undefined => {
	const inputs = pressureInputs(context, stage, perforations);
	const [first] = down;
	if (inputs === undefined || first === undefined) return undefined;
	const { well, stimulation, path } = context;
	const { density: ρ } = stimulation.baseFluid;
	const cluster = tvdAt(path, uppermost(stage));
	const fracturing = fracturePressureAtDepth.of({
		G_c: inputs.closure,
		D: verticalMark(path, cluster, well.datum).below_ground,
		P_net: inputs.net,
	});
	const hydrostatic = columnPressure.of({ ρ, D_top: tvdAt(path, first.top), D_bottom: cluster });
	const friction = frictionDown(down, { ...inputs, ρ });
	const perforating = (C_d: Known<"ratio">) =>
		perforationFriction.of({ Q: inputs.rate, ρ, N: inputs.perforations, d: inputs.shot, C_d });
	const [fresh, worn] = inputs.discharge.map(perforating) as [Known<"pressure">, Known<"pressure">];
	const treating = (ΔP_perf: Known<"pressure">) =>
		surfaceTreatingPressure.of({
			P_frac: fracturing,
			P_h: hydrostatic,
			ΔP_pipe: friction.pumped,
			ΔP_perf,
			ΔP_nwb: inputs.nearWellbore,
		});
	return {
		fracturing,
		hydrostatic,
		water_friction: friction.water,
		pipe_friction: friction.pumped,
		drag_reduction: dragReduction.of({ ΔP: friction.pumped, ΔP_w: friction.water }),
		perforation_friction_fresh: fresh,
		perforation_friction_worn: worn,
		near_wellbore: inputs.nearWellbore,
		treating_fresh: treating(fresh),
		treating_worn: treating(worn),
		horsepower: hydraulicHorsepower.of({ P: treating(fresh), Q: inputs.rate }),
	};
};

export interface FrictionInputs {
	readonly rate: Known<"flow-rate">;
	readonly ρ: Known<"density">;
	readonly viscosity: Known<"plastic-viscosity">;
	readonly roughness: Known<"diameter">;
	readonly reduction: Known<"share">;
}

/** Friction down a path of bores: of the base fluid as water, and as pumped with its friction reducer. */
export const frictionDown = (
	down: readonly BoreInterval[],
	{ rate: Q, ρ, viscosity: μ, roughness: ε, reduction: DR }: FrictionInputs,
): { readonly water: Known<"pressure">; readonly pumped: Known<"pressure"> } => {
	const parts = down.map(({ insideDiameter: d, length: L }) => {
		const Re = reynoldsNumber.of({ ρ, Q, d, μ });
		const f = colebrookFrictionFactor.of({ Re, ε, d });
		// Polymer saves only turbulent friction, and the asymptote is given for no other.
		const reduced =
			Re.value < FULLY_TURBULENT
				? f
				: reducedFrictionFactor.of({ f_w: f, DR, f_v: virkFrictionFactor.of({ Re }) });
		return {
			water: pipeFriction.of({ f, ρ, Q, d, L }),
			pumped: pipeFriction.of({ f: reduced, ρ, Q, d, L }),
		};
	});
	return {
		water: totalLoss.of({ ΔP_i: parts.map((p) => p.water) }),
		pumped: totalLoss.of({ ΔP_i: parts.map((p) => p.pumped) }),
	};
};

/** Everything the pressures need, or nothing, and one gap for the well, where a part is wanting. */
export const pressureInputs = (
	{ well, stimulation, path, gaps }: StageContext,
	stage: Stage,
	perforations: Known<"count"> | undefined,
) => {
	const { pressureModel: model, baseFluid } = stimulation;
	if (model === undefined) return undefined;
	const tvd = tvdAt(path, uppermost(stage)).value;
	const wanted = {
		net: [model.net, message("calc/needed.net"), [...MODEL, "net"]],
		roughness: [model.roughness, message("calc/needed.roughness"), [...MODEL, "roughness"]],
		discharge: [model.discharge, message("calc/needed.discharge"), [...MODEL, "discharge"]],
		viscosity: [
			baseFluid.viscosity,
			message("calc/needed.viscosity"),
			["stimulation", "base_fluid", "viscosity"],
		],
		closure: [closureAt(well, tvd), message("calc/needed.closure"), ["geology", "formations"]],
		perforations: [perforations, message("calc/needed.shots"), ["stimulation", "stages"]],
		shot: [stage.shotDiameter, message("calc/needed.shot"), ["stimulation", "stages"]],
		rate: [
			stage.rate ?? greatestRate(stage),
			message("calc/needed.rate"),
			["stimulation", "stages", "treatment", "rate"],
		],
	} as const;
	const given = <T>([value]: readonly [T | undefined, Message, readonly string[]]): T => value as T;
	const wanting = Object.values(wanted).filter(([value]) => value === undefined);
	if (wanting.length > 0) {
		const key = "stimulation.expected_treating_pressure";
		if (!gaps.undetermined.some((gap) => gap.key === key))
			gaps.missing(
				key,
				message("calc/treating-pressure-needs", { wanting: listOf(wanting.map(([, what]) => what)) }),
				wanting.map(([, , at]) => at),
				wanting.map(([, what]) => what),
			);
		return undefined;
	}
	return {
		net: given(wanted.net),
		roughness: given(wanted.roughness),
		discharge: given(wanted.discharge),
		viscosity: given(wanted.viscosity),
		closure: given(wanted.closure),
		perforations: given(wanted.perforations),
		shot: given(wanted.shot),
		rate: given(wanted.rate),
		nearWellbore: model.nearWellbore ?? NO_LOSS,
		reduction: model.frictionReduction ?? NO_REDUCTION,
	};
};

/** Closure stated for the formation at a depth. */
export const closureAt = (well: StageContext["well"], tvd: number): Known<"pressure-gradient"> | undefined =>
	well.geology.formations.findLast(({ top }) => top.value <= tvd)?.mechanical?.closure;

const NO_LOSS = constant("pressure", 0, "no near-wellbore loss is stated", cite("definition"));
const NO_REDUCTION = constant("share", 0, "no friction reduction is stated", cite("definition"));

const greatestRate = ({ steps }: Stage): Known<"flow-rate"> | undefined =>
	steps.map((s) => s.rate).sort((a, b) => b.value - a.value)[0];
