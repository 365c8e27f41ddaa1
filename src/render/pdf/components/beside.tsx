import type { ReactElement, ReactNode } from "react";
import type { Block } from "../../../document/blocks.ts";
import { planTable } from "../plan-table.ts";
import type { Scene } from "../scene.ts";
import { Box } from "./primitives.tsx";

const GUTTER = 14;

/** Whether every table of some blocks can be set in a width. */
const fits = (blocks: readonly Block[], scene: Scene): boolean =>
	blocks.every((block) => {
		if (block.kind !== "table") return true;
		const { widths } = planTable(block, scene);
		return widths.reduce((sum, width) => sum + width, 0) <= scene.width + 0.01;
	});

/** Blocks beside each other, all of them on one page; read from the left. Where one needs the width they stand below each other. */
export const Beside = ({
	block,
	scene,
	blocks,
}: {
	block: Extract<Block, { kind: "beside" }>;
	scene: Scene;
	blocks: (blocks: readonly Block[], scene: Scene) => ReactNode;
}): ReactElement => {
	const left = { ...scene, width: (scene.width - GUTTER) * block.share };
	const right = { ...scene, width: scene.width - GUTTER - left.width };
	if (!fits(block.left, left) || !fits(block.right, right))
		return <>{blocks([...block.left, ...block.right], scene)}</>;
	return (
		<Box wrap={false} style={{ flexDirection: "row", columnGap: GUTTER }}>
			<Box style={{ width: left.width }}>{blocks(block.left, left)}</Box>
			<Box style={{ width: right.width }}>{blocks(block.right, right)}</Box>
		</Box>
	);
};
