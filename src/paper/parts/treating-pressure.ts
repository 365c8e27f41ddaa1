import type { PressureLadder, StageResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Block, Cell, Column } from "../../document/blocks.ts";
import { stepName } from "../../drawing/treatment/step-name.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

type Rung = PressureLadder["rungs"][number];

const rungName = (context: PaperContext, { tier, name }: Rung): string =>
	tier === "element"
		? `${context.words.label("ladder.element")} ${asGiven(context, name) ?? ""}`
		: [context.words.label(`ladder.${tier}`), name].filter((word) => word !== undefined).join(" ");

/** Whether it must lie below the next, and not merely no higher. */
const strict = ({ tier }: Rung): boolean => tier === "expected" || tier === "kickout";

/** Every pair that stands the wrong way round, in words; the papers of the regulator and of the crew say the same. */
export const brokenPairs = (context: PaperContext): readonly Block[] => {
	const ladder = context.results.stimulation?.ladder;
	if (ladder === undefined || ladder.broken.length === 0) return [];
	const rung = (id: string) => ladder.rungs.find((each) => each.id === id);
	return [
		{
			kind: "callout",
			tone: "stop",
			title: context.words.label("ladder.broken_title"),
			blocks: [
				{
					kind: "list",
					ordered: false,
					items: ladder.broken.map(({ lower, upper }): readonly Block[] => {
						const [low, high] = [rung(lower), rung(upper)];
						return low === undefined || high === undefined
							? []
							: [
									{
										kind: "paragraph",
										children: [
											{ kind: "text", text: `${rungName(context, low)}, ` },
											inline(cell(context, low.pressure, WHOLE)),
											{
												kind: "text",
												text: `, ${context.words.label(strict(low) ? "ladder.is_not_below" : "ladder.is_above")} ${rungName(context, high)}, `,
											},
											inline(cell(context, high.pressure, WHOLE)),
										],
									},
								];
					}),
				},
			],
		},
	];
};

const WHOLE = { decimals: 0 } as const;
const inline = (found: Cell) => (found.kind === "quantity" ? found : ({ kind: "text", text: "" } as const));

/** Pressures that limit the job, from the lowest due to the highest. */
export const pressureLadder: Part = (context) => {
	const ladder = context.results.stimulation?.ladder;
	if (ladder === undefined) return [];
	const brokenBy = (rung: Rung): string => {
		const over = ladder.broken
			.filter(({ lower }) => lower === rung.id)
			.flatMap(({ upper }) => ladder.rungs.find(({ id }) => id === upper) ?? []);
		return over.length === 0
			? context.words.label("ladder.in_order")
			: `${context.words.label(strict(rung) ? "ladder.not_below" : "ladder.above")} ${over.map((each) => rungName(context, each)).join("; ")}`;
	};
	const discharge = context.well.stimulation?.limits?.reliefDischargesTo;
	return [
		...brokenPairs(context),
		...table(
			context,
			"pressure_ladder",
			[
				textColumn(context, "limit", { width: 2.2, rowHead: true }),
				quantityColumn(context, "pressure", "pressure", { width: 0.9, style: WHOLE }),
				...(ladder.broken.length === 0 ? [] : [textColumn(context, "order", { width: 2.2 })]),
			],
			ladder.rungs.map((rung) =>
				row({
					limit: textCell(rungName(context, rung)),
					pressure: cell(context, rung.pressure, rung.tier === "element" ? { nearest: 10 } : WHOLE),
					order: textCell(brokenBy(rung)),
				}),
			),
			{ note: "pressure_ladder" },
		),
		...facts(context, [["relief_discharges_to", textCell(discharge)]], { columns: 1 }),
	];
};

const TENTH = { decimals: 1 } as const;

/** What the hardest stage needs, and what the figure rests on. */
export const expectedPressure: Part = (context) => {
	const totals = context.results.stimulation;
	const hardest = totals?.hardest_stage;
	const stage = totals?.stages.find(({ number }) => number === hardest?.number);
	if (totals?.expected_treating_pressure === undefined) return [];
	const model = context.well.stimulation?.pressureModel;
	return facts(
		context,
		[
			["expected_treating_pressure", cell(context, totals.expected_treating_pressure, WHOLE)],
			["expected_horsepower", cell(context, totals.expected_horsepower, WHOLE)],
			["pumps", cell(context, totals.pumps)],
			["net_pressure", cell(context, model?.net, WHOLE)],
			["pipe_roughness", cell(context, model?.roughness, { decimals: 4 })],
			["drag_reduction_stated", cell(context, model?.frictionReduction, WHOLE)],
			["drag_reduction_reached", cell(context, stage?.pressure?.drag_reduction, WHOLE)],
			["room_to_first_kickout", cell(context, hardest?.screen_out?.room_to_first_kickout, WHOLE)],
			["proppant_in_pipe", cell(context, hardest?.screen_out?.proppant_in_pipe, { nearest: 100 })],
		],
		{ caption: "expected_pressure", columns: 3 },
	);
};

/** How the surface pressure of the hardest stage goes, step by step. */
export const stageCourse: Part = (context) => {
	const totals = context.results.stimulation;
	const hardest = totals?.hardest_stage;
	const stage = totals?.stages.find(({ number }) => number === hardest?.number);
	if (hardest === undefined || stage === undefined) return [];
	const psi = (value: number | undefined): Cell =>
		value === undefined ? { kind: "none" } : { kind: "quantity", dimension: "pressure", value, style: WHOLE };
	return table(
		context,
		"stage_course",
		[
			textColumn(context, "step", { width: 1.2, rowHead: true }),
			quantityColumn(context, "rate", "flow-rate", { style: WHOLE }),
			quantityColumn(context, "slurry_density", "density", { style: TENTH }),
			quantityColumn(context, "ends_at", "duration", { style: TENTH }),
			quantityColumn(context, "pressure_start", "pressure", { style: WHOLE }),
			quantityColumn(context, "pressure_end", "pressure", { style: WHOLE }),
			quantityColumn(context, "pressure_greatest", "pressure", { style: WHOLE }),
		],
		stage.steps.map((step, i) => {
			const moments = hardest.course.rows.filter((moment) => moment.step === i + 1);
			const surface = moments.map((moment) => moment.surface);
			const end = moments.at(-1);
			return row({
				step: textCell(stepName(step.name, (words) => context.words.findLabel(`steps_given.${words}`))),
				rate: cell(context, step.rate),
				slurry_density: cell(context, step.slurry_density),
				ends_at:
					end === undefined ? { kind: "none" } : { kind: "quantity", dimension: "duration", value: end.time },
				pressure_start: psi(surface[0]),
				pressure_end: psi(surface.at(-1)),
				pressure_greatest: psi(surface.length === 0 ? undefined : Math.max(...surface)),
			});
		}),
		{ note: "stage_course", suffix: `${context.words.label("phrases.stage")} ${hardest.number}` },
	);
};

/** A stage with one thing about its friction changed. */
interface Changed {
	readonly id: string;
	readonly to: Known;
	readonly pipe_friction: Known<"pressure">;
	readonly treating_pressure: Known<"pressure">;
}

const sensitivity = (
	context: PaperContext,
	caption: string,
	head: string,
	changed: Column,
	rows: readonly Changed[],
): Block[] =>
	table(
		context,
		caption,
		[
			textColumn(context, head, { width: 1.6, rowHead: true }),
			changed,
			quantityColumn(context, "pipe_friction", "pressure", { style: WHOLE }),
			quantityColumn(context, "treating_pressure", "pressure", { style: WHOLE }),
		],
		rows.map((each) =>
			row({
				[head]: textCell(named(context, each.id)),
				[changed.id]: cell(context, each.to, changed.style),
				pipe_friction: cell(context, each.pipe_friction, WHOLE),
				treating_pressure: cell(context, each.treating_pressure, WHOLE),
			}),
		),
		{ note: "roughness_sensitivity" },
	);

/** The same stage with smoother and rougher pipe. */
export const roughnessSensitivity: Part = (context) =>
	sensitivity(
		context,
		"roughness_sensitivity",
		"pipe_wall",
		quantityColumn(context, "roughness", "diameter", { style: { decimals: 4 } }),
		(context.results.stimulation?.roughness_sensitivity ?? []).map((each) => ({
			...each,
			to: each.roughness,
		})),
	);

/** The same stage with less friction reduction than is stated. */
export const reductionSensitivity: Part = (context) =>
	sensitivity(
		context,
		"reduction_sensitivity",
		"reducer",
		quantityColumn(context, "friction_reduction", "share", { style: WHOLE }),
		(context.results.stimulation?.reduction_sensitivity ?? []).map((each) => ({
			...each,
			to: each.reduction,
		})),
	);

/** What each stage needs at its own rate, and what that is made of. */
export const stagePressures: Part = (context) => {
	const stages = context.results.stimulation?.stages ?? [];
	return table(
		context,
		"stage_pressures",
		[
			quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }),
			quantityColumn(context, "fracturing", "pressure", { style: WHOLE }),
			quantityColumn(context, "hydrostatic", "pressure", { style: WHOLE }),
			quantityColumn(context, "pipe_friction", "pressure", { style: WHOLE }),
			quantityColumn(context, "perforations_fresh", "pressure", { style: WHOLE }),
			quantityColumn(context, "perforations_worn", "pressure", { style: WHOLE }),
			quantityColumn(context, "near_wellbore", "pressure", { style: WHOLE }),
			quantityColumn(context, "surface_fresh", "pressure", { style: WHOLE }),
			quantityColumn(context, "surface_worn", "pressure", { style: WHOLE }),
			quantityColumn(context, "horsepower", "hydraulic-power", { style: WHOLE }),
		],
		stages.flatMap(({ number, pressure }: StageResults) =>
			pressure === undefined
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: number },
							fracturing: cell(context, pressure.fracturing),
							hydrostatic: cell(context, pressure.hydrostatic),
							pipe_friction: cell(context, pressure.pipe_friction),
							perforations_fresh: cell(context, pressure.perforation_friction_fresh),
							perforations_worn: cell(context, pressure.perforation_friction_worn),
							near_wellbore: cell(context, pressure.near_wellbore),
							surface_fresh: cell(context, pressure.treating_fresh),
							surface_worn: cell(context, pressure.treating_worn),
							horsepower: cell(context, pressure.horsepower),
						}),
					],
		),
		{ dense: true, note: "stage_pressures", ...(stages.length > ONE_COLUMN ? { abreast: 2 } : {}) },
	);
};

/** So many stages stand in one column. */
const ONE_COLUMN = 12;

/** Rate into each cluster of the hardest stage, as the stress differences stated share it out. */
export const limitedEntry: Part = (context) => {
	const hardest = context.results.stimulation?.hardest_stage;
	return table(
		context,
		"limited_entry",
		[
			quantityColumn(context, "cluster", "count", { width: 0.7, rowHead: true }),
			quantityColumn(context, "stress_difference", "pressure", { style: WHOLE }),
			quantityColumn(context, "rate_fresh", "flow-rate", { style: TENTH }),
			quantityColumn(context, "rate_worn", "flow-rate", { style: TENTH }),
		],
		(hardest?.limited_entry ?? []).map((each) =>
			row({
				cluster: { kind: "quantity", dimension: "count", value: each.cluster },
				stress_difference: cell(context, each.stress, WHOLE),
				rate_fresh: cell(context, each.fresh, TENTH),
				rate_worn: cell(context, each.worn, TENTH),
			}),
		),
		{ note: "limited_entry", suffix: `${context.words.label("phrases.stage")} ${hardest?.number ?? ""}` },
	);
};
