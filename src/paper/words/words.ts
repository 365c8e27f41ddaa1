import type { Block } from "../../document/blocks.ts";
import type { BoundPaper, Language, Paper } from "../../document/document.ts";
import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import { type PageOrder, pageOrder } from "./page-order.ts";
import { type QuestionGroup, questionGroups } from "./questions.ts";
import type { Template } from "./template.ts";
import { wordFiles } from "./word-files.ts";
import { FRAME_WORDS, SLIDE_WORDS, type WordedEntry, wordedEntries } from "./worded-list.ts";

/** The words of one language: labels, page orders and running text. A missing word is a fault of ours and throws. */
export interface Words {
	readonly language: Language;
	/** A table head, caption or phrase of `labels.yaml`, by dotted key. */
	readonly label: (key: string) => string;
	/** As `label`, but undefined where the language has no such key. */
	readonly findLabel: (key: string) => string | undefined;
	/** What a rule requires, by its id; a rule that the language has no words for is printed as it was written. */
	readonly requirement: (rule: string, written: Said) => string;
	/** The name of a formula, by its id; as declared where the language has none of its own. */
	readonly formulaName: (formula: string, declared: string) => string;
	readonly order: (paper: BoundPaper) => PageOrder;
	/** What neighbors ask, from `answers/questions.yaml`. */
	readonly questions: () => readonly QuestionGroup[];
	/** The words of each step of the well being built, from `sequence/frames.yaml`. */
	readonly frames: () => readonly WordedEntry[];
	/** Claims, sentences and notes of the slides, from `slides/slides.yaml`. */
	readonly slides: () => readonly WordedEntry[];
	/** Fills `<paper>/<name>.md.hbs`, or `shared/<name>.md.hbs` where the paper has none of its own. */
	readonly blocks: (paper: Paper, name: string, data: Readonly<Record<string, unknown>>) => Block[];
}

const QUESTIONS = "answers/questions.yaml";

const loaded = new Map<Language, Words>();

/** Reads a language's folder of `templates/`; files are read and compiled when first used, once in a run. */
export const loadWords = (language: Language): Words => {
	const words = loaded.get(language) ?? readWords(language);
	loaded.set(language, words);
	return words;
};

const readWords = (language: Language): Words => {
	const files = wordFiles(language);
	const once = <T, N = string>(read: (name: N) => T): ((name: N) => T) => {
		const known = new Map<N, T>();
		return (name) => {
			const value = known.get(name) ?? read(name);
			known.set(name, value);
			return value;
		};
	};
	const data = once(files.data);
	const labels = data("labels.yaml");
	const template = once<Template>(files.template);
	const questions = once((file) => questionGroups(data(file), file, files.templateWithin));
	const worded = once((list: Parameters<typeof wordedEntries>[1]) =>
		wordedEntries(data(list.file), list, files.templateWithin),
	);
	const findLabel = (key: string): string | undefined => {
		const found = key
			.split(".")
			.reduce<unknown>((node, step) => (isRecord(node) ? node[step] : undefined), labels);
		return typeof found === "string" ? found : undefined;
	};
	// Rules and formulas are written in English where they are declared; another language keeps a list of its own.
	const ownWords = (file: string, id: string): string | undefined => {
		if (language === "en") return undefined;
		const list = data(file);
		const found = isRecord(list) ? list[id] : undefined;
		return typeof found === "string" ? found : undefined;
	};
	return {
		language,
		findLabel,
		label: (key) => {
			const found = findLabel(key);
			if (found === undefined) throw new Error(`templates/${language}/labels.yaml has no "${key}"`);
			return found;
		},
		requirement: (rule, written) =>
			(typeof written === "string" ? ownWords("requirements.yaml", rule) : undefined) ??
			tellSaid(written, { language, units: "field" }),
		formulaName: (formula, declared) => ownWords("formulas.yaml", formula) ?? declared,
		order: once((paper) =>
			pageOrder(data(`${paper}/order.yaml`), `templates/${language}/${paper}/order.yaml`),
		),
		questions: () => questions(QUESTIONS),
		frames: () => worded(FRAME_WORDS),
		slides: () => worded(SLIDE_WORDS),
		blocks: (paper, name, values) =>
			template(files.hasTemplate(`${paper}/${name}`) ? `${paper}/${name}` : `shared/${name}`)(values),
	};
};

const isRecord = (node: unknown): node is Record<string, unknown> =>
	typeof node === "object" && node !== null && !Array.isArray(node);
