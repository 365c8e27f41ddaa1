import { fileSlug } from "../../document/file-slug.ts";
import { type PaperContext, textCell } from "../context.ts";
import { paperName } from "../paper-name.ts";
import { facts, type Part, row, table, textColumn } from "./part.ts";

/** To whom, about which well and permit, from whom. */
export const transmittalFacts: Part = (context) => {
	const { identity, agency, site } = context.well;
	const { label } = context.words;
	const person = identity.technical_contact ?? identity.prepared_by;
	return facts(
		context,
		[
			["sent_to", textCell(agency?.name ?? label("phrases.agency"))],
			["issued", textCell(identity.issued)],
			["well", textCell(identity.name)],
			["api_number", textCell(identity.api_number)],
			["permit", textCell(identity.permit)],
			["county", textCell(site.county)],
			["operator", textCell(identity.operator)],
			[
				"technical_contact",
				textCell([person?.name, person?.role, person?.phone].filter((part) => part).join(", ")),
			],
		],
		{ columns: 2 },
	);
};

/** What is sent: each file with what it is. */
export const enclosures: Part = (context) => {
	const { label } = context.words;
	const slug = fileSlug(context.well.identity.name);
	const file = (paper: "regulator" | "regulator-appendix"): string =>
		`${paperName(context, { paper, language: context.words.language, units: context.units })}.pdf`;
	const line = (what: string, name: string) =>
		row({
			enclosure: textCell(label(`enclosures.${what}`)),
			file: textCell(name),
		});
	return table(
		context,
		"enclosures",
		[
			textColumn(context, "enclosure", { width: 3, rowHead: true }),
			textColumn(context, "file", { width: 3 }),
		],
		[
			line("attachment", file("regulator")),
			line("appendices", file("regulator-appendix")),
			line("definition", `${slug}.definition.yaml`),
			line("results", `${slug}.results.json`),
		],
	);
};

/** Who sends it, to sign. */
export const transmittalSignature: Part = (context: PaperContext) => [
	{
		kind: "sign-in",
		columns: [
			{ head: context.words.label("crew.name"), width: 2 },
			{ head: context.words.label("phrases.title_held"), width: 1.8 },
			{ head: context.words.label("crew.signature"), width: 2.4 },
			{ head: context.words.label("columns.date"), width: 1.2 },
		],
		lines: 1,
		height: 34,
	},
];
