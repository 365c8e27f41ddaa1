import type { CasingString, PipeSection } from "../../well/well.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const RATING = { nearest: 10 } as const;
const JOINT = { nearest: 1000 } as const;

export const holesTable: Part = (context) =>
	table(
		context,
		"holes",
		[
			textColumn(context, "hole", { width: 1.4, rowHead: true }),
			quantityColumn(context, "hole_diameter", "diameter", { style: { pipeSize: true } }),
			quantityColumn(context, "from", "measured-depth"),
			quantityColumn(context, "to", "measured-depth"),
			quantityColumn(context, "washout", "share", { style: { decimals: 0 } }),
			textColumn(context, "washout_from", { width: 1.5 }),
			textColumn(context, "fluid", { width: 2 }),
			quantityColumn(context, "density", "density"),
		],
		context.well.holes.map((hole) =>
			row({
				hole: textCell(named(context, hole.id)),
				hole_diameter: cell(context, hole.diameter),
				from: cell(context, hole.top),
				to: cell(context, hole.bottom),
				washout: cell(context, hole.washout),
				washout_from: textCell(hole.washoutFrom),
				fluid: textCell(hole.fluid?.kind),
				density: cell(context, hole.fluid?.density),
			}),
		),
	);

const sections = (context: PaperContext): { string: CasingString; section: PipeSection }[] =>
	context.well.strings.flatMap((string) => string.sections.map((section) => ({ string, section })));

const nameOf = (context: PaperContext, string: CasingString, section: PipeSection): string =>
	string.sections.length === 1 ? named(context, string.id) : `${named(context, string.id)} ${section.number}`;

/** What is run: one row a run of pipe. */
export const casingTable: Part = (context) =>
	table(
		context,
		"casing",
		[
			textColumn(context, "string", { width: 1.5, rowHead: true }),
			quantityColumn(context, "od", "diameter", { style: { pipeSize: true } }),
			quantityColumn(context, "weight", "linear-weight"),
			quantityColumn(context, "wall", "diameter"),
			quantityColumn(context, "drift", "diameter"),
			textColumn(context, "grade", { width: 0.8 }),
			textColumn(context, "connection", { width: 1.1 }),
			textColumn(context, "condition", { width: 0.8 }),
			quantityColumn(context, "from", "measured-depth"),
			quantityColumn(context, "to", "measured-depth"),
			quantityColumn(context, "to_tvd", "true-vertical-depth"),
		],
		sections(context).map(({ string, section }) => {
			const computed = context.results.casing[string.id]?.sections.find((s) => s.number === section.number);
			return row({
				string: textCell(nameOf(context, string, section)),
				od: cell(context, section.outsideDiameter),
				weight: cell(context, section.nominalWeight),
				wall: cell(context, section.wall),
				drift: cell(context, section.drift),
				grade: textCell(section.grade),
				connection: textCell(section.connection),
				condition: textCell(asGiven(context, section.condition)),
				from: cell(context, section.top),
				to: cell(context, section.bottom),
				to_tvd: cell(context, computed?.bottom.tvd),
			});
		}),
		{ dense: true },
	);

/** What it can bear, unfactored, with the collapse regime named. */
export const ratingsTable: Part = (context) =>
	table(
		context,
		"ratings",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			quantityColumn(context, "internal_yield", "pressure", { style: RATING }),
			quantityColumn(context, "coupling_internal_yield", "pressure", {
				style: RATING,
				width: 1.1,
			}),
			quantityColumn(context, "ductile_rupture", "pressure", { style: RATING }),
			quantityColumn(context, "collapse", "pressure", { style: RATING }),
			textColumn(context, "regime", { width: 0.9 }),
			quantityColumn(context, "body_yield", "force", { style: JOINT }),
			quantityColumn(context, "joint_strength", "force", { style: JOINT }),
			quantityColumn(context, "capacity", "capacity"),
		],
		sections(context).flatMap(({ string, section }) => {
			const computed = context.results.casing[string.id]?.sections.find((s) => s.number === section.number);
			if (!computed) return [];
			const from = computed.collapse.from;
			return [
				row({
					string: textCell(nameOf(context, string, section)),
					internal_yield: cell(context, computed.internal_yield),
					coupling_internal_yield: cell(context, computed.coupling_internal_yield),
					ductile_rupture: cell(context, computed.ductile_rupture),
					collapse: cell(context, computed.collapse),
					regime: textCell(from.kind === "worked" ? from.branch : undefined),
					body_yield: cell(context, computed.body_yield),
					joint_strength: cell(context, computed.joint_strength),
					capacity: cell(context, computed.capacity),
				}),
			];
		}),
		{ dense: true, note: "ratings" },
	);

export const stringFacts: Part = (context) =>
	table(
		context,
		"strings",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			quantityColumn(context, "length", "length"),
			quantityColumn(context, "joints", "count"),
			quantityColumn(context, "weight_in_air", "force", { style: JOINT }),
			quantityColumn(context, "mud_at_shoe", "pressure"),
			quantityColumn(context, "fracture_at_shoe", "pressure"),
			quantityColumn(context, "clearance", "diameter", { width: 1.1 }),
		],
		Object.values(context.results.casing).map((casing) =>
			row({
				string: textCell(named(context, casing.id)),
				length: cell(context, casing.length),
				joints: cell(context, casing.joints),
				weight_in_air: cell(context, casing.weight_in_air),
				mud_at_shoe: cell(context, casing.mud_hydrostatic_at_shoe),
				fracture_at_shoe: cell(context, casing.fracture_pressure_at_shoe),
				clearance: cell(context, casing.hole_clearance),
			}),
		),
	);

export const centralizersTable: Part = (context) =>
	table(
		context,
		"centralizers",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "centralizer_kind", { width: 1.4 }),
			quantityColumn(context, "from", "measured-depth"),
			quantityColumn(context, "to", "measured-depth"),
			quantityColumn(context, "every_joints", "count"),
		],
		context.well.strings.flatMap((string) =>
			string.centralizers.map((run) =>
				row({
					string: textCell(named(context, string.id)),
					centralizer_kind: textCell(asGiven(context, run.kind)),
					from: cell(context, run.top),
					to: cell(context, run.bottom),
					every_joints: cell(context, run.everyJoints),
				}),
			),
		),
	);
