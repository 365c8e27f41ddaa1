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
