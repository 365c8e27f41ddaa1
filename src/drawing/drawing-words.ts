import type { Language } from "../document/document.ts";
import type { DrawingWords } from "./words.ts";
import { ENGLISH } from "./words-en.ts";
import { SPANISH } from "./words-es.ts";

/** What the drawings say, by language. */
export const DRAWING_WORDS: Readonly<Record<Language, DrawingWords>> = { en: ENGLISH, es: SPANISH };
