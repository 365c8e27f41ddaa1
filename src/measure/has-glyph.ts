import { FACES } from "./faces.ts";
import { typefaceOf } from "./typeface.ts";

/** Whether every cut of the family has a character, so that it can stand in any place of a paper. */
export const hasGlyph = (codePoint: number): boolean =>
	FACES.every((face) => typefaceOf(face).glyphOf(codePoint) !== 0);
