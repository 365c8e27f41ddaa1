import type { Block } from "../../document/blocks.ts";
import { blocksFromMarkdown } from "./markdown.ts";
import { Vault } from "./vault.ts";

/** The only helpers a template has: none reaches beyond the data it is given. */
export const KNOWN_HELPERS = ["if", "unless", "each", "with"] as const;

/** Words of one place of one paper, ready to be filled. */
export type Template = (data: Readonly<Record<string, unknown>>) => Block[];

/** Compiled words: data in, Markdown out. */
export type Run = (data: unknown, options: Readonly<Record<string, boolean>>) => string;

const RUN_OPTIONS = {
	allowProtoPropertiesByDefault: false,
	allowProtoMethodsByDefault: false,
	allowCallsToHelperMissing: false,
} as const;

/** Compiled words as a template: values are sealed while it runs, and its Markdown becomes blocks of the document. */
export const templateOf =
	(run: Run, name: string): Template =>
	(data) => {
		const vault = new Vault();
		try {
			return blocksFromMarkdown(run(vault.seal(data), RUN_OPTIONS), vault);
		} catch (cause) {
			throw new Error(`template ${name}: ${cause instanceof Error ? cause.message : String(cause)}`, {
				cause,
			});
		}
	};

/** Takes out of an instance of the template engine every helper but the known ones. */
export const withKnownHelpersOnly = <
	E extends {
		readonly helpers: Readonly<Record<string, unknown>>;
		readonly unregisterHelper: (name: string) => void;
	},
>(
	engine: E,
): E => {
	for (const name of Object.keys(engine.helpers))
		if (!KNOWN_HELPERS.some((known) => known === name)) engine.unregisterHelper(name);
	return engine;
};
