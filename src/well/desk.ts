import type { Catalog } from "../catalog/catalog.ts";
import type { Known } from "../cite/known.ts";
import type { SourceRef } from "../cite/source.ts";
import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import type { Said } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import { quantity } from "../units/quantity.ts";
import type { Assumption } from "./well.ts";

/** What the topics share while a well is being understood: the catalogue, and where faults and assumptions gather. */
export interface Desk {
	readonly catalog: Catalog;
	readonly faults: Diagnostic[];
	readonly assumptions: Assumption[];
}

/** Files a fault at a place of the definition and gives nothing, so that a topic can `return fault(…)`. */
export const fault = (desk: Desk, code: Code, at: Path | Place, telling: Telling): undefined => {
	const { source } = telling;
	const told = source === undefined ? telling : { ...telling, source: sourceInWords(source, desk.catalog) };
	desk.faults.push(diagnose(code, isPlace(at) ? at : { path: at }, told));
	return undefined;
};

/** The key of a source with what it stands for; what is no key is left as it is. */
const sourceInWords = (key: string, { sources }: Catalog): string => {
	const source = Object.values(sources).find((each) => each.key === key);
	return source === undefined ? key : `${key}: ${source.authors ?? source.publisher ?? ""}, ${source.title}`;
};

const isPlace = (at: Path | Place): at is Place => "path" in at;

/** Places that a fault already speaks of, where it stands or where it points to. */
export const spokenOf = ({ faults }: Desk): ReadonlySet<string> =>
	new Set(
		faults.flatMap(({ at, related = [] }) => [
			pathKey(at.path),
			...related.map((each) => pathKey(each.at.path)),
		]),
	);

/** Where a value was written; a value that was not typed has only the place given. */
export const placeOf = (value: Known | undefined, otherwise: Path): Place => {
	if (value?.from.kind !== "definition") return { path: otherwise };
	const { at, file, range } = value.from;
	return { path: at, ...maybe("file", file), ...maybe("range", range) };
};

interface Assumed<D extends Dimension> {
	readonly id: string;
	readonly at: Path;
	readonly what: Said;
	readonly why: Said;
	readonly dimension: D;
	/** In the canonical unit. */
	readonly value: number;
	readonly source?: SourceRef;
}

/** Fills a gap with a value, and records that it was filled. */
export const assume = <D extends Dimension>(desk: Desk, assumed: Assumed<D>): Known<D> => {
	const { id, at, what, why, dimension, source } = assumed;
	const cited = source === undefined ? {} : { source };
	const value: Known<D> = {
		dimension,
		value: quantity(dimension, assumed.value),
		from: { kind: "assumed", id, ...cited },
	};
	desk.assumptions.push({ id, at, what, why, value, ...cited });
	return value;
};

/** Records an assumption that is a word rather than a value. */
export const assumeWord = <W extends string>(
	desk: Desk,
	word: W,
	assumption: Omit<Assumption, "value">,
): W => {
	desk.assumptions.push(assumption);
	return word;
};

/** Depths that differ by less are one place: a rounding of the tally, not a gap [ft]. */
export const SAME_DEPTH = 0.5;

/** An entry where there is a value, and none where there is not. */
export const maybe = <K extends string, V>(key: K, value: V | undefined): { readonly [P in K]?: V } =>
	value === undefined ? {} : ({ [key]: value } as { readonly [P in K]: V });
