import type { DrawingWords } from "../words.ts";
import { ALTERNATIVES } from "./alternatives.ts";
import { MAPS } from "./maps.ts";
import { NAMES } from "./names.ts";
import { PICTURES } from "./pictures.ts";
import { PRESSURES } from "./pressures.ts";
import { SCHEMATIC } from "./schematic.ts";
import { WORK } from "./work.ts";

/** The drawings' words in Spanish, as used in the southern United States and Mexico; to be read by a bilingual field hand. */
export const SPANISH: DrawingWords = {
	...SCHEMATIC,
	...PICTURES,
	...MAPS,
	...PRESSURES,
	...WORK,
	...ALTERNATIVES,
	...NAMES,
};
