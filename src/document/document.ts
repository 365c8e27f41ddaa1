import type { UnitSystem } from "../units/format.ts";
import type { Section, SheetName } from "./blocks.ts";

/** Papers that a definition may name where it says whom an entry is for. */
export const READER_PAPERS = ["regulator", "landowner", "handout", "answers", "crew"] as const;
export type ReadBy = (typeof READER_PAPERS)[number];
export const PAPERS = [...READER_PAPERS, "regulator-appendix", "transmittal", "slides", "notes"] as const;
export type Paper = (typeof PAPERS)[number];
/** What is bound: a paper of the well, or the paper of what changed between two states of it. */
export type BoundPaper = Paper | "changes";

/** Papers that go to the readers of another: what a room is shown or told is what the packet in its hands may say. */
const COMPANIONS: Readonly<Partial<Record<BoundPaper, ReadBy>>> = {
	"regulator-appendix": "regulator",
	transmittal: "regulator",
	changes: "regulator",
	slides: "landowner",
	notes: "landowner",
};

/** Whose paper decides what another shows. */
export const readerPaperOf = (paper: BoundPaper): ReadBy => COMPANIONS[paper] ?? (paper as ReadBy);
export const readBy = readerPaperOf;

/** What is bound when a paper is asked for: the regulator's has its appendices in a file of their own. */
export const boundWith = (paper: Paper): readonly Paper[] =>
	paper === "regulator" ? ["regulator", "regulator-appendix"] : [paper];
export const LANGUAGES = ["en", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

/** How large a paper is set: office reading, looking things up, kitchen-table reading, a clipboard in the wind, or a screen seen from ten meters. */
export type Setting = "office" | "reference" | "public" | "lectern" | "field" | "screen";

/** What the head, foot and metadata of a paper say. */
export interface Imprint {
	readonly operator: string;
	readonly well: string;
	readonly apiNumber?: string;
	readonly title: string;
	readonly subtitle?: string;
	/** `draft`, `issued for review` …, as printed on every page. */
	readonly state: string;
	readonly revision: string;
	/** The definition's date of issue, ISO 8601. */
	readonly issued: string;
	/** The same day as the paper's readers say it: in words to the public. */
	readonly issuedAs: string;
	readonly validUntil?: string;
	/** First 8 hex digits of the SHA-256 over the definition and every file it draws on. */
	readonly digest: string;
	/** One line, on every page: planning aid; local rules, permit and licensed judgement govern. */
	readonly caution: string;
	readonly subject: string;
	/** Words of the running foot: "page", "of". */
	readonly words: {
		readonly page: string;
		readonly of: string;
		readonly revision: string;
		readonly contents: string;
	};
}

/** A whole paper, ready for any renderer: numbers are still numbers, and nothing refers back to the well. */
export interface PaperDocument {
	readonly paper: BoundPaper;
	/** Added to the file name: the job of a crew pack. */
	readonly part?: string;
	/** The file that it is read with, without an ending, where it leads there. */
	readonly companion?: string;
	readonly language: Language;
	/** The language that stands beside it; digits and units are the same in both. */
	readonly second?: Language;
	readonly units: UnitSystem;
	readonly setting: Setting;
	/** A letter page where absent. */
	readonly sheet?: SheetName;
	/** Taken for every page where a section that is to keep to one page does not on `sheet`. */
	readonly largerSheet?: SheetName;
	readonly imprint: Imprint;
	readonly sections: readonly Section[];
}
