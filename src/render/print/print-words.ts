import type { Block } from "../../document/blocks.ts";
import type { Language, PaperDocument } from "../../document/document.ts";
import type { Verdict } from "../../document/verdict.ts";

type Tone = Extract<Block, { kind: "callout" }>["tone"];

/** The words a renderer adds of itself; every other word is the paper's own. */
export interface PrintWords {
	readonly verdicts: Readonly<Record<Verdict, string>>;
	readonly tones: Readonly<Record<Tone, string>>;
	readonly apiNumber: string;
	readonly state: string;
	readonly issued: string;
	readonly validUntil: string;
	readonly digest: string;
	/** Behind the number of a table, on the pages that it runs over. */
	readonly continued: string;
	/** Prefix of a figure's statement of scale. */
	readonly scale: string;
	/** Text alternative of a link. */
	readonly goTo: string;
	/** Heads of a list of labels and values that is set as a table. */
	readonly pairs: readonly [label: string, value: string];
	/** Units whose sign a reader may not know, in full, for the head of a column. */
	readonly units: Readonly<Record<string, string>>;
	/** Of the HTML edition: the link past its head. */
	readonly skip: string;
	/** Of the HTML edition: what a box for a pencil is. */
	readonly toFillIn: string;
}

export const PRINT_WORDS: Readonly<Record<Language, PrintWords>> = {
	en: {
		verdicts: {
			met: "meets",
			"not met": "does not meet",
			"cannot tell": "insufficient data",
			"needs judgement": "engineer to confirm",
			"does not apply": "not applicable",
		},
		tones: { stop: "STOP", caution: "CAUTION", note: "NOTE" },
		apiNumber: "API number",
		state: "State",
		issued: "Issued",
		validUntil: "Valid until",
		digest: "Document ID",
		continued: "(continued)",
		scale: "Scale",
		goTo: "Go to",
		pairs: ["Item", "Value"],
		units: { d: "days" },
		skip: "Skip to the paper",
		toFillIn: "to be filled in",
	},
	es: {
		verdicts: {
			met: "cumple",
			"not met": "no cumple",
			"cannot tell": "faltan datos",
			"needs judgement": "por confirmar (ingeniero)",
			"does not apply": "no aplica",
		},
		tones: { stop: "ALTO", caution: "PRECAUCIÓN", note: "NOTA" },
		apiNumber: "Número API",
		state: "Estado",
		issued: "Emitido",
		validUntil: "Válido hasta",
		digest: "Código del documento",
		continued: "(continuación)",
		scale: "Escala",
		goTo: "Ir a",
		pairs: ["Dato", "Valor"],
		units: { d: "días" },
		skip: "Ir al documento",
		toFillIn: "por llenar",
	},
};

/** The words of a paper's language; of two languages, STOP and its like in both. */
export const printWordsOf = ({
	language,
	second,
}: Pick<PaperDocument, "language" | "second">): PrintWords => {
	const words = PRINT_WORDS[language];
	if (second === undefined) return words;
	const other = PRINT_WORDS[second].tones;
	const { stop, caution, note } = words.tones;
	return {
		...words,
		tones: {
			stop: `${stop} / ${other.stop}`,
			caution: `${caution} / ${other.caution}`,
			note: `${note} / ${other.note}`,
		},
	};
};
