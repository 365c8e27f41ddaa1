import type { Block } from "../../document/blocks.ts";
import { readerPaperOf } from "../../document/document.ts";
import { type PaperContext, textCell } from "../context.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Contacts that may appear in this paper: those without a list of papers, or with this one in it. */
export const contactsFor = (context: PaperContext): Block[] =>
	table(
		context,
		"contacts",
		[
			textColumn(context, "who", { width: 2, rowHead: true }),
			textColumn(context, "by", { width: 2, label: "name" }),
			textColumn(context, "phone", { width: 1.6 }),
		],
		(context.well.safety?.contacts ?? [])
			.filter(
				(contact) => contact.papers === undefined || contact.papers.includes(readerPaperOf(context.paper)),
			)
			.map((contact) =>
				row({ who: textCell(contact.role), by: textCell(contact.name), phone: textCell(contact.phone) }),
			),
	);

export const publicContacts: Part = (context) => {
	const agency = context.well.agency;
	const rows = contactsFor(context);
	if (agency?.phone === undefined) return rows;
	const first = rows[0];
	const line = row({
		who: textCell(context.words.label("phrases.agency")),
		by: textCell(agency.name),
		phone: textCell(agency.phone),
	});
	if (first?.kind !== "table")
		return table(
			context,
			"contacts",
			[
				textColumn(context, "who", { width: 2, rowHead: true }),
				textColumn(context, "by", { width: 2, label: "name" }),
				textColumn(context, "phone", { width: 1.6 }),
			],
			[line],
		);
	return [{ ...first, rows: [...first.rows, line] }];
};

/** A line to sign on, left empty. */
export const signature: Part = (context) => [
	{
		kind: "sign-in",
		columns: [
			{ head: context.words.label("crew.name"), width: 2 },
			{ head: context.words.label("phrases.license"), width: 1.4 },
			{ head: context.words.label("crew.signature"), width: 2.4 },
			{ head: context.words.label("columns.date"), width: 1.2 },
		],
		lines: 2,
	},
];
