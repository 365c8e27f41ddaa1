import { dirname, join } from "node:path";
import { Argument, Command, Option } from "commander";
import type { Session } from "./program.ts";
import { starterFiles, starterNames } from "./starters.ts";
import { terminal } from "./terminal.ts";
import { writeNew } from "./write-new.ts";

/** `casebound new`: a definition to begin from, with the files it draws on. Never replaces a file. */
export const newCommand = (_session: Session): Command =>
	new Command("new")
		.addArgument(new Argument("<file>", "the definition to write, such as my-well.yaml"))
		.addOption(
			new Option("--starter <name>", "which starter; pad is a pad file with the definitions of its wells")
				.choices(starterNames())
				.default("horizontal"),
		)
		.addHelpText(
			"after",
			"\nExamples:\n  casebound new my-well.yaml --starter vertical-metric\n  casebound new my-pad/pad.yaml --starter pad",
		)
		.action((file: string, options: { readonly starter: string }) => {
			const { main, beside } = starterFiles(options.starter);
			const places = beside.map(({ name, content }) => ({ place: join(dirname(file), name), content }));
			writeNew([{ place: file, content: main }, ...places]);
			terminal.out(`wrote ${[file, ...places.map(({ place }) => place)].join(", ")}`);
			terminal.out(`next: casebound check ${file}`);
		});
