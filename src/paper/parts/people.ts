import type { Block, Row } from "../../document/blocks.ts";
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

/** Lines to sign on, and room for a seal, left empty. */
export const signature: Part = (context) => {
	const { label } = context.words;
	const line = (key: string): Row => row({ item: textCell(label(key)), entry: { kind: "blank" } });
	const lines = table(
		context,
		"signature",
		[
			textColumn(context, "item", {
				width: 1,
				rowHead: true,
				label: "signed_item",
			}),
			textColumn(context, "entry", { width: 3, label: "signed_entry" }),
		],
		[line("crew.name"), line("phrases.license"), line("crew.signature"), line("columns.date")],
	);
	return [
		{
			kind: "beside",
			share: 0.66,
			left: lines.map((block) => ({ ...block, counted: false as const })),
			right: [
				{
					kind: "sign-in",
					columns: [{ head: label("phrases.seal"), width: 1 }],
					lines: 1,
					height: 84,
				},
			],
		},
	];
};
