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

/** Upright regular, semibold and bold; italic regular and semibold, which stands in for bold italic. */
export const FACES: readonly Face[] = [
	{ weight: "regular", italic: false, css: 400, path: file("400Regular") },
	{
		weight: "regular",
		italic: true,
		css: 400,
		path: file("400Regular_Italic"),
	},
	{ weight: "semibold", italic: false, css: 600, path: file("600SemiBold") },
	{
		weight: "semibold",
		italic: true,
		css: 600,
		path: file("600SemiBold_Italic"),
	},
	{ weight: "bold", italic: false, css: 700, path: file("700Bold") },
];

/** The face that a weight and slope are set in. */
export const faceFor = (weight: Weight = "regular", italic = false): Face => {
	const cut = italic && weight === "bold" ? "semibold" : weight;
	const face = FACES.find((f) => f.weight === cut && f.italic === italic);
	if (face === undefined) throw new Error(`No face for ${weight}${italic ? " italic" : ""}`);
	return face;
};

/** The whole font file of a face. */
export const fontBytes = (face: Face): Uint8Array => new Uint8Array(readFileSync(face.path));
