import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
import { asWritten, choiceOf, measured } from "../../well/said.ts";
import type { Well } from "../../well/well.ts";
import type { HoleMark, StimulationResults } from "../results.ts";

/** Tops of formations are known no better than this; an opening so near the bed is in it [ft TVD]. */
const AT_THE_BED = 5;

/**
 * Openings outside every bed that is marked as the target: the stages, the path or the formations have a slip. Told once,
 * of the opening that lies farthest out. Nothing where no bed is a target; stages above the landing are told of as such.
 */
export const targetFaults = (
	well: Well,
	stimulation: StimulationResults | undefined,
	landing: HoleMark | undefined,
): readonly Diagnostic[] => {
	const targets = well.geology.formations.filter(({ target }) => target);
	if (stimulation === undefined || targets.length === 0) return [];
	const openings = stimulation.stages.flatMap((stage) =>
		(stage.clusters.length > 0 ? stage.clusters : [stage.top, stage.bottom]).map(({ md, tvd }) => ({
			stage: stage.number,
			md,
			tvd,
		})),
	);
	if (landing !== undefined && openings.some(({ md }) => md.value < landing.md.value)) return [];
	const out = openings.map((opening) => ({
		...opening,
		by: Math.min(
			...targets.map(({ top, base }) =>
				Math.max(
					top.value - opening.tvd.value,
					opening.tvd.value - (base?.value ?? Number.POSITIVE_INFINITY),
					0,
				),
			),
		),
	}));
	const farthest = out.reduce((worst, each) => (each.by > worst.by ? each : worst), {
		by: 0,
		stage: 0,
		tvd: undefined,
	} as (typeof out)[number] | { readonly by: number; readonly stage: number; readonly tvd: undefined });
	if (farthest.tvd === undefined || farthest.by <= AT_THE_BED) return [];
	const bed = well.geology.formations.findLast(({ top }) => top.value <= Number(farthest.tvd?.value));
	return [
		diagnose(
			"calc/perforations-outside-target",
			{ path: ["stimulation", "stages"] },
			{
				what:
					bed === undefined
						? message("calc/outside-target.what", {
								number: String(farthest.stage),
								by: measured("length", farthest.by),
							})
						: message("calc/outside-target.in-bed", {
								number: String(farthest.stage),
								by: measured("length", farthest.by),
								bed: bed.name,
							}),
				expected: message("calc/outside-target.expected", {
					beds: choiceOf(
						targets.map(({ name, top, base }) =>
							base === undefined
								? message("calc/outside-target.below", { name, top: asWritten(top) })
								: message("calc/outside-target.between", {
										name,
										top: asWritten(top),
										base: asWritten(base),
									}),
						),
					),
				}),
				found: message("well/true-vertical-depth", { depth: farthest.tvd }),
				mend: message("calc/outside-target.mend"),
				related: [
					{ at: { path: ["geology", "formations"] }, label: message("calc/outside-target.formations") },
				],
			},
		),
	];
};
