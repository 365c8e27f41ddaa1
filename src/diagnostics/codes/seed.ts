import type { CodeEntry } from "../codes.ts";

/** Faults of the tables that ship with the tool. */
export const SEED_CODES = {
	"seed/unreadable": {
		severity: "error",
		title: "A shipped table cannot be read",
		explain:
			"A file under seeds/ is missing or is not well-formed YAML. Nothing is calculated without it, because pipe " +
			"ratings and citations come from there. Restore the file from the package.",
	},
	"seed/shape": {
		severity: "error",
		title: "A shipped table does not have its form",
		explain:
			"A row of a file under seeds/ lacks a column, has one that is not known, or holds something that is not a " +
			"figure where a figure is due. The head of each file says what it holds and in which units.",
	},
	"seed/inconsistent": {
		severity: "error",
		title: "Figures of a shipped table contradict each other",
		explain:
			"Two figures of one row cannot both be right: a drift wider than the pipe's inside, a greatest yield below " +
			"the least. A rating worked from them would be wrong, so the table is refused.",
	},
	"seed/repeated": {
		severity: "error",
		title: "A shipped table lists the same thing twice",
		explain:
			"Two rows of a file under seeds/ carry the same name. Which of them a lookup found would depend on their " +
			"order, so the table is refused.",
	},
} as const satisfies Record<string, CodeEntry>;
