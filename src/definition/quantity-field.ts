import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { message, type Said } from "../messages/message.ts";
import { DIMENSIONS, type Dimension } from "../units/dimensions.ts";
import { parseQuantity, type QuantityFailure } from "../units/parse.ts";
import { quantity } from "../units/quantity.ts";
import type { Audience } from "./audience.ts";
import { type FieldMeta, field } from "./field.ts";
import { STAND_IN } from "./stand-ins.ts";

/** Facts of a value that could not be taken, carried through the schema to the message. */
export interface QuantityFault {
	readonly dimension: Dimension;
	readonly failure: QuantityFailure;
	/** Of a depth without a word: that it reads as a measured depth. */
	readonly bare?: true;
	/** Of a depth: how it could be written, one for each place it may be counted from. */
	readonly forms?: readonly string[];
}

/**
 * A value typed by the engineer. Its place is not known while a schema runs; `locate` fills it in.
 *
 * @param value in the dimension's canonical unit
 */
export const typed = <D extends Dimension>(dimension: D, value: number, text: string): Known<D> => ({
	dimension,
	value: quantity(dimension, value),
	from: { kind: "definition", at: [], text },
});

/** Reports a value that could not be read, from inside a schema's transform. */
export const refuse = (ctx: z.core.ParsePayload, input: string, fault: QuantityFault): never => {
	ctx.issues.push({
		code: "custom",
		input,
		message: fault.failure.reason,
		params: { fault },
	});
	return z.NEVER;
};

/** `a pressure with its unit, such as 4300 psi`. */
export const expectedQuantity = (dimension: Dimension): Said => {
	const quantity = dimension.replace(/-/g, " ");
	const { example } = DIMENSIONS[dimension];
	return /^[aeiou]/.test(quantity)
		? message("definition/expected.vowel", { quantity, example })
		: message("definition/expected.quantity", { quantity, example });
};

const describe = (dimension: Dimension, title: string, why: string, papers: Audience): FieldMeta => ({
	title,
	why,
	papers,
	dimension,
	expected: expectedQuantity(dimension),
	example: DIMENSIONS[dimension].example,
});

const reading =
	<D extends Dimension>(dimension: D) =>
	(text: string, ctx: z.core.ParsePayload): Known<D> => {
		if (text === STAND_IN) return typed(dimension, Number.NaN, text);
		const read = parseQuantity(text, dimension);
		if (!read.ok) return refuse(ctx, text, { dimension, failure: read });
		return typed(dimension, read.value, text);
	};

/** A quantity with its unit, as text; becomes a `Known` in the dimension's canonical unit. */
export const q = <D extends Dimension>(dimension: D, title: string, why: string, papers: Audience) =>
	field(z.string().transform(reading(dimension)), describe(dimension, title, why, papers));

const readPart = (text: string, ctx: z.core.ParsePayload): Known<"share"> => {
	const share = reading("share")(text, ctx);
	if (share.value > 1)
		ctx.issues.push({ code: "custom", input: text, message: "over-whole", params: { fault: "over-whole" } });
	return share;
};

/** A share of something that can only be had once: 100 % at most. */
export const part = (title: string, why: string, papers: Audience) =>
	field(z.string().transform(readPart), describe("share", title, why, papers));

/** A bare number: a factor, a specific gravity. */
export const ratio = (title: string, why: string, papers: Audience) =>
	field(
		z.number().transform((value) => typed("ratio", value, String(value))),
		{
			title,
			why,
			papers,
			dimension: "ratio",
			expected: message("definition/expected.ratio"),
			example: "1.125",
		},
	);

/** A ratio of a part to its whole, written as a number: above 0, to 1. */
export const fraction = (title: string, why: string, papers: Audience) =>
	field(
		z
			.number()
			.positive()
			.max(1)
			.transform((value) => typed("ratio", value, String(value))),
		{
			title,
			why,
			papers,
			dimension: "ratio",
			expected: message("definition/expected.fraction"),
			example: "0.9",
		},
	);

/** A whole number of things, one or more. */
export const count = (title: string, why: string, papers: Audience) =>
	field(
		z
			.int()
			.min(1)
			.transform((value) => typed("count", value, String(value))),
		{
			title,
			why,
			papers,
			dimension: "count",
			expected: message("definition/expected.count"),
			example: "8",
		},
	);

/** A rate of things per time that need not be whole. */
export const tally = (title: string, why: string, papers: Audience) =>
	field(
		z
			.number()
			.positive()
			.transform((value) => typed("count", value, String(value))),
		{
			title,
			why,
			papers,
			dimension: "count",
			expected: message("definition/expected.tally"),
			example: "2.5",
		},
	);

/** Decimal degrees of latitude or longitude, north and east positive. */
export const coordinate = (limit: 90 | 180, title: string, why: string, papers: Audience) =>
	field(
		z
			.number()
			.min(-limit)
			.max(limit)
			.transform((value) => typed("angle", value, String(value))),
		{
			title,
			why,
			papers,
			dimension: "angle",
			expected: message("definition/expected.coordinate", { limit: String(limit) }),
			kind: "number",
			example: limit === 90 ? "31.482716" : "-98.771204",
		},
	);

/** An angle east (positive) or west of north: `3.9 deg east`, `1.2 deg west`, `0.80 deg`. */
export const eastWest = (title: string, why: string, papers: Audience) =>
	field(
		z.string().transform((text, ctx): Known<"angle"> => {
			const [, plain = text, side = "east"] = /^(.*?)\s+(east|west|E|W)\s*$/.exec(text) ?? [];
			const read = parseQuantity(plain, "angle");
			if (!read.ok) return refuse(ctx, text, { dimension: "angle", failure: read });
			return typed("angle", /^w/i.test(side) ? -read.value : read.value, text);
		}),
		{
			title,
			why,
			papers,
			dimension: "angle",
			expected: message("definition/expected.east-west"),
			example: "3.9 deg east",
		},
	);

/** A low and a high share, 100 % at most. */
export const partSpan = (title: string, why: string, papers: Audience) => {
	const end = z.string().transform(readPart);
	return field(z.tuple([end, end]), {
		...describe("share", title, why, papers),
		expected: message("definition/expected.part-span"),
		example: "[10 %, 30 %]",
	});
};
