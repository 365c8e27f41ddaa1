import type { PaperDocument } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import type { Findings } from "./context.ts";

/**
 * What the files of a paper are called, without their ending: `tamarack-draw-7-22h.crew.pumping.es`. Units are named
 * where they are not those that the definition is written in.
 */
export const paperName = (
	{ well, writtenIn }: Pick<Findings, "well" | "writtenIn">,
	{
		paper,
		part,
		language,
		second,
		units,
	}: Pick<PaperDocument, "paper" | "part" | "language" | "second" | "units">,
): string =>
	[
		fileSlug(well.identity.name),
		paper,
		part,
		second === undefined ? (language === "en" ? undefined : language) : `${language}-${second}`,
		units === writtenIn ? undefined : units,
	]
		.filter((each) => each !== undefined)
		.join(".");
