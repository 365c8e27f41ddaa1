import { validate } from "../../src/definition/validate.ts";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import type { SourceText } from "../../src/diagnostics/source-text.ts";
import { decodeText } from "../../src/source/decode-text.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

export interface Faults {
	readonly diagnostics: readonly Diagnostic[];
	readonly sources: ReadonlyMap<string, SourceText>;
}

/** Every fault that the stages in front of the calculation find in a definition. */
export const definitionFaults = (bytes: Uint8Array, name: string): Faults => {
	const decoded = decodeText(bytes, name);
	if (decoded.value === undefined)
		return { diagnostics: decoded.diagnostics, sources: new Map([[name, { text: "" }]]) };
	const read = readYaml(decoded.value, name);
	if (read.value === undefined)
		return { diagnostics: read.diagnostics, sources: new Map([[name, { text: decoded.value }]]) };
	const { text, positions, value } = read.value;
	const checked = validate(value);
	return {
		diagnostics: [...read.diagnostics, ...checked.diagnostics],
		sources: new Map([[name, { text, positions }]]),
	};
};
