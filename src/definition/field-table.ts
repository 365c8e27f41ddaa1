import { READER_PAPERS } from "../document/document.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import { definitionSchema } from "./definition.ts";
import type { FieldMeta } from "./field.ts";
import { everyField, type VisitedField } from "./schema-walk.ts";

/** `FIELDS.md` keeps the table between these lines. */
export const FIELD_TABLE_BEGIN = "<!-- fields:begin -->";
export const FIELD_TABLE_END = "<!-- fields:end -->";

const cell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\s+/g, " ");

const papers = (meta: FieldMeta): string =>
	meta.papers.length === READER_PAPERS.length ? "all" : meta.papers.join(", ");

const row = ({ pattern, meta, required }: VisitedField): string => {
	if (meta === undefined) return `| \`${pattern}\` | | | |`;
	const what = `${meta.title}. ${meta.why}`;
	return `| \`${pattern}\`${required ? " *" : ""} | ${cell(what)} | ${cell(tellSaid(meta.expected, ENGLISH_READER))} | ${papers(meta)} |`;
};

/**
 * Every field of the definition in Markdown, a table for each topic: path, what it is and why it is asked, how it is
 * written, and the papers it may appear in.
 */
export const fieldTable = (): string => {
	const topics = new Map<string, VisitedField[]>();
	for (const each of everyField(definitionSchema)) {
		const topic = each.pattern.split(/[.[]/, 1)[0] ?? "";
		topics.set(topic, [...(topics.get(topic) ?? []), each]);
	}
	const head =
		"An asterisk marks what must be given wherever the entry that holds it is; `[]` stands for each item of a list.";
	const tables = [...topics].map(([topic, rows]) =>
		[
			`**${topic}**`,
			"",
			"| field | what it is, and why it is asked | written as | papers |",
			"|---|---|---|---|",
			...rows.map(row),
		].join("\n"),
	);
	return [head, ...tables].join("\n\n");
};
