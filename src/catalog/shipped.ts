import type { Checked } from "../diagnostics/diagnostic.ts";
import type { Catalog } from "./catalog.ts";
import type { Jurisdiction } from "./limits/limit.ts";
import { readJurisdictionText } from "./limits/read-rule-set.ts";
import { loadCatalog } from "./load-catalog.ts";
import { readShippedSeed } from "./seed-file.ts";

/*
 * The shipped data, read from its sources: development and tests. The build puts `shipped-as-built.ts` in this module's
 * place, which gives the same from what the build read and found good.
 */

/** Every shipped table. */
export const shippedCatalog = (): Checked<Catalog> => loadCatalog();

const known = new Map<string, Checked<Jurisdiction>>();

/** A shipped file of limits, by its name under `seeds/`; each is read once. Nothing where there is no such file. */
export const shippedRuleSet = (name: string): Checked<Jurisdiction> | undefined => {
	const before = known.get(name);
	if (before !== undefined) return before;
	const text = readShippedSeed(name);
	if (text === undefined) return undefined;
	const read = readJurisdictionText(text, `seeds/${name}`);
	known.set(name, read);
	return read;
};
