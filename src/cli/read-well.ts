import { realpathSync } from "node:fs";
import { Option } from "commander";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { printDiagnostics } from "../diagnostics/print.ts";
import type { Reader } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { LARGEST_TABLE } from "../source/decode-text.ts";
import { type FileAccess, filesBeside } from "../source/locate-files.ts";
import { type Surroundings, type Understanding, understand } from "../understand.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { isPadFile } from "./is-pad-file.ts";
import type { Session } from "./program.ts";
import { bytesOf, nameOf, readBytes } from "./read-bytes.ts";
import { readRulesFiles, type ShippedData } from "./shipped.ts";
import { terminal } from "./terminal.ts";

/** `--rules FILE`, as often as wanted: jurisdictions of the user's own, judged beside the shipped ones. */
export const rulesOption = (): Option =>
	new Option("--rules <file>", "a rules file of your own, in the form of the shipped ones; may be repeated")
		.argParser((file: string, before: readonly string[]) => [...before, file])
		.default([]);

/** Reads a definition and everything it draws on; faults are in the understanding, not thrown. */
export const understandFile = (
	file: string,
	ownRules: Surroundings["ownRules"],
	shipped: ShippedData,
): Understanding => {
	if (isPadFile(file))
		throw new FileFault(
			`cannot read ${nameOf(file)} as one well: it is the file of a pad, which check and bind take whole`,
			EXIT.cannotRead,
		);
	const { catalog, version, own } = shipped;
	return understand(
		{ name: nameOf(file), bytes: readBytes(file) },
		{ catalog, version, readFile: filesOnDisk(file), ownRules, ...(own === undefined ? {} : { own }) },
	);
};

/** As `understandFile`; of several files, one that cannot be read is told of and keeps no other from being read. */
export const understandOrTell = (
	file: string,
	ownRules: Surroundings["ownRules"],
	shipped: ShippedData,
	session: Session,
): Understanding | undefined => {
	try {
		return understandFile(file, ownRules, shipped);
	} catch (cause) {
		if (!(cause instanceof FileFault)) throw cause;
		terminal.err(`casebound: ${cause.message}`);
		session.end(cause.exit);
		return undefined;
	}
};

export const tellDiagnostics = (
	{ diagnostics, texts }: Pick<Understanding, "diagnostics" | "texts">,
	reader?: Reader,
): void => {
	if (diagnostics.length > 0)
		terminal.err(
			printDiagnostics(diagnostics, texts, {
				color: terminal.color,
				width: terminal.width,
				...(reader === undefined ? {} : { reader }),
			}).trimEnd(),
		);
};

/** A definition as it was understood, with every fault told and the exit code raised where it has errors. */
export const readDefinition = (
	file: string,
	rules: readonly string[],
	shipped: ShippedData,
	session: Session,
	language: Reader["language"] = "en",
): Understanding => {
	const understanding = understandFile(file, readRulesFiles(rules), shipped);
	tellDiagnostics(understanding, { language, units: understanding.units });
	if (hasErrors(understanding.diagnostics)) session.end(EXIT.badDefinition);
	return understanding;
};

/** A definition's findings, or nothing, as `readDefinition` tells it. */
export const readWell = (...args: Parameters<typeof readDefinition>): Findings | undefined =>
	readDefinition(...args).findings;

/** Gives the files beside a definition, as the disk has them. */
export const filesOnDisk = (file: string): Surroundings["readFile"] => filesBeside(file, disk);

/** What the rule for files beside a definition needs of the disk. */
const disk: FileAccess = {
	realPath: (path) => {
		try {
			return realpathSync(path);
		} catch {
			return undefined;
		}
	},
	readBytes: (path) => bytesOf(path, LARGEST_TABLE),
};
