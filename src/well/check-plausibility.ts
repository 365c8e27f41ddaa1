import { type Band, bandAt } from "../catalog/plausibility.ts";
import { isKnown, type Known } from "../cite/known.ts";
import type { Definition } from "../definition/definition.ts";
import { pathKey } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf, spokenOf } from "./desk.ts";

/**
 * Every value of the definition against the band of its field; outside is a warning with the band and its source.
 *
 * Comes last: a value that is told of already is not told of again.
 */
export const checkPlausibility = (definition: Definition, desk: Desk): void => {
	const told = spokenOf(desk);
	const refused = new Set(
		desk.faults.filter(({ severity }) => severity === "error").map(({ at }) => pathKey(at.path)),
	);
	for (const value of typedValues(definition)) {
		if (value.from.kind !== "definition" || told.has(pathKey(value.from.at))) continue;
		if (refused.has(pathKey(value.from.at.slice(0, -1)))) continue;
		const band = bandAt(desk.catalog.plausibility, value.from.at);
		if (band === undefined || band.dimension !== value.dimension) continue;
		if (value.value < band.low || value.value > band.high) improbable(value, value.from.text, band, desk);
	}
};

const improbable = (value: Known, text: string, band: Band, desk: Desk): void => {
	fault(desk, "well/improbable-value", placeOf(value, band.at), {
		what:
			value.value < band.low
				? message("well/improbable-value.what")
				: message("well/improbable-value.value-is-above-usual-range"),
		expected: message("well/improbable-value.band", {
			low: band.written.low,
			high: band.written.high,
			why: band.why,
		}),
		found: text,
		mend: message("well/improbable-value.mend"),
		source: band.source.key === "common-practice" ? "common practice, no source" : band.source.key,
	});
};

const typedValues = (node: unknown): Known[] => {
	if (typeof node !== "object" || node === null) return [];
	if (isKnown(node)) return [node];
	return Object.values(node).flatMap(typedValues);
};
