import { type Font, openSync } from "fontkit";
import type { Face } from "./faces.ts";

const opened = new Map<string, Font>();

/** The parsed font of a face, read once. */
export const openFace = (face: Face): Font => {
	const known = opened.get(face.path);
	if (known !== undefined) return known;
	const font = openSync(face.path);
	opened.set(face.path, font);
	return font;
};
