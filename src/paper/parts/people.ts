import type { Block, Row } from "../../document/blocks.ts";
import { readerPaperOf } from "../../document/document.ts";
import { type Inline, text } from "../../document/inline.ts";
import { type PaperContext, textCell } from "../context.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Contacts that may appear in this paper: those without a list of papers, or with this one in it. */
const contactsFor = (context: PaperContext): Block[] =>
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

/** A number of seven digits or more as a link that a telephone dials; what else stands beside it stays words (RFC 3966). */
const dialed = (written: string): readonly Inline[] => {
	const [number] = /\+?\d[\d\s().-]{4,}\d/u.exec(written) ?? [];
	const digits = number?.replaceAll(/[^\d+]/gu, "") ?? "";
	if (number === undefined || digits.length < 7) return [text(written)];
	const at = written.indexOf(number);
	const run: readonly Inline[] = [
		text(written.slice(0, at)),
		{ kind: "link", to: `tel:${digits}`, children: [text(number)] },
		text(written.slice(at + number.length)),
	];
	return run.filter((inline) => inline.kind !== "text" || inline.text !== "");
};

/** Whom to call, a line each: the number before whose it is. */
const callLines = (context: PaperContext): readonly Block[] => {
	const { agency, safety } = context.well;
	const people = (safety?.contacts ?? [])
		.filter(({ papers }) => papers === undefined || papers.includes(readerPaperOf(context.paper)))
		.map(({ role, name, phone }) => ({ phone, who: `${role}, ${name}` }));
	const lines = [
		...people,
		...(agency?.phone === undefined ? [] : [{ phone: agency.phone, who: agency.name }]),
	];
	if (lines.length === 0) return [];
	return [
		{
			kind: "list",
			ordered: false,
			items: lines.map(({ phone, who }) => [
				{
					kind: "paragraph",
					children: [{ kind: "strong", children: dialed(phone) }, text(`  ${who}`)],
				},
			]),
		},
	];
};

/** On page 1 of each edition: behind their own place in a neighbor's, at the foot in the general one. */
export const callFirst: Part = (context) => (context.neighbor === undefined ? [] : callLines(context));
export const callLast: Part = (context) => (context.neighbor === undefined ? callLines(context) : []);

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
