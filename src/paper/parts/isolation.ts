import type { Cell } from "../../document/blocks.ts";
import { cell, textCell } from "../context.ts";
import { facts, type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";

export const isolationFacts: Part = (context) => {
	const { isolation, geology } = context.results;
	return facts(context, [
		["protected_water_base_ground", cell(context, geology.protected_water_base?.below_ground)],
		[
			"protecting_string",
			textCell(isolation.protecting_string === undefined ? undefined : titled(isolation.protecting_string)),
		],
		["shoe_below_water", cell(context, isolation.shoe_below_protected_water)],
		["steel_layers", cell(context, isolation.steel_at_protected_water)],
		["water_to_perforation", cell(context, isolation.protected_water_to_top_perforation)],
	]);
};

/** Each cement column across the base of protected water, with its evidence; a planned column never counts as proven. */
export const barriersTable: Part = (context) =>
	table(
		context,
		"barriers",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			quantityColumn(context, "cement_top", "measured-depth"),
			quantityColumn(context, "shoe", "measured-depth"),
			textColumn(context, "evidence", { width: 2 }),
		],
		(context.results.isolation.cement_at_protected_water ?? []).map((column) =>
			row({
				string: textCell(titled(column.string)),
				cement_top: cell(context, context.results.cement[column.string]?.top.md),
				shoe: cell(context, context.results.casing[column.string]?.shoe.md),
				evidence: textCell(context.words.label(`evidence.${column.evidence}`)),
			}),
		),
		{ note: "barriers" },
	);

export const neighborsTable: Part = (context) => {
	const wells = new Map(context.results.isolation.neighbor_wells.map((well) => [well.id, well]));
	return table(
		context,
		"neighbors",
		[
			textColumn(context, "neighbor", { width: 1.8, rowHead: true }),
			textColumn(context, "neighbor_kind", { width: 1.2 }),
			quantityColumn(context, "well_depth", "depth-below-ground", { width: 1.2 }),
			quantityColumn(context, "above_perforation", "offset", { width: 1.4 }),
			textColumn(context, "surveyed", { width: 2.2 }),
			textColumn(context, "sampled", { width: 1.1 }),
		],
		context.well.neighbors.map((neighbor) => {
			const computed = wells.get(neighbor.id);
			return row({
				neighbor: textCell(neighbor.name),
				neighbor_kind: textCell(neighbor.kind),
				well_depth: cell(context, neighborDepth(neighbor)),
				above_perforation: cell(context, computed?.above_top_perforation),
				surveyed: surveyed(neighbor, context),
				sampled: textCell(neighbor.sampled),
			});
		}),
	);
};

type Neighbor = Parameters<typeof surveyed>[0];
const surveyed = (
	neighbor: {
		readonly surveyed?:
			| readonly {
					readonly from: string;
					readonly distance: Parameters<typeof cell>[1] & object;
					readonly by?: string | undefined;
			  }[]
			| undefined;
	},
	context: Parameters<typeof cell>[0],
): Cell => {
	const entries = neighbor.surveyed ?? [];
	if (entries.length === 0) return { kind: "none" };
	return {
		kind: "rich",
		children: entries.flatMap((entry, i) => {
			const shown = cell(context, entry.distance);
			return [
				...(i > 0 ? [{ kind: "text" as const, text: "; " }] : []),
				...(shown.kind === "quantity" ? [shown] : []),
				{ kind: "text" as const, text: ` ${context.words.label("phrases.from")} ${entry.from}` },
			];
		}),
	};
};

const neighborDepth = (neighbor: Neighbor & { readonly depth?: unknown }): Parameters<typeof cell>[1] => {
	const depth = neighbor.depth;
	return typeof depth === "object" && depth !== null && "known" in depth
		? (depth.known as Parameters<typeof cell>[1])
		: undefined;
};

export const offsetWellsTable: Part = (context) =>
	table(
		context,
		"offset_wells",
		[
			textColumn(context, "offset_well", { width: 1.6, rowHead: true }),
			textColumn(context, "api_number", { width: 1.4 }),
			textColumn(context, "status", { width: 1.3 }),
			textColumn(context, "evidence", { width: 2.4 }),
		],
		context.well.offsetWells.map((well) =>
			row({
				offset_well: textCell(well.name),
				api_number: textCell(well.api_number),
				status: textCell(well.status),
				evidence: textCell(well.evidence),
			}),
		),
	);
