import { ALTERNATIVES } from "./alternatives.ts";
import { MAPS } from "./maps.ts";
import { NAMES } from "./names.ts";
import { PICTURES } from "./pictures.ts";
import { PRESSURES } from "./pressures.ts";
import { SCHEMATIC } from "./schematic.ts";
import { WORK } from "./work.ts";

/** The drawings' words in US English; the names of its phrases are those of every language. */
export const ENGLISH = {
	...SCHEMATIC,
	...PICTURES,
	...MAPS,
	...PRESSURES,
	...WORK,
	...ALTERNATIVES,
	...NAMES,
} as const;
