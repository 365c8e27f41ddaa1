import type { Block, Cell, Column } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { Inline } from "../../document/inline.ts";
import { linkTarget } from "../print/link-target.ts";
import { NOTHING, type Printing, printCell, printQuantity } from "../print/print-text.ts";
import type { PrintWords } from "../print/print-words.ts";
import { escaped } from "./escape.ts";

export type Kind<K extends Block["kind"]> = Extract<Block, { kind: K }>;

/** What every piece is told. */
export interface Scene {
	readonly document: PaperDocument;
	readonly printing: Printing;
	readonly words: PrintWords;
	/** Title of the section being set. */
	readonly title: string;
	/** A number that no other piece of the file has. */
	readonly next: () => number;
}

export const idOf = (id: string | undefined): string => (id === undefined ? "" : ` id="${escaped(id)}"`);
export const classOf = (...names: readonly (string | undefined)[]): string => {
	const given = names.filter((name) => name !== undefined && name !== "");
	return given.length === 0 ? "" : ` class="${given.join(" ")}"`;
};

export const inline = (children: readonly Inline[], scene: Scene): string =>
	children
		.map((child) => {
			switch (child.kind) {
				case "text":
					return child.lang === undefined
						? escaped(child.text)
						: `<span lang="${child.lang}">${escaped(child.text)}</span>`;
				case "quantity":
					return escaped(printQuantity(child, scene.printing));
				case "verdict":
					return `<span class="met">${escaped(scene.words.verdicts[child.verdict])}</span>`;
				case "strong":
					return `<strong>${inline(child.children, scene)}</strong>`;
				case "emphasis":
					return `<em>${inline(child.children, scene)}</em>`;
				case "link":
					return `<a href="${escaped(linkTarget(child.to, "html"))}">${inline(child.children, scene)}</a>`;
				default:
					return child satisfies never;
			}
		})
		.join("");

export const cellHtml = (cell: Cell | undefined, scene: Scene, column?: Column): string => {
	switch (cell?.kind) {
		case undefined:
		case "none":
			return NOTHING;
		case "rich":
			return inline(cell.children, scene);
		case "verdict":
			return `<span class="${cell.verdict.replaceAll(" ", "-")}">${escaped(scene.words.verdicts[cell.verdict])}</span>`;
		case "unset":
			return `<strong class="unset">${escaped(cell.text)}</strong>`;
		case "blank":
			return `<span class="blank"><span class="unseen">${escaped(scene.words.toFillIn)}</span></span>`;
		case "text":
			if (column?.id === "phone") return phoneHtml(cell.text);
			return escaped(printCell(cell, scene.printing, column));
		case "quantity":
			return escaped(printCell(cell, scene.printing, column));
		default:
			return cell satisfies never;
	}
};

/** A number of seven digits or more as a link that a telephone dials; what else stands beside it stays words (RFC 3966). */
const phoneHtml = (text: string): string => {
	const [number] = /\+?\d[\d\s().-]{4,}\d/u.exec(text) ?? [];
	const digits = number?.replaceAll(/[^\d+]/gu, "") ?? "";
	if (number === undefined || digits.length < 7) return escaped(text);
	const at = text.indexOf(number);
	return `${escaped(text.slice(0, at))}<a href="tel:${digits}">${escaped(number)}</a>${escaped(text.slice(at + number.length))}`;
};
