import { Argument, Command, Option } from "commander";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { diagnosticsToJson } from "../diagnostics/json.ts";
import { LANGUAGES, type Language } from "../document/document.ts";
import type { Reader } from "../messages/print.ts";
import type { Surroundings, Understanding } from "../understand.ts";
import type { UnitSystem } from "../units/format.ts";
import { definitionsOf, type Shard, shardOption } from "./definitions-in.ts";
import { EXIT } from "./exit-codes.ts";
import { findingsJson } from "./findings-json.ts";
import { findingsText } from "./findings-text.ts";
import { isPadFile } from "./is-pad-file.ts";
import { understandPadFile } from "./pad-files.ts";
import { approachesJson, padText } from "./pad-text.ts";
import type { Session } from "./program.ts";
import { rulesOption, tellDiagnostics, understandOrTell } from "./read-well.ts";
import { SeedFault } from "./seed-fault.ts";
import { openShipped, readRulesFiles, type ShippedData } from "./shipped.ts";
import { tellFault } from "./tell-fault.ts";
import { terminal } from "./terminal.ts";

interface CheckOptions {
	readonly format: "text" | "json";
	readonly units?: UnitSystem;
	readonly lang: Language;
	readonly strict?: boolean;
	readonly all?: boolean;
	readonly quiet?: boolean;
	readonly shard?: Shard;
	readonly rules: readonly string[];
}

/** `casebound check`: every fault at once, then what each limit comes to here. Writes nothing. */
export const checkCommand = (session: Session): Command =>
	new Command("check")
		.addArgument(new Argument("<file...>", "definitions, pads, or folders of them; - is standard input"))
		.addOption(
			new Option("--format <format>", "text for people, json for editors and scripts")
				.choices(["text", "json"])
				.default("text"),
		)
		.addOption(
			new Option("--units <system>", "field or metric (default: as the definition is written)").choices([
				"field",
				"metric",
			]),
		)
		.addOption(new Option("--lang <language>", "en or es").choices(LANGUAGES).default("en"))
		.addOption(shardOption())
		.addOption(rulesOption())
		.option("--all", "also list what is met and what does not apply")
		.option("--quiet", "print totals only")
		.option("--strict", "exit with 2 if a finding is not met or lacks data")
		.addHelpText(
			"after",
			"\nExamples:\n  casebound check my-well.yaml --strict\n  casebound check wells/ --quiet",
		)
		.action(async (files: readonly string[], options: CheckOptions) => {
			const shipped = openShipped();
			const ownRules = rulesOrFaults(options);
			if (!("length" in ownRules)) {
				terminal.out(JSON.stringify({ files: [], rules_files: ownRules.faults }, null, 2));
				return session.end(EXIT.badSeed);
			}
			const documents: object[] = [];
			for (const file of definitionsOf(files, options.shard))
				try {
					const check = isPadFile(file) ? checkPad : checkOne;
					documents.push(...check(file, options, { ownRules, shipped, session }));
				} catch (fault) {
					// Whatever is wrong with one file is told, and the next one is checked.
					session.end(await tellFault(fault));
				}
			if (options.format === "json") terminal.out(JSON.stringify({ files: documents }, null, 2));
		});

interface CheckWith {
	readonly ownRules: Surroundings["ownRules"];
	readonly shipped: ShippedData;
	readonly session: Session;
}

/** Tells what is wrong with one definition and what is found of it; as data where that was asked for. */
const checkOne = (
	file: string,
	options: CheckOptions,
	{ ownRules, shipped, session }: CheckWith,
): readonly object[] => {
	const understanding = understandOrTell(file, ownRules, shipped, session);
	if (understanding === undefined) return [];
	const reader: Reader = { language: options.lang, units: options.units ?? understanding.units };
	if (hasErrors(understanding.diagnostics)) session.end(EXIT.badDefinition);
	endIfOpen(understanding, options, session);
	if (options.format === "json") return [findingsJson(file, understanding, reader)];
	tellDiagnostics(understanding, reader);
	tellFindings(file, understanding, options, reader);
	return [];
};

/** The same of every well of a pad: what is wrong with the writing once, then what is found of each well. */
const checkPad = (
	file: string,
	options: CheckOptions,
	{ ownRules, shipped, session }: CheckWith,
): readonly object[] => {
	const pad = understandPadFile(file, ownRules, shipped);
	const reader: Reader = { language: options.lang, units: options.units ?? pad.units };
	if (hasErrors(pad.diagnostics)) session.end(EXIT.badDefinition);
	for (const { understanding } of pad.wells) endIfOpen(understanding, options, session);
	const findings = pad.wells.flatMap(({ understanding }) => understanding.findings ?? []);
	if (options.format === "json")
		return [
			{
				file,
				...(pad.name === undefined ? {} : { pad: pad.name }),
				diagnostics: diagnosticsToJson(pad.diagnostics, pad.texts, reader),
				approaches: approachesJson(findings),
			},
			...pad.wells.map(({ file: of, understanding }) =>
				findingsJson(of, { ...understanding, diagnostics: [] }, reader),
			),
		];
	tellDiagnostics(pad, reader);
	for (const { file: of, understanding } of pad.wells) tellFindings(of, understanding, options, reader);
	if (pad.name !== undefined && findings.length > 1)
		terminal.tell(padText(file, pad.name, findings, reader, terminal.width));
	return [];
};

const endIfOpen = (
	{ findings }: Pick<Understanding, "findings">,
	{ strict }: CheckOptions,
	session: Session,
): void => {
	const counts = findings?.judgement.counts;
	if (strict === true && counts && counts["not met"] + counts["cannot tell"] > 0) session.end(EXIT.verdicts);
};

const tellFindings = (
	file: string,
	{ findings }: Pick<Understanding, "findings">,
	options: CheckOptions,
	reader: Reader,
): void => {
	if (findings) terminal.tell(findingsText(file, findings, { ...options, reader, width: terminal.width }));
};

/** Faults of a rules file are told in the form that was asked for. */
const rulesOrFaults = ({ rules, format, lang, units = "field" }: CheckOptions) => {
	try {
		return readRulesFiles(rules);
	} catch (fault) {
		if (format === "text" || !(fault instanceof SeedFault) || fault.faults.length === 0) throw fault;
		const reader: Reader = { language: lang, units };
		return { faults: diagnosticsToJson(fault.faults, fault.texts, reader) };
	}
};
