import type { Label } from "./label.ts";

/**
 * Labels that a drawing places whatever else must go, by drawing and level of detail. An entry that ends in a space begins
 * the name of each label of a kind: one a string, one a cement top.
 */
export const NEVER_DROPPED = {
	full: [
		"ground level",
		"string ",
		"shoe ",
		"cement ",
		"liner top ",
		"protected water",
		"top perforation",
		"bottom perforation",
		"total depth",
	],
	numbers: [
		"ground level",
		"string ",
		"shoe ",
		"cement ",
		"liner top ",
		"protected water",
		"top perforation",
		"bottom perforation",
		"total depth",
	],
	plain: ["string ", "protected water", "water well ", "gap", "top perforation"],
	"close-up": ["ground level", "string ", "cement ", "depth of base", "protected water"],
	section: ["protected water", "top perforation", "total depth"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

const isNeverDropped = (of: keyof typeof NEVER_DROPPED, id: string): boolean =>
	NEVER_DROPPED[of].some((entry) => (entry.endsWith(" ") ? id.startsWith(entry) : id === entry));

/** The same labels, those of the list kept whatever else must go. */
export const keeping = <L extends Pick<Label, "id" | "keep">>(
	of: keyof typeof NEVER_DROPPED,
	labels: readonly L[],
): L[] => labels.map((label) => ({ ...label, keep: isNeverDropped(of, label.id) }));
