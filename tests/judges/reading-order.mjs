import { existsSync, readFileSync } from "node:fs";
import { JSDOM } from "jsdom";
import { isThere, run, versionOf } from "./run.mjs";

/** Least share of a paper's words that must come in the order of its HTML edition: numbers of lists and of key figures are told first in one, last in the other. */
const LEAST = 0.97;

/** Words as poppler reads them along the tree of tags; figures are read by their alternative text and left out here. */
const wordsByTags = (pdf) => {
	const words = [];
	let figure;
	for (const line of run("pdfinfo", ["-struct-text", pdf]).stdout.split("\n")) {
		const indent = line.length - line.trimStart().length;
		if (figure !== undefined && indent > figure) continue;
		figure = line.trimStart().startsWith("Figure") ? indent : undefined;
		const text = /^\s*"(.*)"$/.exec(line)?.[1];
		if (text !== undefined) words.push(...text.split(/\s+/).filter(Boolean));
	}
	return words;
};

const wordsOfHtml = (file) => {
	const { document } = new JSDOM(readFileSync(file, "utf8")).window;
	for (const left of document.querySelectorAll("svg, style, script, title")) left.remove();
	const words = [];
	const walk = document.createTreeWalker(document.body, 4);
	while (walk.nextNode()) words.push(...walk.currentNode.data.split(/\s+/).filter(Boolean));
	return words;
};

/** Length of the longest sequence of words that both have in the same order. */
const inOrder = (one, other) => {
	let before = new Uint16Array(other.length + 1);
	for (const word of one) {
		const row = new Uint16Array(other.length + 1);
		for (let j = 1; j <= other.length; j += 1)
			row[j] = other[j - 1] === word ? before[j - 1] + 1 : Math.max(before[j], row[j - 1]);
		before = row;
	}
	return before[other.length];
};

/** Long papers are left to veraPDF: poppler needs minutes for each. */
const READ = /\.(handout|answers|landowner|changes)\.pdf$/;

export const readingOrder = {
	name: "poppler, reading order",
	reads: `along the tags, at least ${100 * LEAST} % of a paper's words in the order of its HTML edition`,
	of: (outputs) => {
		if (!isThere("pdfinfo")) return { absent: "pdfinfo is not on this machine" };
		const pairs = outputs
			.flatMap(({ files }) => files)
			.filter((file) => READ.test(file))
			.map((pdf) => ({ pdf, html: pdf.replace(/pdf$/, "html") }))
			.filter(({ html }) => existsSync(html));
		let checks = 0;
		let least = 1;
		const found = pairs.flatMap(({ pdf, html }) => {
			const words = wordsByTags(pdf);
			checks += words.length;
			const share = inOrder(words, wordsOfHtml(html)) / words.length;
			least = Math.min(least, share);
			return words.length > 0 && share >= LEAST
				? []
				: [{ where: pdf, what: `${(100 * share).toFixed(1)} % of ${words.length} words come in order` }];
		});
		return {
			version: versionOf("pdfinfo", "-v"),
			read: `${pairs.length} PDF beside their HTML`,
			checks,
			found,
			note: least,
		};
	},
};
