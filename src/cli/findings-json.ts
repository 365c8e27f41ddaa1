import type { Known } from "../cite/known.ts";
import { diagnosticsToJson } from "../diagnostics/json.ts";
import { pathKey } from "../diagnostics/path.ts";
import { type Reader, tellSaid } from "../messages/print.ts";
import type { Understanding } from "../pipeline.ts";
import type { Finding } from "../rules/finding.ts";
import { worstFirst } from "../rules/index.ts";
import { say } from "../rules/reason.ts";
import { definitionOf } from "../units/units-of.ts";

/** What `check --format json` says of one file: faults of the writing, then findings about the well, worst first. */
export const findingsJson = (
	file: string,
	{ diagnostics, texts, findings }: Understanding,
	reader: Reader,
): object => ({
	file,
	diagnostics: diagnosticsToJson(diagnostics, texts, reader),
	counts: findings?.judgement.counts ?? {},
	verdicts: worstFirst(findings?.judgement.findings ?? []).map((finding) => findingJson(finding, reader)),
	unknown_jurisdictions: findings?.judgement.unknownJurisdictions ?? [],
	missing:
		findings?.missing.map((item) => ({
			what: tellSaid(item.what, reader),
			at: item.at,
			asked_by: item.askedBy.map((citation) => tellSaid(citation, reader)),
		})) ?? [],
});

const findingJson = (finding: Finding, reader: Reader) => ({
	rule: finding.cite.rule,
	kind: finding.cite.kind,
	check: finding.check,
	subject: tellSaid(finding.subject, reader),
	verdict: finding.verdict,
	...quantityOf("measured", finding.measured),
	...(finding.comparison === undefined ? {} : { comparison: finding.comparison }),
	...quantityOf("required", finding.required),
	...quantityOf("margin", finding.margin),
	...(finding.measured?.from.kind === "definition" ? { at: pathKey(finding.measured.from.at) } : {}),
	because: say(finding.reason, reader),
	requirement: tellSaid(finding.requirement, reader),
	citation: tellSaid(finding.cite.citation, reader),
	standing: finding.cite.standing,
	how_known: finding.cite.howKnown.way,
	...(finding.cite.howKnown.confidence === undefined ? {} : { confidence: finding.cite.howKnown.confidence }),
	text_as_of: finding.cite.textAsOf,
	stops: finding.stop ?? [],
	told_in: finding.tell ?? [],
	missing: finding.missing?.map((item) => ({ what: tellSaid(item.what, reader), at: item.at })) ?? [],
});

const quantityOf = (key: string, known: Known | undefined) =>
	known === undefined ? {} : { [key]: { value: known.value, unit: definitionOf(known.dimension).canonical } };
