import type { Known, KnownTable } from "../../cite/known.ts";
import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Stage, Stimulation, Well } from "../../well/well.ts";
import { type BoreInterval, boreVolume, treatedPath } from "../cement/bore.ts";
import { totalVolume } from "../cement/capacity.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { StageResults } from "../results.ts";
import { asPumped } from "./as-pumped.ts";
import { chartResults } from "./chart-results.ts";
import { stepsOf } from "./ramp-steps.ts";
import { totalMass, totalTime } from "./slurry.ts";
import { stagePressure } from "./stage-pressure.ts";
import { recordedPressure } from "./stage-recorded.ts";
import { stepResults } from "./step-results.ts";
import { perforationCount } from "./treating-pressure.ts";

export interface StageContext {
	readonly well: Well;
	readonly stimulation: Stimulation;
	readonly path: KnownTable;
	readonly gaps: Gaps;
}

/** One stage: where it is, what is pumped into it, how long and how hard. */
export const stageResults = (context: StageContext, stage: Stage): StageResults => {
	const { well, stimulation, path, gaps } = context;
	const key = `stimulation.stages.${stage.number}`;
	const mark = (md: Known<"measured-depth">) => holeMark(path, md, well.datum);
	const down = treatedPath(well, uppermost(stage));
	const flush = flushOf(down, key, gaps);
	const steps = stepsOf(stage, stimulation.proppants).flatMap(
		(step, i) => stepResults(stimulation, step, flush, `${key}.steps.${i}`, gaps) ?? [],
	);
	const perforations = perforationsOf(stage);
	const planned = {
		steps,
		clean_volume: totalVolume.of({ V_i: steps.map((s) => s.clean_volume) }),
		proppant_mass: totalMass.of({ m_i: steps.map((s) => s.proppant_mass) }),
	};
	const pumped = asPumped(stimulation, stage, planned);
	return {
		number: stage.number,
		top: mark(stage.top),
		bottom: mark(stage.bottom),
		...maybe("plug", stage.plug && mark(stage.plug)),
		clusters: stage.clusters.map(mark),
		steps,
		...maybe("perforations", perforations),
		...maybe("flush_volume", flush),
		clean_volume: planned.clean_volume,
		slurry_volume: totalVolume.of({ V_i: steps.map((s) => s.slurry_volume) }),
		proppant_mass: planned.proppant_mass,
		pumping_time: totalTime.of({ t_i: steps.map((s) => s.time) }),
		...maybe("pressure", stagePressure(context, stage, down, perforations)),
		...maybe("as_pumped", pumped),
		...maybe("chart", chartResults(stage, pumped)),
		...maybe("recorded_pressure", recordedPressure(context, stage, down, perforations, pumped)),
	};
};

/** The shallowest cluster, else the top of the interval. */
export const uppermost = ({ clusters, top }: Stage): Known<"measured-depth"> =>
	clusters.reduce((up, c) => (c.value < up.value ? c : up), clusters[0] ?? top);

const flushOf = (down: readonly BoreInterval[], key: string, gaps: Gaps): Known<"volume"> | undefined =>
	down.length === 0
		? gaps.missing(`${key}.flush_volume`, message("calc/string-treated-through-has-no-pipe"), [
				["stimulation", "treated_through"],
			])
		: boreVolume(down);

const perforationsOf = ({ clusters, shotsPerCluster }: Stage): Known<"count"> | undefined =>
	shotsPerCluster === undefined
		? undefined
		: perforationCount.of({
				n_c: constant("count", Math.max(1, clusters.length), "clusters of the stage", cite("definition")),
				n_s: shotsPerCluster,
			});
