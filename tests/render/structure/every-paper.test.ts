import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Paper, PaperDocument } from "../../../src/document/document.ts";
import { attachmentsOf } from "../../../src/pipeline.ts";
import { documentOf, EDITIONS, type Edition } from "../../run/editions.ts";
import { setOnce } from "../../run/set-once.ts";
import { findingsOf } from "../../starters.ts";
import { type Beside, inspectPdf, placesOf } from "./structure-faults.ts";

const run = promisify(execFile);
const place = mkdtempSync(join(tmpdir(), "casebound-structure-"));
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** `qpdf --check` reads every object and stream; it is used where it is installed. */
const qpdf = await run("qpdf", ["--version"]).then(
	() => true,
	() => false,
);

/** What qpdf finds wrong, warnings too; nothing where it is not installed. */
const qpdfFaults = async (name: string, bytes: Uint8Array): Promise<string> => {
	if (!qpdf) return "";
	const file = join(place, `${name}.pdf`);
	writeFileSync(file, bytes);
	return run("qpdf", ["--check", file]).then(() => "", String);
};

/** The regulator's attachment and its appendices are read together. */
const COMPANION: Partial<Record<Paper, Paper>> = {
	regulator: "regulator-appendix",
	"regulator-appendix": "regulator",
};

/** The file that a paper's links lead into, as it would be bound beside it. */
const besideOf = async (edition: Edition, { companion }: PaperDocument): Promise<Beside> => {
	const paper = COMPANION[edition.request.paper];
	if (paper === undefined || companion === undefined) return new Map();
	const other = await setOnce(documentOf({ ...edition, request: { ...edition.request, paper } }));
	return new Map([[`${companion}.pdf`, await placesOf(other.bytes)]]);
};

/** Runs of text and strokes that a paper has at least: a letter is one page of words. */
const leastPainted = (paper: string): number => (paper === "transmittal" ? 60 : 100);

it.each(EDITIONS)("$title: has structure throughout", async (edition) => {
	const document = documentOf(edition);
	const attachments = attachmentsOf(findingsOf(edition.starter), document);
	const { bytes, findings, pages } = await setOnce(document, attachments);
	expect(findings).toEqual([]);
	const beside = await besideOf(edition, document);
	expect(beside.size).toBe(edition.request.paper in COMPANION ? 1 : 0);
	const { faults, seen } = await inspectPdf(bytes, document.language, beside);
	expect(faults).toEqual([]);
	expect(seen.attachments).toEqual(attachments.map((attachment) => attachment.name));
	expect(attachments).toHaveLength(document.paper === "regulator" ? 2 : 0);
	expect(seen.pages).toBe(pages);
	expect(seen.painted).toBeGreaterThan(leastPainted(document.paper));
	expect(seen.fonts).toBeGreaterThan(1);
	expect(await qpdfFaults(edition.title.replaceAll(/\W+/gu, "-"), bytes)).toBe("");
});

describe("qpdf, where it is installed", () => {
	let bytes: Uint8Array;
	beforeAll(async () => {
		const handout = EDITIONS.find(({ request }) => request.paper === "handout");
		if (handout === undefined) throw new Error("no handout");
		bytes = (await setOnce(documentOf(handout))).bytes;
	});
	it.skipIf(!qpdf)("would find a broken file", async () => {
		expect(await qpdfFaults("whole", bytes)).toBe("");
		const source = Buffer.from(bytes).toString("latin1");
		const broken = Buffer.from(source.replace(/\nxref\n0 \d+/u, "\nxref\n0 2"), "latin1");
		expect(await qpdfFaults("broken", broken)).not.toBe("");
	});
});
