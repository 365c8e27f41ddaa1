import Handlebars from "handlebars";
import type { Block } from "../../document/blocks.ts";
import { blocksFromMarkdown } from "./markdown.ts";
import { Vault } from "./vault.ts";

const KNOWN_HELPERS = ["if", "unless", "each", "with"] as const;

/** An instance of our own, with every helper removed that could reach beyond the data it is given. */
const handlebars = Handlebars.create();
for (const name of Object.keys(handlebars.helpers))
	if (!KNOWN_HELPERS.some((known) => known === name)) handlebars.unregisterHelper(name);

/** Words of one place of one paper, ready to be filled. */
export type Template = (data: Readonly<Record<string, unknown>>) => Block[];

/**
 * Compiles a template: strict (an unknown name throws, it is a fault of ours and never a blank in a paper), without
 * partial files, without access to prototypes. Its Markdown becomes blocks of the document.
 *
 * @throws Error naming the template, for a name the data lacks or a mark-up the document has no block for
 */
export const compileTemplate = (source: string, name: string): Template => {
	const run = handlebars.compile(source, {
		strict: true,
		noEscape: true,
		knownHelpersOnly: true,
		knownHelpers: Object.fromEntries(KNOWN_HELPERS.map((helper) => [helper, true])),
		preventIndent: true,
	});
	return (data) => {
		const vault = new Vault();
		try {
			const markdown = run(vault.seal(data), {
				allowProtoPropertiesByDefault: false,
				allowProtoMethodsByDefault: false,
				allowCallsToHelperMissing: false,
			} as Handlebars.RuntimeOptions);
			return blocksFromMarkdown(markdown, vault);
		} catch (cause) {
			throw new Error(`template ${name}: ${cause instanceof Error ? cause.message : String(cause)}`, {
				cause,
			});
		}
	};
};
