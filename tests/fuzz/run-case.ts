import { existsSync, readFileSync } from "node:fs";
import { cpuUsage } from "node:process";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { type Diagnostic, hasErrors } from "../../src/diagnostics/diagnostic.ts";
import { diagnosticsToJson } from "../../src/diagnostics/json.ts";
import { locate } from "../../src/diagnostics/locate.ts";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import {
	LANGUAGES,
	type Language,
	PAPERS,
	type Paper,
	type PaperDocument,
} from "../../src/document/document.ts";
import { composePapers, type PaperRequest, type Understanding, understand } from "../../src/pipeline.ts";
import type { ReadFile } from "../../src/well/read-file.ts";
import { told } from "../told.ts";

/** A definition as it might be handed in, with tables beside it. */
export interface Case {
	readonly bytes: Uint8Array;
	/** By name; a name without one is not there. */
	readonly beside: ReadonlyMap<string, Uint8Array>;
}

export interface Outcome {
	/** What is wrong with the tool, in a clause each. */
	readonly faults: readonly string[];
	readonly refused: boolean;
	readonly papers: number;
}

const loaded = loadCatalog().value;
if (loaded === undefined) throw new Error("the shipped tables cannot be read");
const catalog = loaded;

const STARTERS = new URL("../../seeds/starters/", import.meta.url);
export const starter = (name: string): string => readFileSync(new URL(name, STARTERS), "utf8");

/** Longer is a hang, whatever the file [ms of the processor]. */
const CASE_BUDGET = 2000;

const readerOf =
	({ beside }: Case): ReadFile =>
	(name) => {
		const bytes = beside.get(name);
		return bytes === undefined
			? { refused: "there is no such file", code: "file/not-found" }
			: { file: name, bytes };
	};

/** Words that only a slip of ours puts into a message. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: it is one of them
const SLIPS = /undefined|\[object |NaN|Infinity|\u0000|x0-stands-in-0x|9999-12-31/;

const wording = (diagnostic: Diagnostic, written: string): string[] => {
	const { code, what, expected, mend, why = "", related = [] } = diagnostic;
	const said = [what, expected, mend, why, ...related.map(({ label }) => label)].map(told);
	const slip = said.map((text) => SLIPS.exec(text)?.[0]).find((each) => each !== undefined);
	return [
		...(said.slice(0, 3).some((text) => text.trim() === "") ? [`${code} says nothing`] : []),
		...(slip === undefined || written.includes(slip) ? [] : [`${code} says "${slip}": ${said.join(" / ")}`]),
	];
};

const located = (diagnostic: Diagnostic, { texts }: Understanding): string[] => {
	const { file, start, end } = locate(diagnostic.at, texts);
	const text = file === undefined ? undefined : texts.get(file)?.text;
	if (start === undefined || text === undefined) return [`${diagnostic.code} has no line and column`];
	const lines = text.split(/\r\n|\n|\r/);
	const line = lines[start.line - 1];
	if (line === undefined || start.column < 1 || start.column > line.length + 2)
		return [`${diagnostic.code} points outside the text: ${start.line}:${start.column}`];
	return end !== undefined &&
		(end.line < start.line || (end.line === start.line && end.column < start.column))
		? [`${diagnostic.code} ends before it begins`]
		: [];
};

const twice = (diagnostics: readonly Diagnostic[], { texts }: Understanding): string[] => {
	const seen = new Set<string>();
	return diagnostics.flatMap((each) => {
		const { file, start } = locate(each.at, texts);
		const key = [file, start?.line, start?.column, each.code, told(each.what)].join("|");
		if (seen.has(key)) return [`${each.code} is told twice at one place: ${told(each.what)}`];
		seen.add(key);
		return [];
	});
};

const printed = ({ diagnostics, texts }: Understanding): string[] => {
	const text = printDiagnostics(diagnostics, texts, { color: false, width: 80 });
	JSON.stringify(diagnosticsToJson(diagnostics, texts));
	// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not reach a terminal
	return /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/.test(text)
		? ["a control character is printed"]
		: [];
};

const worded = (paper: Paper, language: Language): boolean =>
	existsSync(new URL(`../../templates/${language}/${paper}/order.yaml`, import.meta.url));

const REQUESTS = PAPERS.flatMap((paper) =>
	LANGUAGES.filter((language) => worded(paper, language)).flatMap((language): PaperRequest[] => [
		{ paper, language, units: "field" },
		{ paper, language, units: "metric" },
	]),
);

/** One paper of the well, or each in English; which one, goes by the bytes, so that all have their turn. */
const papersOf = (
	{ findings }: Understanding,
	{ bytes }: Case,
	every: boolean,
): ReturnType<typeof composePapers>["documents"] => {
	const turn = bytes.reduce((sum, byte) => (sum + byte) % 9973, 0);
	const at = turn % REQUESTS.length;
	const requests = every
		? REQUESTS.filter(({ language, units }) => language === "en" && units === "field")
		: REQUESTS.slice(at, at + 1);
	return findings === undefined ? [] : composePapers(findings, requests).documents;
};

const understood = (each: Case): Understanding =>
	understand(
		{ name: "well.yaml", bytes: each.bytes },
		{ catalog, version: "0", readFile: readerOf(each), ownRules: [] },
	);

/** Understands a case, and how long that takes the processor [ms]. */
const timed = (each: Case): { readonly understanding: Understanding; readonly took: number } => {
	const before = cpuUsage();
	const understanding = understood(each);
	const { user, system } = cpuUsage(before);
	return { understanding, took: (user + system) / 1000 };
};

/** The paper whose turn it is with a case, composed; none where the definition is refused. */
export const papersOfCase = (each: Case): readonly PaperDocument[] =>
	papersOf(understood(each), each, false).map(({ paper }) => paper);

/** Takes a case through the tool, from bytes to composed papers, and says what the tool did wrong. */
export const runCase = (
	each: Case,
	options: { readonly timed: boolean; readonly everyPaper?: boolean },
): Outcome => {
	const faults: string[] = [];
	let refused = false;
	let papers = 0;
	try {
		const { understanding, took } = timed(each);
		// What is slow once may have been compiled meanwhile; what is slow twice is slow.
		if (options.timed && took > CASE_BUDGET && timed(each).took > CASE_BUDGET)
			faults.push(`it takes ${Math.round(took)} ms of the processor`);
		const { diagnostics } = understanding;
		const written = [...understanding.texts.values()].map(({ text }) => text).join("\n");
		refused = hasErrors(diagnostics);
		for (const diagnostic of diagnostics)
			faults.push(...wording(diagnostic, written), ...located(diagnostic, understanding));
		faults.push(...twice(diagnostics, understanding), ...printed(understanding));
		if (refused !== (understanding.findings === undefined))
			faults.push(
				refused ? "papers would be made in spite of an error" : "nothing is made and no error says why",
			);
		papers = papersOf(understanding, each, options.everyPaper === true).length;
	} catch (fault) {
		faults.push(`it throws: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}`);
	}
	return { faults: [...new Set(faults)], refused, papers };
};
