import { join } from "node:path";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { fileSlug } from "../document/file-slug.ts";
import { ENGLISH_READER } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { calendarFile, mapsOf, type NoMap } from "../pipeline.ts";
import type { BindOptions } from "./bind.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { wrappedTotals } from "./findings-text.ts";
import { languagesOf } from "./options.ts";
import type { PaperPool } from "./paper-pool.ts";
import { type Prepared, prepare, type Taken } from "./prepare-papers.ts";
import type { Session } from "./program.ts";
import { showProgress } from "./progress.ts";
import { tellDiagnostics } from "./read-well.ts";
import type { PaperSet } from "./set-paper.ts";
import { readRulesFiles, type ShippedData } from "./shipped.ts";
import { tellFault } from "./tell-fault.ts";
import { terminal } from "./terminal.ts";
import type { ReadFrom } from "./watch.ts";
import { type NewFile, writeSet } from "./write-set.ts";

/** What binding needs besides its options. */
export interface BindWith {
	readonly shipped: ShippedData;
	readonly pool: PaperPool;
	readonly session: Session;
}

/**
 * Writes the papers of each definition; one that cannot be read or bound keeps no other from it.
 *
 * @returns of each definition, the files that it was read from
 * @throws FileFault, SeedFault for a rules file
 */
export const bindWells = async (
	files: readonly string[],
	options: BindOptions,
	{ shipped, pool, session }: BindWith,
): Promise<ReadFrom> => {
	const ownRules = readRulesFiles(options.rules);
	const taken: Taken = new Map();
	const read = new Map<string, readonly string[]>();
	const done = { wells: 0, papers: 0, handed: 0 };
	const progress = showProgress(() =>
		files.length > 1
			? `${done.wells} of ${files.length} wells bound, ${done.papers} papers set`
			: `${done.papers} of ${done.handed} papers set`,
	);
	const set: PaperPool["set"] = async (task) => {
		done.handed++;
		const paper = await pool.set(task);
		done.papers++;
		return paper;
	};
	/** Whatever is wrong with one well is told, and the next one is bound. */
	const alone = async (work: () => Promise<void>): Promise<void> => {
		try {
			await work();
		} catch (fault) {
			session.end(await tellFault(fault));
		}
	};
	// One well is prepared while the papers of the one before are set; no more than two are held at once.
	let before = Promise.resolve();
	try {
		for (const file of files)
			await alone(async () => {
				for (const prepared of prepare(file, options, { ownRules, shipped, taken })) {
					read.set(file, [
						...(read.get(file) ?? []),
						...(prepared.understanding?.texts.keys() ?? []),
						...options.rules,
					]);
					const papers = Promise.allSettled(prepared.tasks.map(set));
					await before;
					before = alone(async () => {
						await finish(prepared, papers, prepared.options ?? options, session);
						if (prepared.last === true) done.wells++;
					});
					if (pool.atOnce === 1) await before;
				}
			});
		await before;
	} finally {
		progress.end();
	}
	return read;
};

const NO_MAP: Readonly<Record<NoMap, string>> = {
	unplaced: "no map was written: site › surface_location is not given",
	NAD27:
		"no map was written: map formats are on WGS 84, and a place on NAD27 may be some hundred feet off there; give site › surface_location and the neighbors on NAD83",
};

/** The maps asked for; or why the well has none. */
const mapFiles = async (
	findings: Findings,
	{ with: extras, lang }: BindOptions,
): ReturnType<typeof mapsOf> => {
	const formats = (["geojson", "kml"] as const).filter((format) => extras.includes(format));
	return formats.length === 0 ? { files: [] } : mapsOf(findings, languagesOf(lang).language, formats);
};

/** What is told of a PDF beside its name. */
const paged = (pages: number | undefined): string =>
	pages === undefined ? "  by the reference engine, to compare with" : `  ${counted(pages, "page")}`;

/** Tells the faults of a well, or writes what was set of it and tells of that. */
const finish = async (
	{ understanding, findings, tasks, otherJobs, refused, silent }: Prepared,
	setting: Promise<readonly PromiseSettledResult<PaperSet>[]>,
	options: BindOptions,
	session: Session,
): Promise<void> => {
	if (understanding !== undefined && silent !== true) {
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
		const { name, text } = await calendarFile(findings, languagesOf(options.lang).language);
		files.push({ name, content: text });
		tell(name, `  ${counted(findings.due.filter(({ sent }) => sent === undefined).length, "deadline")}`);
	}
	const maps = await mapFiles(findings, options);
	if ("noMap" in maps) {
		terminal.err(`casebound: ${findings.well.identity.name}: ${NO_MAP[maps.noMap]}`);
		session.end(EXIT.cannotWrite);
	} else
		for (const { name, text } of maps.files) {
			files.push({ name, content: text });
			tell(name, "  with what the regulator's paper may show");
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
