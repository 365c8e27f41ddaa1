import { cite } from "../cite/source.ts";
import type { HoleDefinition } from "../definition/definition.ts";
import { message } from "../messages/message.ts";
import { assume, type Desk, fault, maybe, placeOf } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { readNamedTable } from "./read-table.ts";
import { asWritten } from "./said.ts";
import type { Datum, DrillingFluid, Hole } from "./well.ts";

/** Hole sections from the surface down; what was drilled stands before what was planned. */
export const resolveHoles = (
	written: readonly HoleDefinition[],
	datum: Datum,
	files: ReadFile,
	desk: Desk,
): readonly Hole[] => {
	const bottoms = written.map(({ to, actual }) => actual?.to ?? to);
	checkOrder(written, bottoms, desk);
	return written.map((each, i): Hole => {
		const washout = each.actual?.washout ?? each.washout?.diameter;
		const fluid = resolveFluid(each);
		return {
			id: each.id,
			diameter: each.diameter,
			top: bottoms[i - 1] ?? datum.groundLevel,
			bottom: bottoms[i] ?? each.to,
			...(each.actual?.to === undefined ? {} : { plannedBottom: each.to }),
			washout:
				washout ??
				assume(desk, {
					id: `washout.${each.id}`,
					at: ["holes", i, "washout", "diameter"],
					what: message("well/washout.what", { each: each.id }),
					why: message("well/washout.why"),
					dimension: "share",
					value: 0,
					source: cite("common-practice"),
				}),
			...(each.actual?.washout === undefined ? maybe("washoutFrom", each.washout?.from) : {}),
			...(each.kick === undefined
				? {}
				: { kick: { intensity: each.kick.intensity, ...maybe("volume", each.kick.volume) } }),
			...maybe("caliper", resolveCaliper(each, i, files, desk)),
			...(fluid === undefined ? {} : { fluid }),
			...maybe("drilling", drillingOf(each)),
		};
	});
};

const CALIPER = {
	md: { dimension: "measured-depth", aliases: ["depth", "measured_depth"] },
	diameter: { dimension: "diameter", aliases: ["caliper", "hole_diameter"] },
} as const;

/** The caliper log of a hole, its rows by depth; rows out of order are a fault. */
const resolveCaliper = (
	{ id, caliper }: HoleDefinition,
	i: number,
	files: ReadFile,
	desk: Desk,
): Hole["caliper"] => {
	if (caliper === undefined) return undefined;
	const at = ["holes", i, "caliper", "file"] as const;
	const read = readNamedTable(caliper.file, at, CALIPER, files, desk, caliper.columns);
	if (read === undefined) return undefined;
	const cells = read.columns.rows.map(({ at }) => at);
	const rows = read.columns.rows.flatMap(({ numbers: { md, diameter } }) =>
		md === undefined || diameter === undefined ? [] : [{ md, diameter }],
	);
	const back = rows.findIndex((row, j) => j > 0 && row.md <= (rows[j - 1]?.md ?? 0));
	const shut = rows.findIndex(({ diameter }) => diameter <= 0);
	const cell = back > 0 ? cells[back]?.md : cells[shut]?.diameter;
	if (rows.length < 2 || back > 0 || shut >= 0)
		return fault(desk, "well/caliper", cell ?? at, {
			what:
				rows.length < 2
					? message("well/caliper.what", { id })
					: back > 0
						? message("well/caliper.caliper-hole-goes-back-up", { id, back: String(back + 1) })
						: message("well/caliper.caliper-hole-has-diameter-nothing", { id }),
			expected: message("well/caliper.expected"),
			...(cell === undefined ? { found: caliper.file } : {}),
			mend: message("well/caliper.mend"),
		});
	return {
		columns: { md: "measured-depth", diameter: "diameter" },
		rows,
		from: { kind: "definition", at, text: caliper.file, file: caliper.file },
	};
};

const drillingOf = ({ drilling }: HoleDefinition): Hole["drilling"] =>
	drilling && {
		...maybe("rate", drilling.rate),
		...maybe("cuttings", drilling.cuttings),
		...maybe("nozzles", drilling.nozzles),
		...maybe("tripSpeed", drilling.trip_speed),
	};

const resolveFluid = ({ fluid, actual }: HoleDefinition): DrillingFluid | undefined => {
	if (fluid === undefined) return undefined;
	const density = actual?.fluid_density ?? fluid.density;
	return {
		kind: fluid.kind,
		...(density === undefined ? {} : { density }),
		...(fluid.plastic_viscosity === undefined ? {} : { plasticViscosity: fluid.plastic_viscosity }),
		...(fluid.yield_point === undefined ? {} : { yieldPoint: fluid.yield_point }),
		...maybe("readings", fluid.readings),
	};
};

const checkOrder = (
	written: readonly HoleDefinition[],
	bottoms: readonly HoleDefinition["to"][],
	desk: Desk,
): void => {
	for (const [i, each] of written.entries()) {
		const above = written[i - 1];
		const bottom = bottoms[i];
		const bottomAbove = bottoms[i - 1];
		if (above === undefined || bottom === undefined || bottomAbove === undefined) continue;
		if (bottom.value <= bottomAbove.value)
			fault(desk, "well/hole-order", placeOf(bottom, ["holes", i, "to"]), {
				what: message("well/hole-order.what", { each: each.id, above: above.id }),
				expected: message("well/hole-order.expected", { bottomAbove: asWritten(bottomAbove) }),
				found: asWritten(bottom),
				mend: message("well/hole-order.mend"),
				related: [
					{
						at: placeOf(bottomAbove, ["holes", i - 1, "to"]),
						label: message("well/hole-order.label", { above: above.id }),
					},
				],
			});
		if (each.diameter.value > above.diameter.value)
			fault(desk, "well/hole-diameter", placeOf(each.diameter, ["holes", i, "diameter"]), {
				what: message("well/hole-diameter.what", { each: each.id, above: above.id }),
				expected: message("well/hole-diameter.expected", { diameter: asWritten(above.diameter) }),
				found: asWritten(each.diameter),
				mend: message("well/hole-diameter.mend"),
				related: [
					{
						at: placeOf(above.diameter, ["holes", i - 1, "diameter"]),
						label: message("well/hole-diameter.label", { above: above.id }),
					},
				],
			});
	}
};
