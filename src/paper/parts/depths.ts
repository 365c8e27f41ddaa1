import type { DepthMark } from "../../calc/results.ts";
import type { Cell, Column, Row } from "../../document/blocks.ts";
import { cell, type PaperContext, shown } from "../context.ts";
import { named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** MD, TVD and depth below ground of a mark, on the columns of `depthColumns`. */
const depthCells = (
	context: PaperContext,
	mark: DepthMark | undefined,
	prefix = "",
): Record<string, Cell> => ({
	[`${prefix}md`]: cell(context, mark?.md),
	[`${prefix}tvd`]: cell(context, mark?.tvd),
	[`${prefix}below_ground`]: cell(context, mark?.below_ground),
});

const depthColumns = (context: PaperContext, prefix = ""): Column[] => [
	quantityColumn(context, `${prefix}md`, "measured-depth"),
	quantityColumn(context, `${prefix}tvd`, "true-vertical-depth"),
	quantityColumn(context, `${prefix}below_ground`, "depth-below-ground"),
];

/** A hole that climbs past level passes a depth more than once: the measured depth is then the first of several. */
const nameCell = (context: PaperContext, name: string, { passes }: DepthMark): Cell =>
	passes === undefined
		? { kind: "text", text: name }
		: {
				kind: "rich",
				children: [
					{ kind: "text", text: `${name}, ${context.words.label("phrases.first_of")} ` },
					shown(context, passes),
					{ kind: "text", text: ` ${context.words.label("phrases.passes")}` },
				],
			};

/** Every depth that the well is known by, on all three axes, from the surface down. */
export const keyDepths: Part = (context) => {
	const { results, well } = context;
	const marks: { name: string; mark: DepthMark }[] = [];
	const add = (label: string, mark: DepthMark | undefined, of?: string): void => {
		if (mark)
			marks.push({ name: context.words.label(`marks.${label}`) + (of === undefined ? "" : `, ${of}`), mark });
	};
	for (const zone of results.geology.water) add("water_base", zone.base, zone.name);
	add("protected_water_base", results.geology.protected_water_base);
	for (const string of well.strings) {
		const casing = results.casing[string.id];
		add("shoe", casing?.shoe, named(context, string.id));
		const cement = results.cement[string.id];
		if (cement && !cement.to_surface) add("cement_top", cement.top, named(context, string.id));
	}
	for (const formation of results.geology.formations)
		if (well.geology.formations.find((f) => f.id === formation.id)?.target === true)
			add("target_top", formation.top, formation.name);
	add("kickoff", results.trajectory.kickoff);
	add("landing", results.trajectory.landing);
	add("top_perforation", results.stimulation?.top_perforation);
	add("bottom_perforation", results.stimulation?.bottom_perforation);
	add("total_depth", results.trajectory.total_depth);
	const order = marks.toSorted(
		(a, b) => a.mark.tvd.value - b.mark.tvd.value || (a.mark.md?.value ?? 0) - (b.mark.md?.value ?? 0),
	);
	const rows: Row[] = order.map(({ name, mark }) =>
		row({ mark: nameCell(context, name, mark), ...depthCells(context, mark) }),
	);
	return table(
		context,
		"key_depths",
		[textColumn(context, "mark", { width: 3, rowHead: true }), ...depthColumns(context)],
		rows,
		{ note: "depth_axes", dense: true },
	);
};
