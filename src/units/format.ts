/** Units a paper is printed in. The calculation never changes with it. */
export type UnitSystem = "field" | "metric";
