import type { HowKnown } from "../../catalog/limits/limit.ts";
import type { Words } from "./words.ts";

/** Of a limit whose text nobody has laid beside the official one: that it is so, and how it was known. */
export const notCompared = ({ way, confidence }: HowKnown, { label }: Words): string => {
	const known = [label(`rule_text_known.${way}`)];
	if (confidence !== undefined) known.push(label(`confidence.${confidence}`));
	return `${label("phrases.not_compared")} (${known.join(", ")})`;
};
