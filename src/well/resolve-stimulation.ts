import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, maybe } from "./desk.ts";
import { TREATING_STRING } from "./names.ts";
import type { ReadFile } from "./read-file.ts";
import { unknownReference } from "./references.ts";
import { resolveStages } from "./resolve-stages.ts";
import type { Additive, AnnulusLimit, Proppant, Stimulation } from "./well.ts";

const AT: Path = ["stimulation"];

/** What is pumped, where and how hard; the names it uses are checked against the strings. */
export const resolveStimulation = (
	written: StimulationDefinition,
	stringIds: readonly string[],
	files: ReadFile,
	desk: Desk,
): Stimulation => {
	if (!stringIds.includes(written.treated_through))
		unknownReference(
			desk,
			[...AT, "treated_through"],
			message("well/thing.string"),
			written.treated_through,
			stringIds,
		);
	const { base_fluid: fluid, toe, flowback } = written;
	assumeNoLoss(written.pressure_model, desk);
	return {
		method: written.method,
		treatedThrough: written.treated_through,
		baseFluid: { kind: fluid.kind, density: fluid.density, ...maybe("viscosity", fluid.viscosity) },
		waterSources: (written.water_sources ?? []).map(({ name, share, recycled, dissolved_solids }) => ({
			name,
			share,
			recycled: recycled ?? false,
			...maybe("dissolvedSolids", dissolved_solids),
		})),
		...pressures(written),
		...(toe === undefined
			? {}
			: {
					toe: {
						kind: toe.kind,
						depth: toe.depth,
						...maybe("opensAt", toe.opens_at),
						...maybe("opensAtMeasured", toe.opens_at_measured),
					},
				}),
		stages: resolveStages(written, files, desk),
		...maybe("sleeves", written.stages.sleeves && sleevesOf(written.stages.sleeves)),
		proppants: (written.proppants ?? []).map(resolveProppant),
		additives: (written.additives ?? []).map(resolveAdditive),
		annuli: annuliOf(written, stringIds, desk),
		...(flowback === undefined
			? {}
			: { flowback: { ...maybe("returned", flowback.returned), ...maybe("goesTo", flowback.goes_to) } }),
		...maybe("ifItScreensOut", written.if_it_screens_out),
	};
};

const sleevesOf = (
	written: NonNullable<StimulationDefinition["stages"]["sleeves"]>,
): Stimulation["sleeves"] =>
	written
		.map(({ stage, seat, ball }) => ({ stage: stage.value as number, seat, ...maybe("ball", ball) }))
		.sort((a, b) => a.stage - b.stage);

const pressures = (
	written: StimulationDefinition,
): Pick<Stimulation, "boundary" | "pressureModel" | "limits" | "pumps"> => {
	const { pressure_model: model, limits, pumps } = written;
	return {
		boundary: (written.pressure_boundary ?? []).map(({ element, rating, factor }) => ({
			element,
			...maybe("rating", rating),
			factor,
		})),
		...(model === undefined
			? {}
			: {
					pressureModel: {
						...maybe("net", model.net),
						...maybe("nearWellbore", model.near_wellbore),
						...maybe("frictionReduction", model.friction_reduction),
						...maybe("roughness", model.roughness),
						...maybe("discharge", model.discharge),
						...maybe("clusterStress", model.cluster_stress),
					},
				}),
		...(pumps === undefined
			? {}
			: {
					pumps: {
						horsepowerEach: pumps.horsepower_each,
						load: pumps.load,
						...maybe("spare", pumps.spare),
					},
				}),
		...(limits === undefined
			? {}
			: {
					limits: {
						...maybe("maximumTreatingPressure", limits.maximum_treating_pressure),
						pumpKickouts: limits.pump_kickouts ?? [],
						...maybe("reliefValve", limits.relief_valve),
						...maybe("reliefDischargesTo", limits.relief_discharges_to),
						...maybe("lineTest", limits.line_test),
					},
				}),
	};
};

/** What the pressure model leaves out is taken as nothing; a reader of the expected pressure has to know. */
const assumeNoLoss = (model: StimulationDefinition["pressure_model"], desk: Desk): void => {
	if (model === undefined) return;
	const at: Path = [...AT, "pressure_model"];
	if (model.near_wellbore === undefined)
		desk.assumptions.push({
			id: "near-wellbore-loss",
			at: [...at, "near_wellbore"],
			what: message("well/treating-loss.what"),
			why: message("well/treating-loss.why"),
		});
	if (model.friction_reduction === undefined)
		desk.assumptions.push({
			id: "friction-reduction",
			at: [...at, "friction_reduction"],
			what: message("well/treating-loss.fluid-flows-in-pipe-as"),
			why: message("well/treating-loss.friction-reduction-is-not-given"),
		});
};

const resolveProppant = (written: NonNullable<StimulationDefinition["proppants"]>[number]): Proppant => ({
	id: written.id,
	material: written.material,
	specificGravity: written.specific_gravity,
	...maybe("bulkDensity", written.bulk_density),
	...maybe("cas", written.cas),
	...maybe("supplier", written.supplier),
});

const resolveAdditive = (written: NonNullable<StimulationDefinition["additives"]>[number]): Additive => ({
	id: written.id,
	name: written.name,
	purpose: written.purpose,
	...maybe("supplier", written.supplier),
	...maybe("rate", written.rate),
	...maybe("density", written.density),
	...maybe("handling", written.handling),
	...maybe("papers", written.papers),
	ingredients: written.ingredients.map((each) => ({
		name: each.name,
		...maybe("cas", each.cas),
		...maybe("maxShare", each.max_share),
		...maybe("tradeSecret", each.trade_secret),
	})),
});

const annuliOf = (
	written: StimulationDefinition,
	stringIds: readonly string[],
	desk: Desk,
): readonly AnnulusLimit[] =>
	(written.annuli ?? []).map((each, i) => {
		// Inside everything else, and so named before it.
		const ids = [...stringIds, ...(written.treating_string === undefined ? [] : [TREATING_STRING])];
		for (const [side, id] of each.between.entries())
			if (!ids.includes(id))
				unknownReference(desk, [...AT, "annuli", i, "between", side], message("well/thing.string"), id, ids);
		const [inner, outer] = each.between.map((id) => ids.indexOf(id));
		if (inner !== undefined && outer !== undefined && outer >= 0 && inner >= 0 && inner <= outer)
			fault(desk, "well/annulus-strings", [...AT, "annuli", i, "between"], {
				what:
					inner === outer
						? message("well/annulus-strings.what")
						: message("well/annulus-strings.outer-string-annulus-is-named"),
				expected: message("well/annulus-strings.expected"),
				found: each.between.join(", "),
				mend:
					inner === outer
						? message("well/annulus-strings.mend")
						: message("well/annulus-strings.write", { reverse: [...each.between].reverse().join(", ") }),
			});
		return {
			between: each.between,
			...maybe("predictedRise", each.predicted_rise),
			...maybe("warming", each.warming),
			...maybe("relief", each.relief),
			...maybe("tell", each.tell),
			...maybe("stopAbove", each.stop_above),
			...maybe("notifyWithin", each.notify_within),
			...maybe("highest", each.actual?.highest),
		};
	});
