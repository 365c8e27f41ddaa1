import type { Results } from "../calc/results.ts";
import type { Bibliography } from "../catalog/bibliography.ts";
import type { GlossaryTerm } from "../catalog/glossary.ts";
import type { Job } from "../catalog/jobs.ts";
import type { ValueIndex } from "../cite/index-values.ts";
import { isRating } from "../cite/is-rating.ts";
import { isKnown, type Known } from "../cite/known.ts";
import type { Changes } from "../compare/compare.ts";
import type { Cell } from "../document/blocks.ts";
import type { Paper } from "../document/document.ts";
import type { Inline, QuantityStyle, QuantityText } from "../document/inline.ts";
import type { Drawing } from "../document/shapes.ts";
import type { Said } from "../messages/message.ts";
import { capital, type Reader, sentenceCase, type ToldPart, tellParts } from "../messages/print.ts";
import type { DueItem } from "../rules/due-dates.ts";
import type { Judgement, MissingItem } from "../rules/finding.ts";
import type { UnitSystem } from "../units/format.ts";
import type { Well } from "../well/well.ts";
import type { OwnSlidesFile } from "./slides/own-slides.ts";
import type { Words } from "./words/words.ts";

/** Everything a paper is made from; computed before any paper is begun, and the same for all of them. */
export interface Findings {
	readonly well: Well;
	readonly results: Results;
	readonly judgement: Judgement;
	readonly missing: readonly MissingItem[];
	/** Due dates by the schedule, earliest first. */
	readonly due: readonly DueItem[];
	readonly index: ValueIndex;
	readonly sources: Bibliography;
	readonly glossary: readonly GlossaryTerm[];
	readonly jobs: readonly Job[];
	/** The definition as written. */
	readonly written: unknown;
	/** The unit system that the definition is written in. */
	readonly writtenIn: UnitSystem;
	/** First 8 hex digits of the digest over every file read. */
	readonly digest: string;
	readonly version: string;
	/** Of several wells of one pad taken together. */
	readonly pad?: PadOfWells;
}

/** The wells of a pad, where a paper speaks of all of them. */
export interface PadOfWells {
	readonly wells: readonly Findings[];
	/** Of which what belongs to one well alone is told. */
	readonly governing: string;
}

/** One paper's view of the findings. */
export interface PaperContext extends Findings {
	readonly paper: Paper;
	readonly words: Words;
	readonly units: UnitSystem;
	/** Of the answer sheet: where the regulator paper prints a value, as `6 Hole and casing`. */
	readonly printedAt?: (key: string) => string | undefined;
	/** Whether a word stands in the paper outside its glossary. */
	readonly saidElsewhere?: (word: string) => boolean;
	/** Keys of the numbers that the paper prints, for the part that lists the inputs it has not printed. */
	readonly printedKeys?: ReadonlySet<string>;
	/** What changed since an earlier state of the well, where the paper is bound against one. */
	readonly changes?: Changes;
	/** The drawings that stand in the paper, for the part that tells what they leave out. */
	readonly drawn?: readonly Drawing[];
	/** Of a crew pack: the job, and the string it is done on. */
	readonly job?: {
		readonly id: string;
		readonly string?: string;
		readonly done?: boolean;
		readonly doneOn?: string;
	};
	/** Of slides and notes: the presenter's own, by file. */
	readonly ownSlides?: readonly OwnSlidesFile[];
	/** Of a neighbor's own edition: whose; and when their own water was sampled, which no other edition tells. */
	readonly neighbor?: { readonly id: string; readonly sampled?: string };
}

/** How a value prints in tables and sentences alike, where its dimension's own decimals would say more than is meant. */
const roundingOf = ({ units }: PaperContext, known: Known): QuantityStyle | undefined =>
	units === "field" && isRating(known) ? { nearest: 10 } : undefined;

const isPlain = (style: QuantityStyle): boolean => Object.keys(style).length === 0;

/** A value on its way into a table or sentence, with the key by which papers agree. */
export const shown = (context: PaperContext, known: Known, style?: QuantityStyle): QuantityText => {
	const key = context.index.keyOf(known);
	const rounding = style === undefined || isPlain(style) ? (roundingOf(context, known) ?? style) : style;
	return {
		kind: "quantity",
		dimension: known.dimension,
		value: known.value,
		...(key === undefined ? {} : { key }),
		...(rounding === undefined ? {} : { style: rounding }),
	};
};

/** As `shown`, with a dash where there is no value. */
export const cell = (context: PaperContext, known: Known | undefined, style?: QuantityStyle): Cell =>
	known === undefined ? { kind: "none" } : shown(context, known, style);

export const textCell = (value: string | undefined): Cell =>
	value === undefined || value === "" ? { kind: "none" } : { kind: "text", text: value };

/** Who reads the paper: in which language, and in which units. */
export const readerOf = ({ words, units }: PaperContext): Reader => ({ language: words.language, units });

/** Parts of a sentence on their way into a paper, each value with the key by which papers agree. */
export const toldInlines = (context: PaperContext, parts: readonly ToldPart[]): Inline[] =>
	parts.map((part): Inline => {
		if (typeof part === "string") return { kind: "text", text: part };
		const { known, value } = part;
		const style =
			isKnown(known) && isPlain(part.style) ? (roundingOf(context, known) ?? part.style) : part.style;
		const key = context.index.keyOf(known);
		return {
			kind: "quantity",
			dimension: known.dimension,
			value,
			style,
			...(key === undefined ? {} : { key }),
		};
	});

/** What a stage says, in the language and units of the paper; nothing begins with a capital that is not a sentence. */
export const saidInlines = (context: PaperContext, said: Said, sentence = false): Inline[] => {
	if (typeof said === "string") return [{ kind: "text", text: sentence ? capital(said) : said }];
	const parts = tellParts(said, readerOf(context));
	return toldInlines(context, sentence ? sentenceCase(parts) : parts);
};

/** A cell that holds a sentence. */
export const saidCell = (context: PaperContext, said: Said): Cell =>
	said === "" ? { kind: "none" } : { kind: "rich", children: saidInlines(context, said, true) };
