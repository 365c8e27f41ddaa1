import { readFileSync } from "node:fs";
import { javaClasses, versionOnPath } from "./java.mjs";
import { FAULTS, plantFaults } from "./planted.mjs";
import { readingOrder } from "./reading-order.mjs";
import { isThere, run, versionOf } from "./run.mjs";

const pdfsOf = (outputs) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(".pdf")));

const STANDARDS = 2;

/** A line a file and standard: how much was checked, and which rules failed. */
const validated = (classPath, pdfs) => {
	const { status, stdout, stderr } = run("java", ["-Xmx2g", "-cp", classPath, "JudgePdf", ...pdfs]);
	if (status !== 0) throw new Error(`veraPDF did not run: ${stderr}`);
	const lines = stdout
		.trim()
		.split("\n")
		.map((line) => JSON.parse(line));
	if (lines.length !== STANDARDS * pdfs.length) throw new Error("veraPDF did not answer for every file");
	return lines;
};

/** Faults that it was shown and did not see. */
const overlooked = async (classPath, pdfs) => {
	const paper = pdfs.find((pdf) => pdf.includes("landowner")) ?? pdfs[0];
	const planted = await plantFaults(paper);
	const lines = validated(
		classPath,
		planted.map(({ file }) => file),
	);
	return planted
		.filter(
			({ file, standard }) =>
				!lines.some((line) => line.file === file && line.standard === standard && line.failed.length > 0),
		)
		.map(({ file, name }) => ({ where: file, what: `planted and not found: ${name}` }));
};

const veraPdf = {
	name: "veraPDF",
	reads: `PDF/UA-1 and PDF/A-3a; finds ${Object.keys(FAULTS).length} of ${Object.keys(FAULTS).length} faults planted in a paper`,
	of: async (outputs) => {
		const { absent, classPath } = javaClasses();
		if (absent !== undefined) return { absent };
		const pdfs = pdfsOf(outputs);
		const lines = validated(classPath, pdfs);
		const failed = lines.flatMap(({ file, standard, failed }) =>
			failed.map(({ rule, times, first }) => ({
				where: file,
				what: `${standard} rule ${rule}, ${times} times: ${first}`,
			})),
		);
		return {
			version: versionOnPath(classPath, "validation-model"),
			read: `${pdfs.length} PDF`,
			checks: lines.reduce((sum, { checks }) => sum + checks, 0),
			found: [...failed, ...(await overlooked(classPath, pdfs))],
		};
	},
};

/** One command a PDF that must end well and print nothing but what is expected. */
const quietCommand = ({ name, reads, program, flag, args, complaint }) => ({
	name,
	reads,
	of: (outputs) => {
		if (!isThere(program)) return { absent: `${program} is not on this machine` };
		const pdfs = pdfsOf(outputs);
		const found = pdfs.flatMap((pdf) => {
			const done = run(program, args(pdf));
			const what = complaint(done);
			return what === undefined ? [] : [{ where: pdf, what }];
		});
		return { version: versionOf(program, flag), read: `${pdfs.length} PDF`, checks: pdfs.length, found };
	},
});

const qpdf = quietCommand({
	name: "qpdf",
	reads: "syntax and streams",
	program: "qpdf",
	flag: "--version",
	args: (pdf) => ["--check", pdf],
	complaint: ({ status, stdout, stderr }) =>
		status === 0 && stdout.includes("No syntax or stream encoding errors") && stderr === ""
			? undefined
			: stderr || stdout,
});

const ghostscript = quietCommand({
	name: "Ghostscript",
	reads: "opens and interprets every page",
	program: "gs",
	flag: "--version",
	args: (pdf) => ["-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=nullpage", pdf],
	complaint: ({ status, stdout, stderr }) =>
		status === 0 && stdout === "" && stderr === "" ? undefined : stdout + stderr,
});

const popplerStructure = quietCommand({
	name: "poppler, structure",
	reads: "the tree of tags",
	program: "pdfinfo",
	flag: "-v",
	args: (pdf) => ["-struct", pdf],
	complaint: ({ status, stdout, stderr }) =>
		status === 0 && stderr === "" && stdout.includes("H1") ? undefined : stderr || "no heading in the tree",
});

const fontLines = (stdout) =>
	stdout
		.split("\n")
		.slice(2)
		.filter((line) => line.trim() !== "");

const popplerFonts = quietCommand({
	name: "poppler, fonts",
	reads: "every font embedded, subset, with its letters",
	program: "pdffonts",
	flag: "-v",
	args: (pdf) => [pdf],
	complaint: ({ status, stdout, stderr }) => {
		if (status !== 0 || stderr !== "") return stderr;
		const lines = fontLines(stdout);
		if (lines.length === 0) return "no font at all";
		return lines.find((line) => !/\syes yes yes\s+\d+\s+\d+$/.test(line));
	},
});

const pdfJs = {
	name: "pdf.js",
	reads: "opens every page without a warning",
	of: async (outputs) => {
		const { getDocument, version } = await import("pdfjs-dist/legacy/build/pdf.mjs");
		const pdfs = pdfsOf(outputs);
		const found = [];
		const told = console.log;
		const warned = console.warn;
		let pages = 0;
		for (const pdf of pdfs) {
			const said = [];
			console.log = (...words) => said.push(words.join(" "));
			console.warn = console.log;
			const document = await getDocument({ data: new Uint8Array(readFileSync(pdf)), verbosity: 1 }).promise;
			for (let number = 1; number <= document.numPages; number += 1) {
				const page = await document.getPage(number);
				await page.getOperatorList();
				await page.getStructTree();
				pages += 1;
			}
			await document.destroy();
			console.log = told;
			console.warn = warned;
			found.push(...said.map((what) => ({ where: pdf, what })));
		}
		return { version, read: `${pdfs.length} PDF`, checks: pages, found };
	},
};

export const pdfJudges = [veraPdf, qpdf, popplerFonts, popplerStructure, readingOrder, ghostscript, pdfJs];
