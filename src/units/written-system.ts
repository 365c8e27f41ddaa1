import { DIMENSIONS, type DimensionDefinition } from "./dimensions.ts";
import type { UnitSystem } from "./format.ts";
import { unitKey } from "./units-of.ts";

const symbolsOf = (system: UnitSystem): ReadonlySet<string> =>
	new Set(
		Object.values<DimensionDefinition>(DIMENSIONS)
			.map((dimension) => dimension[system].unit)
			.filter((symbol) => symbol !== "")
			.map(unitKey),
	);

const FIELD = symbolsOf("field");
const METRIC = symbolsOf("metric");

const QUANTITY = /^[\d\s./-]*\d\s*(?<unit>[^\d\s,;:].*)$/;
/** `8850 ft TVD`: what follows the unit says what the depth is counted from. */
const REFERENCE = / (?:TVD|below ground)$/i;

const textsIn = function* (node: unknown): Generator<string> {
	if (typeof node === "string") yield node;
	else if (typeof node === "object" && node !== null)
		for (const child of Object.values(node)) yield* textsIn(child);
};

/**
 * The unit system that most quantities of a tree of texts are written in; field units where neither leads. Units that
 * both systems share (degrees, minutes) say nothing.
 */
export const writtenSystem = (tree: unknown): UnitSystem => {
	let lead = 0;
	for (const text of textsIn(tree)) {
		const unit = QUANTITY.exec(text.trim().replace(REFERENCE, ""))?.groups?.["unit"];
		const key = unit === undefined ? "" : unitKey(unit);
		if (METRIC.has(key) !== FIELD.has(key)) lead += METRIC.has(key) ? 1 : -1;
	}
	return lead > 0 ? "metric" : "field";
};
