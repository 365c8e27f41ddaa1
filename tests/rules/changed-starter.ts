import { type Starter, starterText, understandText } from "../starters.ts";
import { type Told, told } from "./told.ts";

export type Change = readonly [from: string, to: string];

/** A starter with texts replaced, each of which must stand in it: all findings on it, in words. */
export const judgedStarter = (starter: Starter, ...changes: readonly Change[]): readonly Told[] => {
	const text = changes.reduce((whole, [from, to]) => {
		if (!whole.includes(from)) throw new Error(`"${from}" does not stand in the starter`);
		return whole.replace(from, to);
	}, starterText(starter));
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings.judgement.findings.map(told);
};

/** The finding of a rule on what a subject's words hold. */
export const foundOf = (findings: readonly Told[], rule: string, subject: string): Told => {
	const hit = findings.find((each) => each.cite.rule === rule && each.subject.includes(subject));
	if (hit === undefined) throw new Error(`no finding of ${rule} on ${subject}`);
	return hit;
};
