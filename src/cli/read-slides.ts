import { readOwnSlides } from "../paper/slides/read-own-slides.ts";
import { decodeText } from "../source/decode-text.ts";
import { nameOf, readBytes } from "./read-bytes.ts";
import { refuse, type ShippedData, textsOf } from "./shipped.ts";

const readOne = (name: string) => {
	const shown = nameOf(name);
	const bytes = readBytes(name);
	const text = decodeText(bytes, shown);
	if (text.value === undefined) return refuse(text.diagnostics);
	const texts = textsOf(text.value, shown);
	const read = readOwnSlides(text.value, shown);
	if (read.value === undefined) return refuse(read.diagnostics, texts);
	return { file: { name: shown, bytes }, slides: read.value, texts };
};

/**
 * What ships, with a presenter's own slides beside it; the fingerprint of a well is made over their files too.
 *
 * @throws SeedFault, FileFault
 */
export const withSlidesFiles = (shipped: ShippedData, names: readonly string[]): ShippedData => {
	if (names.length === 0) return shipped;
	const read = names.map(readOne);
	return {
		...shipped,
		own: [...(shipped.own ?? []), ...read.map(({ file }) => file)],
		ownSlides: {
			files: read.map(({ file, slides }) => ({ name: file.name, slides })),
			texts: new Map(read.flatMap(({ texts }) => [...texts])),
		},
	};
};
