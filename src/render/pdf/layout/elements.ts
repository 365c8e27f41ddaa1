import { Fragment, isValidElement, type ReactElement, type ReactNode } from "react";
import type { FlowProps, WordStyle } from "./vocabulary.ts";

/** An element of the primitives. */
export interface ElementProps extends FlowProps {
	readonly style?: WordStyle;
	readonly children?: ReactNode;
}
export type Element = ReactElement<ElementProps, string>;

type Component = (props: unknown) => ReactNode;

/**
 * Hands on the primitives and texts of a tree, in order. Components, which are plain functions, are called on the way: an
 * error thrown in one reaches whoever lays the paper.
 */
export const eachOf = (node: ReactNode, visit: (child: Element | string) => void): void => {
	if (typeof node === "string" || typeof node === "number") visit(String(node));
	else if (Array.isArray(node)) for (const child of node) eachOf(child, visit);
	else if (isValidElement<ElementProps>(node)) {
		const type: unknown = node.type;
		if (typeof type === "function") eachOf((type as Component)(node.props), visit);
		else if (type === Fragment) eachOf(node.props.children, visit);
		else visit(node as Element);
	}
};

/** The primitives directly within a node. */
export const elementsIn = (node: ReactNode): readonly Element[] => {
	const found: Element[] = [];
	eachOf(node, (child) => {
		if (typeof child !== "string") found.push(child);
	});
	return found;
};
