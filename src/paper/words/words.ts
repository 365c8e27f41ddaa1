import { readdirSync, readFileSync } from "node:fs";
import type { Block } from "../../document/blocks.ts";
import { LANGUAGES, type Language, type Paper } from "../../document/document.ts";
import { readYaml } from "../../source/read-yaml.ts";
import { type PageOrder, pageOrder } from "./page-order.ts";
import { type QuestionGroup, questionGroups } from "./questions.ts";
import { compileTemplate, type Template } from "./template.ts";

const TEMPLATES = new URL("../../../templates/", import.meta.url);

/** Languages that have their words. */
export const spokenLanguages = (): readonly Language[] => {
	const folders = readdirSync(TEMPLATES);
	return LANGUAGES.filter((language) => folders.includes(language));
};

/** The words of one language: labels, page orders and running text. A missing word is a fault of ours and throws. */
export interface Words {
	readonly language: Language;
	/** A table head, caption or phrase of `labels.yaml`, by dotted key. */
	readonly label: (key: string) => string;
	/** As `label`, but undefined where the language has no such key. */
	readonly findLabel: (key: string) => string | undefined;
	readonly order: (paper: Paper) => PageOrder;
	/** The steps of a job, from `crew/steps/<job>.yaml`. */
	readonly steps: (job: string) => readonly JobStep[];
	/** What neighbors ask, from `answers/questions.yaml`. */
	readonly questions: () => readonly QuestionGroup[];
	/** Fills `<paper>/<name>.md.hbs`, or `shared/<name>.md.hbs` where the paper has none of its own. */
	readonly blocks: (paper: Paper, name: string, data: Readonly<Record<string, unknown>>) => Block[];
}

/** One step of a job: what is done, what can hurt, what is done about it, and when to stop. */
export interface JobStep {
	readonly step: string;
	readonly hazard: string;
	readonly control: string;
	readonly stop_if: string;
}

const loaded = new Map<Language, Words>();

/** Reads a language's folder of `templates/`; files are read and compiled when first used, once in a run. */
export const loadWords = (language: Language): Words => {
	const words = loaded.get(language) ?? readWords(language);
	loaded.set(language, words);
	return words;
};

const readWords = (language: Language): Words => {
	const folder = new URL(`${language}/`, TEMPLATES);
	const labels = readData(new URL("labels.yaml", folder));
	const templates = new Map<string, Template>();
	const find = (name: string): Template => {
		const known = templates.get(name);
		if (known) return known;
		const template = compileTemplate(
			readFileSync(new URL(`${name}.md.hbs`, folder), "utf8"),
			`${language}/${name}`,
		);
		templates.set(name, template);
		return template;
	};
	const own = new Map<Paper, ReadonlySet<string>>();
	const ownNames = (paper: Paper): ReadonlySet<string> => {
		const names = own.get(paper) ?? new Set(readdirSync(new URL(`${paper}/`, folder)));
		own.set(paper, names);
		return names;
	};
	const findLabel = (key: string): string | undefined => {
		const found = key
			.split(".")
			.reduce<unknown>((node, step) => (isRecord(node) ? node[step] : undefined), labels);
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
		order: (paper) =>
			pageOrder(
				readData(new URL(`${paper}/order.yaml`, folder)),
				`templates/${language}/${paper}/order.yaml`,
			),
		steps: (job) =>
			jobSteps(
				readData(new URL(`crew/steps/${job}.yaml`, folder)),
				`templates/${language}/crew/steps/${job}.yaml`,
			),
		questions: () =>
			questionGroups(
				readData(new URL("answers/questions.yaml", folder)),
				`templates/${language}/answers/questions.yaml`,
			),
		blocks: (paper, name, data) =>
			find(ownNames(paper).has(`${name}.md.hbs`) ? `${paper}/${name}` : `shared/${name}`)(data),
	};
};

const dataOf = new Map<string, unknown>();

const readData = (file: URL): unknown => {
	const data = dataOf.get(file.href) ?? readDataFile(file);
	dataOf.set(file.href, data);
	return data;
};

const readDataFile = (file: URL): unknown => {
	const read = readYaml(readFileSync(file, "utf8"), file.pathname);
	if (read.value === undefined || read.diagnostics.length > 0)
		throw new Error(`${file.pathname}: ${read.diagnostics.map((d) => d.what).join("; ")}`);
	return read.value.value;
};

const isRecord = (node: unknown): node is Record<string, unknown> =>
	typeof node === "object" && node !== null && !Array.isArray(node);

const STEP_WORDS = ["step", "hazard", "control", "stop_if"] as const;

const jobSteps = (data: unknown, file: string): readonly JobStep[] => {
	const steps = isRecord(data) ? data["steps"] : undefined;
	if (!Array.isArray(steps)) throw new Error(`${file}: steps must be a list`);
	return steps.map((node: unknown, i) => {
		const words = STEP_WORDS.map((name) => {
			const value = isRecord(node) ? node[name] : undefined;
			if (typeof value !== "string" || value === "")
				throw new Error(`${file}: steps[${i}].${name} must be words`);
			return [name, value] as const;
		});
		return Object.fromEntries(words) as unknown as JobStep;
	});
};
