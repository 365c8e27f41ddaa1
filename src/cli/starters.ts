import { existsSync, readdirSync, readFileSync } from "node:fs";
import { type Message, message } from "../messages/message.ts";
import { packageFile } from "../shipped/package-file.ts";

const FOLDER = packageFile("seeds/starters/");

/** Definitions, and folders that hold a pad with its wells. */
export const starterNames = (): string[] =>
	readdirSync(FOLDER, { withFileTypes: true })
		.flatMap((entry) =>
			entry.isDirectory()
				? [entry.name]
				: entry.name.endsWith(".yaml")
					? [entry.name.slice(0, -".yaml".length)]
					: [],
		)
		.sort();

/** What a starter is, in a few words. */
export const starterKind = (starter: string): Message =>
	existsSync(new URL(`${starter}/`, FOLDER)) ? message("list/fictional-pad") : message("list/fictional");

/** A file of a starter, and what it is called beside the first. */
interface StarterFile {
	readonly name: string;
	readonly content: Uint8Array;
}

/** The file that is checked and bound, and the files that it names. */
export const starterFiles = (
	starter: string,
): { readonly main: Uint8Array; readonly beside: readonly StarterFile[] } => {
	const pad = new URL(`${starter}/`, FOLDER);
	const isPad = existsSync(pad);
	const folder = isPad ? pad : FOLDER;
	const first = isPad ? "pad.yaml" : `${starter}.yaml`;
	const main = readFileSync(new URL(first, folder));
	const text = main.toString("utf8");
	const beside = readdirSync(folder)
		.filter((name) => name !== first && /\.(?:csv|yaml)$/u.test(name) && text.includes(name))
		.sort()
		.map((name) => ({ name, content: readFileSync(new URL(name, folder)) }));
	return { main, beside };
};
