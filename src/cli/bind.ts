import { join } from "node:path";
import { Argument, Command, InvalidArgumentError, Option } from "commander";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { LANGUAGES, type Language, PAPERS, type Paper } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import { ENGLISH_READER } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { attachmentsOf, calendarFile, composePapers, type PaperRequest } from "../pipeline.ts";
import type { Surroundings, Understanding } from "../understand.ts";
import type { UnitSystem } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { wrappedTotals } from "./findings-text.ts";
import { commaList } from "./options.ts";
import { openPaperPool, type PaperPool, usualThreads } from "./paper-pool.ts";
import type { Session } from "./program.ts";
import { nameOf } from "./read-bytes.ts";
import { understandSince } from "./read-since.ts";
import { rulesOption, tellDiagnostics, understandFile } from "./read-well.ts";
import { ENGINES, type Engine, type PaperSet } from "./set-paper.ts";
import { openShipped, readRulesFiles, type ShippedData } from "./shipped.ts";
import { terminal } from "./terminal.ts";
import { type NewFile, writeSet } from "./write-set.ts";

interface BindOptions {
	readonly for: readonly Paper[];
	readonly job?: string;
	readonly neighbor?: string;
	readonly out: string;
	readonly lang: Language;
	readonly units: UnitSystem;
	readonly with: readonly Extra[];
	readonly engine: Engine;
	readonly strict?: boolean;
	readonly since?: string;
	readonly rules: readonly string[];
	readonly threads: number;
}

/** What may be written beside the papers. */
const EXTRAS = ["html", "csv", "json", "calendar"] as const;
type Extra = (typeof EXTRAS)[number];

const DEFAULT_PAPERS: readonly Paper[] = ["regulator", "landowner", "crew"];

/** `casebound bind`: writes the papers of each definition; goes on past a bad one and says so at the end. */
export const bindCommand = (session: Session): Command =>
	new Command("bind")
		.addArgument(new Argument("<file...>", "one definition or more; - is standard input"))
		.addOption(
			new Option("--for <papers>", "which papers, separated by commas")
				.argParser(commaList("paper", PAPERS))
				.default(DEFAULT_PAPERS, DEFAULT_PAPERS.join(",")),
		)
		.option(
			"--job <job>",
			"of the crew pack: which job, such as pumping or cementing-surface (default: the next one)",
		)
		.option(
			"--neighbor <id>",
			"of the landowner packet: the edition of one neighbor, such as ww-1 (default: the general one)",
		)
		.option("--out <folder>", "where to write", "papers")
		.addOption(new Option("--lang <language>", "language of the papers").choices(LANGUAGES).default("en"))
		.addOption(
			new Option("--units <system>", "units of the papers").choices(["field", "metric"]).default("field"),
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
		.addOption(rulesOption())
		.option("--strict", "exit with 2 if a check is not met or cannot be told")
		.addOption(
			new Option("--threads <number>", "papers set at once")
				.argParser(threadCount)
				.default(usualThreads(), "2, where there are two cores"),
		)
		.addHelpText(
			"after",
			"\nExample:\n  casebound bind my-well.yaml --for regulator,crew --job pumping --out papers",
		)
		.action(async (files: readonly string[], options: BindOptions) => {
			if (options.neighbor !== undefined && !options.for.includes("landowner")) {
				terminal.err(
					"casebound: --neighbor makes an edition of the landowner packet; add landowner to --for",
				);
				session.end(EXIT.usage);
				return;
			}
			if (options.since !== undefined && files.length > 1) {
				terminal.err("casebound: --since names the earlier state of one definition; bind one at a time");
				session.end(EXIT.usage);
				return;
			}
			const shipped = openShipped();
			const ownRules = readRulesFiles(options.rules);
			const pool = await openPaperPool(files.length * options.for.length > 1 ? options.threads : 1);
			const taken: Taken = new Map();
			// One well is prepared while the papers of the one before are set; no more than two are held at once.
			let before = Promise.resolve();
			try {
				for (const [i, file] of files.entries()) {
					const prepared = prepare(file, options, ownRules, shipped, taken);
					const papers = Promise.allSettled(prepared.tasks.map(pool.set));
					await before;
					if (terminal.watched && files.length > 1)
						terminal.err(`${i + 1} of ${files.length}: ${nameOf(file)}`);
					before = finish(prepared, papers, options, session);
					if (pool.atOnce === 1) await before;
				}
				await before;
			} finally {
				await pool.close();
			}
		});

const MOST_THREADS = 64;

const threadCount = (text: string): number => {
	const count = Number(text);
	if (!Number.isInteger(count) || count < 1 || count > MOST_THREADS)
		throw new InvalidArgumentError(`write a whole number from 1 to ${MOST_THREADS}.`);
	return count;
};

/** What the names of files begin with, and the definition whose they are. */
type Taken = Map<string, string>;

/** A well whose papers are composed and not yet set; or what keeps it from that, to be told in its turn. */
interface Prepared {
	readonly understanding?: Understanding;
	readonly findings?: Findings;
	readonly tasks: readonly Parameters<PaperPool["set"]>[0][];
	readonly otherJobs: readonly string[];
	readonly refused?: { readonly why: string; readonly exit: (typeof EXIT)[keyof typeof EXIT] };
}

const prepare = (
	file: string,
	options: BindOptions,
	ownRules: Surroundings["ownRules"],
	shipped: ShippedData,
	taken: Taken,
): Prepared => {
	const nothing = { tasks: [], otherJobs: [] };
	let understanding: Understanding;
	try {
		understanding = understandFile(file, ownRules, shipped);
	} catch (cause) {
		// One file that cannot be read keeps no other from being bound.
		if (!(cause instanceof FileFault)) throw cause;
		return { ...nothing, refused: { why: cause.message, exit: cause.exit } };
	}
	const { findings } = understanding;
	if (findings === undefined) return { ...nothing, understanding };
	const slug = fileSlug(findings.well.identity.name);
	const other = taken.get(slug);
	if (other !== undefined) {
		const why = `${nameOf(file)}: its papers would take the names of those of ${nameOf(other)} (${slug}); bind one of them into another folder`;
		return { ...nothing, understanding, refused: { why, exit: EXIT.cannotWrite } };
	}
	taken.set(slug, file);
	const requests = options.for.map(
		(paper): PaperRequest => ({
			paper,
			language: options.lang,
			units: options.units,
			...(options.job === undefined ? {} : { job: options.job }),
			...(options.neighbor === undefined ? {} : { neighbor: options.neighbor }),
		}),
	);
	const earlier = earlierOf(file, options, ownRules, shipped);
	if (earlier !== undefined && "why" in earlier) return { ...nothing, understanding, refused: earlier };
	const papers = composePapers(findings, requests, earlier);
	const why = unknownOf(papers);
	if (why !== undefined) return { ...nothing, understanding, refused: { why, exit: EXIT.usage } };
	const tasks = papers.documents.map(({ name, paper }) => ({
		name,
		paper,
		attachments: attachmentsOf(findings, paper),
		engine: options.engine,
		html: options.with.includes("html"),
		csv: options.with.includes("csv"),
		json: options.with.includes("json"),
	}));
	return { understanding, findings, tasks, otherJobs: papers.otherJobs };
};

/** The earlier state to bind against; or why it cannot be had. */
const earlierOf = (
	file: string,
	{ since }: BindOptions,
	ownRules: Surroundings["ownRules"],
	shipped: ShippedData,
): Findings | Prepared["refused"] => {
	if (since === undefined) return undefined;
	try {
		const { name, understanding } = understandSince(file, since, ownRules, shipped);
		if (understanding.findings !== undefined) return understanding.findings;
		const why = `${name} has errors, so that nothing can be compared with it; casebound check tells them`;
		return { why, exit: EXIT.badDefinition };
	} catch (cause) {
		if (!(cause instanceof FileFault)) throw cause;
		return { why: cause.message, exit: cause.exit };
	}
};

const unknownOf = ({ unknownJob, unknownNeighbor }: ReturnType<typeof composePapers>): string | undefined => {
	if (unknownJob !== undefined)
		return `no job "${unknownJob.asked}" here; the jobs are: ${unknownJob.jobs.join(", ")}`;
	if (unknownNeighbor === undefined) return undefined;
	const { asked, neighbors } = unknownNeighbor;
	return neighbors.length === 0
		? `no neighbor "${asked}" here; the definition names none under site, neighbors`
		: `no neighbor "${asked}" here; the neighbors are: ${neighbors.join(", ")}`;
};

/** What is told of a PDF beside its name. */
const paged = (pages: number | undefined): string =>
	pages === undefined ? "  by the reference engine, to compare with" : `  ${counted(pages, "page")}`;

/** Tells the faults of a well, or writes what was set of it and tells of that. */
const finish = async (
	{ understanding, findings, tasks, otherJobs, refused }: Prepared,
	setting: Promise<readonly PromiseSettledResult<PaperSet>[]>,
	options: BindOptions,
	session: Session,
): Promise<void> => {
	if (understanding !== undefined) {
		tellDiagnostics(understanding, { language: "en", units: understanding.units });
		if (hasErrors(understanding.diagnostics)) session.end(EXIT.badDefinition);
	}
	if (refused !== undefined) {
		terminal.err(`casebound: ${refused.why}`);
		session.end(refused.exit);
	}
	if (findings === undefined || refused !== undefined) return;
	const files: NewFile[] = [];
	const told: string[] = [];
	const tell = (name: string, more = ""): void => void told.push(`  ${join(options.out, name)}${more}`);
	for (const [i, outcome] of (await setting).entries()) {
		if (outcome.status === "rejected") throw outcome.reason;
		const { findings: faults, pages, files: made } = outcome.value;
		const name = tasks[i]?.name ?? "";
		for (const { page, kind, text, detail } of faults)
			terminal.err(`casebound: ${name} page ${page}: ${kind}: ${text} ${detail}`);
		if (faults.length > 0) {
			terminal.err(`casebound: ${name} does not set cleanly and was not written`);
			session.end(EXIT.fault);
		}
		for (const each of made) tell(each.name, each.name.endsWith(".pdf") ? paged(pages) : tables(each));
		files.push(...made);
	}
	if (options.with.includes("calendar")) {
		const { name, text } = await calendarFile(findings, options.lang);
		files.push({ name, content: text });
		tell(name, `  ${counted(findings.due.filter(({ sent }) => sent === undefined).length, "deadline")}`);
	}
	const { identity } = findings.well;
	const revision = identity.revisions?.at(-1)?.id;
	let beside: readonly string[];
	try {
		beside = await writeSet(options.out, {
			slug: fileSlug(identity.name),
			well: identity.name,
			...(revision === undefined ? {} : { revision }),
			definition: findings.digest,
			files,
		});
	} catch (cause) {
		if (!(cause instanceof FileFault)) throw cause;
		terminal.err(`casebound: ${cause.message}`);
		session.end(cause.exit);
		return;
	}
	const { counts } = findings.judgement;
	terminal.out(
		[
			`${identity.name}, revision ${revision ?? "–"} (${findings.digest})`,
			...told,
			...beside.map((line) => `  ${line}`),
			...wrappedTotals(findings.judgement, ENGLISH_READER, terminal.width - 2).map((line) => `  ${line}`),
			"  (not an opinion on the law)",
			...(otherJobs.length > 0 ? [`  other crew packs: --job ${otherJobs.join(" | ")}`] : []),
		].join("\n"),
	);
	if (options.strict === true && counts["not met"] + counts["cannot tell"] > 0) session.end(EXIT.verdicts);
};

const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`;

const tables = ({ content }: NewFile): string =>
	Array.isArray(content) ? `  ${counted(content.length, "table")}` : "";
