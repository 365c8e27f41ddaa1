import type { Path } from "../diagnostics/path.ts";

/** `casing › surface › cement › witness`: entries of lists by their own names where they have one. */
export const namesOf = (path: Path, written: unknown): string => {
	let node = written;
	const names: string[] = [];
	for (const step of path) {
		node = (node as Readonly<Record<string | number, unknown>>)[step];
		names.push(typeof step === "number" ? (ownName(node) ?? String(step + 1)) : step);
	}
	return names.join(" › ");
};

const ownName = (item: unknown): string | undefined => {
	if (typeof item !== "object" || item === null) return undefined;
	const { id, name } = item as { readonly id?: unknown; readonly name?: unknown };
	return typeof id === "string" ? id : typeof name === "string" ? name : undefined;
};
