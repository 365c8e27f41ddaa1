import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import { listOf } from "../../well/said.ts";
import { maybe } from "../gaps.ts";
import { verticalSeparation } from "../isolation/separation.ts";
import type { FractureRange, StageResults, StimulationResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { payHeight } from "./fracture-height.ts";
import { kgdWidth } from "./kgd.ts";
import {
	fractureTop,
	kgdLeakingLength,
	kgdNetPressure,
	netPressureOfWidth,
	pknLeakingLength,
	planarEfficiency,
	radialEfficiency,
	radialHeight,
	radialLeakingRadius,
	radialMeanWidth,
	radialNetPressure,
	radialWidthAtRadius,
	shallowestTop,
	wingRate,
} from "./leaking-fracture.ts";
import { pknWidthConstantRate } from "./pkn.ts";
import { planeStrainModulus } from "./plane-strain.ts";
import { pumpingTime } from "./slurry.ts";
import { type StageContext, uppermost } from "./stage-results.ts";

type Model = FractureRange["models"][number];

/**
 * One fracture of the shallowest stage by four simple models, in which a single plane crack takes an even share of the
 * rate: held in the treated bed (PKN, KGD), grown as far as the stated net pressure and barriers let it, and a disk that
 * nothing holds. Where the bed's base, its rock's stiffness or leakoff, the fluid's viscosity or the rate is not given, a
 * gap names which.
 */
export const fractureRange = (
	{ well, stimulation, path, gaps }: StageContext,
	stages: readonly StageResults[],
	top: Known<"measured-depth">,
	grown: StimulationResults["illustrative_height"],
): FractureRange | undefined => {
	const stage = stimulation.stages.find((s) => uppermost(s).value === top.value);
	const worked = stages.find(({ number }) => number === stage?.number);
	const tvd = tvdAt(path, top);
	const formation = well.geology.formations.findLast((f) => f.top.value <= tvd.value);
	const rock = formation?.mechanical;
	const { viscosity: μ } = stimulation.baseFluid;
	const Q = stage?.rate;
	if (stage === undefined || worked === undefined || formation === undefined) return undefined;
	const at = ["geology", "formations", well.geology.formations.indexOf(formation)] as const;
	const wanted = [
		[formation.base, message("calc/needed.base", { formation: formation.name }), [...at, "base"]],
		[
			rock?.youngsModulus,
			message("calc/needed.stiffness", { formation: formation.name }),
			[...at, "mechanical", "youngs_modulus"],
		],
		[
			rock?.poissonsRatio,
			message("calc/needed.poisson", { formation: formation.name }),
			[...at, "mechanical", "poissons_ratio"],
		],
		[
			rock?.leakoff,
			message("calc/needed.leakoff", { formation: formation.name }),
			[...at, "mechanical", "leakoff"],
		],
		[μ, message("calc/needed.viscosity"), ["stimulation", "base_fluid", "viscosity"]],
		[Q, message("calc/needed.rate"), ["stimulation", "stages", "treatment", "rate"]],
	] as const;
	const wanting = wanted.filter(([value]) => value === undefined);
	if (wanting.length > 0)
		return gaps.missing(
			"stimulation.fractures",
			message("calc/fracture-models-need", { wanting: listOf(wanting.map(([, what]) => what)) }),
			wanting.map(([, , needs]) => needs),
			wanting.map(([, what]) => what),
		);
	if (formation.base === undefined || Q === undefined || μ === undefined) return undefined;
	if (rock?.youngsModulus === undefined || rock.poissonsRatio === undefined) return undefined;
	if (rock.leakoff === undefined || rock.leakoff.value <= 0) return undefined;
	const n = constant(
		"count",
		Math.max(1, stage.clusters.length),
		"fractures of the stage, one a cluster",
		cite("definition"),
	);
	const injection = {
		q: wingRate.of({ Q, n }),
		μ,
		"E'": planeStrainModulus.of({ E: rock.youngsModulus, ν: rock.poissonsRatio }),
		C: rock.leakoff,
		t: pumpingTime.of({ V_s: worked.slurry_volume, Q }),
	};
	const pay = payHeight.of({ TVD_top: formation.top, TVD_base: formation.base });
	const water = well.geology.protectedWater?.base;
	const placed = (model: Omit<Model, "below_protected_water">): Model => ({
		...model,
		...maybe(
			"below_protected_water",
			water && verticalSeparation.of({ TVD_lower: model.top, TVD_upper: water }),
		),
	});
	const models = [
		placed({ id: "pkn", ...pkn(injection, pay), top: formation.top }),
		placed({ id: "kgd", ...kgd(injection, pay), top: formation.top }),
		...(grown === undefined
			? []
			: [
					placed({
						id: "pkn-grown",
						...pkn(injection, grown.height),
						top: fractureTop.of({ TVD: formation.top, a: grown.growth_above }),
					}),
				]),
		placed(radial(injection, tvd)),
	].filter((model) => Number.isFinite(model.half_length.value));
	if (models.length === 0) return undefined;
	const highest = shallowestTop.of({ TVD_i: models.map((model) => model.top) });
	return {
		formation: formation.name,
		models,
		highest_top: highest,
		...maybe(
			"least_below_protected_water",
			water && verticalSeparation.of({ TVD_lower: highest, TVD_upper: water }),
		),
	};
};

interface Injection {
	readonly q: Known<"flow-rate">;
	readonly μ: Known<"plastic-viscosity">;
	readonly "E'": Known<"pressure">;
	readonly C: Known<"leakoff">;
	readonly t: Known<"duration">;
}

const pkn = (injection: Injection, h: Known<"length">) => {
	const { q, μ, t } = injection;
	const half_length = pknLeakingLength.of({ ...injection, h });
	const width = pknWidthConstantRate.of({ q, μ, "E'": injection["E'"], x_f: half_length });
	return {
		height: h,
		half_length,
		width,
		net_pressure: netPressureOfWidth.of({ "E'": injection["E'"], w: width, h }),
		efficiency: planarEfficiency.of({ x_f: half_length, h, w: width, q, t }),
	};
};

const kgd = (injection: Injection, h: Known<"length">) => {
	const { q, μ, t } = injection;
	const half_length = kgdLeakingLength.of({ ...injection, h });
	const width = kgdWidth.of({ q, μ, "E'": injection["E'"], x_f: half_length, h });
	return {
		height: h,
		half_length,
		width,
		net_pressure: kgdNetPressure.of({ "E'": injection["E'"], w: width, x_f: half_length }),
		efficiency: planarEfficiency.of({ x_f: half_length, h, w: width, q, t }),
	};
};

const radial = (injection: Injection, tvd: Known<"true-vertical-depth">) => {
	const { q, μ, C, t } = injection;
	const R = radialLeakingRadius.of({ q, μ, "E'": injection["E'"], C, t });
	const width = radialMeanWidth.of({ w_0: radialWidthAtRadius.of({ q, μ, "E'": injection["E'"], R }) });
	return {
		id: "radial" as const,
		height: radialHeight.of({ R }),
		half_length: R,
		width,
		net_pressure: radialNetPressure.of({ "E'": injection["E'"], w: width, R }),
		efficiency: radialEfficiency.of({ R, w: width, q, t }),
		top: fractureTop.of({ TVD: tvd, a: R }),
	};
};
