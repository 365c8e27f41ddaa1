import { showPath } from "../diagnostics/path.ts";
import { wrap } from "../diagnostics/print.ts";
import type { Verdict } from "../document/verdict.ts";
import type { Findings } from "../paper/context.ts";
import { PRINT_WORDS } from "../render/print/print-words.ts";
import type { Finding } from "../rules/finding.ts";
import { worstFirst } from "../rules/index.ts";
import { say } from "../rules/reason.ts";
import { quantityString, type UnitSystem } from "../units/format.ts";

export interface FindingsTextOptions {
	readonly width: number;
	readonly units: UnitSystem;
	/** Also those that are met and those that do not apply. */
	readonly all?: boolean;
	/** Totals only. */
	readonly quiet?: boolean;
}

const words = PRINT_WORDS.en.verdicts;

/** Verdicts a reader has to act on; the rest is counted. */
const TO_ACT_ON: readonly Verdict[] = ["not met", "cannot tell", "needs judgement"];

/** What each limit comes to here, for the terminal: totals, then what is open, the worst first. */
export const findingsText = (file: string, found: Findings, options: FindingsTextOptions): string => {
	const { judgement, missing, well } = found;
	const totals = ORDER.map((verdict) => `${capital(words[verdict])} ${judgement.counts[verdict]}`).join(
		" · ",
	);
	const head = [`${file}: ${well.identity.name}`, totals];
	if (options.quiet === true) return head.join("\n");
	const sorted = worstFirst(judgement.findings);
	const shown = ORDER.filter((verdict) => options.all === true || TO_ACT_ON.includes(verdict));
	const groups = shown.flatMap((verdict) => {
		const of = sorted.filter((finding) => finding.verdict === verdict);
		if (of.length === 0) return [];
		return [
			"",
			`${words[verdict].toUpperCase()} (${of.length})`,
			...of.flatMap((each) => lines(each, options)),
		];
	});
	const unknown = judgement.unknownJurisdictions.flatMap((code) => [
		"",
		`No rules of "${code}" are known here: nothing was judged against them.`,
	]);
	const asked =
		missing.length === 0
			? []
			: [
					"",
					`ASKED FOR AND NOT GIVEN (${missing.length})`,
					...missing.flatMap((item) =>
						indented(
							`${item.what}: write it at ${showPath(item.at)} (${item.askedBy.join("; ")})`,
							options.width,
						),
					),
				];
	return [...head, ...groups, ...unknown, ...asked, "", CLOSING].join("\n");
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const ORDER: readonly Verdict[] = ["not met", "cannot tell", "needs judgement", "met", "does not apply"];

const CLOSING =
	"Results are arithmetic on limits as we know them, not an opinion on whether a law is satisfied.";

/** Number, limit and margin, then where it is written; wrapped under one mark. */
const lines = (finding: Finding, { width, units }: FindingsTextOptions): readonly string[] => {
	const { cite, subject, reason, margin, stop, missing = [] } = finding;
	const law = cite.kind === "practice" ? "practice" : cite.citation;
	const stops = stop === undefined ? "" : ` Stops: ${stop.join(", ")}.`;
	const room = margin === undefined ? "" : ` Margin ${quantityString(margin, units)}.`;
	const open = missing.map(({ at }) => showPath(at));
	const at = open.length > 0 ? open : placeOf(finding);
	const place = at.length === 0 ? "" : ` At ${at.join(", ")}.`;
	return indented(`${law}, ${subject}: ${say(reason, units)}${room}${stops}${place} [${cite.rule}]`, width);
};

const placeOf = ({ measured }: Finding): readonly string[] =>
	measured?.from.kind === "definition" ? [showPath(measured.from.at)] : [];

const indented = (text: string, width: number): readonly string[] =>
	wrap(text, width - 4).map((line, i) => (i === 0 ? `  ${line}` : `    ${line}`));
