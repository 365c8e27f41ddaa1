import type { Known, KnownTable } from "../../src/cite/known.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import type { Quantity } from "../../src/units/quantity.ts";

const from = { kind: "constant", name: "given by a test", source: { key: "definition" } } as const;

/** A value in its canonical unit, as a formula takes it. */
export const given = <D extends Dimension>(dimension: D, value: number): Known<D> => ({
	dimension,
	value: value as Quantity<D>,
	from,
});

/** Stations as [md, inclination, azimuth]. */
export const stationTable = (
	rows: readonly (readonly [md: number, inclination: number, azimuth: number])[],
): KnownTable<"md" | "inclination" | "azimuth"> => ({
	columns: { md: "measured-depth", inclination: "angle", azimuth: "angle" },
	rows: rows.map(([md, inclination, azimuth]) => ({ md, inclination, azimuth })),
	from,
});
