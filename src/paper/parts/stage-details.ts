import type { Column } from "../../document/blocks.ts";
import { cell, textCell } from "../context.ts";
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

/** Every cluster by its depth along the hole, deepest first: a column each, two stages abreast where those are many. */
export const clusterDepths: Part = (context) => {
	const stages = (context.results.stimulation?.stages ?? []).filter(({ clusters }) => clusters.length > 0);
	const most = Math.max(0, ...stages.map(({ clusters }) => clusters.length));
	const ids = Array.from({ length: most }, (_, i) => `cluster_${i + 1}`);
	return table(
		context,
		"cluster_depths",
		[
			quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }),
			...ids.map(
				(id, i): Column => ({
					id,
					head: String(i + 1),
					kind: "quantity",
					dimension: "measured-depth",
					style: { decimals: 0 },
					width: 1,
					align: "end",
				}),
			),
		],
		stages.map(({ number, clusters }) =>
			row({
				stage: { kind: "quantity", dimension: "count", value: number },
				...Object.fromEntries(
					ids.flatMap((id, i) => {
						const found = clusters[i];
						return found === undefined ? [] : [[id, cell(context, found.md, { decimals: 0 })]];
					}),
				),
			}),
		),
		{ dense: true, ...(most <= ABREAST && stages.length > ONE_COLUMN ? { abreast: 2 } : {}) },
	);
};

/** Clusters of a stage that leave room for two stages beside each other; so many stages stand in one column. */
const ABREAST = 7;
const ONE_COLUMN = 12;

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
