import type { ReactElement } from "react";
import type { Block } from "../../../document/blocks.ts";
import { INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Space, type, Words } from "./primitives.tsx";

/** Lines to sign on, under their heads. */
export const SignIn = ({
	block,
	scene,
}: {
	block: Extract<Block, { kind: "sign-in" }>;
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	const shares = block.columns.reduce((sum, column) => sum + column.width, 0);
	const gap = 10;
	const room = scene.width - gap * (block.columns.length - 1);
	const cell = (width: number, first: boolean) => ({
		width: (room * width) / shares,
		...(first ? {} : { marginLeft: gap }),
	});
	return (
		<>
			<Space height={design.step * 0.6} />
			<Box tag={{ role: "Table", ...inSection(scene) }} least={{ first: 2, last: 2 }}>
				<Box fixed wrap={false} tag={{ role: "TR", once: true }} style={{ flexDirection: "row" }}>
					{block.columns.map((column, i) => (
						<Box key={column.head} tag={{ role: "TH", scope: "Column" }} style={cell(column.width, i === 0)}>
							<Words style={type(design.table, 1.25, "semibold")}>{column.head}</Words>
						</Box>
					))}
				</Box>
				{Array.from({ length: block.lines }, (_, line) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: blank lines are all alike
					<Box key={line} wrap={false} tag={{ role: "TR" }} style={{ flexDirection: "row" }}>
						{block.columns.map((column, i) => (
							<Box
								key={column.head}
								tag={{ role: "TD" }}
								style={{
									...cell(column.width, i === 0),
									minHeight: design.pencil,
									borderBottomWidth: design.rule.thin,
									borderColor: INK.rule,
								}}
							/>
						))}
					</Box>
				))}
			</Box>
			<Space height={design.step * 1.8} />
		</>
	);
};
