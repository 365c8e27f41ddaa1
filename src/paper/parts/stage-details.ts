import { cell, shown, textCell } from "../context.ts";
import { type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Stages that were given a reason to differ from the others, each with it. */
export const stagesThatDiffer: Part = (context) =>
	table(
		context,
		"stages_that_differ",
		[
			quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }),
			quantityColumn(context, "planned_rate", "flow-rate", { style: { decimals: 0 } }),
			textColumn(context, "why_differs", { width: 5 }),
		],
		(context.well.stimulation?.stages ?? []).flatMap((stage) =>
			stage.why === undefined
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: stage.number },
							planned_rate: cell(context, stage.rate),
							why_differs: textCell(stage.why),
						}),
					],
		),
	);

/** Every cluster by its depth along the hole, deepest first. */
export const clusterDepths: Part = (context) =>
	table(
		context,
		"cluster_depths",
		[
			quantityColumn(context, "stage", "count", { width: 0.5, rowHead: true }),
			textColumn(context, "cluster_depths", { width: 5 }),
		],
		(context.results.stimulation?.stages ?? []).flatMap((stage) =>
			stage.clusters.length === 0
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: stage.number },
							cluster_depths: {
								kind: "rich",
								children: stage.clusters.flatMap(({ md }, i) => [
									...(i === 0 ? [] : [{ kind: "text" as const, text: " · " }]),
									shown(context, md, { decimals: 0 }),
								]),
							},
						}),
					],
		),
		{ dense: true },
	);

/** Of sliding sleeves: seat and ball of each, what the ball bears on, and the room it has on its way. */
export const sleevesTable: Part = (context) =>
	table(
		context,
		"sleeves",
		[
			quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }),
			quantityColumn(context, "uppermost_opening", "measured-depth", { width: 1.2 }),
			quantityColumn(context, "seat", "diameter", { style: DIAMETERS }),
			quantityColumn(context, "ball", "diameter", { style: DIAMETERS }),
			quantityColumn(context, "ball_bearing", "diameter", { width: 1.2, style: DIAMETERS }),
			quantityColumn(context, "ball_room", "diameter", { width: 1.4, style: DIAMETERS }),
		],
		(context.results.stimulation?.sleeves ?? []).map((sleeve) =>
			row({
				stage: { kind: "quantity", dimension: "count", value: sleeve.number },
				uppermost_opening: cell(context, sleeve.uppermost.md),
				seat: cell(context, sleeve.seat),
				ball: cell(context, sleeve.ball),
				ball_bearing: cell(context, sleeve.bearing),
				ball_room: cell(context, sleeve.room),
			}),
		),
		{ dense: true, note: "sleeves" },
	);

const DIAMETERS = { decimals: 3 } as const;
