import { createElement, Fragment, isValidElement, type ReactElement, type ReactNode } from "react";

type Component = (props: unknown) => ReactNode;
interface Props {
	readonly children?: ReactNode;
}

/**
 * Calls our components, which are plain functions, and leaves the primitives alone. Were they called by the renderer
 * instead, an error thrown in one would be swallowed, and a paper of no pages be written. Keys are dropped: a paper is
 * set once, and the renderer would leave out one of two elements of like key.
 */
const expand = (node: ReactNode): readonly ReactNode[] => {
	if (Array.isArray(node)) return node.flatMap(expand);
	if (!isValidElement<Props>(node)) return [node];
	const { props } = node;
	const type: unknown = node.type;
	if (typeof type === "function") return expand((type as Component)(props));
	const { children, ...rest } = props;
	if (type === Fragment) return expand(children);
	return [createElement(node.type, rest, ...expand(children))];
};

/** An element tree of primitives alone. */
export const expanded = (element: ReactElement): ReactElement => {
	const [root] = expand(element);
	if (!isValidElement(root)) throw new Error("The component made no element");
	return root;
};
