import type { ReactNode } from "react";
import type { Weight } from "../../../measure/faces.ts";
import { faceFor } from "../../../measure/faces.ts";
import { typefaceOf } from "../../../measure/typeface.ts";
import { eachOf } from "./elements.ts";
import type { RunStyle } from "./laid.ts";
import type { WordStyle } from "./vocabulary.ts";

/** How text is set where nothing else is said; inherited from the page down. */
export interface TextState {
	readonly size: number;
	readonly leading: number;
	readonly weight: 400 | 600 | 700;
	readonly italic: boolean;
	readonly align: "left" | "right" | "center";
	readonly color: string;
	readonly underline: boolean;
	readonly link?: string;
	readonly lang?: "en" | "es";
}

/** The state inside an element that has a style of its own. */
export const inherited = (state: TextState, style: WordStyle): TextState => ({
	...state,
	size: style.fontSize ?? state.size,
	leading: style.lineHeight ?? state.leading,
	weight: style.fontWeight ?? state.weight,
	italic: style.fontStyle === undefined ? state.italic : style.fontStyle === "italic",
	align: style.textAlign ?? state.align,
	color: style.color ?? state.color,
	underline: style.textDecoration === undefined ? state.underline : style.textDecoration === "underline",
});

/** Letters of one style. */
export interface Part {
	readonly text: string;
	readonly style: RunStyle;
	readonly width: number;
}

/** What no line is broken within; parts where its style changes. */
export interface Word {
	readonly parts: readonly Part[];
	readonly width: number;
	/** Spaces behind it, and their width. */
	readonly gap: string;
	readonly space: number;
	/** The line ends behind it, by the writer's will. */
	readonly ends: boolean;
}

const WEIGHTS: Readonly<Record<400 | 600 | 700, Weight>> = { 400: "regular", 600: "semibold", 700: "bold" };

export const runStyle = ({ weight, italic, size, color, underline, link, lang }: TextState): RunStyle => ({
	typeface: typefaceOf(faceFor(WEIGHTS[weight], italic)),
	size,
	color,
	underline,
	...(link === undefined ? {} : { link }),
	...(lang === undefined ? {} : { lang }),
});

const widthIn = ({ typeface, size }: RunStyle, text: string): number =>
	(typeface.widthOf(text) / typeface.unitsPerEm) * size;

export const partOf = (text: string, style: RunStyle): Part => ({ text, style, width: widthIn(style, text) });

interface Gathering {
	readonly words: Word[];
	parts: Part[];
	source: string;
}

const close = (into: Gathering, gap: "" | " ", width: number, ends: boolean): void => {
	const { parts, words } = into;
	const last = words.at(-1);
	if (parts.length > 0) {
		const whole = parts.reduce((sum, part) => sum + part.width, 0);
		words.push({ parts, width: whole, gap, space: width, ends });
		into.parts = [];
	} else if (ends && (last === undefined || last.ends)) {
		words.push({ parts: [], width: 0, gap: "", space: 0, ends });
	} else if (last !== undefined) {
		words[words.length - 1] = {
			...last,
			gap: last.gap + gap,
			space: last.space + width,
			ends: last.ends || ends,
		};
	}
};

/** A line is broken at a plain space alone: one that does not break holds a number to its unit. */
const SEPARATOR = /[ \n\u2028]/gu;

const gatherText = (text: string, state: TextState, into: Gathering): void => {
	const style = runStyle(state);
	const space = widthIn(style, " ");
	let from = 0;
	for (const { 0: sign, index } of text.matchAll(SEPARATOR)) {
		if (index > from) into.parts.push(partOf(text.slice(from, index), style));
		if (sign === " ") close(into, sign, space, false);
		else close(into, "", 0, true);
		from = index + 1;
	}
	if (from < text.length) into.parts.push(partOf(text.slice(from), style));
	into.source += text;
};

const gather = (node: ReactNode, state: TextState, into: Gathering): void =>
	eachOf(node, (child) => {
		if (typeof child === "string") {
			gatherText(child, state, into);
			return;
		}
		const { style = {}, src, lang, children } = child.props;
		const inside = {
			...inherited(state, style),
			...(src === undefined ? {} : { link: src }),
			...(lang === undefined ? {} : { lang }),
		};
		gather(children, inside, into);
	});

/** The words of a text element, and its letters as they were given. */
export const wordsOf = (
	children: ReactNode,
	state: TextState,
): { readonly words: readonly Word[]; readonly source: string } => {
	const into: Gathering = { words: [], parts: [], source: "" };
	gather(children, state, into);
	close(into, "", 0, false);
	return { words: into.words, source: into.source };
};
