import type { Section } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import { type Printing, printingOf } from "../print/print-text.ts";
import { type PrintWords, printWordsOf } from "../print/print-words.ts";
import { DESIGNS, type Design, designAt, measureOf, SHEETS } from "./design.ts";
import type { Sheet } from "./layout/vocabulary.ts";
import type { Tag } from "./tags.ts";

/** What every component is told. */
export interface Scene {
	readonly document: PaperDocument;
	readonly sections: readonly Section[];
	readonly design: Design;
	readonly words: PrintWords;
	readonly printing: Printing;
	/** Pages that are being set on. */
	readonly sheet: Sheet;
	/** Width there is to set in [pt]. */
	readonly width: number;
	/** Space below a paragraph [pt]. */
	readonly gap: number;
	/** Title of the section being set. */
	readonly title?: string;
	/** The section being set has no head: its headings stand right under the paper's title. */
	readonly headless?: boolean;
	/** Structure element of the section being set. */
	readonly sect?: Tag;
}

/** The same on pages of another size. */
export const onSheet = (scene: Scene, sheet: Sheet): Scene => ({ ...scene, sheet, width: measureOf(sheet) });

/** The same in type of a share of its size. */
export const atScale = (scene: Scene, scale: number): Scene => {
	const design = designAt(scene.design.setting, scale);
	return { ...scene, design, gap: design.step };
};

export const sceneOf = (document: PaperDocument): Scene => ({
	document,
	sections: document.sections,
	design: DESIGNS[document.setting],
	words: printWordsOf(document),
	printing: printingOf(document),
	sheet: SHEETS[document.sheet ?? "letter"],
	width: measureOf(SHEETS[document.sheet ?? "letter"]),
	gap: DESIGNS[document.setting].step,
});

/** Parent of a top-level block: the section, where there is one. */
export const inSection = (scene: Scene): { within?: Tag } =>
	scene.sect === undefined ? {} : { within: scene.sect };
