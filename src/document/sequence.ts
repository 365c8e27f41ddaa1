import type { UnitSystem } from "../units/format.ts";
import type { Language } from "./document.ts";
import type { Inline } from "./inline.ts";
import type { Drawing } from "./shapes.ts";

/** One step of a well being built: a picture, and a sentence with this well's numbers. */
export interface SequenceFrame {
	readonly id: string;
	/** From 1. */
	readonly number: number;
	readonly title: string;
	readonly say: readonly Inline[];
	readonly drawing: Drawing;
}

/** The steps of a well, ready for a page that shows one after another. */
export interface SequenceDocument {
	readonly language: Language;
	readonly units: UnitSystem;
	readonly title: string;
	readonly operator: string;
	readonly well: string;
	/** `issued for review`, revision, date and digest. */
	readonly standing: string;
	readonly caution: string;
	readonly frames: readonly SequenceFrame[];
}
