import type { Language } from "../../document/document.ts";
import { ENGLISH } from "./en/index.ts";
import { SPANISH } from "./es/index.ts";
import type { DrawingWords } from "./words.ts";

/** What the drawings say, by language. */
export const DRAWING_WORDS: Readonly<Record<Language, DrawingWords>> = { en: ENGLISH, es: SPANISH };
