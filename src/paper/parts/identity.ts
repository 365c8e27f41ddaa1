import { showPath } from "../../diagnostics/path.ts";
import type { Block } from "../../document/blocks.ts";
import { VERDICTS } from "../../document/verdict.ts";
import { tellSaid } from "../../messages/print.ts";
import type { Well } from "../../well/well.ts";
import { cell, type PaperContext, readerOf, saidCell, shown, textCell } from "../context.ts";
import { asGiven, facts, type Part, row, table, textColumn } from "./part.ts";

/** Latitude, longitude and datum, to a tenth of a foot or so: as agencies ask for it. */
export const surfaceLocation = (site: Well["site"]): string | undefined => {
	const location = site.surface_location;
	return location === undefined
		? undefined
		: `${location.datum}: ${location.latitude.value.toFixed(6)}°, ${location.longitude.value.toFixed(6)}°`;
};

/** Who, which well, which revision, which datum. */
export const identityFacts: Part = (context) => {
	const { identity, datum, site } = context.well;
	const signer = identity.prepared_by;
	return facts(context, [
		["operator", textCell(identity.operator)],
		["well", textCell(identity.name)],
		["api_number", textCell(identity.api_number)],
		["permit", textCell(identity.permit)],
		["lease", textCell(identity.lease)],
		["field", textCell(identity.field)],
		["county", textCell(site.county)],
		["location", textCell(surfaceLocation(site))],
		["class", textCell(asGiven(context, identity.class))],
		["purpose", textCell(asGiven(context, identity.purpose))],
		["state", textCell(asGiven(context, identity.state))],
		["revision", textCell(identity.revisions?.at(-1)?.id)],
		["issued", textCell(identity.issued)],
		["valid_until", textCell(identity.valid_until)],
		[
			"prepared_by",
			textCell([signer?.name, signer?.role, signer?.license, signer?.phone].filter((s) => s).join(", ")),
		],
		["jurisdictions", textCell(appliedRuleSets(context))],
		["ground_elevation", cell(context, datum.groundElevation)],
		[
			"datum",
			{
				kind: "rich",
				children: [
					{ kind: "text", text: `${datum.name}, ` },
					shown(context, datum.aboveGround),
					{ kind: "text", text: ` ${context.words.label("phrases.above_ground")}` },
				],
			},
		],
		["summary", textCell(identity.summary)],
	]);
};

/** Rule sets of law that were applied, each with its source and how far it was compared; one that is not known says so. */
const appliedRuleSets = ({ well, judgement, words, version }: PaperContext): string => {
	const { label } = words;
	const counted = (key: string, n: number): string[] =>
		n === 0 ? [] : [label(`phrases.${key}`).replace("{n}", String(n))];
	const known = judgement.ruleSets
		.filter(({ kind }) => kind !== "practice")
		.map((set) => {
			const compared = [
				...counted("rule_set_certified", set.certified),
				...counted("rule_set_copy", set.publicCopy),
				...counted("rule_set_draft", set.draft),
				...set.byPerson.map(({ by, rules }) =>
					label("phrases.rule_set_person").replace("{n}", String(rules)).replace("{by}", by),
				),
			];
			const source =
				set.file === undefined
					? `${label("phrases.rule_set_shipped")} ${version}`
					: [set.file, ...(set.version === undefined ? [] : [set.version])].join(", ");
			return label("phrases.rule_set_applied")
				.replace("{code}", set.code)
				.replace("{name}", set.name)
				.replace("{source}", source)
				.replace("{rules}", String(set.rules))
				.replace("{compared}", compared.join(", ") || label("phrases.rule_set_none"));
		});
	const unknown = well.site.jurisdictions
		.filter((code) => judgement.unknownJurisdictions.includes(code))
		.map((code) => label("phrases.rule_set_unknown").replace("{code}", code));
	return [...known, ...unknown].join("; ");
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

/** How many checks came out how. */
export const checkTally: Part = (context) => {
	const { counts, findings } = context.judgement;
	if (findings.length === 0) return [];
	return [
		{
			kind: "facts",
			caption: context.words.label("captions.check_tally"),
			columns: 3,
			items: VERDICTS.map((verdict) => ({
				label: context.words.label(`verdicts.${verdict}`),
				value: { kind: "quantity", dimension: "count", value: counts[verdict] },
			})),
		},
		...unknownRules(context),
	];
};

/** What the jurisdictions ask for and the definition lacks. */
export const missingInformation: Part = (context) => {
	const asked = context.missing.map((item) => ({
		what: item.what,
		at: showPath(item.at),
		asked: item.askedBy.map((citation) => tellSaid(citation, readerOf(context))).join("; "),
	}));
	const rows = asked.map((item) =>
		row({ what: saidCell(context, item.what), at: textCell(item.at), asked_by: textCell(item.asked) }),
	);
	if (rows.length === 0)
		return [
			{
				kind: "paragraph",
				children: [
					{
						kind: "text",
						text: context.words.label(
							context.judgement.unknownJurisdictions.length > 0
								? "phrases.nothing_missing_of_known"
								: "phrases.nothing_missing",
						),
					},
				],
			},
		];
	return table(
		context,
		"missing_information",
		[
			textColumn(context, "what", { width: 3, rowHead: true }),
			textColumn(context, "at", { width: 2 }),
			textColumn(context, "asked_by", { width: 2.4 }),
		],
		rows,
	);
};

/** Results that could not be had, with what would mend them. */
export const undeterminedTable: Part = (context) =>
	table(
		context,
		"undetermined",
		[
			textColumn(context, "not_worked", { width: 2.4, rowHead: true }),
			textColumn(context, "because_missing", { width: 3.4 }),
			textColumn(context, "at", { width: 2.2 }),
		],
		context.results.undetermined.map((item) =>
			row({
				not_worked: textCell(item.key),
				because_missing: saidCell(context, item.because),
				at: textCell(item.needs.map(showPath).join("; ")),
			}),
		),
		{ dense: true },
	);

export const revisionsTable: Part = (context) =>
	table(
		context,
		"revisions",
		[
			textColumn(context, "revision", { width: 0.7, rowHead: true }),
			textColumn(context, "date", { width: 1 }),
			textColumn(context, "by", { width: 1.2 }),
			textColumn(context, "why", { width: 4 }),
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
			textColumn(context, "at", { width: 2, label: "state_it_at" }),
		],
		context.well.assumptions.map((assumption) =>
			row({
				what: saidCell(context, assumption.what),
				why: saidCell(context, assumption.why),
				at: textCell(showPath(assumption.at)),
			}),
		),
		{ dense: true },
	);
