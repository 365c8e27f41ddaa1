import * as z from "zod";
import type { Path } from "../diagnostics/path.ts";
import { type FieldMeta, fields } from "./field.ts";

type Schema = z.core.$ZodType;

/** The schema and everything it may stand for: what is inside an optional, before a transform, each side of a choice. */
export const alternatives = (schema: Schema): readonly Schema[] => {
	if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional)
		return alternatives(schema._zod.def.innerType);
	if (schema instanceof z.ZodPipe) return [schema, ...alternatives(schema._zod.def.in).slice(1)];
	if (schema instanceof z.ZodUnion) return [schema, ...schema._zod.def.options.flatMap(alternatives)];
	return [schema];
};

/** The description of a schema, looking through `optional`. */
export const metaOf = (schema: Schema): FieldMeta | undefined => {
	const [outer] = alternatives(schema);
	return outer === undefined ? undefined : fields.get(outer as z.ZodType);
};

const within = (schema: Schema, step: string | number): readonly Schema[] =>
	alternatives(schema).flatMap((each) => {
		const inner = each instanceof z.ZodPipe ? each._zod.def.in : each;
		if (inner instanceof z.ZodObject) {
			const child: Schema | undefined = Object.hasOwn(inner.shape, step) ? inner.shape[step] : undefined;
			return child === undefined ? [] : [child];
		}
		// The inside of a limit is for the rules to read; whatever stands there belongs to it.
		if (inner instanceof z.ZodRecord) return [inner._zod.def.valueType];
		if (inner instanceof z.ZodLazy) return [inner];
		if (typeof step !== "number") return [];
		if (inner instanceof z.ZodArray) return [inner._zod.def.element];
		if (inner instanceof z.ZodTuple) {
			const child: Schema | undefined = inner._zod.def.items[step];
			return child === undefined ? [] : [child];
		}
		return [];
	});

/** Every schema that the definition has at a path: more than one where a choice is open, none where nothing may stand. */
export const schemasAt = (root: Schema, path: Path): readonly Schema[] =>
	path.reduce<readonly Schema[]>(
		(schemas, step) => schemas.flatMap((schema) => within(schema, step)),
		[root],
	);

/** The description of what is due at a path; of an undescribed item, that of the list it stands in. */
export const fieldAt = (root: Schema, path: Path): FieldMeta | undefined => {
	for (let length = path.length; length >= 0; length--) {
		for (const schema of schemasAt(root, path.slice(0, length))) {
			const meta = metaOf(schema);
			if (meta !== undefined) return meta;
		}
	}
	return undefined;
};

/** Names that may stand in the block at a path. */
export const keysAt = (root: Schema, path: Path): readonly string[] => [
	...new Set(
		schemasAt(root, path)
			.flatMap(alternatives)
			.flatMap((schema) => (schema instanceof z.ZodObject ? Object.keys(schema.shape) : [])),
	),
];

/** One field as the walk meets it. */
export interface VisitedField {
	/** `casing[].pipe[].od` */
	readonly pattern: string;
	readonly schema: Schema;
	readonly meta: FieldMeta | undefined;
	readonly required: boolean;
	/** True where nothing further stands below it. */
	readonly leaf: boolean;
}

/** Visits every field of the definition once per place, outer before inner, in the order of the schemas. */
export const everyField = (root: Schema): readonly VisitedField[] => {
	const seen: VisitedField[] = [];
	const visit = (schema: Schema, pattern: string, required: boolean, named: boolean): void => {
		const inside = alternatives(schema).map((each) => (each instanceof z.ZodPipe ? each._zod.def.in : each));
		const objects = inside.filter((each) => each instanceof z.ZodObject);
		const lists = inside.filter((each) => each instanceof z.ZodArray);
		const items = lists.map((each) => each._zod.def.element);
		const blocks = items.some((item) => alternatives(item).some((each) => each instanceof z.ZodObject));
		if (named)
			seen.push({
				pattern,
				schema,
				meta: metaOf(schema),
				required,
				leaf: objects.length === 0 && !blocks,
			});
		for (const object of objects)
			for (const [key, child] of Object.entries<Schema>(object.shape))
				visit(
					child,
					pattern === "" ? key : `${pattern}.${key}`,
					!(child instanceof z.ZodExactOptional || child instanceof z.ZodOptional),
					true,
				);
		for (const item of items) visit(item, `${pattern}[]`, true, false);
	};
	visit(root, "", true, false);
	const patterns = new Set<string>();
	return seen.filter(({ pattern }) => !patterns.has(pattern) && patterns.add(pattern));
};
