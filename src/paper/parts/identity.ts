import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { decimalDegrees } from "../../units/format.ts";
import type { Well } from "../../well/well.ts";
import { type PaperContext, saidCell, saidInlines, shown, textCell } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { asGiven, facts, type Part, row, table, textColumn } from "./part.ts";
import { appliedRuleSets, ruleSetsInShort } from "./rule-sets.ts";

/** Latitude, longitude and datum, to a tenth of a foot or so: as agencies ask for it. */
export const surfaceLocation = (site: Well["site"]): string | undefined => {
	const location = site.surface_location;
	return location === undefined
		? undefined
		: `${location.datum}: ${decimalDegrees(location.latitude.value)}, ${decimalDegrees(location.longitude.value)}`;
};

/** Which well, on which permit, and from where its depths count; the title block has name, API number and revision, the next page what changed. */
export const identityFacts: Part = (context) => {
	const { identity, datum, site } = context.well;
	return facts(
		context,
		[
			["permit", textCell(identity.permit)],
			["lease", textCell([identity.lease, identity.field].filter((part) => part).join(", "))],
			["county", textCell([site.county, site.legal_location].filter((part) => part).join(", "))],
			["location", textCell(surfaceLocation(site))],
			[
				"class",
				textCell(
					[identity.class, identity.purpose]
						.map((each) => asGiven(context, each))
						.filter((each) => each !== undefined)
						.join(", "),
				),
			],
			[
				"datum",
				{
					kind: "rich",
					children: [
						{ kind: "text", text: `${datum.name}, ` },
						shown(context, datum.aboveGround),
						{
							kind: "text",
							text: ` ${context.words.label("phrases.above_ground")}; ${context.words.label("facts.ground_elevation").toLowerCase()} `,
						},
						shown(context, datum.groundElevation),
					],
				},
			],
			["rule_sets", textCell(ruleSetsInShort(context))],
		],
		{ columns: 1 },
	);
};

/** Who made it, of which issue it is, and whom to ask. */
export const documentStatus: Part = (context) => {
	const { identity } = context.well;
	const person = ({
		name,
		role,
		license,
		phone,
	}: Partial<NonNullable<typeof identity.prepared_by>> = {}): string =>
		[name, role, license, phone].filter((part) => part).join(", ");
	return facts(
		context,
		[
			["document_id", textCell(context.digest)],
			["prepared_by", textCell(person(identity.prepared_by))],
			["technical_contact", textCell(person(identity.technical_contact))],
			["jurisdictions", textCell(appliedRuleSets(context))],
			["summary", textCell(identity.summary)],
		],
		{ columns: 1 },
	);
};

/** A caution for each jurisdiction whose rules are not known here. */
export const unknownRules = ({ judgement, words }: PaperContext): Block[] =>
	judgement.unknownJurisdictions.map((code) => ({
		kind: "callout" as const,
		tone: "caution" as const,
		title: words.label("phrases.no_rules_title"),
		blocks: [
			{
				kind: "paragraph" as const,
				children: [{ kind: "text" as const, text: `${code}: ${words.label("phrases.no_rules")}` }],
			},
		],
	}));

/** What the jurisdictions ask for and the definition lacks; that nothing is lacking, the status of the review says. */
export const missingInformation: Part = (context) => {
	const asked = context.missing.map((item) => ({
		what: item.what,
		asked: item.askedBy.map((citation) => citationText(context, citation)).join("; "),
	}));
	const text = (words: string): Inline => ({ kind: "text", text: words });
	const { label } = context.words;
	if (asked.length === 0) return [];
	return [
		{
			kind: "paragraph",
			children: [
				{ kind: "strong", children: [text(`${label("captions.missing_information")}: `)] },
				...asked.flatMap((item, i): readonly Inline[] => [
					text(i === 0 ? "" : "; "),
					...saidInlines(context, item.what, true),
					text(` (${item.asked})`),
				]),
				text("."),
			],
		},
	];
};

export const revisionsTable: Part = (context) =>
	table(
		context,
		"revisions",
		[
			textColumn(context, "revision", { width: 0.5, rowHead: true }),
			textColumn(context, "date", { width: 1 }),
			textColumn(context, "by", { width: 2 }),
			textColumn(context, "why", { width: 2.4 }),
		],
		(context.well.identity.revisions ?? []).map((revision) =>
			row({
				revision: textCell(revision.id),
				date: textCell(revision.date),
				by: textCell(revision.by),
				why: textCell(revision.why),
			}),
		),
	);

export const assumptionsTable: Part = (context) =>
	table(
		context,
		"assumptions",
		[
			textColumn(context, "what", { width: 3, label: "assumed", rowHead: true }),
			textColumn(context, "why", { width: 3 }),
		],
		context.well.assumptions.map((assumption) =>
			row({
				what: saidCell(context, assumption.what),
				why: saidCell(context, assumption.why),
			}),
		),
		{ dense: true },
	);
