import { createElement, type ReactElement, type ReactNode } from "react";
import type { Laid } from "../../../src/render/pdf/layout/laid.ts";
import { layPages } from "../../../src/render/pdf/layout/pages.ts";
import type { BoxStyle, FlowProps, WordStyle } from "../../../src/render/pdf/layout/vocabulary.ts";
import { blocksOf } from "../laid-places.ts";

/* Small made-up blocks: a page of 100 × 100 pt with margins of 10, and bricks that stand in it. */

type Given = FlowProps & { readonly style?: BoxStyle };

export const box = (given: Given, ...children: readonly ReactNode[]): ReactElement =>
	createElement("VIEW", given, ...children);

/** A block of a height that shows itself by its name. */
export const brick = (name: string, height: number, given: Given = {}): ReactElement =>
	box({ ...given, id: name, style: { borderTopWidth: 1, ...given.style, minHeight: height } });

export const space = (height: number): ReactElement => box({ style: { height } });

/** Text with lines of 10 pt. */
export const words = (text: string, given: FlowProps & { readonly style?: WordStyle } = {}): ReactElement =>
	createElement("TEXT", { ...given, style: { fontSize: 8, lineHeight: 1.25, ...given.style } }, text);

const SIDE = 10;

export const page = (...children: readonly ReactNode[]): ReactElement =>
	createElement(
		"PAGE",
		{
			size: [100, 100],
			style: { paddingTop: SIDE, paddingBottom: SIDE, paddingLeft: SIDE, paddingRight: SIDE },
		},
		...children,
	);

export const document = (...pages: readonly ReactElement[]): ReactElement =>
	createElement("DOCUMENT", null, ...pages);

const nameOf = (item: Laid): string | undefined => item.props.id;

/** Names of the bricks on each page, in order. */
export const onPages = (...children: readonly ReactNode[]): readonly (readonly string[])[] => {
	const pages = layPages(document(page(...children)));
	const found = blocksOf(pages);
	return pages.map((_, i) =>
		found.flatMap(({ item, page: at }) => {
			const name = nameOf(item);
			return at === i && name !== undefined ? [name] : [];
		}),
	);
};

/** Where each brick stands within the page's text: left, top, width and height [pt]. */
export const placesOf = (
	...children: readonly ReactNode[]
): Readonly<Record<string, readonly [number, number, number, number]>> =>
	Object.fromEntries(
		blocksOf(layPages(document(page(...children)))).flatMap(({ item, x, y }) => {
			const name = nameOf(item);
			const round = (value: number): number => Math.round(value * 100) / 100;
			return name === undefined
				? []
				: [[name, [round(x - SIDE), round(y - SIDE), round(item.width), round(item.height)] as const]];
		}),
	);
