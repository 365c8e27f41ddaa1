import type { HowKnown } from "../../catalog/limits/limit.ts";
import type { LimitCitation } from "../../rules/finding.ts";
import type { Words } from "./words.ts";

/** Of a limit whose text nobody has laid beside the official one: that it is so, and how it was known. */
const notCompared = ({ way, confidence }: HowKnown, { label }: Words): string => {
	const known = [label(`rule_text_known.${way}`)];
	if (confidence !== undefined) known.push(label(`confidence.${confidence}`));
	return `${label("phrases.not_compared")} (${known.join(", ")})`;
};

/** What a limit stands on: the person who compared it, the text or copy that it was laid beside, or how it was known. */
export const standingWords = (
	{
		standing,
		publicCopy,
		comparedBy,
		howKnown,
		textAsOf,
	}: Pick<LimitCitation, "standing" | "publicCopy" | "comparedBy" | "howKnown" | "textAsOf">,
	words: Words,
): string => {
	const { label } = words;
	if (comparedBy !== undefined) {
		const { by, license, on, against, dated } = comparedBy;
		return label("phrases.compared_by")
			.replace("{by}", license === undefined ? by : `${by}, ${license}`)
			.replace("{on}", on)
			.replace("{against}", against)
			.replace("{dated}", dated);
	}
	if (standing === "compared") return `${label("phrases.compared")}, ${label("phrases.text_of")} ${textAsOf}`;
	if (publicCopy === undefined) return notCompared(howKnown, words);
	const dated = publicCopy.dated === "unknown" ? label("phrases.copy_undated") : publicCopy.dated;
	return label(
		publicCopy.kind === "draft" ? "phrases.compared_with_draft" : "phrases.compared_with_copy",
	).replace("{dated}", dated);
};
