import type { PaperDocument } from "../document/document.ts";

/** What the files of a paper are called, without their ending: `tamarack-draw-7-22h.crew.pumping.es`. */
export const paperName = (
	slug: string,
	{
		paper,
		part,
		language,
		second,
		units,
	}: Pick<PaperDocument, "paper" | "part" | "language" | "second" | "units">,
): string =>
	[
		slug,
		paper,
		part,
		second === undefined ? (language === "en" ? undefined : language) : `${language}-${second}`,
		units === "field" ? undefined : units,
	]
		.filter((each) => each !== undefined)
		.join(".");
