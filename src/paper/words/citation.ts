import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import type { LimitCitation } from "../../rules/finding.ts";
import { type PaperContext, readerOf } from "../context.ts";

/** A citation with its section sign and number on one line: no line ends in `§`. */
export const citationText = (context: PaperContext, citation: Said): string =>
	tellSaid(citation, readerOf(context))
		.replaceAll(/(\d+) ([A-Z][A-Za-z.]*) (?=§)/gu, "$1\u00a0$2\u00a0")
		.replaceAll(/(§+) /gu, "$1\u00a0");

/** How far a limit was laid beside its text, in one letter; the key of the letters stands under the table. */
export type StandingLetter = "C" | "P" | "D" | "E" | "N";

/**
 * C: compared with the official text; E: compared by the engineer named in the definition; P: compared with a public copy;
 * D: with a draft; N: with none.
 */
export const standingLetter = ({
	standing,
	publicCopy,
	comparedBy,
}: Pick<LimitCitation, "standing" | "publicCopy" | "comparedBy">): StandingLetter => {
	if (comparedBy !== undefined) return "E";
	if (standing === "compared") return "C";
	if (publicCopy === undefined) return "N";
	return publicCopy.kind === "draft" ? "D" : "P";
};
