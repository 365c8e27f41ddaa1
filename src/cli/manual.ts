import { Command } from "commander";
import { COMMANDS } from "./commands.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { terminal } from "./terminal.ts";
import { VERSION } from "./version.ts";

/** `casebound manual`: the manual page, from what the commands tell of themselves. */
export const manualCommand = (session: Session): Command =>
	new Command("manual")
		.addHelpText(
			"after",
			"\nExamples:\n  casebound manual | man -l -\n  casebound manual > ~/.local/share/man/man1/casebound.1",
		)
		.action(async () => {
			const commands = await Promise.all(
				COMMANDS.map(async ({ load, about }) => (await load(session)).description(about)),
			);
			terminal.out(manualPage(commands));
		});

/** Text in the language of manual pages, in which a dot or a quote at the beginning of a line is a command. */
const text = (words: string): string =>
	words
		.replaceAll("\\", "\\e")
		.replaceAll("-", "\\-")
		.replaceAll(/^([.'])/gmu, "\\&$1");

const about = (description: string, defaultValue: unknown, said: string | undefined): string => {
	const shown = said ?? (typeof defaultValue === "string" ? defaultValue : undefined);
	return shown === undefined || /\(default: /u.test(description)
		? description
		: `${description} (default: ${shown})`;
};

const choices = (description: string, allowed: readonly string[] | undefined): string =>
	allowed === undefined ? description : `${description}: ${allowed.join(", ")}`;

const sectionOf = (command: Command): readonly string[] => {
	const examples = examplesOf(command);
	return [
		`.SS casebound ${text(`${command.name()} ${command.usage()}`)}`,
		`${text(sentence(command.description()))}`,
		...command.registeredArguments.flatMap((argument) => [
			".TP",
			`.I ${text(argument.name())}`,
			text(choices(argument.description, argument.argChoices)),
		]),
		...command.options.flatMap(
			({ flags, description, argChoices, defaultValue, defaultValueDescription }) => [
				".TP",
				`.B ${text(flags)}`,
				text(about(choices(description, argChoices), defaultValue, defaultValueDescription)),
			],
		),
		...(examples.length === 0 ? [] : [".PP", ".nf", ".RS", ...examples.map(text), ".RE", ".fi"]),
	];
};

/** What the help of a command ends with, without its head. */
const examplesOf = (command: Command): readonly string[] => {
	let shown = "";
	const before = command.configureOutput();
	command.configureOutput({ ...before, writeOut: (part) => (shown += part) });
	command.outputHelp();
	command.configureOutput(before);
	return (/\nExamples?:\n([\s\S]*)$/u.exec(shown)?.[1] ?? "")
		.split("\n")
		.map((line) => line.trim())
		.filter((line) => line !== "");
};

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

const MEANING: Readonly<Record<keyof typeof EXIT, string>> = {
	done: "Done.",
	fault: "A fault of the tool, a page that does not set cleanly included.",
	verdicts: "Under --strict: a finding is not met or lacks data.",
	usage: "The command line is not one that the tool understands.",
	badDefinition: "The definition has errors; nothing is written.",
	cannotRead: "A file cannot be read.",
	cannotWrite: "A file cannot be written.",
	badSeed: "A seed, template or rules file is bad.",
	notRead: "Whoever read standard output closed it.",
};

/** The page in troff with the man macros: section 1, general commands. */
const manualPage = (commands: readonly Command[]): string =>
	[
		`.TH CASEBOUND 1 "" "casebound ${text(VERSION)}" "General Commands Manual"`,
		".SH NAME",
		"casebound \\- bind one well definition into papers that agree",
		".SH SYNOPSIS",
		...commands.flatMap((command) => [`.B casebound ${text(command.name())}`, text(command.usage()), ".br"]),
		".SH DESCRIPTION",
		text(
			"Reads one YAML definition of a well, checks it, calculates, judges against dated and cited rules, and writes the papers for the regulator, the landowner and the crew.",
		),
		text(
			"A planning aid: local rules, permit conditions and a licensed engineer's judgment govern. It has no network access and no clock.",
		),
		".SH COMMANDS",
		...commands.flatMap(sectionOf),
		".SH EXIT STATUS",
		...Object.entries(EXIT).flatMap(([name, code]) => [
			".TP",
			`.B ${code}`,
			text(MEANING[name as keyof typeof EXIT]),
		]),
	].join("\n");
