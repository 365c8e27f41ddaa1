import type { ReactElement } from "react";
import type { Block, Cell } from "../../../document/blocks.ts";
import { textWidth } from "../../../measure/text-width.ts";
import { printCell } from "../../print/print-text.ts";
import { INK } from "../design.ts";
import { LABEL_GAP, labelWidth } from "../label-width.ts";
import { inSection, type Scene } from "../scene.ts";
import type { Tag } from "../tags.ts";
import { PencilBox, Unset, VerdictWord } from "./boxed.tsx";
import { Box, Space, type, Words } from "./primitives.tsx";
import { setInline } from "./rich.tsx";

type Kind<K extends Block["kind"]> = Extract<Block, { kind: K }>;
type Fact = Kind<"facts">["items"][number];

/** Leading of pairs: closer on a sheet that has to hold all of something. */
const leadingOf = ({ design }: Scene): number => (design.setting === "field" ? 1.18 : 1.28);

/** A value standing by itself, outside a table. */
const Value = ({
	cell,
	scene,
	size,
	width,
}: {
	cell: Cell;
	scene: Scene;
	size: number;
	width: number;
}): ReactElement => {
	switch (cell.kind) {
		case "verdict":
			return <VerdictWord verdict={cell.verdict} size={size} room={width} scene={scene} />;
		case "unset":
			return <Unset text={cell.text} size={size} room={width} scene={scene} />;
		case "blank":
			return <PencilBox scene={scene} width={width} />;
		case "rich":
			return (
				<Words
					style={{
						...type(size, leadingOf(scene), scene.design.setting === "field" ? "semibold" : "regular"),
						width,
					}}
				>
					{setInline(cell.children, scene)}
				</Words>
			);
		default:
			return (
				<Words style={{ ...type(size, leadingOf(scene), "semibold"), width }}>
					{printCell(cell, scene.printing)}
				</Words>
			);
	}
};

const GUTTER = 20;
/** On a sheet that has to hold all of something. */
const CLOSE = 10;

const gutterOf = ({ design }: Scene): number => (design.setting === "field" ? CLOSE : GUTTER);

const FactLine = ({
	item,
	scene,
	width,
	label,
}: {
	item: Fact;
	scene: Scene;
	width: number;
	label: number;
}): ReactElement => {
	const { design } = scene;
	const size = design.table;
	return (
		<Box
			tag={{ role: "LI" }}
			wrap={false}
			style={{
				width,
				flexDirection: "row",
				paddingTop: design.cellY,
				paddingBottom: design.cellY + 0.5,
				borderBottomWidth: design.rule.hair,
				borderColor: INK.hair,
			}}
		>
			<Words
				tag={{ role: "Lbl" }}
				style={{ ...type(size, leadingOf(scene)), width: label, paddingRight: LABEL_GAP }}
			>
				{item.label}
			</Words>
			<Box tag={{ role: "LBody" }} style={{ width: width - label }}>
				<Value cell={item.value} scene={scene} size={size} width={width - label} />
				{item.note === undefined ? null : (
					<Words style={{ ...type(design.note, 1.25), width: width - label }}>{item.note}</Words>
				)}
			</Box>
		</Box>
	);
};

/** Pairs in fewer lines stand on one page; of more, so many lines at least stand on each. */
const DIVIDED_FROM = 8;
const LEAST_LINES = 3;

/** Label and value pairs, read across where there are two columns. */
export const Facts = ({ block, scene }: { block: Kind<"facts">; scene: Scene }): ReactElement => {
	const { design } = scene;
	const columns = block.columns ?? 1;
	const gutter = gutterOf(scene);
	const width = (scene.width - gutter * (columns - 1)) / columns;
	const lines = Array.from({ length: Math.ceil(block.items.length / columns) }, (_, i) =>
		block.items.slice(i * columns, (i + 1) * columns),
	);
	const label = labelWidth(lines, width, design.table, scene);
	const least = lines.length < DIVIDED_FROM ? lines.length : LEAST_LINES;
	const tag: Tag = { role: "L", ...inSection(scene) };
	return (
		<>
			<Space height={design.step * 0.4} />
			{block.caption === undefined ? null : (
				<Words
					tag={{ role: "Caption", within: tag }}
					withNext
					style={{ ...type(design.table + 0.5, 1.25, "semibold"), color: INK.heading, marginBottom: 2 }}
				>
					{block.caption}
				</Words>
			)}
			<Box tag={tag} least={{ first: least, last: least }}>
				{lines.map((line) => (
					<Box key={line[0]?.label ?? ""} wrap={false} style={{ flexDirection: "row", columnGap: gutter }}>
						{line.map((item) => (
							<FactLine key={item.label} item={item} scene={scene} width={width} label={label} />
						))}
					</Box>
				))}
			</Box>
			<Space height={design.step * 1.6} />
		</>
	);
};

/** Size at which every value keeps to one line of `width`; `undefined` where even the least size is too wide. */
const figureSize = (values: readonly string[], width: number, scene: Scene): number | undefined => {
	const { wish, least } = scene.design.figure;
	const widest = Math.max(...values.map((text) => textWidth(text, { size: 1, weight: "bold" })));
	const size = Math.min(wish, Math.floor(((width - 1) / widest) * 2) / 2);
	return size < least ? undefined : size;
};

/** A sheet for a job shows its five beside each other. */
const mostAbreast = ({ design }: Scene): number => (design.setting === "field" ? 5 : 4);

/** The few numbers that matter most: as many abreast as keep to one line each, large. */
export const KeyFigures = ({ block, scene }: { block: Kind<"figures">; scene: Scene }): ReactElement => {
	const { design } = scene;
	const values = block.items
		.filter((item) => item.value.kind !== "unset")
		.map((item) => printCell(item.value, scene.printing));
	const gutter = gutterOf(scene);
	const widthOf = (abreast: number): number => (scene.width - gutter * (abreast - 1)) / abreast;
	let abreast = Math.min(block.items.length, mostAbreast(scene));
	while (abreast > 1 && figureSize(values, widthOf(abreast), scene) === undefined) abreast -= 1;
	const width = widthOf(abreast);
	const size = figureSize(values, width, scene) ?? design.figure.least;
	const lines = Array.from({ length: Math.ceil(block.items.length / abreast) }, (_, i) =>
		block.items.slice(i * abreast, (i + 1) * abreast),
	);
	return (
		<Box
			tag={{ role: "L", ...inSection(scene) }}
			style={{ marginTop: design.step * 0.6, marginBottom: design.step * 0.8 }}
		>
			{lines.map((line) => (
				<Box
					key={line[0]?.label ?? ""}
					wrap={false}
					style={{ flexDirection: "row", marginBottom: design.step * 1.4 }}
				>
					{line.map((item, i) => (
						<Box
							key={item.label}
							tag={{ role: "LI" }}
							style={{
								width,
								...(i === 0 ? {} : { marginLeft: gutter }),
								borderTopWidth: design.rule.heavy,
								borderColor: INK.heading,
								paddingTop: design.step * 0.5,
							}}
						>
							<Box tag={{ role: "LBody" }} style={{ width }}>
								{item.value.kind === "unset" ? (
									<Unset
										text={item.value.text}
										size={Math.max(design.body, size * 0.6)}
										room={width}
										scene={scene}
									/>
								) : (
									<Words style={{ ...type(size, 1.16, "bold"), width }}>
										{printCell(item.value, scene.printing)}
									</Words>
								)}
							</Box>
							<Words
								tag={{ role: "Lbl" }}
								style={{ ...type(design.table, 1.25, "semibold"), width, marginTop: 2.5 }}
							>
								{item.label}
							</Words>
							{item.note === undefined ? null : (
								<Words tag={{ role: "LBody" }} style={{ ...type(design.note, 1.25), width }}>
									{item.note}
								</Words>
							)}
						</Box>
					))}
				</Box>
			))}
		</Box>
	);
};
