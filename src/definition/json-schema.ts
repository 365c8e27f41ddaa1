import * as z from "zod";
import { LANGUAGES } from "../document/document.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import { DIMENSIONS } from "../units/dimensions.ts";
import { acceptedUnits } from "../units/units-of.ts";
import { definitionSchema } from "./definition.ts";
import { type FieldMeta, fields, isProse } from "./field.ts";
import { alternatives } from "./schema-walk.ts";

/** Why it is asked, what may be written and where it may be shown, as an editor shows them beside the entry. */
const describe = (meta: FieldMeta): string => {
	const units = meta.dimension === undefined ? [] : acceptedUnits(meta.dimension);
	return [
		meta.why,
		`Write ${tellSaid(meta.expected, ENGLISH_READER)}.`,
		...(units.length > 0 && DIMENSIONS[meta.dimension ?? "ratio"].units.length > 1
			? [`Units: ${units.join(", ")}.`]
			: []),
		`May appear in: ${meta.papers.join(", ")}.`,
	].join(" ");
};

/** What may stand in the place of a list of blocks: the file with its rows. */
const TABLE = {
	type: "object",
	title: "Table",
	description: "The rows as CSV or XLSX, in a file beside the definition.",
	properties: { table: { type: "string", pattern: "\\.([cC][sS][vV]|[xX][lL][sS][xX])$" } },
	required: ["table"],
	additionalProperties: false,
};

const isOfBlocks = (list: z.ZodArray): boolean =>
	alternatives(list.element).some((each) => each instanceof z.ZodObject);

/** A person's own words may be given in each language of the readers. */
const inLanguages = (schema: z.core.JSONSchema.BaseSchema): void => {
	const { type, minLength, pattern } = schema;
	const plain = {
		...(type === undefined ? {} : { type }),
		...(minLength === undefined ? {} : { minLength }),
		...(pattern === undefined ? {} : { pattern }),
	};
	for (const name of Object.keys(plain)) delete schema[name];
	schema.anyOf = [
		plain,
		{
			type: "object",
			properties: Object.fromEntries(LANGUAGES.map((language) => [language, { ...plain }])),
			additionalProperties: false,
			minProperties: 1,
		},
	];
};

/**
 * The definition as JSON Schema (draft 2020-12), so that an editor can complete names and tell what each is for. It
 * describes the shape only; units, dates and what belongs together are checked by the tool.
 */
export const definitionJsonSchema = (): Record<string, unknown> =>
	z.toJSONSchema(definitionSchema, {
		io: "input",
		target: "draft-2020-12",
		override: ({ zodSchema, jsonSchema }) => {
			if (zodSchema instanceof z.ZodArray && isOfBlocks(zodSchema)) {
				const { type, items, minItems, ...rest } = jsonSchema;
				for (const key of ["type", "items", "minItems"]) delete jsonSchema[key];
				Object.assign(jsonSchema, { anyOf: [{ type, items, minItems }, TABLE], ...rest });
			}
			const meta = fields.get(zodSchema as unknown as z.ZodType);
			if (meta === undefined) return;
			jsonSchema.title = meta.title;
			jsonSchema.description = describe(meta);
			if (meta.example !== undefined && jsonSchema.type === "string") jsonSchema.examples = [meta.example];
			if (isProse(zodSchema as unknown as z.ZodType)) inLanguages(jsonSchema);
		},
	}) as Record<string, unknown>;
