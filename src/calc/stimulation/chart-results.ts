import type { Stage } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { StageAsPumped, StageChartResults } from "../results.ts";
import { chartVolume, volumeApart } from "./chart-readings.ts";
import { greatestRecorded } from "./pumped.ts";

/** What the chart of a stage comes to, and how far its volume is from the record's; nothing without a chart. */
export const chartResults = (
	{ actual }: Stage,
	pumped: StageAsPumped | undefined,
): StageChartResults | undefined => {
	const readings = actual?.chart?.readings;
	if (readings === undefined) return undefined;
	const V = chartVolume.of({ t_i: readings.map(({ time }) => time), Q_i: readings.map(({ rate }) => rate) });
	const annulus = readings.flatMap((reading) => reading.annulus ?? []);
	return {
		slurry_volume: V,
		highest_pressure: greatestRecorded.of({ p_i: readings.map(({ pressure }) => pressure) }),
		...maybe("highest_annulus", annulus.length > 0 ? greatestRecorded.of({ p_i: annulus }) : undefined),
		...maybe("apart", pumped?.slurry_volume && volumeApart.of({ V, V_r: pumped.slurry_volume })),
	};
};
