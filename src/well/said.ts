import type { Known } from "../cite/known.ts";
import { type Fact, type Message, message, type Said } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";

/** As the engineer wrote it, else as the reader's units print it. */
export const asWritten = (value: Known): Said =>
	value.from.kind === "definition" ? value.from.text.trim() : measured(value.dimension, value.value);

/**
 * A value that nobody typed, in the reader's units.
 *
 * @param value   in the canonical unit of the dimension
 * @param beside  another that is said with it, and from which it must be told apart
 */
export const measured = (dimension: Dimension, value: number, beside?: number): Message =>
	message("well/value", {
		value:
			beside === undefined
				? { dimension, value }
				: { told: { dimension, value }, from: { dimension, value: beside } },
	});

/** `a, b and c` */
export const listOf = (list: readonly Fact[]): Fact => ({ list, joined: "and" });

/** `a, b or c` */
export const choiceOf = (list: readonly Fact[]): Fact => ({ list, joined: "or" });
