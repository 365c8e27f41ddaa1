import type { Given } from "../../cite/known.ts";
import { SETTING } from "../../definition/audience.ts";
import { definitionSchema } from "../../definition/definition.ts";
import { namesOf } from "../../definition/entry-names.ts";
import { mayAppear } from "../../definition/privacy.ts";
import { fieldAt } from "../../definition/schema-walk.ts";
import { type Path, pathKey } from "../../diagnostics/path.ts";
import type { Block } from "../../document/blocks.ts";
import type { PaperContext } from "../context.ts";
import { asGiven, type Part } from "./part.ts";

/**
 * Every value of the definition that this paper may show and has not shown before: neither as it was written, nor
 * through a number worked from it. What was typed for the file reaches the file.
 */
export const otherInputs: Part = (context) => {
	const printed = placesBehind(context);
	const byEntry = new Map<string, string[]>();
	for (const { path, value } of leavesOf(context.written, [])) {
		if (!mayAppear(context.paper, path, context.written) || isSetting(path)) continue;
		if (isBehind(path, printed) || isSaid(context, value)) continue;
		// Items of a list of bare values go by the name of the list.
		const own = typeof path.at(-1) === "number" ? path.slice(0, -1) : path;
		const [entry, name] = [namesOf(own.slice(0, -1), context.written), String(own.at(-1))];
		const of = byEntry.get(entry) ?? [];
		byEntry.set(entry, [...of, `${name.replaceAll("_", " ")}: ${asGiven(context, String(value))}`]);
	}
	if (byEntry.size === 0) return [];
	return [
		{
			kind: "paragraph",
			tone: "note",
			children: [{ kind: "text", text: context.words.label("notes.other_inputs") }],
		},
		{
			kind: "columns",
			blocks: [...byEntry].map(
				([entry, values]): Block => ({
					kind: "paragraph",
					tone: "note",
					children: [
						{ kind: "strong", children: [{ kind: "text", text: `${entry.replaceAll("_", " ")}: ` }] },
						{ kind: "text", text: `${values.join("; ")}.` },
					],
				}),
			),
		},
	];
};

interface Leaf {
	readonly path: Path;
	readonly value: string | number | boolean;
}

const leavesOf = (node: unknown, path: Path): readonly Leaf[] => {
	if (Array.isArray(node)) return node.flatMap((item, i) => leavesOf(item, [...path, i]));
	if (typeof node === "object" && node !== null)
		return Object.entries(node).flatMap(([key, child]) =>
			key === "papers" ? [] : leavesOf(child, [...path, key]),
		);
	return typeof node === "string" || typeof node === "number" || typeof node === "boolean"
		? [{ path, value: node }]
		: [];
};

/**
 * Settings steer the tool; what they bring about is what the paper shows. A short name joins entries and is no fact.
 * Answers to the public stand in the papers of the public.
 */
const isSetting = (path: Path): boolean =>
	path[0] === "community" ||
	path.at(-1) === "id" ||
	path.some((_, i) => fieldAt(definitionSchema, path.slice(0, i + 1))?.papers === SETTING);

/** Places of the definition that the printed numbers were read from or worked from. */
const placesBehind = ({ index, printedKeys = new Set() }: PaperContext): ReadonlySet<string> => {
	const places = new Set<string>();
	// Values share their inputs, so that walking each path to them would take time without end.
	const seen = new Set<Given>();
	const visit = (given: Given): void => {
		if (seen.has(given)) return;
		seen.add(given);
		if (!("from" in given)) {
			given.forEach(visit);
			return;
		}
		const { from } = given;
		if (from.kind === "definition") places.add(pathKey(from.at));
		if (from.kind === "worked") for (const input of Object.values(from.inputs)) visit(input);
	};
	for (const key of printedKeys) {
		const value = index.byKey.get(key);
		if (value !== undefined) visit(value);
	}
	return places;
};

/** A value may be read as one from an entry above it, as a depth is with what it is measured from. */
const isBehind = (path: Path, printed: ReadonlySet<string>): boolean =>
	path.some((_, i) => printed.has(pathKey(path.slice(0, i + 1))));

/** As it was written, or as the paper's language has it. */
const isSaid = (context: PaperContext, value: Leaf["value"]): boolean =>
	typeof value === "string" &&
	[value, asGiven(context, value) ?? value].some((words) => context.saidElsewhere?.(words) === true);
