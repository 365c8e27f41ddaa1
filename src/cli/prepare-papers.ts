import { printDiagnostics } from "../diagnostics/print.ts";
import { boundWith, type Paper } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import type { Findings } from "../paper/context.ts";
import { JOINT_PAPERS, jointFindings } from "../paper/pad/joint-findings.ts";
import { attachmentsOf, composePapers, faultsOfOwnSlides, type PaperRequest } from "../pipeline.ts";
import { digestOfWells, type Surroundings, type Understanding } from "../understand.ts";
import type { BindOptions } from "./bind.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { isPadFile } from "./is-pad-file.ts";
import { languagesOf } from "./options.ts";
import { understandPadFile } from "./pad-files.ts";
import type { PaperPool } from "./paper-pool.ts";
import { nameOf } from "./read-bytes.ts";
import { understandSince } from "./read-since.ts";
import { understandFile } from "./read-well.ts";
import type { ShippedData } from "./shipped.ts";
import { terminal } from "./terminal.ts";

/** What the names of files begin with, and the definition whose they are. */
export type Taken = Map<string, string>;

/** A well whose papers are composed and not yet set; or what keeps it from that, to be told in its turn. */
export interface Prepared {
	readonly understanding?: Understanding;
	readonly findings?: Findings;
	readonly tasks: readonly Parameters<PaperPool["set"]>[0][];
	readonly otherJobs: readonly string[];
	readonly refused?: { readonly why: string; readonly exit: (typeof EXIT)[keyof typeof EXIT] };
	/** Where they are not those that were asked for: of a pad, what is each well's and what is all wells'. */
	readonly options?: BindOptions;
	/** Its faults were told already. */
	readonly silent?: boolean;
	/** The last of its file. */
	readonly last?: boolean;
}

interface PrepareWith {
	readonly ownRules: Surroundings["ownRules"];
	readonly shipped: ShippedData;
	readonly taken: Taken;
}

/** Everything that is written from one file: of a pad one after the other, so that no more is held than is being set. */
export function* prepare(file: string, options: BindOptions, by: PrepareWith): Generator<Prepared> {
	if (isPadFile(file)) yield* preparePad(file, options, by);
	else yield { ...prepareWell(file, options, by), last: true };
}

const NOTHING = { tasks: [], otherJobs: [] };

const prepareWell = (file: string, options: BindOptions, by: PrepareWith): Prepared => {
	let understanding: Understanding;
	try {
		understanding = understandFile(file, by.ownRules, by.shipped);
	} catch (cause) {
		// One file that cannot be read keeps no other from being bound.
		if (!(cause instanceof FileFault)) throw cause;
		return { ...NOTHING, refused: { why: cause.message, exit: cause.exit } };
	}
	return papersOf(file, understanding, options, by);
};

const isJoint = (paper: Paper): boolean => JOINT_PAPERS.some((joint) => joint === paper);
/** What a pad has one of beside its papers. */
const JOINT_EXTRAS: ReadonlySet<string> = new Set(["calendar", "geojson", "kml"]);

/** The wells of a pad, each with its own papers, and then the pad with those that speak of all of them. */
function* preparePad(file: string, options: BindOptions, by: PrepareWith): Generator<Prepared> {
	if (options.since !== undefined) {
		const why = `${nameOf(file)}: --since names the earlier state of one well, and this is a pad`;
		yield { ...NOTHING, refused: { why, exit: EXIT.usage }, last: true };
		return;
	}
	const pad = understandPadFile(file, by.ownRules, by.shipped);
	const { diagnostics, texts, units, name } = pad;
	const understood = { diagnostics, texts, units };
	const [first, ...rest] = pad.wells.flatMap(({ understanding }) => understanding.findings ?? []);
	if (first === undefined || name === undefined) {
		yield { ...NOTHING, understanding: understood, last: true };
		return;
	}
	const own: BindOptions = {
		...options,
		for: options.for.filter((paper) => !isJoint(paper)),
		with: options.with.filter((extra) => !JOINT_EXTRAS.has(extra)),
	};
	const joint: BindOptions = { ...options, for: options.for.filter(isJoint) };
	const hasJoint = joint.for.length > 0 || joint.with.some((extra) => JOINT_EXTRAS.has(extra));
	const members = own.for.length > 0 ? pad.wells : [];
	for (const [i, { file: of, understanding }] of members.entries())
		yield {
			...papersOf(of, { ...understanding, ...understood }, own, by),
			options: own,
			// What is wrong with the writing of any of them is told once, before the first.
			silent: i > 0,
			last: !hasJoint && i === members.length - 1,
		};
	if (!hasJoint) return;
	const findings = jointFindings(
		name,
		[first, ...rest],
		digestOfWells([first, ...rest].map(({ digest }) => digest)),
	);
	yield {
		...papersOf(file, { ...understood, findings }, joint, by),
		options: joint,
		silent: members.length > 0,
		last: true,
	};
}

/** The papers of what was understood, composed. */
const papersOf = (
	file: string,
	understanding: Understanding,
	options: BindOptions,
	{ ownRules, shipped, taken }: PrepareWith,
): Prepared => {
	const nothing = NOTHING;
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
			...(isTalk(paper) && shipped.ownSlides !== undefined ? { ownSlides: shipped.ownSlides.files } : {}),
		}),
	);
	const gaps = gapsInSlides(findings, requests, shipped);
	if (gaps !== undefined) return { ...nothing, understanding, refused: gaps };
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

const isTalk = (paper: Paper): boolean => paper === "slides" || paper === "notes";

/** What the presenter's own slides say and this well has not. */
const gapsInSlides = (
	findings: Findings,
	requests: readonly PaperRequest[],
	{ ownSlides }: ShippedData,
): Prepared["refused"] => {
	const request = requests.find(({ paper }) => isTalk(paper));
	if (ownSlides === undefined || request === undefined) return undefined;
	const faults = faultsOfOwnSlides(findings, request, ownSlides.files);
	if (faults.length === 0) return undefined;
	const told = printDiagnostics(faults, ownSlides.texts, { color: terminal.color, width: terminal.width });
	return { why: `your slides say what this well has no value for\n${told.trimEnd()}`, exit: EXIT.badSeed };
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
