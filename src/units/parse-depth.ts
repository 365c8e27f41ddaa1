import { parseQuantity, type QuantityFailure, type QuantitySuccess } from "./parse.ts";
import { plainText } from "./parse-number.ts";

/** Along the hole from the datum, straight down from the datum, or straight down from the ground. */
export type DepthReference = "measured" | "vertical" | "ground";

interface DepthSuccess extends QuantitySuccess {
	readonly reference: DepthReference;
	/** False where nothing was written after the unit, and measured depth is only the house rule. */
	readonly stated: boolean;
}

type DepthRead = DepthSuccess | QuantityFailure;

const REFERENCES: readonly (readonly [RegExp, DepthReference])[] = [
	[/ (?:MD|Md|md|[Mm]easured [Dd]epth)$/, "measured"],
	[/ (?:tvd|true vertical depth)$/i, "vertical"],
	[/ (?:below ground|below ground level|bgl)$/i, "ground"],
];

const ACCEPTED_REFERENCES = ["MD", "TVD", "below ground"];

/**
 * Reads a depth phrase, in feet: `1185 ft`, `1185 ft MD`, `8850 ft TVD`, `984 ft below ground`. A depth without a word
 * after its unit is a measured depth. `surface` is the caller's to recognise.
 *
 * Depths below sea level (`TVDSS`) are refused: they need an elevation, not a suffix. So is `mD`, the millidarcy.
 */
export const parseDepth = (text: string): DepthRead => {
	const plain = plainText(text).replace(/(\d ?(?:ft|m|'))(?=(?:MD|TVD)$)/, "$1 ");
	const [pattern, reference] = REFERENCES.find(([word]) => word.test(plain)) ?? [/$/, "measured" as const];
	const head = plain.replace(pattern, "");
	const read = parseQuantity(head, "measured-depth");
	if (read.ok) return { ...read, reference, stated: head !== plain };
	if (!read.ok && read.reason !== "unknown-unit" && read.reason !== "words-after-unit") return read;
	// A depth below sea level may be written with a minus; the word after it is what is wrong first.
	const [, depth = "", word = ""] = /^[-+]?(.*?\d ?\S*?[^\d\s]\S*) (\D+)$/.exec(plain) ?? [];
	return word !== "" && parseQuantity(depth, "measured-depth").ok
		? {
				ok: false,
				reason: "unknown-reference",
				found: word,
				accepted: ACCEPTED_REFERENCES,
			}
		: (parseQuantity(plain, "measured-depth") as QuantityFailure);
};
