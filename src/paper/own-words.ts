import type { PaperContext } from "./context.ts";

/** Topics that the definition's community block may answer in the operator's words. */
export type Topic = string;

/** What the operator says of a topic; nothing where the definition is silent, or keeps it from this paper's readers. */
export const ownWords = (context: PaperContext, topic: Topic): string | undefined => {
	const said = (context.well.community as Readonly<Record<string, unknown>> | undefined)?.[topic];
	return typeof said === "string" && said !== "" ? said : undefined;
};
