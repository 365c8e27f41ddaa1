import type { FormTopic } from "../../catalog/limits/vocabulary.ts";
import type { Inline } from "../../document/inline.ts";
import type { Finding } from "../../rules/finding.ts";
import { type PaperContext, textCell } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Where the papers have what a form is filled from: a table, or the first section. */
const FOUND_IN: Readonly<Record<FormTopic, string>> = {
	well: "summary",
	casing: "table.casing",
	holes: "table.holes",
	cement: "table.cement_summary",
	slurries: "table.slurries",
	"well path": "table.path",
	formations: "table.formations",
	"water zones": "table.water",
	"casing tests": "table.pressure_tests",
	"shoe tests": "table.shoe_tests",
	preventers: "table.preventers",
	stages: "table.stages",
	additives: "table.additives",
	chemicals: "table.disclosure",
	"water sources": "table.water_sources",
	annuli: "table.annuli",
	neighbors: "table.neighbors",
	"offset wells": "table.offset_wells",
	"exposure radii": "table.exposure_radii",
};

const text = (words: string): Inline => ({ kind: "text", text: words });

/** `casing (Table 7), cement (Table 10)`; what no table of the papers has is named alone. */
const filledFrom = (topics: readonly FormTopic[], { words }: PaperContext): readonly Inline[] =>
	topics.flatMap((topic, i) => [
		text(`${i === 0 ? "" : ", "}${words.label(`form_topics.${topic}`)}`),
		{ kind: "link", to: `#ref:${FOUND_IN[topic]}`, children: [text("\u00a0(@)")] },
	]);

interface Asked {
	readonly form: string;
	readonly topics: readonly FormTopic[];
	readonly citations: readonly string[];
	readonly due: readonly string[];
}

/** Forms that a rule asks for which applies, or whose day is still to come; each once, with everyone who asks for it. */
const formsAsked = (context: PaperContext): readonly Asked[] => {
	const asked = new Map<string, Asked>();
	const seen = new Set<string>();
	for (const { cite, verdict } of context.judgement.findings as readonly Finding[]) {
		const due = context.due.filter(({ rule, sent }) => rule === cite.rule && sent === undefined);
		if ((verdict === "does not apply" && due.length === 0) || seen.has(cite.rule)) continue;
		seen.add(cite.rule);
		for (const form of cite.forms ?? []) {
			const before = asked.get(form);
			const unique = <T>(list: readonly T[]): readonly T[] => [...new Set(list)];
			asked.set(form, {
				form,
				topics: unique([...(before?.topics ?? []), ...(cite.filledFrom ?? [])]),
				citations: unique([...(before?.citations ?? []), citationText(context, cite.citation)]),
				due: unique([...(before?.due ?? []), ...due.map((each) => each.due)]).toSorted(),
			});
		}
	}
	return [...asked.values()].toSorted((a, b) => (a.due[0] ?? "9999").localeCompare(b.due[0] ?? "9999"));
};

/** Forms of the agencies by their own names, each with the tables that it is filled from. */
export const formsTable: Part = (context) =>
	table(
		context,
		"forms",
		[
			textColumn(context, "form", { width: 2.4, rowHead: true }),
			textColumn(context, "filled_from", { width: 4.6 }),
			textColumn(context, "citation", { width: 1.8 }),
			textColumn(context, "due", { width: 0.9 }),
		],
		formsAsked(context).map(({ form, topics, citations, due }) =>
			row({
				form: textCell(form),
				filled_from: { kind: "rich", children: filledFrom(topics, context) },
				citation: textCell(citations.join("; ")),
				due: textCell(due.join(", ")),
			}),
		),
		{ dense: true },
	);
