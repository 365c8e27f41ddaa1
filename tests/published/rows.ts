import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";

/** How a published value was come by. `computed` stands only in `fixtures/computed/`. */
export const HOW_KNOWN = ["read", "memory", "common practice"] as const;

/** An input: one value, several, a table, or the result of an earlier check of the row. */
export type RowInput =
	| string
	| number
	| readonly (string | number)[]
	| { readonly from: string }
	| {
			readonly columns: Readonly<Record<string, readonly [dimension: string, unit: string]>>;
			readonly rows: readonly (readonly number[])[];
	  };

export type RowInputs = Readonly<Record<string, RowInput>>;

export interface Check {
	readonly formula: string;
	readonly name?: string;
	readonly inputs?: RowInputs;
	readonly expected?: string | number;
	/** In the unit that `expected` is written in. */
	readonly tolerance?: number;
	readonly rounded_to?: number;
	readonly branch?: string;
	readonly row?: number;
	readonly column?: string;
	readonly formula_gives?: string | number;
	readonly within?: number;
	readonly why?: string;
}

export interface Row {
	readonly file: string;
	readonly id: string;
	readonly title?: string;
	readonly source: string;
	readonly at: string;
	readonly how_known: string;
	readonly note?: string;
	readonly inputs: RowInputs;
	readonly checks: readonly Check[];
}

const CHECK_KEYS = [
	"formula",
	"name",
	"expected",
	"tolerance",
	"rounded_to",
	"branch",
	"row",
	"column",
	"formula_gives",
	"within",
	"why",
];
const ROW_KEYS = ["id", "title", "source", "at", "how_known", "note", "inputs", "checks"];

type Written = Readonly<Record<string, unknown>>;

/** A row that writes its one check beside its other keys is the same row with a list of one check. */
const normal = (file: string, written: Written): Row => {
	const unknown = Object.keys(written).filter((key) => ![...ROW_KEYS, ...CHECK_KEYS].includes(key));
	if (unknown.length > 0)
		throw new Error(`${file}, row ${written["id"]}: no such key: ${unknown.join(", ")}`);
	const own = Object.fromEntries(Object.entries(written).filter(([key]) => CHECK_KEYS.includes(key)));
	if ("checks" in written && Object.keys(own).length > 0)
		throw new Error(`${file}, row ${written["id"]}: one check beside the row, or a list of checks, not both`);
	const checks = (written["checks"] ?? [own]) as readonly Check[];
	for (const check of checks)
		for (const key of Object.keys(check))
			if (key !== "inputs" && !CHECK_KEYS.includes(key))
				throw new Error(`${file}, row ${written["id"]}: no such key of a check: ${key}`);
	return { inputs: {}, ...written, file, checks } as unknown as Row;
};

/** Every row of every YAML file of a folder of `fixtures/`, but not `unchecked.yaml`. */
export const readRows = (folder: "published" | "computed"): readonly Row[] => {
	const directory = new URL(`../../fixtures/${folder}/`, import.meta.url);
	return readdirSync(directory)
		.filter((name) => name.endsWith(".yaml") && name !== "unchecked.yaml")
		.sort()
		.flatMap((name) => {
			const document = parse(readFileSync(new URL(name, directory), "utf8")) as { rows?: readonly Written[] };
			if (!Array.isArray(document?.rows) || document.rows.length === 0)
				throw new Error(`fixtures/${folder}/${name} holds no rows`);
			return document.rows.map((row) => normal(name, row));
		});
};

/** A formula without an outside value, and the limiting-case or inverse test that stands in for one. */
export interface Unchecked {
	readonly formula: string;
	/** Where that test stands. */
	readonly file: string;
	/** Its name there. */
	readonly test: string;
}

export const readUnchecked = (): readonly Unchecked[] => {
	const url = new URL("../../fixtures/published/unchecked.yaml", import.meta.url);
	return (parse(readFileSync(url, "utf8")) as { unchecked: readonly Unchecked[] }).unchecked;
};
