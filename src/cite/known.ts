import type { Path } from "../diagnostics/path.ts";
import type { Dimension } from "../units/dimensions.ts";
import type { Quantity } from "../units/quantity.ts";
import type { SourceRef } from "./source.ts";

/** A value that knows where it comes from. Everything the tool prints is made of these. */
export interface Known<D extends Dimension = Dimension> {
	readonly dimension: D;
	readonly value: Quantity<D>;
	readonly from: Origin;
}

/** A table of values with one origin: a surveyed or planned path, a sonic log, a load line over depth. */
export interface KnownTable<C extends string = string> {
	readonly columns: Readonly<Record<C, Dimension>>;
	readonly rows: readonly Readonly<Record<C, number>>[];
	readonly from: Origin;
}

/** What a formula may be given: one value, several of a kind (a sum's terms), or a table. */
export type Given = Known | readonly Known[] | KnownTable;

export type Origin =
	/** Typed by the engineer, in the definition or a file it names. */
	| {
			readonly kind: "definition";
			readonly at: Path;
			readonly text: string;
			readonly file?: string;
			/** Of a cell of that file: where it stands. */
			readonly range?: readonly [start: number, end: number];
			/** Of a table read from that file: where each row stands. */
			readonly rows?: readonly (readonly [start: number, end: number])[];
	  }
	/** A row of a table that ships with the tool. */
	| {
			readonly kind: "catalogue";
			readonly table: string;
			readonly row: string;
			readonly column: string;
			readonly source: SourceRef;
			/** Of a limit: the number as its row writes it, with the unit of the rule. */
			readonly text?: string;
	  }
	/** Not given, so assumed; `id` is the key of the recorded assumption. */
	| {
			readonly kind: "assumed";
			readonly id: string;
			readonly source?: SourceRef;
	  }
	/** A physical constant or a convention of a published method. */
	| {
			readonly kind: "constant";
			readonly name: string;
			readonly source: SourceRef;
	  }
	/** Computed. */
	| {
			readonly kind: "worked";
			/** Id of the formula in the register. */
			readonly formula: string;
			readonly source: SourceRef;
			readonly inputs: Readonly<Record<string, Given>>;
			/** Which branch of the published method applied, for example the collapse regime. */
			readonly branch?: string;
	  };

export const isTable = (given: Given): given is KnownTable => "rows" in given;
export const isKnown = (given: unknown): given is Known =>
	typeof given === "object" && given !== null && "dimension" in given && "value" in given && "from" in given;
export const isKnownTable = (given: unknown): given is KnownTable =>
	typeof given === "object" && given !== null && "columns" in given && "rows" in given && "from" in given;

/** A constant of nature or of a published method, to be given to formulas like any other value. */
export const constant = <D extends Dimension>(
	dimension: D,
	value: number,
	name: string,
	source: SourceRef,
): Known<D> => ({
	dimension,
	value: value as Quantity<D>,
	from: { kind: "constant", name, source },
});
