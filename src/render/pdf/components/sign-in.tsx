import type { ReactElement } from "react";
import type { Block } from "../../../document/blocks.ts";
import { INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Space, type, Words } from "./primitives.tsx";

/** Between what stands abreast, and between the columns of one [pt]. */
const ABREAST = 16;
const GAP = 8;
/** Heads of narrow columns are no larger [pt]. */
const HEAD = 9;

/** Lines to sign on, under their heads. */
export const SignIn = ({
	block,
	scene,
}: {
	block: Extract<Block, { kind: "sign-in" }>;
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	const { abreast = 1 } = block;
	const columns = Array.from({ length: abreast }, () => block.columns).flat();
	const shares = columns.reduce((sum, column) => sum + column.width, 0);
	const begins = (i: number): boolean => i > 0 && i % block.columns.length === 0;
	const room = scene.width - GAP * (columns.length - abreast) - ABREAST * (abreast - 1);
	const cell = (width: number, i: number) => ({
		width: (room * width) / shares,
		...(i === 0 ? {} : { marginLeft: begins(i) ? ABREAST : GAP }),
	});
	return (
		<>
			<Space height={design.step * 0.6} />
			<Box tag={{ role: "Table", ...inSection(scene) }} least={{ first: 2, last: 2 }}>
				<Box
					fixed
					wrap={false}
					tag={{ role: "TR", once: true }}
					style={{ flexDirection: "row", alignItems: "flex-end" }}
				>
					{columns.map((column, i) => (
						// biome-ignore lint/suspicious/noArrayIndexKey: heads recur where lines stand abreast
						<Box key={i} tag={{ role: "TH", scope: "Column" }} style={cell(column.width, i)}>
							<Words
								style={type(abreast === 1 ? design.table : Math.min(design.dense, HEAD), 1.15, "semibold")}
							>
								{column.head}
							</Words>
						</Box>
					))}
				</Box>
				{Array.from({ length: block.lines }, (_, line) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: blank lines are all alike
					<Box key={line} wrap={false} tag={{ role: "TR" }} style={{ flexDirection: "row" }}>
						{columns.map((column, i) => (
							<Box
								// biome-ignore lint/suspicious/noArrayIndexKey: heads recur where lines stand abreast
								key={i}
								tag={{ role: "TD" }}
								style={{
									...cell(column.width, i),
									minHeight: block.height ?? design.pencil,
									borderBottomWidth: design.rule.thin,
									...(block.height === undefined
										? {}
										: {
												borderTopWidth: design.rule.thin,
												borderLeftWidth: design.rule.thin,
												borderRightWidth: design.rule.thin,
											}),
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
