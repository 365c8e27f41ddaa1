import { existsSync, readdirSync, readFileSync } from "node:fs";
import { shippedCatalog, shippedRuleSet } from "../catalog/shipped.ts";
import { type Checked, hasErrors } from "../diagnostics/diagnostic.ts";
import { printDiagnostics } from "../diagnostics/print.ts";
import { LANGUAGES, type Language } from "../document/document.ts";
import { precompileTemplate } from "../paper/words/compile-template.ts";
import { questionGroups } from "../paper/words/questions.ts";
import { wordFiles } from "../paper/words/word-files.ts";
import { WORDED_LISTS, wordedEntries } from "../paper/words/worded-list.ts";
import { packageFile } from "../shipped/package-file.ts";

/*
 * takes  seeds/ and templates/
 * gives  the files that the shipped tool reads in their place, by name under dist/shipped/; a fault stops the build
 * may not  run in the shipped tool
 */

/** Folders of `seeds/` that hold files of limits. */
const RULE_FOLDERS = ["jurisdictions", "practice"] as const;

/**
 * Reads all shipped data through its forms, and gives it in the form that the shipped tool reads.
 *
 * @throws Error with every fault of a file, located in it
 */
export const makeShipped = (): ReadonlyMap<string, string> => {
	const made = new Map<string, string>();
	// What the catalogue does is left out by the writer of JSON: it keeps the tables alone.
	made.set("tables.json", JSON.stringify(sound(shippedCatalog(), "tables")));
	for (const folder of RULE_FOLDERS)
		for (const file of filesBelow(`seeds/${folder}/`).filter((name) => name.endsWith(".yaml"))) {
			const name = `${folder}/${file}`;
			made.set(name.replace(/\.yaml$/u, ".json"), JSON.stringify(sound(shippedRuleSet(name), name)));
		}
	for (const language of LANGUAGES) {
		const { data, programs } = wordsOf(language);
		made.set(`words-${language}.json`, JSON.stringify(data));
		const entries = Object.entries(programs).map(([name, program]) => `${JSON.stringify(name)}: ${program}`);
		made.set(`words-${language}.cjs`, `module.exports = {\n${entries.join(",\n")}\n};\n`);
	}
	return made;
};

const sound = <T>(checked: Checked<T> | undefined, what: string): T => {
	if (checked?.value !== undefined && !hasErrors(checked.diagnostics)) return checked.value;
	const faults = printDiagnostics(checked?.diagnostics ?? [], new Map(), { color: false, width: 100 });
	throw new Error(`${what} of seeds/ cannot be shipped\n${faults}`);
};

/** Names of the files in a folder of the package and below it, in order; none where there is no such folder. */
const filesBelow = (folder: string): readonly string[] => {
	const place = packageFile(folder);
	if (!existsSync(place)) return [];
	return readdirSync(place, { recursive: true, encoding: "utf8" })
		.map((name) => name.replaceAll("\\", "/"))
		.filter((name) => /\.\w+$/u.test(name))
		.sort();
};

/** What the files of one language hold, by name; and every template of theirs as a program, by name or place. */
const wordsOf = (
	language: Language,
): {
	readonly data: Readonly<Record<string, unknown>>;
	readonly programs: Readonly<Record<string, string>>;
} => {
	const folder = `templates/${language}/`;
	const files = wordFiles(language);
	const data: Record<string, unknown> = {};
	const programs: Record<string, string> = {};
	for (const name of filesBelow(folder)) {
		if (name.endsWith(".yaml")) data[name] = files.data(name);
		if (!name.endsWith(TEMPLATE)) continue;
		const template = name.slice(0, -TEMPLATE.length);
		const source = readFileSync(packageFile(`${folder}${name}`), "utf8");
		programs[template] = precompileTemplate(source, `${language}/${template}`);
	}
	const questions = "answers/questions.yaml";
	questionGroups(data[questions], questions, (place, source) => {
		programs[place] = precompileTemplate(source, `${language}/${place}`);
		return () => [];
	});
	for (const list of WORDED_LISTS)
		wordedEntries(data[list.file], list, (place, source) => {
			programs[place] = precompileTemplate(source, `${language}/${place}`);
			return () => [];
		});
	return { data, programs };
};

const TEMPLATE = ".md.hbs";
