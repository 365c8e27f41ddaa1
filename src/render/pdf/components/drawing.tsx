import { Svg } from "@react-pdf/primitives";
import type { ComponentType, ReactElement } from "react";
import type { Block } from "../../../document/blocks.ts";
import { saysScale } from "../../print/says-scale.ts";
import { INK } from "../design.ts";
import type { FlowProps } from "../layout/vocabulary.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Space, type, Words } from "./primitives.tsx";
import { setInline } from "./rich.tsx";

/** A drawing is painted from its shapes as they are; the reference engine makes elements of them (`reference/`). */
const Canvas = Svg as unknown as ComponentType<
	FlowProps & { readonly width: number; readonly height: number; readonly viewBox: string }
>;

/** A drawing at its own size, its caption, and, unless the drawing prints it, what it says of its scale. */
export const Figure = ({
	block,
	scene,
}: {
	block: Extract<Block, { kind: "figure" }>;
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	const { drawing } = block;
	return (
		<>
			<Box
				{...(block.id === undefined ? {} : { id: block.id })}
				wrap={false}
				style={{ marginTop: design.step * 0.6, alignItems: "center" }}
			>
				<Canvas
					tag={{ role: "Figure", alt: `${drawing.title}. ${drawing.alternative}`, ...inSection(scene) }}
					drawing={drawing}
					width={drawing.width}
					height={drawing.height}
					viewBox={`0 0 ${drawing.width} ${drawing.height}`}
				/>
				<Words
					tag={{ role: "P", ...inSection(scene) }}
					style={{
						...type(design.note, 1.3, "semibold"),
						width: scene.width,
						marginTop: design.step * 0.7,
						color: INK.heading,
					}}
				>
					{block.number === undefined ? null : `${block.number}  `}
					{setInline(block.caption, scene)}
				</Words>
				{saysScale(drawing) ? null : (
					<Words
						tag={{ role: "P", ...inSection(scene) }}
						style={{ ...type(design.note, 1.3), width: scene.width }}
					>
						{drawing.scale}
					</Words>
				)}
			</Box>
			<Space height={design.step * 1.8} />
		</>
	);
};
