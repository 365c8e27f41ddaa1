import type { ReactNode } from "react";
import type { Inline } from "../../../document/inline.ts";
import { linkTarget } from "../../print/link-target.ts";
import { printQuantity } from "../../print/print-text.ts";
import { INK } from "../design.ts";
import type { Scene } from "../scene.ts";
import { Go, Words } from "./primitives.tsx";

const set = (inline: Inline, scene: Scene, key: number): ReactNode => {
	switch (inline.kind) {
		case "text":
			return inline.lang === undefined ? (
				inline.text
			) : (
				<Words key={key} lang={inline.lang} style={{}}>
					{inline.text}
				</Words>
			);
		case "quantity":
			return printQuantity(inline, scene.printing);
		case "verdict":
			return (
				<Words key={key} style={{ fontWeight: 600 }}>
					{scene.words.verdicts[inline.verdict]}
				</Words>
			);
		case "strong":
			return (
				<Words key={key} style={{ fontWeight: 600 }}>
					{setInline(inline.children, scene)}
				</Words>
			);
		case "emphasis":
			return (
				<Words key={key} style={{ fontStyle: "italic" }}>
					{setInline(inline.children, scene)}
				</Words>
			);
		case "link":
			return (
				<Go
					key={key}
					src={linkTarget(inline.to, "pdf")}
					style={{ color: INK.heading, textDecoration: "underline" }}
				>
					{setInline(inline.children, scene)}
				</Go>
			);
		default:
			return inline satisfies never;
	}
};

/** Running text as children of a `Words`. Pieces of one style are joined, for text is kerned and painted a run at a time. */
export const setInline = (children: readonly Inline[], scene: Scene): ReactNode => {
	const joined: ReactNode[] = [];
	for (const [i, inline] of children.entries()) {
		const piece = set(inline, scene, i);
		const before = joined.at(-1);
		if (typeof piece === "string" && typeof before === "string") joined[joined.length - 1] = before + piece;
		else joined.push(piece);
	}
	return joined;
};
