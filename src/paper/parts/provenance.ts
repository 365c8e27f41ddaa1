import type { Given } from "../../cite/known.ts";
import { isTable } from "../../cite/known.ts";
import type { SourceKey } from "../../cite/source-keys.ts";
import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { EVERY_FORMULA } from "../../rules/every-formula.ts";
import type { PaperContext } from "../context.ts";
import type { Part } from "./part.ts";

/** Topics of the methods, in the order of the work; loads of trucks, what the public is told, and room to a limit are no matter of it. */
const TOPICS = [
	"depths",
	"trajectory",
	"site",
	"pressure",
	"casing",
	"cement",
	"isolation",
	"stimulation",
	"safety",
] as const;

const text = (words: string): Inline => ({ kind: "text", text: words });
const bold = (words: string): Inline => ({ kind: "strong", children: [text(words)] });

/** Lines of a list that is looked up, small, down two columns. */
const lookedUp = (paragraphs: readonly (readonly Inline[])[]): readonly Block[] =>
	paragraphs.length === 0
		? []
		: [
				{
					kind: "columns",
					blocks: paragraphs.map((children): Block => ({ kind: "paragraph", tone: "note", children })),
				},
			];

const heading = (context: PaperContext, label: string): Block => ({
	kind: "heading",
	level: 3,
	text: context.words.label(`captions.${label}`),
});

/**
 * The methods behind the results by topic, under the number of the source that each is from; expressions and values
 * travel in the data file.
 */
export const methods: Part = (context) => {
	const number = new Map(sourceKeys(context).map((key, i) => [key, i + 1]));
	const byTopic = new Map<string, Map<number, Set<string>>>();
	for (const value of context.index.byKey.values()) {
		if (isTable(value) || value.from.kind !== "worked") continue;
		const { formula: id, source } = value.from;
		const topic = id.split("/")[0] ?? "";
		const formula = EVERY_FORMULA.get(id);
		if (formula === undefined || !TOPICS.some((each) => each === topic)) continue;
		const of = byTopic.get(topic) ?? new Map<number, Set<string>>();
		const at = number.get(source.key) ?? 0;
		byTopic.set(
			topic,
			of.set(at, (of.get(at) ?? new Set()).add(context.words.formulaName(id, formula.name))),
		);
	}
	const paragraphs = TOPICS.flatMap((topic) => {
		const of = byTopic.get(topic);
		if (of === undefined) return [];
		return [
			[
				bold(`${context.words.label(`method_topics.${topic}`)}. `),
				...[...of]
					.toSorted(([a], [b]) => a - b)
					.flatMap(([at, names], i) => [
						text(i === 0 ? "" : " "),
						bold(`[${at === 0 ? "–" : at}]`),
						text(` ${[...names].join("; ")}.`),
					]),
			],
		];
	});
	return paragraphs.length === 0
		? []
		: [
				heading(context, "methods"),
				{ kind: "paragraph", tone: "note", children: [text(context.words.label("notes.methods"))] },
				...lookedUp(paragraphs),
			];
};

const isSeveral = (given: Given): given is Extract<Given, readonly unknown[]> => Array.isArray(given);

const sourceText = (key: SourceKey, context: PaperContext): string => {
	const { authors, publisher, title, year } = context.sources[key];
	return [authors ?? publisher, title, year].filter((part) => part !== undefined).join(", ");
};

/** Every source that a formula, a catalogue value or a constant was taken from, by its key. */
const sourceKeys = (context: PaperContext): readonly SourceKey[] => {
	const keys = new Set<SourceKey>();
	// Values share their inputs, so that walking each path to them would take time without end.
	const seen = new Set<Given>();
	const visit = (given: Given): void => {
		if (seen.has(given)) return;
		seen.add(given);
		if (isSeveral(given)) {
			for (const term of given) visit(term);
			return;
		}
		const { from } = given;
		if (from.kind === "catalogue" || from.kind === "constant" || from.kind === "worked")
			keys.add(from.source.key);
		if (from.kind === "worked") for (const input of Object.values(from.inputs)) visit(input);
	};
	for (const value of context.index.byKey.values()) visit(value);
	return [...keys].toSorted();
};

/** The sources by number; a star marks one that was known by a copy or from memory. */
export const references: Part = (context) => {
	const sources = sourceKeys(context);
	const lines = sources.map((key, i) => {
		const read = ["read", "read in part", "principle"].includes(context.sources[key].howKnown);
		return [bold(`[${i + 1}]`), text(` ${sourceText(key, context)}${read ? "" : " *"}`)];
	});
	return lines.length === 0
		? []
		: [
				heading(context, "references"),
				{ kind: "paragraph", tone: "note", children: [text(context.words.label("notes.references"))] },
				...lookedUp(lines),
			];
};
