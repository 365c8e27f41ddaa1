import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { asWritten } from "../../well/desk.ts";
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
				what: `stage ${farthest.stage} is opened ${Math.round(farthest.by)} ft outside the target${bed === undefined ? "" : `, in the ${bed.name}`}`,
				expected: targets
					.map(
						({ name, top, base }) =>
							`within the ${name}: ${asWritten(top, "ft")}${base === undefined ? " and below" : ` to ${asWritten(base, "ft")}`}`,
					)
					.join("; "),
				found: `${Math.round(farthest.tvd.value)} ft TVD`,
				mend: "correct the depths of the stages, the path, or the formations",
				related: [{ at: { path: ["geology", "formations"] }, label: "the formations" }],
			},
		),
	];
};
