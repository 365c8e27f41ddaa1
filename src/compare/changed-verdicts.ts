import type { Path } from "../diagnostics/path.ts";
import { pathKey } from "../diagnostics/path.ts";
import type { Verdict } from "../document/verdict.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import type { DueItem } from "../rules/due-dates.ts";
import type { Finding, MissingItem } from "../rules/finding.ts";
import { isOpen } from "../rules/finding.ts";
import { worstFirst } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import { sameValue } from "./changed-inputs.ts";
import type { Sides } from "./side.ts";

/** How a finding compares with the same one before. */
export type Turn =
	/** It is open now, or nearer to it, and was not. */
	| "worse"
	/** A rule on a thing that it was not made on before. */
	| "new"
	| "better"
	/** Between verdicts neither of which asks anybody to act. */
	| "other"
	| "gone"
	/** The same verdict, with less or more room to the limit. */
	| "margin";

export interface ChangedVerdict {
	readonly turn: Turn;
	readonly before?: Finding;
	readonly after?: Finding;
}

/** How much a verdict asks of the reader; what is met and what does not apply ask nothing. */
const WEIGHT: Readonly<Record<Verdict, number>> = {
	"not met": 3,
	"cannot tell": 2,
	"needs judgement": 1,
	met: 0,
	"does not apply": 0,
};

const TURNS: readonly Turn[] = ["worse", "new", "better", "other", "gone", "margin"];

/** Findings that changed, the worst first: by what became of them, then as findings are ordered everywhere. */
export const changedVerdicts = (sides: Sides): readonly ChangedVerdict[] => {
	const [was, is] = [byName(sides.before.judgement.findings), byName(sides.after.judgement.findings)];
	const changed = [...new Set([...is.keys(), ...was.keys()])].flatMap((name): readonly ChangedVerdict[] => {
		const [before, after] = [was.get(name), is.get(name)];
		const turn = turnOf(before, after, sides);
		if (turn === undefined) return [];
		return [{ turn, ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) }];
	});
	return TURNS.flatMap((turn) => ordered(changed.filter((each) => each.turn === turn)));
};

const ordered = (changed: readonly ChangedVerdict[]): readonly ChangedVerdict[] => {
	const of = new Map(changed.map((each) => [each.after ?? each.before, each]));
	const findings = [...of.keys()].filter((finding) => finding !== undefined);
	return worstFirst(findings).flatMap((finding) => of.get(finding) ?? []);
};

const turnOf = (
	before: Finding | undefined,
	after: Finding | undefined,
	{ units }: Sides,
): Turn | undefined => {
	if (before === undefined) return after === undefined || WEIGHT[after.verdict] === 0 ? undefined : "new";
	if (after === undefined) return WEIGHT[before.verdict] === 0 ? undefined : "gone";
	const rise = WEIGHT[after.verdict] - WEIGHT[before.verdict];
	if (rise !== 0) return rise > 0 ? "worse" : "better";
	if (after.verdict !== before.verdict) return "other";
	const [old, now] = [before.margin, after.margin];
	if (old === undefined || now === undefined || sameValue(old, now)) return undefined;
	const [one, other] = [old, now].map(({ dimension, value }) => quantityString({ dimension, value }, units));
	return one === other ? undefined : "margin";
};

/** Whether there is more to act on than before. */
export const isWorse = ({ turn, after }: ChangedVerdict): boolean =>
	(turn === "worse" || turn === "new") && after !== undefined && isOpen(after.verdict);

/** By rule, check and thing; of several alike, in their order. */
const byName = (findings: readonly Finding[]): ReadonlyMap<string, Finding> => {
	const named = new Map<string, Finding>();
	for (const finding of findings) {
		const name = `${finding.cite.rule} ${finding.check} ${tellSaid(finding.subject, ENGLISH_READER)}`;
		let number = 1;
		while (named.has(`${name} ${number}`)) number++;
		named.set(`${name} ${number}`, finding);
	}
	return named;
};

/** An input that is asked for and missing now, or was before. */
export interface ChangedGap {
	readonly kind: "added" | "removed";
	readonly what: MissingItem["what"];
	readonly at: Path;
}

/** Inputs that rules ask for and that have come to be missing, then those that have come in. */
export const changedGaps = ({ before, after }: Sides): readonly ChangedGap[] => {
	const nameOf = ({ at, what }: MissingItem) => `${pathKey(at)} ${tellSaid(what, ENGLISH_READER)}`;
	const without = (all: readonly MissingItem[], others: readonly MissingItem[]) => {
		const names = new Set(others.map(nameOf));
		return all.filter((item) => !names.has(nameOf(item)));
	};
	return [
		...without(after.missing, before.missing).map(({ what, at }) => ({ kind: "added" as const, what, at })),
		...without(before.missing, after.missing).map(({ what, at }) => ({ kind: "removed" as const, what, at })),
	];
};

/** A notice or report whose day is another one, that is due now, or that no longer is. */
export interface ChangedDay {
	readonly before?: DueItem;
	readonly after?: DueItem;
}

export const changedDays = ({ before, after }: Sides): readonly ChangedDay[] => {
	const byRule = (due: readonly DueItem[]) =>
		new Map(due.map((item) => [`${item.rule} ${item.number} ${item.event}`, item]));
	const [was, is] = [byRule(before.due), byRule(after.due)];
	return [...new Set([...is.keys(), ...was.keys()])].flatMap((name): readonly ChangedDay[] => {
		const [old, now] = [was.get(name), is.get(name)];
		if (old?.due === now?.due) return [];
		return [{ ...(old === undefined ? {} : { before: old }), ...(now === undefined ? {} : { after: now }) }];
	});
};
