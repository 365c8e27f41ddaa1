import type { Block, GoesOn } from "../../document/blocks.ts";
import type { PaperContext } from "../context.ts";

/*
 * What leaves a side of a job's sheet that is too full, in this order. The front: reasons to stop but the worst three, numbers,
 * limits, then steps from the last. The back: what is true of every such job before what is true of this site, the people
 * after that, and whom to call last.
 */
const FRONT = ["reasons", "numbers", "limits", "steps", "pressures"] as const;
const BACK = [
	"lessons",
	"weather",
	"signals",
	"alongside",
	"permits",
	"chemicals",
	"crew_additives",
	"ppe",
	"ask_back",
	"this_site",
	"roles",
	"emergency",
] as const;

const keeping = (blocks: readonly Block[], goesOn: GoesOn): Block[] =>
	blocks.map((block) =>
		block.kind === "list" || block.kind === "facts" || block.kind === "table" ? { ...block, goesOn } : block,
	);

/** Blocks of the front whose items may go on behind the sheet. */
export const frontGoesOn = (
	{ words }: PaperContext,
	what: (typeof FRONT)[number],
	blocks: readonly Block[],
	keep = 0,
): Block[] =>
	keeping(blocks, {
		turn: FRONT.indexOf(what),
		keep,
		more: { one: words.label(`crew.more.${what}.one`), many: words.label(`crew.more.${what}.many`) },
	});

/** As `frontGoesOn`, of the back: told by the name of their list. */
export const backGoesOn = (
	{ words }: PaperContext,
	list: string,
	name: string,
	blocks: readonly Block[],
	keep = 0,
): Block[] => {
	const more = words.label("crew.more.listed").replace("{list}", name);
	const turn = (BACK as readonly string[]).indexOf(list);
	return keeping(blocks, { turn: Math.max(turn, 0), keep, more: { one: more, many: more } });
};
