import { type Changes, compare } from "../../compare/compare.ts";
import type { Section } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { UnitSystem } from "../../units/format.ts";
import { composeAttachment } from "../attachment.ts";
import type { Findings, PaperContext } from "../context.ts";
import { findingsFor } from "../findings-for.ts";
import { imprint } from "../imprint.ts";
import { placeOf, placesIn } from "../places.ts";
import { CHANGE_PARTS, type ChangeContext } from "./parts.ts";

/** What changed, without what the definition keeps from the agency: neither side holds it. */
export const changesForAgency = (before: Findings, after: Findings, units: UnitSystem): Changes =>
	compare({ before: findingsFor(before, "regulator"), after: findingsFor(after, "regulator"), units });

/**
 * The paper of what changed between two states of a well, to attach to an amendment. It is for the agency: it shows what
 * the regulator's paper may show, and of the results those that the regulator's paper prints.
 *
 * @param after   the later state, in the language and units of the paper
 * @param before  the earlier state
 */
export const composeChanges = (after: Omit<PaperContext, "paper">, before: Findings): PaperDocument => {
	const context: PaperContext = findingsFor({ ...after, paper: "regulator" }, "regulator");
	const changes = changesForAgency(before, after, after.units);
	// The appendices are part of the attachment: what moves in them has moved in it.
	const attachment = Object.values(composeAttachment({ ...after, paper: "regulator" }));
	const shown: ChangeContext = {
		paper: context,
		changes,
		printedAt: placesIn(...attachment),
		sections: attachment.flatMap((paper) => paper.sections.map(placeOf)),
	};
	const order = context.words.order("changes");
	const sections = order.sections
		.map((section) => ({
			section,
			blocks: section.content.flatMap((item) => {
				const part = "part" in item ? CHANGE_PARTS[item.part] : undefined;
				if (part === undefined)
					throw new Error(`the page order of changes names no known part: ${JSON.stringify(item)}`);
				return part(shown);
			}),
		}))
		.filter(({ blocks }) => blocks.length > 0)
		.map(
			({ section, blocks }, i): Section => ({
				id: section.id,
				title: section.title,
				number: String(i + 1),
				blocks,
			}),
		);
	return {
		paper: "changes",
		language: context.words.language,
		units: context.units,
		setting: order.setting,
		imprint: imprint(context, order.title, order.subtitle, "changes"),
		sections,
	};
};
