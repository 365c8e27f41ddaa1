import type { ReactElement } from "react";
import { withoutOuterSpace } from "./arrange.ts";
import { divide } from "./divide.ts";
import { type ElementProps, elementsIn } from "./elements.ts";
import type { Laid, LaidPage, Placed } from "./laid.ts";
import { lay } from "./lay.ts";
import type { Sheet } from "./vocabulary.ts";
import { inherited, type TextState } from "./words.ts";

interface PageProps extends ElementProps {
	readonly size?: readonly [number, number];
	readonly rules?: Sheet["rules"];
}

/** As react-pdf has it where nothing is said. */
const PLAIN: TextState = {
	size: 10,
	leading: 1.2,
	weight: 400,
	italic: false,
	align: "left",
	color: "#000000",
	underline: false,
};

const sheetOf = ({ size = [612, 792], style = {}, rules }: PageProps): Sheet => ({
	width: size[0],
	height: size[1],
	top: style.paddingTop ?? 0,
	bottom: style.paddingBottom ?? 0,
	side: style.paddingLeft ?? 0,
	...(rules === undefined ? {} : { rules }),
});

/** Blocks below each other from the top of a page; the margin above the first parts it from nothing. */
const onPage = (head: readonly Laid[], sheet: Sheet): LaidPage => {
	let y = sheet.top;
	const children = withoutOuterSpace(head).map((item, i): Placed => {
		if (i > 0) y += item.margin.top;
		const room = sheet.width - 2 * sheet.side - item.width - item.margin.left - item.margin.right;
		const { alignSelf } = item.style;
		const aside = alignSelf === "center" ? room / 2 : alignSelf === "flex-end" ? room : 0;
		const placed = { x: sheet.side + item.margin.left + aside, y, item };
		y += item.height + item.margin.bottom;
		return placed;
	});
	return { sheet, children };
};

/** Takes the margin from what has come to head a page. */
const atTop = (flow: readonly Laid[]): readonly Laid[] => {
	const [first, ...rest] = withoutOuterSpace(flow);
	if (first === undefined) return [];
	return first.margin.top === 0
		? [first, ...rest]
		: [{ ...first, margin: { ...first.margin, top: 0 } }, ...rest];
};

/**
 * Lays a document out and deals it into pages: each page element begins one, and runs on over as many as it needs.
 *
 * @param root a document element, or a component that makes one
 */
export const layPages = (root: ReactElement): readonly LaidPage[] => {
	const [document] = elementsIn(root);
	if (document === undefined) throw new Error("The paper made no document");
	const pages = elementsIn(document.props.children).flatMap((element): readonly LaidPage[] => {
		const sheet = sheetOf(element.props as PageProps);
		const state = inherited(PLAIN, element.props.style ?? {});
		const across = sheet.width - 2 * sheet.side;
		const room = sheet.height - sheet.top - sheet.bottom;
		const set: LaidPage[] = [];
		let rest = atTop(elementsIn(element.props.children).map((child) => lay(child, across, state)));
		while (rest.length > 0) {
			const { head, tail } = divide(rest, { room, force: true });
			set.push(onPage(head, sheet));
			rest = atTop(tail);
		}
		// A paper of nothing has a page still, with its head and foot.
		return set.length === 0 ? [{ sheet, children: [] }] : set;
	});
	return pages;
};
