import { ClipPath, Defs, G, Line, Path, Svg, Text } from "@react-pdf/renderer";
import type { ComponentType, ReactElement, ReactNode } from "react";
import type { Block } from "../../../document/blocks.ts";
import type { Drawing, Shape, Stroke } from "../../../document/shapes.ts";
import { FAMILY } from "../../../measure/faces.ts";
import { saysScale } from "../../print/says-scale.ts";
import { INK } from "../design.ts";
import type { NodeProps } from "../layout-node.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Space, type, Words } from "./primitives.tsx";
import { setInline } from "./rich.tsx";

// The library's types lack the properties that carry meaning, and text anchoring.
const Canvas = Svg as unknown as ComponentType<
	NodeProps & { width: number; height: number; viewBox: string; children: ReactNode }
>;
const Label = Text as unknown as ComponentType<{
	x: number;
	y: number;
	fill: string;
	textAnchor: "start" | "middle" | "end";
	transform?: string;
	style: Readonly<Record<string, string | number>>;
	children: string;
}>;

interface StrokeProps {
	readonly stroke?: string;
	readonly strokeWidth?: number;
	readonly strokeDasharray?: string;
	readonly strokeLinecap?: "butt" | "round" | "square";
	readonly strokeLinejoin?: "miter" | "round" | "bevel";
}

const strokeProps = (stroke: Stroke | undefined): StrokeProps =>
	stroke === undefined
		? {}
		: {
				stroke: stroke.color,
				strokeWidth: stroke.width,
				strokeLinecap: stroke.cap ?? "butt",
				strokeLinejoin: stroke.join ?? "miter",
				// The engine wants a string; a number throws.
				...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash.join(" ") }),
			};

/** Path data of every clip, in the order shapes are met. */
const clips = (shapes: readonly Shape[]): readonly string[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group"
			? clips(shape.children)
			: shape.kind === "path" && shape.clip !== undefined
				? [shape.clip]
				: [],
	);

const WEIGHTS = { regular: 400, semibold: 600, bold: 700 } as const;

const setShape = (shape: Shape, clipIds: ReadonlyMap<string, string>, key: number): ReactNode => {
	switch (shape.kind) {
		case "path": {
			const clip = shape.clip === undefined ? undefined : clipIds.get(shape.clip);
			// The engine paints an opacity of 0 as opaque.
			const filled = shape.fill !== undefined && shape.fillOpacity !== 0;
			return (
				<Path
					key={key}
					d={shape.d}
					fill={filled ? shape.fill : "none"}
					{...(filled && shape.fillOpacity !== undefined ? { fillOpacity: shape.fillOpacity } : {})}
					{...(shape.evenOdd === true ? { fillRule: "evenodd" as const } : {})}
					{...strokeProps(shape.stroke)}
					{...(clip === undefined ? {} : { clipPath: `url(#${clip})` })}
				/>
			);
		}
		case "line":
			return (
				<Line
					key={key}
					x1={shape.x1}
					y1={shape.y1}
					x2={shape.x2}
					y2={shape.y2}
					{...strokeProps(shape.stroke)}
				/>
			);
		case "text":
			return (
				<Label
					key={key}
					x={shape.x}
					y={shape.y}
					fill={shape.color}
					textAnchor={shape.anchor ?? "start"}
					{...(shape.rotate === undefined
						? {}
						: { transform: `rotate(${shape.rotate} ${shape.x} ${shape.y})` })}
					style={{
						// Text in a drawing does not inherit the page's family.
						fontFamily: FAMILY,
						fontSize: shape.size,
						fontWeight: WEIGHTS[shape.weight ?? "regular"],
						...(shape.italic === true ? { fontStyle: "italic" } : {}),
					}}
				>
					{shape.text}
				</Label>
			);
		case "group":
			return (
				<G key={key} transform={`translate(${shape.dx} ${shape.dy})`}>
					{shape.children.map((child, i) => setShape(child, clipIds, i))}
				</G>
			);
		default:
			return shape satisfies never;
	}
};

const Shapes = ({ drawing, scene }: { drawing: Drawing; scene: Scene }): ReactElement => {
	const clipIds = new Map([...new Set(clips(drawing.shapes))].map((d, i) => [d, `clip${i}`] as const));
	return (
		<Canvas
			tag={{ role: "Figure", alt: `${drawing.title}. ${drawing.alternative}`, ...inSection(scene) }}
			drawing={drawing}
			width={drawing.width}
			height={drawing.height}
			viewBox={`0 0 ${drawing.width} ${drawing.height}`}
		>
			{clipIds.size === 0 ? null : (
				<Defs>
					{[...clipIds].map(([d, id]) => (
						<ClipPath key={id} id={id}>
							<Path d={d} />
						</ClipPath>
					))}
				</Defs>
			)}
			{drawing.shapes.map((shape, i) => setShape(shape, clipIds, i))}
		</Canvas>
	);
};

/** A drawing at its own size, its caption, and, unless the drawing prints it, what it says of its scale. */
export const Figure = ({
	block,
	scene,
}: {
	block: Extract<Block, { kind: "figure" }>;
	scene: Scene;
}): ReactElement => {
	const { design } = scene;
	return (
		<>
			<Box
				{...(block.id === undefined ? {} : { id: block.id })}
				wrap={false}
				style={{ marginTop: design.step * 0.6, alignItems: "center" }}
			>
				<Shapes drawing={block.drawing} scene={scene} />
				<Words
					tag={{ role: "P", ...inSection(scene) }}
					style={{
						...type(design.note, 1.3, "semibold"),
						width: scene.width,
						marginTop: design.step * 0.7,
						color: INK.heading,
					}}
				>
					{setInline(block.caption, scene)}
				</Words>
				{saysScale(block.drawing) ? null : (
					<Words
						tag={{ role: "P", ...inSection(scene) }}
						style={{ ...type(design.note, 1.3), width: scene.width }}
					>
						{block.drawing.scale}
					</Words>
				)}
			</Box>
			<Space height={design.step * 1.8} />
		</>
	);
};
