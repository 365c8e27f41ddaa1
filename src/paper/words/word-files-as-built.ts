import type Handlebars from "handlebars";
import runtime from "handlebars/runtime.js";
import type { Language } from "../../document/document.ts";
import { builtJson, builtProgram } from "../../shipped/built-file.ts";
import { type Run, type Template, templateOf, withKnownHelpersOnly } from "./template.ts";
import type { WordFiles } from "./word-files.ts";

/*
 * The files of `templates/` as the build read and compiled them: neither YAML nor the compiler of templates is needed.
 * The build puts this module in the place of `word-files.ts`; a test holds what the two give equal.
 */

// The package declares no types for its runtime, which is the same object without the compiler.
const handlebars = withKnownHelpersOnly((runtime as unknown as typeof Handlebars).create());

export const wordFiles = (language: Language): WordFiles => {
	const data = builtJson(`words-${language}.json`) as Readonly<Record<string, unknown>>;
	const programs = builtProgram(`words-${language}.cjs`) as Readonly<Record<string, TemplateSpecification>>;
	const compiled = (name: string): Template => {
		const program = programs[name];
		if (program === undefined) throw new Error(`templates/${language} has no ${name}`);
		return templateOf(handlebars.template(program) as Run, `${language}/${name}`);
	};
	return {
		data: (name) => {
			if (!Object.hasOwn(data, name)) throw new Error(`templates/${language} has no ${name}`);
			return data[name];
		},
		hasTemplate: (name) => Object.hasOwn(programs, name),
		template: compiled,
		templateWithin: compiled,
	};
};
