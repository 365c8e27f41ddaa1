import type { Checked } from "../diagnostics/diagnostic.ts";
import { builtJson, builtJsonIfThere } from "../shipped/built-file.ts";
import { type Catalog, catalogOf, type Tables } from "./catalog.ts";
import type { Jurisdiction } from "./limits/limit.ts";

/*
 * The shipped data as the build read it and found it good: neither YAML nor its forms are gone through again. The
 * build puts this module in the place of `shipped.ts`; a test holds what the two give equal.
 */

let catalog: Checked<Catalog> | undefined;

export const shippedCatalog = (): Checked<Catalog> => {
	catalog ??= { value: catalogOf(builtJson("tables.json") as Tables), diagnostics: [] };
	return catalog;
};

const known = new Map<string, Checked<Jurisdiction>>();

export const shippedRuleSet = (name: string): Checked<Jurisdiction> | undefined => {
	const before = known.get(name);
	if (before !== undefined) return before;
	const value = builtJsonIfThere(name.replace(/\.yaml$/u, ".json")) as Jurisdiction | undefined;
	if (value === undefined) return undefined;
	const read = { value, diagnostics: [] };
	known.set(name, read);
	return read;
};
