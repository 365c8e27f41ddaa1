import { ClipPath, Defs, G, Line, Path, Text } from "@react-pdf/primitives";
import type { ComponentType, ReactNode } from "react";
import type { Drawing, Shape, Stroke } from "../../../document/shapes.ts";
import { FAMILY } from "../../../measure/faces.ts";

type Part<P> = ComponentType<P & { readonly children?: ReactNode }>;
// The primitives are names; what each takes is said here, as far as drawings use it.
const ClipOf = ClipPath as unknown as Part<{ readonly id: string }>;
const DefsOf = Defs as unknown as Part<object>;
const GroupOf = G as unknown as Part<{ readonly transform: string }>;
const PathOf = Path as unknown as Part<
	StrokeProps & {
		readonly d: string;
		readonly fill?: string;
		readonly fillOpacity?: number;
		readonly fillRule?: "evenodd";
		readonly clipPath?: string;
	}
>;
const LineOf = Line as unknown as Part<
	StrokeProps & { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }
>;
const Label = Text as unknown as Part<{
	readonly x: number;
	readonly y: number;
	readonly fill: string;
	readonly textAnchor: "start" | "middle" | "end";
	readonly transform?: string;
	readonly style: Readonly<Record<string, string | number>>;
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
				<PathOf
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
				<LineOf
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
				<GroupOf key={key} transform={`translate(${shape.dx} ${shape.dy})`}>
					{shape.children.map((child, i) => setShape(child, clipIds, i))}
				</GroupOf>
			);
		default:
			return shape satisfies never;
	}
};

/** A drawing's shapes as elements of the reference engine. */
export const shapeElements = (drawing: Drawing): ReactNode => {
	const ids = new Map([...new Set(clips(drawing.shapes))].map((d, i) => [d, `clip${i}`] as const));
	return [
		...(ids.size === 0
			? []
			: [
					<DefsOf key="clips">
						{[...ids].map(([d, id]) => (
							<ClipOf key={id} id={id}>
								<PathOf d={d} />
							</ClipOf>
						))}
					</DefsOf>,
				]),
		...drawing.shapes.map((shape, i) => setShape(shape, ids, i)),
	];
};
