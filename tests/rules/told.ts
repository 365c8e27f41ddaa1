import type { Said } from "../../src/messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../../src/messages/print.ts";
import type { Finding, MissingInput } from "../../src/rules/finding.ts";
import { judge } from "../../src/rules/judge.ts";
import { say } from "../../src/rules/reason.ts";

/** A finding in words, as an English reader is told it. */
export type Told = Omit<Finding, "subject" | "missing"> & {
	readonly subject: string;
	readonly because: string;
	readonly missing?: readonly { readonly what: string; readonly at: MissingInput["at"] }[];
};

const inWords = (said: Said): string => tellSaid(said, ENGLISH_READER);

export const told = ({ missing, ...finding }: Finding): Told => ({
	...finding,
	subject: inWords(finding.subject),
	because: say(finding.reason),
	...(missing === undefined ? {} : { missing: missing.map(({ what, at }) => ({ what: inWords(what), at })) }),
});

/** `judge`, its findings in words. */
export const judged = (...given: Parameters<typeof judge>) => {
	const judgement = judge(...given);
	return { ...judgement, findings: judgement.findings.map(told) };
};
