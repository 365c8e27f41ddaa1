import { readdirSync, readFileSync } from "node:fs";

/** Root of the project. */
export const ROOT = new URL("../../", import.meta.url);
/** Where the cases are kept. */
export const FOLDER = new URL("fixtures/broken/", ROOT);
const BASE = "fixtures/broken/base.yaml";

/** One broken file, and the text that is to be printed about it. */
export interface BrokenCase {
	/** `syntax-comma-in-number`, or `syntax-comma-in-number.list` where one code has several. */
	readonly name: string;
	/** `syntax/comma-in-number` */
	readonly code: string;
	/** The file as the printed text names it. */
	readonly file: string;
	readonly bytes: Uint8Array;
	/** The golden text. */
	readonly golden: URL;
}

const escaped = (line: string): string =>
	line
		.replace(/\\u([0-9a-f]{4})/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
		.replace(/\\t/g, "\t");

interface Hunk {
	readonly old: string;
	readonly new: string;
}

const hunksOf = (script: string): Hunk[] =>
	script
		.split(/\n\s*\n/)
		.map((block) => block.split("\n"))
		.map((lines) => {
			const marked = (mark: string): string =>
				lines
					.filter((line) => line.startsWith(mark))
					.map((line) => line.slice(2))
					.join("\n");
			return { old: marked("- "), new: escaped(marked("+ ")) };
		})
		.filter((hunk) => hunk.old !== "" || hunk.new !== "");

/**
 * Applies an edit script. Each block of it replaces the text of its `- ` lines, which must stand exactly once in the
 * file, by that of its `+ ` lines (where `\u0000` and `\t` stand for the character); a block without `- ` lines is
 * added at the end. `# ` starts a remark, `@ ` names the file edited, `~ pad N` fills it with remarks to N bytes.
 */
export const applyEdits = (script: string, base: string): string => {
	let text = base;
	for (const hunk of hunksOf(script)) {
		const pieces = text.split(hunk.old);
		if (hunk.old === "") {
			text = `${text}${hunk.new}\n`;
			continue;
		}
		if (pieces.length !== 2)
			throw new Error(`"${hunk.old}" stands ${pieces.length - 1} times in the file, not once`);
		text = pieces.join(hunk.new);
	}
	const pad = Number(/^~ pad (\d+)$/m.exec(script)?.[1] ?? 0);
	if (text === base && pad === 0) throw new Error("the script changes nothing");
	return pad > text.length ? text + "# filler\n".repeat(Math.ceil((pad - text.length) / 9)) : text;
};

const edited = (script: string): { file: string; text: string } => {
	const file = /^@ (\S+)$/m.exec(script)?.[1] ?? BASE;
	const text = applyEdits(script, readFileSync(new URL(file, ROOT), "utf8"));
	return { file: file === BASE ? "well.yaml" : file, text };
};

/** Every case in `fixtures/broken/`, by name. */
export const brokenCases = (): BrokenCase[] =>
	readdirSync(FOLDER)
		.filter((name) => /\.(yaml|edit)$/.test(name) && !name.startsWith("base"))
		.sort()
		.map((entry) => {
			const name = entry.replace(/\.(yaml|edit)$/, "");
			const [stem = ""] = name.split(".");
			const content = readFileSync(new URL(entry, FOLDER));
			const change = entry.endsWith(".edit") ? edited(content.toString("utf8")) : undefined;
			return {
				name,
				code: stem.replace("-", "/"),
				file: change?.file ?? entry,
				bytes: change === undefined ? content : new TextEncoder().encode(change.text),
				golden: new URL(`${name}.txt`, FOLDER),
			};
		});
