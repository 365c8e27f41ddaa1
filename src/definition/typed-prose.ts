import type * as z from "zod";
import type { Path } from "../diagnostics/path.ts";
import { LANGUAGES, type Language } from "../document/document.ts";
import { definitionSchema } from "./definition.ts";
import { isBlock } from "./fault.ts";
import { isProse } from "./field.ts";
import { alternatives, schemasAt } from "./schema-walk.ts";

/*
 * A person writes what they say as one text, or in the languages of the readers: `{ en: …, es: … }`. Everything behind
 * the definition works with one of them, and a paper puts the reader's own in its place.
 */

/** A text that a person typed, by language. One that is given alone and not named is English. */
export type Typed = Readonly<{ [L in Language]?: string }>;

const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== "";

/** A block of one text in one or more languages, and nothing else. */
const isTyped = (value: unknown): value is Typed => {
	if (!isBlock(value)) return false;
	const entries = Object.entries(value);
	return (
		entries.length > 0 &&
		entries.every(([name, text]) => LANGUAGES.some((each) => each === name) && isText(text))
	);
};

/** Which of a text's languages the rest of the program works with: the first of ours that it has. */
export const workingText = (typed: Typed): string =>
	LANGUAGES.map((language) => typed[language])
		.find((text) => text !== undefined)
		?.trim() ?? "";

/** Whether a person's own words are due at a path. */
const isProseAt = (path: Path): boolean =>
	schemasAt(definitionSchema, path)
		.flatMap(alternatives)
		.some((schema) => isProse(schema as z.ZodType));

/** The tree with each text in one language; what stands in no such form is left for the validation to tell of. */
export const inOneLanguage = (tree: unknown): unknown => {
	const walk = (node: unknown, path: Path): unknown => {
		if (isTyped(node) && isProseAt(path)) return workingText(node);
		if (Array.isArray(node)) return mapped(node, (item, i) => walk(item, [...path, i]));
		if (!isBlock(node)) return node;
		const changed = Object.entries(node).filter(([key, child]) => walk(child, [...path, key]) !== child);
		if (changed.length === 0) return node;
		const made: Record<string, unknown> = Object.assign(Object.create(null), node);
		for (const [key, child] of changed) made[key] = walk(child, [...path, key]);
		return made;
	};
	return walk(tree, []);
};

const mapped = (list: readonly unknown[], of: (item: unknown, i: number) => unknown): readonly unknown[] => {
	const made = list.map(of);
	return made.every((item, i) => item === list[i]) ? list : made;
};

/** Every text of a person in a tree, once. */
export const typedIn = (tree: unknown): readonly Typed[] => {
	const found = new Map<string, Typed>();
	const walk = (node: unknown, path: Path): void => {
		if (isTyped(node) && isProseAt(path)) found.set(workingText(node), node);
		else if (isText(node)) {
			if (!found.has(node.trim()) && isProseAt(path)) found.set(node.trim(), { en: node.trim() });
		} else if (Array.isArray(node)) for (const [i, item] of node.entries()) walk(item, [...path, i]);
		else if (isBlock(node)) for (const [key, child] of Object.entries(node)) walk(child, [...path, key]);
	};
	walk(tree, []);
	return [...found.values()];
};
