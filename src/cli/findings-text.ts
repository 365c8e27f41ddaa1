import type { Known } from "../cite/known.ts";
import { showPath } from "../diagnostics/path.ts";
import { wrap } from "../diagnostics/wrap.ts";
import type { Verdict } from "../document/verdict.ts";
import { stringInSpanish } from "../messages/es/named-places.ts";
import { type Fact, message, type Said } from "../messages/message.ts";
import { capital, type Reader, tell, tellSaid } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { PRINT_WORDS } from "../render/print/print-words.ts";
import { type Finding, isOpen } from "../rules/finding.ts";
import { WORST_VERDICT_FIRST, worstFirst } from "../rules/index.ts";
import { say } from "../rules/reason.ts";

interface FindingsTextOptions {
	readonly width: number;
	readonly reader: Reader;
	/** Also those that are met and those that do not apply. */
	readonly all?: boolean;
	/** Totals only. */
	readonly quiet?: boolean;
}

/** Verdicts a reader has to act on; the rest is counted. */
const TO_ACT_ON: readonly Verdict[] = ["not met", "cannot tell", "needs judgement"];

/** What each limit comes to here, for the terminal: totals, then what is open, the worst first. */
export const findingsText = (file: string, found: Findings, options: FindingsTextOptions): string => {
	const { judgement, missing, well } = found;
	const { reader } = options;
	const words = PRINT_WORDS[reader.language].verdicts;
	const head = [`${file}: ${well.identity.name}`, ...wrappedTotals(judgement, reader, options.width)];
	if (options.quiet === true) return head.join("\n");
	const sorted = worstFirst(judgement.findings);
	const shown = WORST_VERDICT_FIRST.filter((verdict) => options.all === true || TO_ACT_ON.includes(verdict));
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
		tell(message("check/unknown-jurisdiction", { code }), reader),
	]);
	const asked =
		missing.length === 0
			? []
			: [
					"",
					tell(message("check/asked", { count: missing.length }), reader).toUpperCase(),
					...missing.flatMap((item) =>
						indented(
							tellSaid(
								message("check/write-it", {
									what: item.what,
									place: showPath(item.at),
									rules: item.askedBy.map((citation) => tellSaid(citation, reader)).join("; "),
								}),
								reader,
							),
							options.width,
						),
					),
				];
	return [...head, ...groups, ...unknown, ...asked, "", tell(message("check/closing"), reader)].join("\n");
};

/** `Does not meet 0 · Insufficient data 1 · …` */
const totalsLine = ({ counts }: Findings["judgement"], { language }: Reader): string =>
	WORST_VERDICT_FIRST.map(
		(verdict) => `${capital(PRINT_WORDS[language].verdicts[verdict])} ${counts[verdict]}`,
	).join(" · ");

/** The totals in lines of at most `width`, no word parted from its count. */
export const wrappedTotals = (
	judgement: Findings["judgement"],
	reader: Reader,
	width: number,
): readonly string[] => {
	const lines: string[] = [];
	for (const total of totalsLine(judgement, reader).split(" · ")) {
		const longer = `${lines.at(-1) ?? ""} · ${total}`;
		if (lines.length > 0 && longer.length <= width) lines.splice(-1, 1, longer);
		else lines.push(total);
	}
	return lines;
};

/** Number, limit and margin, then where it is written; wrapped under one mark. */
const lines = (finding: Finding, { width, reader }: FindingsTextOptions): readonly string[] => {
	const { cite, subject, reason, required, stop, missing = [] } = finding;
	// Of what is there or is not there is no room to tell.
	const margin = required?.dimension === "count" && required.value <= 1 ? undefined : finding.margin;
	const law =
		cite.kind === "practice" ? tellSaid(message("check/practice"), reader) : tellSaid(cite.citation, reader);
	const stops =
		stop === undefined || !isOpen(finding.verdict)
			? ""
			: ` ${tell(message("check/stops", { jobs: stop.join(", ") }), reader)}`;
	const room =
		margin === undefined ? "" : ` ${tell(message("check/margin", { margin: unlikeNone(margin) }), reader)}`;
	const open = missing.map(({ at }) => showPath(at));
	const at = open.length > 0 ? open : placeOf(finding);
	const place = at.length === 0 ? "" : ` ${tell(message("check/at", { places: at.join(", ") }), reader)}`;
	return indented(
		`${law}, ${subjectOf(subject, reader)}: ${say(reason, reader)}${room}${stops}${place} [${cite.rule}]`,
		width,
	);
};

/** Strings go by their short names. */
const subjectOf = (subject: Said, reader: Reader): string =>
	typeof subject === "string" && reader.language === "es"
		? `TR ${stringInSpanish(subject)}`
		: tellSaid(subject, reader);

/** A margin that is missed by little does not print as none at all. */
const unlikeNone = (margin: Known): Fact => ({
	told: margin,
	from: { dimension: margin.dimension, value: 0 },
});

const placeOf = ({ measured }: Finding): readonly string[] =>
	measured?.from.kind === "definition" ? [showPath(measured.from.at)] : [];

const indented = (text: string, width: number): readonly string[] =>
	wrap(text, width - 4).map((line, i) => (i === 0 ? `  ${line}` : `    ${line}`));
