import type { Known } from "../../cite/known.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import { columnPressure, DATUM_DEPTH, pressureDifference } from "../pressure/hydrostatic.ts";
import type { CasingResults, SecondStageResults, SlurryResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { boreVolume } from "./bore.ts";
import { type JobContext, plannedTop, pumpedThrough, strokes } from "./cement-results.ts";
import { type FluidColumn, pressureUnder } from "./column.ts";
import { jobPlacement } from "./job-placement.ts";
import { throughShoe, throughTool } from "./stages.ts";
import { fluidsOutside } from "./standing-fluids.ts";

type Depth = Known<"measured-depth">;

/**
 * What is pumped through the stage tool. By then mud has been circulated through the tool and the first stage has set;
 * what stands between the two still bears on the rock there.
 */
export const secondStage = (
	context: JobContext,
	slurries: readonly SlurryResults[],
	casing: CasingResults | undefined,
): SecondStageResults | undefined => {
	const { well, path, string, job } = context;
	const [tool, second] = [job.stageTool, throughTool(job)];
	if (tool === undefined || second === undefined || second.slurries.length === 0) return undefined;
	if (string.kind === "liner" && string.runningString === undefined) return undefined;
	const stage: JobContext = { ...context, job: second };
	const displaced = boreVolume(pumpedThrough(string, tool));
	const outside = fluidsOutside(well, path, string, second, plannedTop(second));
	const pressed = outside.columns.length === 0 ? undefined : pressureUnder(outside.columns);
	const pushed = second.displacement?.density;
	const inside = pushed && columnPressure.of({ ρ: pushed, D_top: DATUM_DEPTH, D_bottom: tvdAt(path, tool) });
	return {
		tool: holeMark(path, tool, well.datum),
		displacement_volume: displaced,
		...maybe("displacement_strokes", strokes(second, displaced)),
		...maybe("annulus_hydrostatic_at_tool", pressed),
		...maybe("inside_hydrostatic_at_tool", inside),
		...maybe("final_lift", pressed && inside && pressureDifference.of({ p_1: pressed, p_2: inside })),
		...maybe(
			"placement",
			jobPlacement(stage, {
				key: `cement.${string.id}.second_stage`,
				slurries,
				displacement: displaced,
				rathole: undefined,
				casing,
				tool,
				under: under(context, tool),
			}),
		),
	};
};

/** Spacer and mud that the first stage left between its top and the tool. */
const under = ({ well, path, string, job }: JobContext, tool: Depth): readonly FluidColumn[] => {
	const first = throughShoe(job);
	if (first.slurries.length === 0) return [];
	const top = plannedTop(first);
	return fluidsOutside(well, path, string, first, top)
		.columns.filter(({ from, to }) => to.value > tool.value && from.value < top.value)
		.map((column) =>
			column.from.value >= tool.value ? column : { ...column, from: tool, top: tvdAt(path, tool) },
		);
};
