import { existsSync, readFileSync } from "node:fs";
import type { Language } from "../../document/document.ts";
import { ENGLISH_READER, tellSaid } from "../../messages/print.ts";
import { packageFile } from "../../shipped/package-file.ts";
import { readYaml } from "../../source/read-yaml.ts";
import { compileTemplate } from "./compile-template.ts";
import type { Template } from "./template.ts";

/*
 * The files of `templates/`, read from their sources: development and tests. The build puts `word-files-as-built.ts` in
 * this module's place, which gives the same, compiled beforehand.
 */

/** One language's folder of `templates/`. Each file is read when it is asked for. */
export interface WordFiles {
	/**
	 * What a file such as `labels.yaml` holds.
	 *
	 * @throws Error naming the file, where it is missing or not well formed
	 */
	readonly data: (name: string) => unknown;
	/** Whether there is a `<name>.md.hbs`. */
	readonly hasTemplate: (name: string) => boolean;
	/** `<name>.md.hbs`, compiled. */
	readonly template: (name: string) => Template;
	/** Words that stand within a data file, compiled; `place` says where, such as `answers/questions.yaml: groups[0]`. */
	readonly templateWithin: (place: string, source: string) => Template;
}

export const wordFiles = (language: Language): WordFiles => {
	const file = (name: string): URL => packageFile(`templates/${language}/${name}`);
	return {
		data: (name) => {
			const shown = `templates/${language}/${name}`;
			const read = readYaml(readFileSync(file(name), "utf8"), shown);
			if (read.value === undefined || read.diagnostics.length > 0)
				throw new Error(
					`${shown}: ${read.diagnostics.map((d) => tellSaid(d.what, ENGLISH_READER)).join("; ")}`,
				);
			return read.value.value;
		},
		hasTemplate: (name) => existsSync(file(`${name}.md.hbs`)),
		template: (name) => compileTemplate(readFileSync(file(`${name}.md.hbs`), "utf8"), `${language}/${name}`),
		templateWithin: (place, source) => compileTemplate(source, `${language}/${place}`),
	};
};
