import type { UnitSystem } from "../../units/format.ts";
import type { KeyOf } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";

/** Of a picture that is seen from ten meters, or printed small beside what is said of it. */
export interface TalkOptions {
	readonly units: UnitSystem;
	readonly language: "en" | "es";
	readonly words: DrawingWords;
	readonly keyOf?: KeyOf;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly size: number;
	/** Of a narrow picture: the list stands under it. */
	readonly keyBelow?: boolean;
}
