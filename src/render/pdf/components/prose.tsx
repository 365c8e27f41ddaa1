import type { ReactElement, ReactNode } from "react";
import type { Block } from "../../../document/blocks.ts";
import { printInline } from "../../print/print-text.ts";
import { inSection, type Scene } from "../scene.ts";
import type { Tag } from "../tags.ts";
import { Box, type, type WordStyle, Words } from "./primitives.tsx";
import { setInline } from "./rich.tsx";

type Kind<K extends Block["kind"]> = Extract<Block, { kind: K }>;

/** A paragraph no longer than this says in a line or two what the list, table or form behind it is. */
const LEAD_IN = 110;
const LED_IN: readonly (Block["kind"] | undefined)[] = ["list", "table", "sign-in"];

const leadsIn = (block: Kind<"paragraph">, following: readonly Block[], { printing }: Scene): boolean =>
	LED_IN.includes(following[0]?.kind) && printInline(block.children, printing).length <= LEAD_IN;

export const Paragraph = ({
	block,
	following,
	scene,
}: {
	block: Kind<"paragraph">;
	/** What stands behind it. */
	following: readonly Block[];
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	const tone: WordStyle =
		block.tone === "lead"
			? type(design.lead, design.leading)
			: block.tone === "note"
				? type(design.note, design.leading)
				: type(design.body, design.leading);
	return (
		<Words
			tag={{ role: "P", ...inSection(scene) }}
			withNext={leadsIn(block, following, scene)}
			style={{ ...tone, marginBottom: scene.gap }}
		>
			{setInline(block.children, scene)}
		</Words>
	);
};

/** So few items of a line or two stay together. */
const FEW = 4;
const LINE = 160;
/** An item this long may break over pages; a shorter one keeps together. */
const LONG = 700;

/** Whether an item is of paragraphs alone, each with fewer characters than that. */
const isWithin = (most: number, item: readonly Block[], scene: Scene): boolean =>
	item.every((b) => b.kind === "paragraph" && printInline(b.children, scene.printing).length < most);

export const List = ({
	block,
	scene,
	blocks,
}: {
	block: Kind<"list">;
	scene: Scene;
	/** Sets the blocks of an item. */
	blocks: (blocks: readonly Block[], scene: Scene) => ReactNode;
}): ReactElement => {
	const { design } = scene;
	const indent = design.body * (block.ordered ? 2 : 1.4);
	const list: Tag = {
		role: "L",
		numbering: block.ordered ? "Decimal" : "Disc",
		...inSection(scene),
	};
	const width = scene.width - indent;
	const whole =
		block.items.length <= FEW &&
		block.items.every((item) => item.length === 1 && isWithin(LINE, item, scene));
	return (
		<Box tag={list} wrap={!whole} style={{ marginBottom: design.step * 0.5 }}>
			{block.items.map((item, i) => {
				const body: Tag = { role: "LBody" };
				return (
					<Box
						// biome-ignore lint/suspicious/noArrayIndexKey: a paper is set once, in this order
						key={i}
						tag={{ role: "LI" }}
						wrap={!isWithin(LONG, item, scene)}
						style={{ flexDirection: "row" }}
					>
						<Words
							tag={{ role: "Lbl" }}
							style={{
								...type(design.body, design.leading, block.ordered ? "semibold" : "regular"),
								width: indent,
							}}
						>
							{block.ordered ? `${i + 1}.` : "•"}
						</Words>
						<Box tag={body} style={{ width }}>
							{blocks(item, { ...scene, width, gap: design.step * 0.45, sect: body })}
						</Box>
					</Box>
				);
			})}
		</Box>
	);
};
