import { join } from "node:path";
import { Argument, Command, Option } from "commander";
import { LANGUAGES, type Language, PAPERS, type Paper } from "../document/document.ts";
import { VERDICTS } from "../document/verdict.ts";
import {
	attachmentsOf,
	calendarFile,
	composePapers,
	type PaperRequest,
	renderEdition,
	renderPaper,
	renderTableFiles,
	renderTablesAsJson,
} from "../pipeline.ts";
import type { UnitSystem } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import { writeWhole } from "./files.ts";
import { commaList } from "./options.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";

interface BindOptions {
	readonly for: readonly Paper[];
	readonly job?: string;
	readonly neighbor?: string;
	readonly out: string;
	readonly lang: Language;
	readonly units: UnitSystem;
	readonly with: readonly Extra[];
	readonly strict?: boolean;
	readonly rules: readonly string[];
}

/** What may be written beside the papers. */
const EXTRAS = ["html", "csv", "json", "calendar"] as const;
type Extra = (typeof EXTRAS)[number];

const DEFAULT_PAPERS: readonly Paper[] = ["regulator", "landowner", "crew"];

/** `casebound bind`: writes the papers of each definition; goes on past a bad one and says so at the end. */
export const bindCommand = (session: Session): Command =>
	new Command("bind")
		.addArgument(new Argument("<file...>", "one definition or more"))
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
		.addOption(rulesOption())
		.option("--strict", "exit with 2 if a check is not met or cannot be told")
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
			const shipped = openShipped();
			for (const [i, file] of files.entries()) {
				if (terminal.watched && files.length > 1) terminal.err(`${i + 1} of ${files.length}: ${file}`);
				await bindOne(file, options, shipped, session);
			}
		});

/** Tables beside the paper: a folder of CSV files, and one JSON file. */
const writeTables = async (
	{ name, paper }: ReturnType<typeof composePapers>["documents"][number],
	options: BindOptions,
): Promise<readonly string[]> => {
	const written: string[] = [];
	if (options.with.includes("csv")) {
		const folder = join(options.out, `${name}.tables`);
		const tables = await renderTableFiles(paper);
		for (const table of tables)
			writeWhole(join(folder, `${table.name}.csv`), table.text, { mayReplace: true });
		written.push(`  ${folder}  ${tables.length} table${tables.length === 1 ? "" : "s"}`);
	}
	if (options.with.includes("json")) {
		const target = join(options.out, `${name}.tables.json`);
		writeWhole(target, await renderTablesAsJson(paper), { mayReplace: true });
		written.push(`  ${target}`);
	}
	return written;
};

const bindOne = async (
	file: string,
	options: BindOptions,
	shipped: ReturnType<typeof openShipped>,
	session: Session,
): Promise<void> => {
	const findings = readWell(file, options.rules, shipped, session);
	if (findings === undefined) return;
	const requests = options.for.map(
		(paper): PaperRequest => ({
			paper,
			language: options.lang,
			units: options.units,
			...(options.job === undefined ? {} : { job: options.job }),
			...(options.neighbor === undefined ? {} : { neighbor: options.neighbor }),
		}),
	);
	const papers = composePapers(findings, requests);
	if (papers.unknownJob !== undefined) {
		terminal.err(
			`casebound: no job "${papers.unknownJob.asked}" here; the jobs are: ${papers.unknownJob.jobs.join(", ")}`,
		);
		session.end(EXIT.usage);
		return;
	}
	if (papers.unknownNeighbor !== undefined) {
		const { asked, neighbors } = papers.unknownNeighbor;
		terminal.err(
			neighbors.length === 0
				? `casebound: no neighbor "${asked}" here; the definition names none under site, neighbors`
				: `casebound: no neighbor "${asked}" here; the neighbors are: ${neighbors.join(", ")}`,
		);
		session.end(EXIT.usage);
		return;
	}
	const written: string[] = [];
	for (const document of papers.documents) {
		const rendered = await renderPaper(document.paper, attachmentsOf(findings, document.paper));
		if (rendered.findings.length > 0) {
			for (const finding of rendered.findings)
				terminal.err(
					`casebound: ${document.name} page ${finding.page ?? "?"}: ${finding.kind}: ${finding.text ?? ""} ${finding.detail ?? ""}`,
				);
			terminal.err(`casebound: ${document.name} does not set cleanly and was not written`);
			session.end(EXIT.fault);
			continue;
		}
		const target = join(options.out, `${document.name}.pdf`);
		writeWhole(target, rendered.bytes, { mayReplace: true });
		written.push(`  ${target}  ${rendered.pages} page${rendered.pages === 1 ? "" : "s"}`);
		if (options.with.includes("html")) {
			const edition = join(options.out, `${document.name}.html`);
			writeWhole(edition, await renderEdition(document.paper), { mayReplace: true });
			written.push(`  ${edition}`);
		}
		written.push(...(await writeTables(document, options)));
	}
	if (options.with.includes("calendar")) {
		const { name, text } = await calendarFile(findings, options.lang);
		const target = join(options.out, name);
		writeWhole(target, text, { mayReplace: true });
		const days = findings.due.filter(({ sent }) => sent === undefined).length;
		written.push(`  ${target}  ${days} deadline${days === 1 ? "" : "s"}`);
	}
	const { counts } = findings.judgement;
	terminal.out(
		[
			`${findings.well.identity.name}, revision ${findings.well.identity.revisions?.at(-1)?.id ?? "–"} (${findings.digest})`,
			...written,
			`  rule checks: ${VERDICTS.map((verdict) => `${counts[verdict]} ${verdict}`).join(" · ")} (not an opinion on the law)`,
			...(papers.otherJobs.length > 0 ? [`  other crew packs: --job ${papers.otherJobs.join(" | ")}`] : []),
		].join("\n"),
	);
	if (options.strict === true && counts["not met"] + counts["cannot tell"] > 0) session.end(EXIT.verdicts);
};
