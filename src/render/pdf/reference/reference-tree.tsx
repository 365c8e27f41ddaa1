import { Text, View } from "@react-pdf/primitives";
import {
	type ComponentType,
	cloneElement,
	createElement,
	isValidElement,
	type ReactElement,
	type ReactNode,
} from "react";
import type { PaperDocument } from "../../../document/document.ts";
import { Paper } from "../components/paper.tsx";
import { INK } from "../design.ts";
import type { FlowProps, Sheet } from "../layout/vocabulary.ts";
import { runningMatter } from "../running.ts";
import { sceneOf } from "../scene.ts";
import { expanded } from "./expand.ts";
import { shapeElements } from "./shape-elements.tsx";

interface Props extends FlowProps {
	readonly children?: ReactNode;
	readonly size?: readonly [number, number];
	readonly style?: Readonly<Record<string, number | string>>;
}

/** Least of what follows that react-pdf is to keep with a block that stays with the next [pt]. */
const AHEAD = 60;

export interface ReferenceOptions {
	/** Without head and foot, and with table heads once: every word of the paper, once, in order. */
	readonly plain?: boolean;
}

const Fixed = View as unknown as ComponentType<{
	readonly fixed: true;
	readonly style: Readonly<Record<string, unknown>>;
	readonly children: ReactNode;
}>;
const Said = Text as unknown as ComponentType<{
	readonly children?: ReactNode;
	readonly render?: (page: { readonly pageNumber: number; readonly totalPages: number }) => string;
}>;

/** Head and foot, laid over each page. */
const running = (document: PaperDocument, sheet: Sheet): ReactElement => {
	const matter = runningMatter(document, sheet);
	const line = { position: "absolute", left: sheet.side, right: sheet.side, fontSize: matter.size } as const;
	return (
		<>
			<Fixed fixed style={{ ...line, top: 26, color: INK.text }}>
				<Said>{`${matter.identity}  ·  ${matter.title}`}</Said>
			</Fixed>
			<Fixed fixed style={{ ...line, bottom: 18, color: INK.text }}>
				<Said>{[...matter.caution, matter.standing].join("\n")}</Said>
				<Said render={({ pageNumber, totalPages }) => matter.pageOf(pageNumber, totalPages)} />
			</Fixed>
		</>
	);
};

const sheetOf = ({ size = [0, 0], style = {} }: Props): Sheet => ({
	width: size[0],
	height: size[1],
	top: Number(style["paddingTop"]),
	bottom: Number(style["paddingBottom"]),
	side: Number(style["paddingLeft"]),
});

/** The element that react-pdf is given for one of ours; nothing for what its vocabulary has no word for. */
const retold = (
	element: ReactElement<Props>,
	document: PaperDocument,
	options: ReferenceOptions,
): ReactNode => {
	const { type, props } = element;
	const { children, withNext, onlyAgain, fixed, drawing, pageOf } = props;
	if (onlyAgain === true) return null;
	if (drawing !== undefined) return cloneElement(element, {}, shapeElements(drawing));
	// react-pdf knows no page of a place before it has set all pages.
	if (pageOf !== undefined) return cloneElement(element, {}, "");
	const inside = [children].flat(Number.POSITIVE_INFINITY) as readonly ReactNode[];
	const kept = inside.map((child) =>
		isValidElement<Props>(child) ? retold(child, document, options) : child,
	);
	const { key: _, ...rest } = { ...props, key: undefined };
	return createElement(
		type as string,
		{
			...rest,
			...(withNext === true ? { minPresenceAhead: AHEAD } : {}),
			...(fixed === true && options.plain === true ? { fixed: false } : {}),
			...(type === "PAGE" ? { experimentalPagination: true } : {}),
		},
		...(type === "PAGE" && options.plain !== true ? [running(document, sheetOf(props))] : []),
		...kept,
	);
};

/** The same element tree that our own layout sets, in the words of react-pdf. */
export const referenceTree = (document: PaperDocument, options: ReferenceOptions = {}): ReactElement => {
	const tree = retold(expanded(Paper(sceneOf(document))) as ReactElement<Props>, document, options);
	if (!isValidElement(tree)) throw new Error("The paper made no element");
	return expanded(tree);
};
