import { readFileSync } from "node:fs";
import { STANDARD_INPUT } from "./read-bytes.ts";

const PAD = /^pad[ \t]*:/mu;
const DEFINITION = /^definition[ \t]*:/mu;

/** Whether a file names the wells of a pad. What cannot be looked at is none: reading it says why. */
export const isPadFile = (file: string): boolean => {
	const text = textOf(file);
	return text !== undefined && PAD.test(text) && !DEFINITION.test(text);
};

/** Only a plain file is looked into: a pipe can be read but once. */
export const textOf = (file: string): string | undefined => {
	if (file === STANDARD_INPUT || !/\.ya?ml$/iu.test(file)) return undefined;
	try {
		return readFileSync(file, "utf8");
	} catch {
		return undefined;
	}
};
