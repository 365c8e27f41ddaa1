import { createHash } from "node:crypto";
import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { inject } from "vitest";
import type { PaperDocument } from "../../src/document/document.ts";
import { renderPaper } from "../../src/pipeline.ts";

type Attachments = NonNullable<Parameters<typeof renderPaper>[1]>;
type SetPaper = Awaited<ReturnType<typeof renderPaper>>;

/** How often one looks whether another worker is done with a paper [ms]. */
const LOOK = 50;

/** Whether the paper is ours to set. */
const claimed = (claim: string): boolean => {
	try {
		writeFileSync(claim, "", { flag: "wx" });
		return true;
	} catch (fault) {
		if ((fault as NodeJS.ErrnoException).code !== "EEXIST") throw fault;
		return false;
	}
};

/**
 * A paper as a PDF, set once a run for all tests and workers that read it: equal documents with equal attachments are one
 * paper. Whoever comes first sets it, the others wait for the file.
 */
export const setOnce = async (document: PaperDocument, attachments: Attachments = []): Promise<SetPaper> => {
	const hash = createHash("sha256").update(JSON.stringify(document));
	for (const { bytes, ...about } of attachments) hash.update(JSON.stringify(about)).update(bytes);
	const place = join(inject("shelf"), hash.digest("hex"));
	const [claim, told] = [`${place}.claim`, `${place}.json`];
	for (;;) {
		if (existsSync(told)) {
			const about = JSON.parse(readFileSync(told, "utf8")) as Omit<SetPaper, "bytes">;
			return { ...about, bytes: Uint8Array.from(readFileSync(`${place}.pdf`)) };
		}
		if (claimed(claim)) break;
		await setTimeout(LOOK);
	}
	try {
		const { bytes, ...about } = await renderPaper(document, attachments);
		writeFileSync(`${place}.pdf`, bytes);
		writeFileSync(`${told}.part`, JSON.stringify(about));
		renameSync(`${told}.part`, told);
		return { ...about, bytes };
	} finally {
		rmSync(claim);
	}
};
