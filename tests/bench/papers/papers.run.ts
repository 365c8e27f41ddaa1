import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";
import { expect, it } from "vitest";
import type { PaperDocument } from "../../../src/document/document.ts";
import { composePapers } from "../../../src/pipeline.ts";
import { samplePaper, surveyTable } from "../../render/sample-paper.ts";
import { findingsOf } from "../../starters.ts";
import { longWell } from "./long-well.ts";

/*
 * Times of setting papers, ours and two yardsticks, each in a process of its own: cold is the first paper of a process,
 * loading included; warm the median of the later ones. Nothing depends on the figures; they are written down.
 */

const root = new URL("../../..", import.meta.url).pathname;
const place = join(root, "out", "bench-papers");

const SCRIPT = `
import { readFileSync, writeFileSync } from "node:fs";
const [kind, file, warm] = process.argv.slice(2);
const paper = JSON.parse(readFileSync(file, "utf8"));
const start = performance.now();
const set = kind === "ours" ? (await import("./render-pdf.js")).renderPdf
	: kind === "pdfkit" ? (await import("./set-on-pdfkit.js")).setOnPdfkit
	: kind === "html" ? (await import("./render-html.js")).renderHtml
	: (await import("./set-in-typst.js")).setInTypst;
const bytesOf = (made) => made.bytes ?? (typeof made === "string" ? Buffer.from(made) : made);
const made = bytesOf(await set(paper));
const cold = performance.now() - start;
const peak = process.resourceUsage().maxRSS / 1024;
const times = [];
for (let i = 0; i < Number(warm); i += 1) {
	// Another issue of the same paper: what is remembered of words counts, what is remembered of the whole does not.
	paper.imprint.digest = String(i).padStart(8, "0");
	const begun = performance.now();
	await set(paper);
	times.push(performance.now() - begun);
}
times.sort((a, b) => a - b);
writeFileSync(file + "." + kind + ".pdf", made);
process.stdout.write(JSON.stringify({ cold, warm: times[Math.floor(times.length / 2)] ?? null, peak, bytes: made.length }));
`;

interface Times {
	readonly cold: number;
	readonly warm: number | null;
	readonly peak: number;
	readonly bytes: number;
}

/** Processes begun for each figure; one for what takes long. */
const COLD_RUNS = 3;
const LONG_ROWS = 900;

const median = (values: readonly number[]): number =>
	[...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

const timesOf = (
	kind: string,
	file: string,
	coldRuns: number,
	warm: number,
): Times & { readonly pages: number } => {
	const runs = Array.from({ length: coldRuns }, (_, i) => {
		const told = execFileSync(
			process.execPath,
			[join(place, "run.mjs"), kind, file, String(i === 0 ? warm : 0)],
			{
				encoding: "utf8",
				env: { PATH: process.env["PATH"] ?? "", NODE_ENV: "production" },
				maxBuffer: 1e8,
			},
		);
		return JSON.parse(told) as Times;
	});
	const [first] = runs;
	if (first === undefined) throw new Error("nothing ran");
	const made = readFileSync(`${file}.${kind}.pdf`).toString("latin1");
	return {
		...first,
		cold: median(runs.map((run) => run.cold)),
		peak: median(runs.map((run) => run.peak)),
		pages: made.match(/\/Type\s*\/Page\b(?!s)/gu)?.length ?? 0,
	};
};

const rowsOf = (paper: PaperDocument): number =>
	paper.sections
		.flatMap(({ blocks }) => blocks)
		.reduce((sum, block) => sum + (block.kind === "table" ? block.rows.length : 0), 0);

const ofTable = (rows: number): PaperDocument => ({
	...samplePaper(),
	sections: [{ id: "s", title: "Survey", blocks: [surveyTable(rows)] }],
});

it("sets papers, and beside them the same on pdfkit and by typst", async () => {
	rmSync(place, { recursive: true, force: true });
	await build({
		root,
		configFile: false,
		logLevel: "silent",
		oxc: { jsx: { runtime: "automatic", development: false } },
		ssr: { external: ["@myriaddreamin/typst-ts-node-compiler"] },
		build: {
			ssr: true,
			outDir: place,
			rollupOptions: {
				input: [
					"src/render/pdf/render-pdf.ts",
					"src/render/html/render-html.ts",
					"tests/bench/papers/set-on-pdfkit.ts",
					"tests/bench/papers/set-in-typst.ts",
				],
				output: { entryFileNames: "[name].js" },
			},
		},
	});
	mkdirSync(place, { recursive: true });
	writeFileSync(join(place, "run.mjs"), SCRIPT);
	const starter = findingsOf("horizontal");
	const papers = (["regulator", "landowner", "handout", "answers", "crew"] as const).flatMap((paper) =>
		composePapers(starter, [{ paper, language: "en", units: "field" }]).documents.map(
			({ paper: document }) => [`starter 1, ${paper}`, document] as const,
		),
	);
	const long = composePapers(longWell(), [
		{ paper: "regulator", language: "en", units: "field" },
	]).documents.map(({ paper }) => ["100 stages, 5,000 stations, regulator", paper] as const);
	const tables = [100, 1000, 5000].map((rows) => [`a table of ${rows} rows`, ofTable(rows)] as const);
	const lines: string[] = [
		"| paper | set by | rows | pages | cold, s | warm, s | warm a page, ms | warm a row, ms | peak, MB | file, KB |",
		"|---|---|---|---|---|---|---|---|---|---|",
	];
	const record: Record<string, unknown> = {};
	for (const [i, [name, document]] of [...papers, ...long, ...tables].entries()) {
		const file = join(place, `paper-${i}.json`);
		writeFileSync(file, JSON.stringify(document));
		const rows = rowsOf(document);
		for (const kind of ["ours", "pdfkit", "typst", "html"]) {
			const runs = rows > LONG_ROWS ? { cold: 1, warm: 1 } : { cold: COLD_RUNS, warm: 3 };
			const { cold, warm, peak, bytes, pages } = timesOf(kind, file, runs.cold, runs.warm);
			record[`${name}, ${kind}`] = { cold, warm, peak, bytes, pages, rows };
			const s = (ms: number): string => (ms / 1000).toFixed(2);
			const each = (count: number): string => (warm === null || count === 0 ? "" : (warm / count).toFixed(1));
			lines.push(
				`| ${name} | ${kind} | ${rows} | ${pages === 0 ? "" : pages} | ${s(cold)} | ${warm === null ? "" : s(warm)} | ${each(pages)} | ${each(rows)} | ${peak.toFixed(0)} | ${(bytes / 1024).toFixed(0)} |`,
			);
		}
	}
	const told = `${lines.join("\n")}\n`;
	writeFileSync(join(root, "out", "bench-papers.json"), JSON.stringify(record, null, 1));
	writeFileSync(join(root, "out", "bench-papers.md"), told);
	process.stdout.write(told);
	expect(lines.length).toBeGreaterThan(30);
});
