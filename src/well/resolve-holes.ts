import { cite } from "../cite/source.ts";
import type { HoleDefinition } from "../definition/definition.ts";
import { assume, asWritten, type Desk, fault, maybe, placeOf } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { readNamedTable } from "./read-table.ts";
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
					what: `The ${each.id} hole is as wide as its bit.`,
					why: "No washout is given; cement volumes then rest on the excess alone.",
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
					? `the caliper of the ${id} hole has fewer than two rows`
					: back > 0
						? `the caliper of the ${id} hole goes back up at row ${back + 1}`
						: `the caliper of the ${id} hole has a diameter of nothing`,
			expected: "rows from the top down, each deeper than the one before, each with a diameter",
			...(cell === undefined ? { found: caliper.file } : {}),
			mend: "sort the rows, and leave out those where the tool was closed",
		});
	return {
		columns: { md: "measured-depth", diameter: "diameter" },
		rows,
		from: { kind: "definition", at, text: caliper.file, file: caliper.file },
	};
};

const resolveFluid = ({ fluid, actual }: HoleDefinition): DrillingFluid | undefined => {
	if (fluid === undefined) return undefined;
	const density = actual?.fluid_density ?? fluid.density;
	return {
		kind: fluid.kind,
		...(density === undefined ? {} : { density }),
		...(fluid.plastic_viscosity === undefined ? {} : { plasticViscosity: fluid.plastic_viscosity }),
		...(fluid.yield_point === undefined ? {} : { yieldPoint: fluid.yield_point }),
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
				what: `the ${each.id} hole does not go deeper than the ${above.id} hole above it`,
				expected: `more than ${asWritten(bottomAbove, "ft")}`,
				found: asWritten(bottom, "ft"),
				mend: "list the holes from the surface down, or correct the depth",
				related: [
					{
						at: placeOf(bottomAbove, ["holes", i - 1, "to"]),
						label: `bottom of the ${above.id} hole`,
					},
				],
			});
		if (each.diameter.value > above.diameter.value)
			fault(desk, "well/hole-diameter", placeOf(each.diameter, ["holes", i, "diameter"]), {
				what: `the ${each.id} hole is wider than the ${above.id} hole above it`,
				expected: `at most ${asWritten(above.diameter, "in")}`,
				found: asWritten(each.diameter, "in"),
				mend: "list the holes from the surface down, or correct the diameter",
				related: [
					{
						at: placeOf(above.diameter, ["holes", i - 1, "diameter"]),
						label: `the ${above.id} hole`,
					},
				],
			});
	}
};
