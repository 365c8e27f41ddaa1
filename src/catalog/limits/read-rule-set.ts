import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
import { readYaml } from "../../source/read-yaml.ts";
import type { Jurisdiction } from "./limit.ts";
import { readJurisdiction } from "./read-jurisdiction.ts";

/** An empty file is told as an empty rules file, not as a well without its definition. */
const ofRules = (fault: Diagnostic): Diagnostic =>
	fault.code === "syntax/empty"
		? { ...fault, expected: message("limits/empty.expected"), mend: message("limits/empty.mend") }
		: fault;

/** A file of limits, from its text. */
export const readJurisdictionText = (text: string, file: string): Checked<Jurisdiction> => {
	const read = readYaml(text, file);
	if (read.value === undefined) return { diagnostics: read.diagnostics.map(ofRules) };
	const found = readJurisdiction(read.value.value, file);
	return { ...found, diagnostics: [...read.diagnostics, ...found.diagnostics] };
};
