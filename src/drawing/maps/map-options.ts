import type { UnitSystem } from "../../units/format.ts";
import type { KeyOf } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";

export interface MapOptions {
	readonly units: UnitSystem;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly words: DrawingWords;
	/** `plain`: larger type and everyday words. */
	readonly detail?: "full" | "plain";
	readonly keyOf?: KeyOf;
}
