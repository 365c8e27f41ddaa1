import type { CementDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { cementDepth } from "./datum.ts";
import { assumeWord, type Desk, fault, maybe, SAME_DEPTH } from "./desk.ts";
import { distinctIds } from "./names.ts";
import type { ReadFile } from "./read-file.ts";
import { choiceOf } from "./said.ts";
import { resolveSealEvidence } from "./seal-evidence.ts";
import { figures } from "./slurry-figures.ts";
import type { CementActual, CementJob, Datum, Hole, Slurry } from "./well.ts";

/** What a cement job is joined with. */
interface CementPlace {
	/** Path of the job. */
	readonly at: Path;
	readonly string: string;
	readonly hole: Hole;
	readonly datum: Datum;
	/** The shoe the column begins at, and the plan's where the pipe was landed elsewhere. */
	readonly shoe: Slurry["bottom"];
	readonly plannedShoe: Slurry["bottom"];
	readonly files: ReadFile;
}

/** A cement job on the depth datum. A slurry planned to the planned shoe follows the shoe to where it was landed. */
export const resolveCement = (written: CementDefinition, place: CementPlace, desk: Desk): CementJob => {
	const { at, string, datum } = place;
	const ids = distinctIds(written.slurries.map(({ role }) => role));
	const washedOut = (place.hole.washout?.value ?? 0) > 0;
	return {
		volumeBasis:
			written.volume_basis ??
			assumeWord(desk, washedOut ? "washed-out hole" : "gauge hole", {
				id: `volume-basis.${string}`,
				at: [...at, "volume_basis"],
				what: washedOut
					? message("well/cement-job.what", { string })
					: message("well/cement-job.cement-volumes-string-fill-gauge", { string }),
				why: message("well/cement-job.why"),
			}),
		slurries: written.slurries.map((slurry, i) =>
			resolveSlurry(slurry, ids[i] ?? slurry.role, i, place, desk),
		),
		...(written.spacer === undefined
			? {}
			: {
					spacer: {
						volume: written.spacer.volume,
						...maybe("density", written.spacer.density),
						...rheology(written.spacer),
					},
				}),
		...(written.displacement === undefined
			? {}
			: {
					displacement: {
						density: written.displacement.density,
						...maybe("rate", written.displacement.rate),
						...maybe("pumpOutput", written.displacement.pump_output),
						...maybe("last", written.displacement.last),
						...rheology(written.displacement),
					},
				}),
		...maybe("lineTest", written.line_test),
		...maybe("bump", written.bump),
		...maybe("stageTool", written.stage_tool),
		...maybe("densityWindow", written.density_window),
		...maybe("drillOut", written.drill_out),
		...(written.further === undefined
			? {}
			: {
					further: written.further.map((each) => ({
						kind: each.kind,
						top: cementDepth(each.from, datum),
						bottom: each.to,
						...maybe("excess", each.excess),
						yield: each.yield,
						...maybe("water", each.water),
						...maybe("density", each.density),
						...maybe("when", each.when),
					})),
				}),
		plugs: written.plugs ?? [],
		...maybe("waitOnCement", written.wait_on_cement),
		topMethod:
			written.actual?.top?.method ??
			written.top_method ??
			assumeWord(desk, "calculated", {
				id: `top-method.${string}`,
				at: [...at, "top_method"],
				what: message("well/cement-job.top-cement-behind-string-is", { string }),
				why: message("well/cement-job.how-it-will-be-found"),
			}),
		...maybe("ifReturnsStop", written.if_returns_stop),
		...(written.actual === undefined ? {} : { actual: resolveActual(written.actual, place, desk) }),
	};
};

const resolveSlurry = (
	written: CementDefinition["slurries"][number],
	id: string,
	i: number,
	{ at, datum, shoe, plannedShoe }: CementPlace,
	desk: Desk,
): Slurry => {
	const bottom = cementDepth(written.to, datum);
	const known = written.class === undefined ? undefined : desk.catalog.cementClass(written.class);
	if (written.class !== undefined && known === undefined)
		fault(desk, "well/cement-class", [...at, "slurries", i, "class"], {
			what: message("well/cement-class.what"),
			expected: message("well/cement-class.expected", {
				cementClasses: choiceOf(desk.catalog.cementClasses.map((row) => row.id)),
			}),
			found: written.class,
			mend: message("well/cement-class.mend"),
			source: "api-10a",
		});
	return {
		id,
		role: written.role,
		...maybe("cementClass", known?.id ?? written.class),
		top: cementDepth(written.from, datum),
		bottom: Math.abs(bottom.value - plannedShoe.value) <= SAME_DEPTH ? shoe : bottom,
		excess: written.excess,
		...figures(written, known, [...at, "slurries", i], desk),
		...maybe("rate", written.rate),
		...rheology(written),
		...maybe("thickeningTime", written.thickening_time),
		...maybe("transitionTime", written.transition_time),
		strength: (written.strength ?? []).map(({ value, after, at: temperature }) => ({
			value,
			after,
			...maybe("at", temperature),
		})),
		...maybe("freeFluid", written.free_fluid),
		...maybe("additives", written.additives),
	};
};

const rheology = (written: {
	readonly plastic_viscosity?: Slurry["plasticViscosity"] | undefined;
	readonly yield_point?: Slurry["yieldPoint"] | undefined;
}) => ({
	...maybe("plasticViscosity", written.plastic_viscosity),
	...maybe("yieldPoint", written.yield_point),
});

const resolveActual = (
	written: NonNullable<CementDefinition["actual"]>,
	{ at, datum, shoe, files }: CementPlace,
	desk: Desk,
): CementActual => ({
	...maybe("date", written.date),
	pumped: (written.pumped ?? []).map(({ fluid, volume, density }) => ({
		fluid,
		volume,
		...maybe("density", density),
	})),
	...maybe("returnsToSurface", written.returns?.to_surface),
	...maybe("returnsWhilePumping", written.returns?.while_pumping),
	...(written.top === undefined
		? {}
		: {
				top: {
					depth: cementDepth(written.top.depth, datum),
					method: written.top.method,
				},
			}),
	...maybe("lift", written.lift),
	...maybe("bump", written.bump),
	...maybe("floatsHeld", written.floats_held),
	...maybe("evaluationLog", written.evaluation_log),
	...maybe("remedial", written.remedial),
	...maybe("seal", resolveSealEvidence(written, { at: [...at, "actual"], datum, shoe, files }, desk)),
});
