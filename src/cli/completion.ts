import { readdirSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import root, { type Complete } from "@bomb.sh/tab";
import tab from "@bomb.sh/tab/commander";
import { Argument, Command } from "commander";
import type { Session } from "./program.ts";

const SHELLS = ["bash", "zsh", "fish"] as const;

/** `casebound completion`: what a shell reads once, so that it asks the program at every Tab. */
export const completionCommand = (_session: Session): Command =>
	new Command("completion")
		.addArgument(new Argument("<shell>", "whose script to print").choices(SHELLS))
		.addHelpText(
			"after",
			"\nExamples:\n  casebound completion bash >> ~/.bashrc\n  casebound completion zsh >> ~/.zshrc\n  casebound completion fish > ~/.config/fish/completions/casebound.fish",
		)
		.action((shell: string) => root.setup("casebound", "casebound", shell));

/** What stands in a usage for the name of something on the disk. */
const ON_DISK = /^<(?:file|folder|earlier)(?:\.\.\.)?>$|^(?:file|folder)$/u;

/**
 * Answers what the scripts call, `casebound complete -- bind my-well.yaml --fo`: prints how the last of some words could go on, a line each, as the shells' scripts read it.
 *
 * @param program with the command loaded that the words name
 * @param words as typed so far; the last one is empty where a new one is begun
 */
export const complete = (program: Command, words: readonly string[]): void => {
	const commands = [...program.commands];
	tab(program, { completionCommandName: "completion-of-library" });
	const files = (offer: Complete): void => filesLike(words.at(-1) ?? "", offer);
	for (const command of commands) {
		const known = root.commands.get(command.name());
		for (const argument of known?.arguments.values() ?? [])
			if (argument.handler === undefined && ON_DISK.test(argument.name)) argument.handler = files;
		for (const { long, flags } of command.options) {
			const option = known?.options.get((long ?? "").slice(2));
			if (option !== undefined && ON_DISK.test(flags.split(" ").at(-1) ?? "")) option.handler = files;
		}
	}
	root.parse([...words]);
};

/** Folders, and files that a command could read: the library itself offers no names of files. */
const filesLike = (typed: string, offer: Complete): void => {
	const folder = typed.endsWith("/") ? typed : dirname(typed);
	const begin = typed.endsWith("/") ? "" : basename(typed);
	const shown = folder === "." && !typed.startsWith("./") ? "" : folder;
	try {
		for (const entry of readdirSync(folder === "" ? "." : folder, { withFileTypes: true })) {
			if (!entry.name.startsWith(begin) || entry.name.startsWith(".")) continue;
			const place = join(shown, entry.name);
			const named = typed.startsWith("./") ? `./${place}` : place;
			if (entry.isDirectory()) offer(`${named}/`, "");
			else if (/\.ya?ml$/iu.test(entry.name)) offer(named, "");
		}
	} catch {
		// Nothing to offer where nothing can be read.
	}
};
