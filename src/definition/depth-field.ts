import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { message } from "../messages/message.ts";
import { type DepthReference, parseDepth } from "../units/parse-depth.ts";
import type { Audience } from "./audience.ts";
import { type FieldMeta, field } from "./field.ts";
import { refuse, typed } from "./quantity-field.ts";
import { STAND_IN } from "./stand-ins.ts";

const DIMENSION_OF = {
	measured: "measured-depth",
	vertical: "true-vertical-depth",
	ground: "depth-below-ground",
} as const satisfies Record<DepthReference, string>;

/** A depth with the place it is counted from. */
export type Depth<R extends DepthReference = DepthReference> = {
	readonly [Each in R]: {
		readonly reference: Each;
		readonly depth: Known<(typeof DIMENSION_OF)[Each]>;
	};
}[R];

/** The word `surface`: the hanger for pipe, ground level for cement. Which one is for `well/` to say. */
export interface AtSurface {
	readonly surface: true;
}

/** How a depth says where it is counted from. */
const WORD = { measured: "", vertical: " TVD", ground: " below ground" } as const;

/** Depths from sea level are other figures; no word makes them right. */
const SUBSEA = /ss$|sea/i;

/** The depth as it would be written with each word that the field takes: `640 ft TVD` or `640 ft below ground`. */
const worded = (depth: string, references: readonly DepthReference[]): readonly string[] =>
	references.map((each) => `\`${depth}${WORD[each]}\``);

const WRITTEN = {
	measured: "1185 ft",
	vertical: "8850 ft TVD",
	ground: "984 ft below ground",
} as const;

const describe = (
	references: readonly DepthReference[],
	surface: boolean,
	title: string,
	why: string,
	papers: Audience,
): FieldMeta => {
	const forms = [...references.map((each) => `\`${WRITTEN[each]}\``), ...(surface ? ["`surface`"] : [])];
	const [first = "measured"] = references;
	return {
		title,
		why,
		papers,
		dimension: DIMENSION_OF[first],
		references,
		expected: message("definition/expected.depth", { forms: { list: forms, joined: "or" } }),
		example: WRITTEN[first],
	};
};

const read = <R extends DepthReference>(
	references: readonly R[],
	text: string,
	ctx: z.core.ParsePayload,
): Depth<R> => {
	const found = parseDepth(text);
	const [first = "measured"] = references;
	const dimension = DIMENSION_OF[first];
	if (text === STAND_IN)
		return { reference: first, depth: typed(dimension, Number.NaN, text) } as unknown as Depth<R>;
	if (!found.ok) {
		const accepted = references.map((each) => WRITTEN[each]);
		if (found.reason !== "unknown-reference") return refuse(ctx, text, { dimension, failure: found });
		const depth = text.trim().slice(0, -found.found.length).trim();
		return refuse(ctx, text, {
			dimension,
			failure: { ...found, accepted },
			...(SUBSEA.test(found.found) ? {} : { forms: worded(depth, references) }),
		});
	}
	if (!references.some((each) => each === found.reference)) {
		return refuse(ctx, text, {
			dimension,
			failure: {
				ok: false,
				reason: "unknown-reference",
				found: text.trim(),
				accepted: references.map((each) => WRITTEN[each]),
			},
			...(found.stated ? {} : { bare: true, forms: worded(text.trim(), references) }),
		});
	}
	const known = typed(DIMENSION_OF[found.reference], found.value, text);
	return { reference: found.reference, depth: known } as Depth<R>;
};

/** A depth counted from any of the places named. */
export const depth = <const R extends DepthReference>(
	references: readonly [R, ...R[]],
	title: string,
	why: string,
	papers: Audience,
) =>
	field(
		z.string().transform((text, ctx): Depth<R> => read(references, text, ctx)),
		describe(references, false, title, why, papers),
	);

/** Measured depth along the hole from the datum. */
export const measuredDepth = (title: string, why: string, papers: Audience) =>
	field(
		z.string().transform((text, ctx): Known<"measured-depth"> => read(["measured"], text, ctx).depth),
		describe(["measured"], false, title, why, papers),
	);

/** Measured depth, or the word `surface`. */
export const measuredDepthOrSurface = (title: string, why: string, papers: Audience) =>
	field(
		z
			.string()
			.transform((text, ctx): Known<"measured-depth"> | AtSurface =>
				/^\s*surface\s*$/i.test(text) ? { surface: true } : read(["measured"], text, ctx).depth,
			),
		describe(["measured"], true, title, why, papers),
	);

/** True vertical depth from the datum; the value must say `TVD`. */
export const verticalDepth = (title: string, why: string, papers: Audience) =>
	field(
		z.string().transform((text, ctx): Known<"true-vertical-depth"> => read(["vertical"], text, ctx).depth),
		describe(["vertical"], false, title, why, papers),
	);

/** Straight down: true vertical depth from the datum, or depth below ground; the value says which. */
export const straightDepth = (title: string, why: string, papers: Audience) =>
	depth(["vertical", "ground"], title, why, papers);
