import Handlebars from "handlebars";
import { KNOWN_HELPERS, type Run, type Template, templateOf, withKnownHelpersOnly } from "./template.ts";

const handlebars = withKnownHelpersOnly(Handlebars.create());

const OPTIONS = {
	strict: true,
	noEscape: true,
	knownHelpersOnly: true,
	knownHelpers: Object.fromEntries(KNOWN_HELPERS.map((helper) => [helper, true])),
	preventIndent: true,
};

/**
 * Compiles a template: strict (an unknown name throws, it is a fault of ours and never a blank in a paper), without
 * partial files, without access to prototypes. Its Markdown becomes blocks of the document.
 *
 * @throws Error naming the template, for a name the data lacks or a mark-up the document has no block for
 */
export const compileTemplate = (source: string, name: string): Template =>
	templateOf(handlebars.compile(source, OPTIONS) as Run, name);

/**
 * A template as the text of a program, compiled as `compileTemplate` does and run without the compiler.
 *
 * @throws Error naming the template, for words that cannot be compiled
 */
export const precompileTemplate = (source: string, name: string): string => {
	try {
		return String(handlebars.precompile(source, OPTIONS));
	} catch (cause) {
		throw new Error(`template ${name}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
	}
};
