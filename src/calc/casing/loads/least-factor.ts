import { formula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { factorOf } from "./line.ts";

const inputs = { line: { table: "load and rating" } } as const;
const source = cite("definition");
const validity = "some depth is loaded";

type Row = KnownTable["rows"][number];

const cell = (row: Row, column: string): number => row[column] ?? Number.NaN;

/** The row where a rating stands least above the load; none where nothing loads the pipe that way. */
export const leastRow = (line: KnownTable, rating = "rating"): Row | undefined => {
	let least: { readonly row: Row; readonly factor: number } | undefined;
	for (const row of line.rows) {
		const factor = factorOf({ load: cell(row, "load"), rating: cell(row, rating) });
		if (Number.isFinite(factor) && (least === undefined || factor < least.factor)) least = { row, factor };
	}
	return least?.row;
};

const factorAt = (row: Row | undefined, rating: string): number =>
	row === undefined ? Number.NaN : cell(row, rating) / cell(row, "load");

/** Rating over load where that is least, and whether pipe or connection is the weaker there. */
export const leastFactor = formula({
	id: "casing/least-factor",
	name: "Least design factor",
	expression: "min (rating / load) over the depths that are loaded",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ line }) => {
		const row = leastRow(line);
		const value = factorAt(row, "rating");
		if (row === undefined || row["pipe"] === undefined || row["connection"] === undefined) return value;
		return { value, branch: row["connection"] < row["pipe"] ? "connection" : "pipe" };
	},
});

export const leastFactorOfPipe = formula({
	id: "casing/least-factor-of-pipe",
	name: "Least design factor of the pipe",
	expression: "min (rating of the pipe / load) over the depths that are loaded",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ line }) => factorAt(leastRow(line, "pipe"), "pipe"),
});

export const leastFactorOfConnection = formula({
	id: "casing/least-factor-of-connection",
	name: "Least design factor of the connection",
	expression: "min (rating of the connection / load) over the depths that are loaded",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ line }) => factorAt(leastRow(line, "connection"), "connection"),
});

export const leastFactorDepth = formula({
	id: "casing/least-factor-depth",
	name: "Depth of the least design factor",
	expression: "MD at which rating / load is least",
	source,
	inputs,
	gives: "measured-depth",
	validity,
	compute: ({ line }) => cell(leastRow(line) ?? {}, "md"),
});

const cellFormula = <D extends "pressure" | "pressure-difference" | "force">(
	column: "load" | "rating",
	gives: D,
	kind: string,
) =>
	formula({
		id: `casing/${kind}-${column}-at-least-factor`,
		name: `${column === "load" ? "Load" : "Rating"} at the depth of the least design factor`,
		expression: `${column} where rating / load is least`,
		source,
		inputs,
		gives,
		validity,
		compute: ({ line }) => cell(leastRow(line) ?? {}, column),
	});

export const pressureLoadAtLeast = cellFormula("load", "pressure-difference", "pressure");
export const pressureRatingAtLeast = cellFormula("rating", "pressure", "pressure");
export const forceLoadAtLeast = cellFormula("load", "force", "force");
export const forceRatingAtLeast = cellFormula("rating", "force", "force");
