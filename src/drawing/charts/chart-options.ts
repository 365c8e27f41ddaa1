import type { UnitSystem } from "../../units/format.ts";
import type { KeyOf } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";

export interface ChartOptions {
	readonly units: UnitSystem;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly words: DrawingWords;
	readonly keyOf?: KeyOf;
	/** Of the type, where it is read from afar [pt]. */
	readonly size?: number;
}
