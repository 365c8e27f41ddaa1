import type { Checked } from "../../diagnostics/diagnostic.ts";
import { readYaml } from "../../source/read-yaml.ts";
import type { Jurisdiction } from "./limit.ts";
import { readJurisdiction } from "./read-jurisdiction.ts";

/** A file of limits, from its text. */
export const readJurisdictionText = (text: string, file: string): Checked<Jurisdiction> => {
	const read = readYaml(text, file);
	if (read.value === undefined) return { diagnostics: read.diagnostics };
	const found = readJurisdiction(read.value.value, file);
	return { ...found, diagnostics: [...read.diagnostics, ...found.diagnostics] };
};
