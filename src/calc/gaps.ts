import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import type { Said } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import type { Undetermined } from "./results.ts";

type Needs = Undetermined["needs"];

/** Where a topic writes down what it could not have, so that a gap is never a silent blank or a NaN. */
export interface Gaps {
	readonly undetermined: readonly Undetermined[];
	/** Notes a result that cannot be had for want of an input; gives undefined, so that it can stand in its place. */
	readonly missing: (key: string, because: Said, needs: Needs, wanting?: readonly Said[]) => undefined;
	/** The value, or a noted gap where the formula was outside its validity. */
	readonly finite: <D extends Dimension>(
		key: string,
		value: Known<D>,
		because: Said,
		needs?: Needs,
	) => Known<D> | undefined;
}

export const openGaps = (): Gaps => {
	const undetermined: Undetermined[] = [];
	const missing: Gaps["missing"] = (key, because, needs, wanting) => {
		undetermined.push({ key, because, needs, ...maybe("wanting", wanting) });
		return undefined;
	};
	return {
		undetermined,
		missing,
		finite: (key, value, because, needs = []) =>
			Number.isFinite(value.value) ? value : missing(key, because, needs),
	};
};

/** `{ [name]: value }`, or nothing where there is no value: optional results are absent, not undefined. */
export const maybe = <N extends string, T>(name: N, value: T | undefined): { readonly [K in N]?: T } =>
	(value === undefined ? {} : { [name]: value }) as { readonly [K in N]?: T };

/** The definition's path of a sibling of a value that was written there; `fallback` where it was not written. */
export const siblingOf = (value: Known, key: string, fallback: Path): Path =>
	value.from.kind === "definition" ? [...value.from.at.slice(0, -1), key] : fallback;
