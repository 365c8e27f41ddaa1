import { governing, jointResults } from "../../calc/pad/index.ts";
import { indexValues } from "../../cite/index-values.ts";
import type { Identity } from "../../definition/definition.ts";
import { WELL_STATES } from "../../definition/identity.ts";
import { VERDICTS, type Verdict } from "../../document/verdict.ts";
import { ENGLISH_READER, tellSaid } from "../../messages/print.ts";
import type { Finding, Judgement } from "../../rules/finding.ts";
import { say } from "../../rules/reason.ts";
import type { Findings } from "../context.ts";

/** Papers that a pad has one of, whatever the number of its wells. */
export const JOINT_PAPERS = ["landowner", "handout", "slides", "notes"] as const;

/**
 * Everything found of the wells of a pad as one: what its joint papers are made from. Verdicts are those of all wells, so
 * that what is open of one is open of the pad.
 *
 * @param name    of the pad; it stands where a paper has a well's
 * @param digest  over every file of the pad
 */
export const jointFindings = (
	name: string,
	wells: readonly [Findings, ...Findings[]],
	digest: string,
): Findings => {
	const base = governing(wells);
	const { well: joint, results: together } = jointResults(wells);
	const judgement = jointJudgement(base.judgement, wells);
	const drilled = wells.every(({ results }) => results.trajectory.basis === "surveyed");
	const well = { ...joint, identity: jointIdentity(name, base.well.identity, wells) };
	const results = {
		...together,
		trajectory: { ...together.trajectory, basis: drilled ? together.trajectory.basis : ("planned" as const) },
	};
	return {
		...base,
		well,
		results,
		judgement,
		missing: distinct(
			wells.flatMap(({ missing }) => missing),
			({ what, at }) => JSON.stringify([what, at]),
		),
		due: wells.flatMap(({ due }) => due),
		index: indexValues({ well, results, findings: judgement.findings }),
		digest,
		pad: { wells, governing: base.well.identity.name },
	};
};

/** From the one that is least far; a well that is superseded is not to be worked from at all. */
const STATES: readonly Identity["state"][] = ["superseded", ...WELL_STATES];

/** Of all wells: the state of the one that is least far, the day of the last issue, the earliest end. */
const jointIdentity = (name: string, base: Identity, wells: readonly Findings[]): Identity => {
	const all = wells.map(({ well }) => well.identity);
	const { api_number: _, permit: __, summary: ___, spud: ____, valid_until: _____, ...rest } = base;
	const until = all.flatMap(({ valid_until }) => valid_until ?? []).toSorted()[0];
	const latest = all.toSorted((a, b) => (a.issued < b.issued ? 1 : -1))[0] ?? base;
	return {
		...rest,
		name,
		state: STATES.find((state) => all.some((each) => each.state === state)) ?? base.state,
		issued: latest.issued,
		...(latest.revisions === undefined ? {} : { revisions: latest.revisions }),
		...(until === undefined ? {} : { valid_until: until }),
	};
};

/** One finding on several wells is told once, with the gravest of its verdicts. */
const jointJudgement = (base: Judgement, wells: readonly Findings[]): Judgement => {
	const findings = distinct(
		wells.flatMap(({ judgement }) => judgement.findings),
		keyOf,
	);
	return {
		...base,
		findings,
		unknownJurisdictions: [...new Set(wells.flatMap(({ judgement }) => judgement.unknownJurisdictions))],
		counts: Object.fromEntries(
			VERDICTS.map((verdict) => [verdict, findings.filter((each) => each.verdict === verdict).length]),
		) as Readonly<Record<Verdict, number>>,
	};
};

const keyOf = ({ cite, subject, verdict, reason }: Finding): string =>
	[cite.rule, tellSaid(subject, ENGLISH_READER), verdict, say(reason, ENGLISH_READER)].join("|");

const distinct = <T>(items: readonly T[], key: (item: T) => string): readonly T[] => [
	...new Map(items.map((item) => [key(item), item])).values(),
];
