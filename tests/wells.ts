import { readFileSync } from "node:fs";
import type { Results } from "../src/calc/results.ts";
import type { Understanding } from "../src/pipeline.ts";
import { understandText } from "./starters.ts";

const FOLDER = new URL("../fixtures/wells/", import.meta.url);

/** A whole well of `fixtures/wells/`, with texts replaced; each must stand in it once. */
export const understandWell = (
	name: string,
	...edits: readonly (readonly [from: string, to: string])[]
): Understanding => {
	const text = edits.reduce(
		(whole, [from, to]) => {
			const pieces = whole.split(from);
			if (pieces.length !== 2) throw new Error(`"${from}" stands ${pieces.length - 1} times in ${name}`);
			return pieces.join(to);
		},
		readFileSync(new URL(`${name}.yaml`, FOLDER), "utf8"),
	);
	return understandText(text, `${name}.yaml`, FOLDER);
};

/** @throws Error if the well has faults */
export const resultsOfWell = (
	name: string,
	...edits: readonly (readonly [from: string, to: string])[]
): Results => {
	const { findings, diagnostics } = understandWell(name, ...edits);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings.results;
};
