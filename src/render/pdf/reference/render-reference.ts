import { type DocumentProps, Font, renderToBuffer } from "@react-pdf/renderer";
import { cloneElement, type ReactElement } from "react";
import type { PaperDocument } from "../../../document/document.ts";
import { FACES, FAMILY } from "../../../measure/faces.ts";
import { piecesOf } from "../pieces.ts";
import { type ReferenceOptions, referenceTree } from "./reference-tree.tsx";

let prepared: Promise<void> | undefined;

/** What is asked of a font that the library has opened. */
interface OpenFont {
	readonly characterSet: readonly number[];
	glyphForCodePoint(codePoint: number): unknown;
}

/**
 * Makes every glyph known by its character before a paper is set. The font keeps the first form in which a glyph is
 * asked for: a period asked for as a part of a colon would have no character, and could not be copied.
 */
const nameGlyphs = async (): Promise<void> => {
	for (const face of FACES) {
		const wanted = {
			fontFamily: FAMILY,
			fontWeight: face.css,
			fontStyle: face.italic ? ("italic" as const) : ("normal" as const),
		};
		await Font.load(wanted);
		const font = Font.getFont(wanted)?.data as OpenFont | null | undefined;
		for (const codePoint of font?.characterSet ?? []) font?.glyphForCodePoint(codePoint);
	}
};

const prepare = (): Promise<void> => {
	prepared ??= (async () => {
		Font.register({
			family: FAMILY,
			fonts: FACES.map((face) => ({
				src: face.path,
				fontWeight: face.css,
				fontStyle: face.italic ? ("italic" as const) : ("normal" as const),
			})),
		});
		Font.registerHyphenationCallback(piecesOf);
		await nameGlyphs();
	})();
	return prepared;
};

/**
 * The same paper by react-pdf's own layout and writing, through its public interface: a second opinion on ours. It has
 * no tags, no outline and no attachments, was not audited, and is not to be issued.
 */
export const renderReference = async (
	document: PaperDocument,
	options: ReferenceOptions = {},
): Promise<Uint8Array> => {
	await prepare();
	const tree = referenceTree(document, options) as ReactElement<DocumentProps>;
	const { imprint } = document;
	const dated = cloneElement(tree, {
		title: `${imprint.title} – ${imprint.well}`,
		creationDate: new Date(`${imprint.issued.slice(0, 10)}T00:00:00Z`),
		language: document.language,
	});
	return new Uint8Array(await renderToBuffer(dated));
};
