import { join } from "node:path";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { boundWith } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import { ENGLISH_READER } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import {
	attachmentsOf,
	calendarFile,
	composePapers,
	mapsOf,
	type NoMap,
	type PaperRequest,
} from "../pipeline.ts";
import type { Surroundings, Understanding } from "../understand.ts";
import type { BindOptions } from "./bind.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { wrappedTotals } from "./findings-text.ts";
import { languagesOf } from "./options.ts";
import type { PaperPool } from "./paper-pool.ts";
import type { Session } from "./program.ts";
import { showProgress } from "./progress.ts";
import { nameOf } from "./read-bytes.ts";
import { understandSince } from "./read-since.ts";
import { tellDiagnostics, understandFile } from "./read-well.ts";
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
				const prepared = prepare(file, options, ownRules, shipped, taken);
				read.set(file, [...(prepared.understanding?.texts.keys() ?? []), ...options.rules]);
				const papers = Promise.allSettled(prepared.tasks.map(set));
				await before;
				before = alone(async () => {
					await finish(prepared, papers, options, session);
					done.wells++;
				});
				if (pool.atOnce === 1) await before;
			});
		await before;
	} finally {
		progress.end();
	}
	return read;
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
	const requests = [...new Set(options.for.flatMap(boundWith))].map(
		(paper): PaperRequest => ({
			paper,
			...languagesOf(options.lang),
			units: options.units ?? understanding.units,
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
		xlsx: options.with.includes("xlsx"),
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
