import type { Results } from "../calc/results.ts";
import type { Jurisdiction } from "../catalog/limits/limit.ts";
import { pathKey } from "../diagnostics/path.ts";
import type { Said } from "../messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import type { Well } from "../well/well.ts";
import type { Judgement, MissingItem } from "./finding.ts";
import { judge } from "./judge.ts";

/** What findings lack, each thing once, with every citation that asks for it; in the order it is first asked for. */
export const missingIn = ({ findings }: Judgement): readonly MissingItem[] => {
	const items = new Map<string, { what: Said; at: MissingItem["at"]; askedBy: Map<string, Said> }>();
	for (const { cite, missing = [] } of findings)
		for (const { what, at } of missing) {
			const key = `${pathKey(at)} ${tellSaid(what, ENGLISH_READER)}`;
			const item = items.get(key) ?? { what, at, askedBy: new Map() };
			item.askedBy.set(tellSaid(cite.citation, ENGLISH_READER), cite.citation);
			items.set(key, item);
		}
	return [...items.values()].map(({ what, at, askedBy }) => ({ what, at, askedBy: [...askedBy.values()] }));
};

/** What the jurisdictions ask for and the definition lacks. */
export const missingInformation = (
	well: Well,
	results: Results,
	jurisdictions: readonly Jurisdiction[],
): readonly MissingItem[] => missingIn(judge(well, results, jurisdictions));
