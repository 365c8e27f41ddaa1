import * as z from "zod";
import { READER_PAPERS } from "../document/document.ts";
import { message, type Said } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import type { DepthReference } from "../units/parse-depth.ts";
import type { Audience } from "./audience.ts";

/** What a field is, for everything that describes the definition: editors, the field table, messages, privacy. */
export interface FieldMeta {
	/** Noun phrase, as a form would label it. */
	readonly title: string;
	/** Why it is asked: what the value is used for or who wants it. */
	readonly why: string;
	/** Papers it may appear in; the definition's own `papers:` narrows this. */
	readonly papers: Audience;
	/** What may stand there, in words, for messages: "a pressure with its unit, such as `4300 psi`". */
	readonly expected: Said;
	/** Where the mend depends on it: what sort of YAML value is due. */
	readonly kind?: "block" | "list" | "number";
	readonly dimension?: Dimension;
	/** Of a depth: the places it may be measured from. */
	readonly references?: readonly DepthReference[];
	readonly example?: string;
}

/** Every described field of the definition, by its schema. */
export const fields = z.registry<FieldMeta>();

/** Schemas of what a person says in words of their own. */
const prose = new WeakSet<z.ZodType>();

/** Attaches the description to a schema and gives the schema back. */
export const field = <S extends z.ZodType>(schema: S, meta: FieldMeta): S => {
	fields.add(schema, meta);
	return schema;
};

/** A field that may be left out. */
export const optional = <S extends z.ZodType>(schema: S): z.ZodExactOptional<S> => z.exactOptional(schema);

/** A block of named entries; any other name in it is an error. */
export const group = <Shape extends z.core.$ZodLooseShape>(
	title: string,
	why: string,
	papers: Audience,
	shape: Shape,
) =>
	field(z.strictObject(shape), {
		title,
		why,
		papers,
		expected: message("definition/expected.block"),
		kind: "block",
	});

/** A list with at least one item. */
export const list = <S extends z.ZodType>(title: string, why: string, papers: Audience, item: S) =>
	field(z.array(item).min(1), {
		title,
		why,
		papers,
		expected: message("definition/expected.list"),
		kind: "list",
	});

/** An item of a list or one side of a choice: described as a field of its own. */
export const entry = group;

/** A person's own words: one text, or the same in the languages of the readers (`typed-prose.ts`). */
export const text = (title: string, why: string, papers: Audience, example?: string) => {
	const schema = z.string().trim().min(1);
	prose.add(schema);
	return field(schema, {
		title,
		why,
		papers,
		expected: message("definition/expected.text"),
		...(example === undefined ? {} : { example }),
	});
};

/** Whether a person's own words are due, which may be given in several languages. */
export const isProse = (schema: z.ZodType): boolean => prose.has(schema);

/** One of a closed list of words. */
export const oneOf = <const W extends readonly [string, ...string[]]>(
	words: W,
	title: string,
	why: string,
	papers: Audience,
) =>
	field(z.enum(words), {
		title,
		why,
		papers,
		expected: message("source/one-of", { names: words.join(", ") }),
	});

/** `true` or `false`. */
export const flag = (title: string, why: string, papers: Audience) =>
	field(z.boolean(), { title, why, papers, expected: message("definition/expected.flag") });

/** A calendar date, ISO 8601. */
export const date = (title: string, why: string, papers: Audience) =>
	field(z.iso.date(), {
		title,
		why,
		papers,
		expected: message("definition/expected.date"),
		example: "2026-05-04",
	});

/** A short name that other entries, file names and result keys refer to. */
export const identifier = (title: string, why: string, papers: Audience) =>
	field(z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), {
		title,
		why,
		papers,
		expected: message("definition/expected.identifier"),
		example: "surface",
	});

/** The name of another entry. */
export const reference = (title: string, why: string, papers: Audience) => identifier(title, why, papers);

/** The name of a file that lies beside or below the definition. */
export const file = (title: string, why: string, papers: Audience, example: string) =>
	field(z.string().trim().min(1), {
		title,
		why,
		papers,
		expected: message("definition/expected.file", { example }),
		example,
	});

/** `papers:` on an entry: shows it in fewer papers than it would be by default, never in more. */
export const narrowing = (papers: Audience) =>
	optional(
		list(
			"Papers this may appear in",
			"Narrows the default; keeps persons and private records out of papers they do not belong in.",
			papers,
			z.enum(READER_PAPERS),
		),
	);
