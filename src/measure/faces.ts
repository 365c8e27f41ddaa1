import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

export type Weight = "regular" | "semibold" | "bold";

/** One cut of the family. */
export interface Face {
	readonly weight: Weight;
	readonly italic: boolean;
	/** The number CSS and PDF style sheets give the weight. */
	readonly css: 400 | 600 | 700;
	readonly path: string;
}

/** The family every paper and drawing is set in: Source Sans 3, SIL Open Font License 1.1. */
export const FAMILY = "Source Sans 3";

/**
 * Papers and drawings are set without ligatures: a copied text has the letters it shows, and every character has a
 * glyph and a width of its own.
 */
export const NO_LIGATURES: Readonly<Record<string, boolean>> = { liga: false, clig: false, dlig: false };

const require = createRequire(import.meta.url);
const file = (cut: string): string =>
	require.resolve(`@expo-google-fonts/source-sans-3/${cut}/SourceSans3_${cut}.ttf`);

const face = (weight: Weight, css: Face["css"], italic: boolean, cut: string): Face => {
	let found: string | undefined;
	return {
		weight,
		italic,
		css,
		// Finding a package takes longer than measuring a page: it is put off until the face is wanted.
		get path() {
			found ??= file(cut);
			return found;
		},
	};
};

const UPRIGHT: Readonly<Record<Weight, Face>> = {
	regular: face("regular", 400, false, "400Regular"),
	semibold: face("semibold", 600, false, "600SemiBold"),
	bold: face("bold", 700, false, "700Bold"),
};
const semiboldItalic = face("semibold", 600, true, "600SemiBold_Italic");
const ITALIC: Readonly<Record<Weight, Face>> = {
	regular: face("regular", 400, true, "400Regular_Italic"),
	semibold: semiboldItalic,
	bold: semiboldItalic,
};

/** Upright regular, semibold and bold; italic regular and semibold, which stands in for bold italic. */
export const FACES: readonly Face[] = [
	UPRIGHT.regular,
	ITALIC.regular,
	UPRIGHT.semibold,
	ITALIC.semibold,
	UPRIGHT.bold,
];

/** The face that a weight and slope are set in. */
export const faceFor = (weight: Weight = "regular", italic = false): Face =>
	(italic ? ITALIC : UPRIGHT)[weight];

/** The whole font file of a face. */
export const fontBytes = (face: Face): Uint8Array => readFileSync(face.path);
