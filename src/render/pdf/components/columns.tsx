import type { ReactElement, ReactNode } from "react";
import type { Block } from "../../../document/blocks.ts";
import type { Scene } from "../scene.ts";
import { Box } from "./primitives.tsx";

/** Between the columns [pt]. */
const GUTTER = 14;

/** Blocks down two columns, as high as each other. */
export const Columns = ({
	block,
	scene,
	blocks,
}: {
	block: Extract<Block, { kind: "columns" }>;
	scene: Scene;
	/** Sets the blocks inside. */
	blocks: (blocks: readonly Block[], scene: Scene) => ReactNode;
}): ReactElement => (
	<Box columns={2} style={{ columnGap: GUTTER }}>
		{blocks(block.blocks, { ...scene, width: (scene.width - GUTTER) / 2 })}
	</Box>
);
