import { Argument, Command, InvalidArgumentError, Option } from "commander";
import { PAPERS, type Paper } from "../document/document.ts";
import type { UnitSystem } from "../units/format.ts";
import { type BindWith, bindWells } from "./bind-wells.ts";
import { definitionsOf, type Shard, shardOption } from "./definitions-in.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { commaList, languagesOf, SPOKEN, type Spoken } from "./options.ts";
import { openPaperPool, usualThreads } from "./paper-pool.ts";
import type { Session } from "./program.ts";
import { nameOf, STANDARD_INPUT } from "./read-bytes.ts";
import { withJobsFiles } from "./read-jobs.ts";
import { withSlidesFiles } from "./read-slides.ts";
import { rulesOption } from "./read-well.ts";
import { ENGINES, type Engine } from "./set-paper.ts";
import { openShipped } from "./shipped.ts";
import { tellFault } from "./tell-fault.ts";
import { terminal } from "./terminal.ts";
import { type ReadFrom, watch } from "./watch.ts";

export interface BindOptions {
	readonly for: readonly Paper[];
	readonly job?: string;
	readonly neighbor?: string;
	readonly out: string;
	readonly lang: Spoken;
	/** As the definition is written, where nothing is asked. */
	readonly units?: UnitSystem;
	readonly with: readonly Extra[];
	readonly engine: Engine;
	readonly strict?: boolean;
	readonly since?: string;
	readonly watch?: boolean;
	readonly shard?: Shard;
	readonly rules: readonly string[];
	readonly jobs: readonly string[];
	readonly slides: readonly string[];
	readonly threads: number;
}

/** What may be written beside the papers. */
const EXTRAS = ["html", "csv", "xlsx", "json", "calendar", "geojson", "kml"] as const;
type Extra = (typeof EXTRAS)[number];

const DEFAULT_PAPERS: readonly Paper[] = ["regulator", "landowner", "crew"];

/** `casebound bind`: writes the papers of each definition; goes on past a bad one and says so at the end. */
export const bindCommand = (session: Session): Command =>
	new Command("bind")
		.addArgument(new Argument("<file...>", "definitions, pads, or folders of them; - is standard input"))
		.addOption(
			new Option("--for <papers>", "which papers, separated by commas")
				.argParser(commaList("paper", PAPERS))
				.default(DEFAULT_PAPERS, DEFAULT_PAPERS.join(",")),
		)
		.option(
			"--job <job>",
			"of the crew's sheet: which job, such as pumping or cementing-surface; all binds every job as one paper, poster the pressures for the wall (default: the next job)",
		)
		.option(
			"--neighbor <id>",
			"of the landowner packet: the edition of one neighbor, such as ww-1 (default: the general one)",
		)
		.option("--out <folder>", "where to write", "papers")
		.addOption(
			new Option(
				"--lang <language>",
				"language of the papers; en+es sets both on the crew's sheet, step for step",
			)
				.choices(SPOKEN)
				.default("en"),
		)
		.addOption(
			new Option("--units <system>", "units of the papers (default: as the definition is written)").choices([
				"field",
				"metric",
			]),
		)
		.addOption(
			new Option("--with <extras>", `what else to write, separated by commas: ${EXTRAS.join(", ")}`)
				.argParser(commaList("extra", EXTRAS))
				.default([], "nothing"),
		)
		.addOption(
			new Option(
				"--engine <engine>",
				"what sets the pages; reference: react-pdf, to compare with: no tags, no outline, no attachments, not audited",
			)
				.choices(ENGINES)
				.default("own"),
		)
		.option(
			"--since <earlier>",
			"mark in the regulator's paper what moved since an earlier state, and write a paper of the changes: a file, or a git revision such as HEAD~1",
		)
		.option("--watch", "bind again whatever changes, until it is ended; faults are told and looked for again")
		.addOption(shardOption())
		.addOption(rulesOption())
		.addOption(
			new Option(
				"--jobs <file>",
				"jobs of your own, or items for the shipped ones (seeds/jobs/README.md); may be repeated",
			)
				.argParser((file: string, before: readonly string[]) => [...before, file])
				.default([]),
		)
		.addOption(
			new Option(
				"--slides <file>",
				"slides of your own among the shipped ones (src/paper/slides/README.md); may be repeated",
			)
				.argParser((file: string, before: readonly string[]) => [...before, file])
				.default([]),
		)
		.option("--strict", "exit with 2 if a check is not met or cannot be told")
		.addOption(
			new Option("--threads <number>", "papers set at once")
				.argParser(threadCount)
				.default(usualThreads(), "2, where there are two cores"),
		)
		.addHelpText(
			"after",
			"\nExamples:\n  casebound bind my-well.yaml --for regulator,crew --job pumping --out papers\n  casebound bind wells/ --watch\n  parallel casebound bind wells/ --out papers --shard {}/4 ::: 1 2 3 4",
		)
		.action(async (files: readonly string[], options: BindOptions) => {
			if (options.neighbor !== undefined && !options.for.includes("landowner")) {
				terminal.err(
					"casebound: --neighbor makes an edition of the landowner packet; add landowner to --for",
				);
				session.end(EXIT.usage);
				return;
			}
			if (
				options.slides.length > 0 &&
				!options.for.some((paper) => paper === "slides" || paper === "notes")
			) {
				terminal.err("casebound: --slides adds to the slides for a meeting; add slides or notes to --for");
				session.end(EXIT.usage);
				return;
			}
			if (languagesOf(options.lang).second !== undefined && options.for.some((paper) => paper !== "crew")) {
				terminal.err(
					"casebound: two languages on one sheet is for the crew; write --for crew beside --lang en+es",
				);
				session.end(EXIT.usage);
				return;
			}
			if (options.watch === true && files.includes(STANDARD_INPUT)) {
				terminal.err("casebound: --watch looks at files; standard input is read once");
				session.end(EXIT.usage);
				return;
			}
			const found = definitionsOf(files, options.shard);
			if (options.since !== undefined && found.length > 1) {
				terminal.err("casebound: --since names the earlier state of one definition; bind one at a time");
				session.end(EXIT.usage);
				return;
			}
			if (options.shard !== undefined && found.length === 0)
				terminal.err(`casebound: no definition falls to part ${options.shard.number} of ${options.shard.of}`);
			const shipped = withSlidesFiles(withJobsFiles(openShipped(), options.jobs), options.slides);
			const several = found.length * options.for.length > 1 || options.watch === true;
			const pool = await openPaperPool(several ? options.threads : 1);
			try {
				if (options.watch === true) await bindOnChange(files, options, { shipped, pool, session });
				else await bindWells(found, options, { shipped, pool, session });
			} finally {
				await pool.close();
			}
		});

/** Binds again whatever changes, until the process is ended. Faults are told, and looked for again. */
const bindOnChange = (
	files: readonly string[],
	options: BindOptions,
	{ shipped, pool, session }: BindWith,
): Promise<void> =>
	watch({
		definitions: () => {
			try {
				return definitionsOf(files, options.shard);
			} catch (cause) {
				// A folder may be empty for a moment, while an editor puts a file in its place.
				if (cause instanceof FileFault) return [];
				throw cause;
			}
		},
		run: async (due) => {
			terminal.clear();
			let read: ReadFrom = new Map();
			try {
				read = await bindWells(due, options, { shipped, pool, session });
			} catch (fault) {
				session.end(await tellFault(fault));
			}
			terminal.err(`casebound: watching; bound ${due.map(nameOf).join(", ")}. Ctrl-C ends it.`);
			return read;
		},
	});

const MOST_THREADS = 64;

const threadCount = (text: string): number => {
	const count = Number(text);
	if (!Number.isInteger(count) || count < 1 || count > MOST_THREADS)
		throw new InvalidArgumentError(`write a whole number from 1 to ${MOST_THREADS}.`);
	return count;
};
