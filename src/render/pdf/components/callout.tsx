import type { ReactElement, ReactNode } from "react";
import type { Block } from "../../../document/blocks.ts";
import { printInline } from "../../print/print-text.ts";
import { type Design, INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import type { Tag } from "../tags.ts";
import { Box, type BoxStyle, Space, type, Words } from "./primitives.tsx";

type CalloutBlock = Extract<Block, { kind: "callout" }>;

const around = (width: number, color: string): BoxStyle => ({
	borderTopWidth: width,
	borderRightWidth: width,
	borderBottomWidth: width,
	borderLeftWidth: width,
	borderColor: color,
});

/** The heavier the frame, the graver the matter: it survives where color does not. */
const frame = (tone: CalloutBlock["tone"], { rule }: Design): BoxStyle => {
	switch (tone) {
		case "stop":
			return around(rule.heavy * 1.2, INK.stop);
		case "caution":
			return { ...around(rule.thin, INK.rule), borderLeftWidth: rule.heavy * 2 };
		case "note":
			return { borderTopWidth: rule.hair, borderBottomWidth: rule.hair, borderColor: INK.rule };
		default:
			return tone satisfies never;
	}
};

/** More words than this may run over a page; fewer stay together. */
const LONG = 1800;

const lengthOf = (blocks: readonly Block[], scene: Scene): number =>
	blocks.reduce((sum, block) => {
		if (block.kind === "paragraph") return sum + printInline(block.children, scene.printing).length;
		if (block.kind === "list") return sum + block.items.reduce((n, item) => n + lengthOf(item, scene), 0);
		return sum + (block.kind === "table" ? LONG : 200);
	}, 0);

export const Callout = ({
	block,
	scene,
	blocks,
}: {
	block: CalloutBlock;
	scene: Scene;
	blocks: (blocks: readonly Block[], scene: Scene) => ReactNode;
}): ReactElement => {
	const { design, words } = scene;
	const side = block.tone === "note" ? 2 : design.step * 1.4;
	const style = frame(block.tone, design);
	const width = scene.width - 2 * side - (style.borderLeftWidth ?? 0) - (style.borderRightWidth ?? 0);
	const div: Tag = { role: "Div", ...inSection(scene) };
	const heading = block.tone === "stop" ? design.body + 2 : design.body + 0.5;
	return (
		<>
			<Box
				tag={div}
				wrap={lengthOf(block.blocks, scene) > LONG}
				style={{
					...style,
					paddingTop: design.step * 0.9,
					paddingBottom: design.step * 0.5,
					paddingLeft: side,
					paddingRight: side,
					marginTop: design.step * 0.8,
				}}
			>
				<Words
					tag={{ role: "P" }}
					withNext
					style={{
						...type(heading, 1.25, "bold"),
						width,
						marginBottom: design.step * 0.5,
						...(block.tone === "stop" ? { color: INK.stop } : {}),
					}}
				>
					{`${words.tones[block.tone]}: ${block.title}`}
				</Words>
				{blocks(block.blocks, { ...scene, width, sect: div })}
			</Box>
			<Space height={design.step * 1.8} />
		</>
	);
};
