import type { Known } from "../cite/known.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Said } from "../messages/message.ts";
import { asWritten, measured } from "../well/said.ts";

/** Where the author wrote a value; a calculated one has no place of its own, and is told at `fallback`. */
export const writtenAt = ({ from }: Pick<Known, "from">, fallback: Place["path"]): Place => {
	if (from.kind !== "definition") return { path: fallback };
	return {
		path: from.at,
		...(from.file === undefined ? {} : { file: from.file }),
		...(from.range === undefined ? {} : { range: from.range }),
	};
};

/** A pressure as its author wrote it; a calculated one rounded as its message needs [psi]. */
export const pressureAsWritten = (pressure: Known, rounded: (psi: number) => number = Math.round): Said =>
	pressure.from.kind === "definition" ? asWritten(pressure) : measured("pressure", rounded(pressure.value));
