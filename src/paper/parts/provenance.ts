import type { Given } from "../../cite/known.ts";
import { isTable } from "../../cite/known.ts";
import type { SourceKey } from "../../cite/source-keys.ts";
import { EVERY_FORMULA } from "../../rules/every-formula.ts";
import { type PaperContext, textCell } from "../context.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Topics of the methods, in the order of the work; loads of trucks and what the public is told are no matter of this paper. */
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
	"rules",
] as const;

/** The methods behind the results by topic, each with the number of its source; expressions and values travel in the data file. */
export const methods: Part = (context) => {
	const sources = sourceKeys(context);
	const number = new Map(sources.map((key, i) => [key, i + 1]));
	const byTopic = new Map<string, Map<string, string>>();
	for (const value of context.index.byKey.values()) {
		if (isTable(value) || value.from.kind !== "worked") continue;
		const { formula: id, source } = value.from;
		const topic = id.split("/")[0] ?? "";
		const formula = EVERY_FORMULA.get(id);
		if (formula === undefined || !TOPICS.some((each) => each === topic)) continue;
		const of = byTopic.get(topic) ?? new Map<string, string>();
		byTopic.set(topic, of);
		of.set(
			context.words.formulaName(id, formula.name),
			`${context.words.formulaName(id, formula.name)} [${number.get(source.key) ?? "–"}]`,
		);
	}
	return table(
		context,
		"methods",
		[textColumn(context, "topic", { width: 1, rowHead: true }), textColumn(context, "methods", { width: 7 })],
		TOPICS.flatMap((topic) => {
			const of = byTopic.get(topic);
			return of === undefined
				? []
				: [
						row({
							topic: textCell(context.words.label(`method_topics.${topic}`)),
							methods: textCell([...of.values()].join("; ")),
						}),
					];
		}),
		{ dense: true, note: "methods" },
	);
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
	const rows = sourceKeys(context).map((key, i) => {
		const read = ["read", "read in part", "principle"].includes(context.sources[key].howKnown);
		return row({
			reference: textCell(`[${i + 1}]`),
			source: textCell(`${sourceText(key, context)}${read ? "" : " *"}`),
		});
	});
	return table(
		context,
		"references",
		[
			textColumn(context, "reference", { width: 0.4, rowHead: true }),
			textColumn(context, "source", { width: 8 }),
		],
		rows,
		{ dense: true, note: "references" },
	);
};
