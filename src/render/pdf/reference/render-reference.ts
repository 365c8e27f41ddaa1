import { type DocumentProps, Font, renderToBuffer } from "@react-pdf/renderer";
import { cloneElement, type ReactElement } from "react";
import type { PaperDocument } from "../../../document/document.ts";
import { FACES, FAMILY } from "../../../measure/faces.ts";
import { piecesOf } from "../pieces.ts";
import { type ReferenceOptions, referenceTree } from "./reference-tree.tsx";

let prepared = false;

const prepare = (): void => {
	if (prepared) return;
	prepared = true;
	Font.register({
		family: FAMILY,
		fonts: FACES.map((face) => ({
			src: face.path,
			fontWeight: face.css,
			fontStyle: face.italic ? ("italic" as const) : ("normal" as const),
		})),
	});
	Font.registerHyphenationCallback(piecesOf);
};

/**
 * The same paper by react-pdf's own layout and writing, through its public interface: a second opinion on ours. It has
 * no tags, no outline and no attachments, was not audited, and is not to be issued.
 */
export const renderReference = async (
	document: PaperDocument,
	options: ReferenceOptions = {},
): Promise<Uint8Array> => {
	prepare();
	const tree = referenceTree(document, options) as ReactElement<DocumentProps>;
	const { imprint } = document;
	const dated = cloneElement(tree, {
		title: `${imprint.title} – ${imprint.well}`,
		creationDate: new Date(`${imprint.issued.slice(0, 10)}T00:00:00Z`),
		language: document.language,
	});
	return new Uint8Array(await renderToBuffer(dated));
};
