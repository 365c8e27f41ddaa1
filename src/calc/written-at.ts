import type { Known } from "../cite/known.ts";
import type { Place } from "../diagnostics/diagnostic.ts";

/** Where the author wrote a value; a calculated one has no place of its own, and is told at `fallback`. */
export const writtenAt = ({ from }: Pick<Known, "from">, fallback: Place["path"]): Place => {
	if (from.kind !== "definition") return { path: fallback };
	return {
		path: from.at,
		...(from.file === undefined ? {} : { file: from.file }),
		...(from.range === undefined ? {} : { range: from.range }),
	};
};

/** A pressure as its author wrote it; a calculated one in whole psi, rounded as its message needs. */
export const pressureAsWritten = (pressure: Known, rounded: (psi: number) => number = Math.round): string =>
	pressure.from.kind === "definition" ? pressure.from.text.trim() : `${rounded(pressure.value)} psi`;
