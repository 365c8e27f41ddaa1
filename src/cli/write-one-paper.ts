import { join } from "node:path";
import type { PaperDocument } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import type { Findings } from "../paper/context.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { setPaper } from "./set-paper.ts";
import { terminal } from "./terminal.ts";
import { writeSet } from "./write-set.ts";

/** One paper to set and write beside those of its well. */
interface OnePaper {
	/** Of its files, without an ending. */
	readonly name: string;
	readonly paper: PaperDocument;
	/** The well that it is of. */
	readonly findings: Findings;
	/** The folder. */
	readonly out: string;
	readonly html: boolean;
}

/**
 * Sets a paper and writes it; one that does not set cleanly is told of and not written.
 *
 * @returns names of the files written, and what else lies there of the well and is out of date
 * @throws FileFault
 */
export const writeOnePaper = async (
	{ name, paper, findings, out, html }: OnePaper,
	session: Session,
): Promise<readonly string[]> => {
	const set = await setPaper({
		name,
		paper,
		attachments: [],
		engine: "own",
		html,
		csv: false,
		json: false,
		xlsx: false,
	});
	for (const { page, kind, text, detail } of set.findings)
		terminal.err(`casebound: ${name} page ${page}: ${kind}: ${text} ${detail}`);
	if (set.findings.length > 0) {
		terminal.err(`casebound: ${name} does not set cleanly and was not written`);
		session.end(EXIT.fault);
		return [];
	}
	const { identity } = findings.well;
	const revision = identity.revisions?.at(-1)?.id;
	const beside = await writeSet(out, {
		slug: fileSlug(identity.name),
		well: identity.name,
		...(revision === undefined ? {} : { revision }),
		definition: findings.digest,
		files: set.files,
	});
	return [...set.files.map((file) => join(out, file.name)), ...beside];
};
