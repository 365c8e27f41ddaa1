import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Argument, Command, Option } from "commander";
import type { Session } from "./program.ts";
import { STARTERS_FOLDER, sideFilesOf, starterNames } from "./starters.ts";
import { terminal } from "./terminal.ts";
import { writeNew } from "./write-new.ts";

/** `casebound new`: a definition to begin from, with the files it draws on. Never replaces a file. */
export const newCommand = (_session: Session): Command =>
	new Command("new")
		.addArgument(new Argument("<file>", "the definition to write, such as my-well.yaml"))
		.addOption(new Option("--starter <name>", "which starter").choices(starterNames()).default("horizontal"))
		.addHelpText("after", "\nExample:\n  casebound new my-well.yaml --starter vertical-metric")
		.action((file: string, options: { readonly starter: string }) => {
			const beside = sideFilesOf(options.starter);
			const shipped = (name: string): Uint8Array => readFileSync(new URL(name, STARTERS_FOLDER));
			writeNew([
				{ place: file, content: shipped(`${options.starter}.yaml`) },
				...beside.map((name) => ({ place: join(dirname(file), name), content: shipped(name) })),
			]);
			terminal.out(`wrote ${[file, ...beside.map((name) => join(dirname(file), name))].join(", ")}`);
			terminal.out(`next: casebound check ${file}`);
		});
