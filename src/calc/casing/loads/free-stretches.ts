import type { Known } from "../../../cite/known.ts";
import { columnsOf, SAME_PLACE } from "../../cement/stages.ts";
import type { StringContext } from "./string-frame.ts";

type Depth = Known<"measured-depth">;

/** Stretches of a string that nothing holds between their ends. */
interface FreeStretches {
	readonly free_top: readonly Depth[];
	readonly free_bottom: readonly Depth[];
}

/**
 * Where a string hangs free between hanger and cement, or between two columns of cement. Cement as recorded where it is,
 * else as planned; a string without any is held at its hanger and its shoe alone.
 */
export const freeStretches = ({ well, string }: StringContext): FreeStretches => {
	const { cement } = string;
	const { actual, slurries = [] } = cement ?? {};
	const [first, ...rest] = slurries;
	const ends =
		cement === undefined || first === undefined
			? []
			: columnsOf(
					cement,
					actual?.top?.depth ??
						((actual?.returnsToSurface?.value ?? 0) > 0
							? well.datum.groundLevel
							: rest.reduce((least, { top }) => (top.value < least.value ? top : least), first.top)),
					rest.reduce((most, { bottom }) => (bottom.value > most.value ? bottom : most), first.bottom),
				);
	const free = [...ends, undefined].flatMap((column, i) => {
		const top = ends[i - 1]?.bottom ?? string.top;
		const bottom = column?.top ?? string.shoe;
		return bottom.value - top.value > SAME_PLACE ? [{ top, bottom }] : [];
	});
	return { free_top: free.map(({ top }) => top), free_bottom: free.map(({ bottom }) => bottom) };
};
