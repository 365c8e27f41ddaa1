import { Argument, Command, Option } from "commander";
import { isWorse } from "../compare/changed-verdicts.ts";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { LANGUAGES, type Language } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import type { Reader } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { compareStates, composeChangesPaper, printedByRegulator } from "../pipeline.ts";
import type { Understanding } from "../understand.ts";
import type { UnitSystem } from "../units/format.ts";
import { changesJson } from "./compare-json.ts";
import { changesText, type StateName } from "./compare-text.ts";
import { EXIT } from "./exit-codes.ts";
import { commaList } from "./options.ts";
import type { Session } from "./program.ts";
import { nameOf } from "./read-bytes.ts";
import { understandSince } from "./read-since.ts";
import { rulesOption, tellDiagnostics, understandFile } from "./read-well.ts";
import { openShipped, readRulesFiles } from "./shipped.ts";
import { terminal } from "./terminal.ts";
import { writeOnePaper } from "./write-one-paper.ts";

interface CompareOptions {
	readonly since?: string;
	readonly format: "text" | "json";
	readonly units?: UnitSystem;
	readonly lang: Language;
	readonly all?: boolean;
	readonly strict?: boolean;
	readonly out?: string;
	readonly with: readonly "html"[];
	readonly rules: readonly string[];
}

/** `casebound compare`: what changed between two states of a well, and what followed from it. */
export const compareCommand = (session: Session): Command =>
	new Command("compare")
		.addArgument(new Argument("<file...>", "the earlier definition and the later one; or one, with --since"))
		.option(
			"--since <earlier>",
			"the earlier state of one definition: a file, or a git revision such as HEAD~1 or a tag",
		)
		.addOption(
			new Option("--format <format>", "text for people, json for scripts")
				.choices(["text", "json"])
				.default("text"),
		)
		.addOption(
			new Option("--units <system>", "field or metric (default: as the later definition is written)").choices(
				["field", "metric"],
			),
		)
		.addOption(new Option("--lang <language>", "en or es").choices(LANGUAGES).default("en"))
		.option("--all", "also list results that the regulator's paper does not print")
		.option("--out <folder>", "also write a paper of the changes there, to attach to an amendment")
		.addOption(
			new Option("--with <extras>", "of that paper: html for an HTML edition beside the PDF")
				.argParser(commaList("extra", ["html"]))
				.default([], "nothing"),
		)
		.addOption(rulesOption())
		.option("--strict", "exit with 2 if a finding is open now that was not before")
		.addHelpText(
			"after",
			"\nExamples:\n  casebound compare revision-a.yaml revision-b.yaml\n  casebound compare my-well.yaml --since HEAD~1 --out papers\n  casebound compare plan.yaml as-built.yaml --format json",
		)
		.action(async (files: readonly string[], options: CompareOptions) => {
			const [first, second, ...more] = files;
			const both = second === undefined ? options.since !== undefined : options.since === undefined;
			if (first === undefined || !both || more.length > 0) {
				terminal.err("casebound: give two definitions, the earlier one first; or one with --since");
				return session.end(EXIT.usage);
			}
			await compareTwo(first, second, options, session);
		});

const compareTwo = async (
	first: string,
	second: string | undefined,
	options: CompareOptions,
	session: Session,
): Promise<void> => {
	const shipped = openShipped();
	const ownRules = readRulesFiles(options.rules);
	const later = second ?? first;
	const earlier =
		options.since === undefined
			? { name: nameOf(first), understanding: understandFile(first, ownRules, shipped) }
			: understandSince(first, options.since, ownRules, shipped);
	const now = understandFile(later, ownRules, shipped);
	const reader: Reader = { language: options.lang, units: options.units ?? now.units };
	const before = foundOrTold(earlier.understanding, reader, session);
	const after = foundOrTold(now, reader, session);
	if (before === undefined || after === undefined) return;
	const changes = compareStates(before, after, reader.units);
	const names = { before: stateName(earlier.name, before), after: stateName(nameOf(later), after) };
	if (options.format === "json")
		terminal.out(JSON.stringify(changesJson(changes, names, reader), undefined, "\t"));
	else
		terminal.out(
			changesText(changes, names, {
				reader,
				width: terminal.width,
				printed: printedByRegulator(after, reader),
				...(options.all === undefined ? {} : { all: options.all }),
			}),
		);
	if (options.out !== undefined) {
		const name = [
			fileSlug(after.well.identity.name),
			"changes",
			...(options.lang === "en" ? [] : [options.lang]),
			...(reader.units === "field" ? [] : [reader.units]),
		].join(".");
		const paper = composeChangesPaper(before, after, reader);
		const html = options.with.includes("html");
		for (const line of await writeOnePaper({ name, paper, findings: after, out: options.out, html }, session))
			terminal.err(line);
	}
	if (options.strict === true && changes.verdicts.some(isWorse)) session.end(EXIT.verdicts);
};

/** What was found, or nothing with every fault told. Warnings were told when the definition was checked. */
const foundOrTold = (
	understanding: Understanding,
	reader: Reader,
	session: Session,
): Findings | undefined => {
	if (!hasErrors(understanding.diagnostics)) return understanding.findings;
	tellDiagnostics(understanding, reader);
	session.end(EXIT.badDefinition);
	return undefined;
};

const stateName = (file: string, { well, digest }: Findings): StateName => {
	const revision = well.identity.revisions?.at(-1)?.id;
	return { file, well: well.identity.name, digest, ...(revision === undefined ? {} : { revision }) };
};
