import type { YAMLError } from "yaml";
import type { Code } from "../diagnostics/codes.ts";
import type { Telling } from "../diagnostics/diagnose.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { lexemes } from "./lexemes.ts";

/** A fault of form, worded for somebody who knows wells and not YAML. */
export interface YamlFault {
	readonly code: Code;
	readonly range: Range;
	readonly telling: Telling;
	/** Of a bracket or quote that is not closed: where the reader saw that it is not. */
	readonly next?: Range;
}

const ENTRY =
	"entries of the form `name: value`, one to a line, those of one block starting in the same column";

const lineStart = (text: string, offset: number): number =>
	offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;

const lineAt = (text: string, offset: number): string =>
	/^[^\r\n]*/.exec(text.slice(lineStart(text, offset)))?.[0] ?? "";

const indentOf = (line: string): number => line.length - line.trimStart().length;

/** The first `name:value` on the line, where a space is missing after the colon. */
const missingSpace = (line: string): string | undefined =>
	/^\s*(?:- )?([\w-]+:(?=[^\s/])\S*)/.exec(line)?.[1];

const spaceAfterColon = (joined: string): Telling => ({
	what: "the colon has no space after it, so it separates nothing",
	expected: ENTRY,
	found: joined,
	mend: `write \`${joined.replace(":", ": ")}\``,
});

const unclosed = (what: string, closer: string): Telling => ({
	what: `${what} is not closed`,
	expected: `a matching \`${closer}\` before the next entry`,
	mend: `add the missing \`${closer}\`, and keep the lines between further in than the entry they belong to`,
});

/** Of a fault at the white space before a line, the line. */
const fromFirstLetter = (text: string, start: number): Range | undefined => {
	const line = lineAt(text, start);
	return lineStart(text, start) === start && indentOf(line) > 0 && line.trim() !== ""
		? [start + indentOf(line), start + line.trimEnd().length]
		: undefined;
};

/** A value that goes on with `, name: ` was meant as several entries. */
const SEVERAL_ENTRIES = /:\s[^:]*,\s*[a-z_]+:(?=\s)/i;

const blockAsKey = (line: string, further: boolean): Telling => {
	if (/^\s*-[^\s-]/.test(line))
		return {
			what: "the dash has no space after it, so it starts no item",
			expected: "`- ` before each item of a list",
			found: line.trim(),
			mend: `write \`${line.trim().replace("-", "- ")}\``,
		};
	if (further)
		return {
			what: "this line stands further in than the entry above it, which already has a value",
			expected: ENTRY,
			found: line.trim(),
			mend: "move the line to the column of the entries it belongs with",
		};
	if (SEVERAL_ENTRIES.test(line))
		return {
			what: "several entries stand on one line without `{ }` around them",
			expected: ENTRY,
			found: line.trim(),
			mend: `put them in \`{ }\`${line.trimEnd().endsWith("}") ? ": the opening `{` is missing" : ", or each on a line of its own"}`,
		};
	return {
		what: "a value contains a colon followed by a space, which starts another entry",
		expected: ENTRY,
		found: line.trim(),
		mend: "put the whole value in double quotes",
	};
};

/** The next line with something on it, where it stands further in: what YAML takes for the rest of the value above. */
const furtherIn = (text: string, offset: number): Range | undefined => {
	const own = lineAt(text, offset);
	if (/^\s*-[^\s-]/.test(own)) return undefined;
	if ((own.match(/:(?=\s)/g) ?? []).length > 1) return undefined;
	let start = lineStart(text, offset) + own.length;
	while (start < text.length) {
		start += /^\r?\n/.exec(text.slice(start, start + 2))?.[0].length ?? 1;
		const line = lineAt(text, start);
		if (line.trim() !== "" && !line.trimStart().startsWith("#"))
			return indentOf(line) > indentOf(own)
				? [start + indentOf(line), start + line.trimEnd().length]
				: undefined;
		start += line.length;
	}
	return undefined;
};

const outOfColumn = (line: string): Telling => ({
	what: "the entries of one block do not start in the same column",
	expected: ENTRY,
	found: line.trim(),
	mend: "move the line to the column of the entries it belongs with",
});

const notAnEntry = (line: string): Telling => {
	const joined = missingSpace(line);
	if (joined !== undefined) return spaceAfterColon(joined);
	if (/^\s+[\w-]+:(?:\s|$)/.test(line)) return outOfColumn(line);
	return {
		what: "this line is not an entry",
		expected: ENTRY,
		found: line.trim(),
		mend: "write it as `name: value`, or start it with `#` if it is a remark",
	};
};

const leftOver = (text: string, offset: number): Telling => {
	const rest = /^[^\r\n]*/.exec(text.slice(offset))?.[0] ?? "";
	if (/^[\]}]/.test(rest)) {
		return {
			what: `\`${rest.charAt(0)}\` closes nothing`,
			expected: "one closing bracket for every opening one",
			mend: `take the \`${rest.charAt(0)}\` away`,
		};
	}
	if (rest.startsWith(",")) {
		return {
			what: "a comma stands where a value is due",
			expected: "one comma between two values",
			mend: "take the comma away, or write the missing value before it",
		};
	}
	if (/['"]/.test(text.charAt(offset - 1)) || /['"]\s*$/.test(text.slice(Math.max(0, offset - 40), offset))) {
		return {
			what: "text follows the closing quote of a value",
			expected: "the quotes around the whole value, or none",
			found: rest.split(/[,\]}]/, 1)[0]?.trim() ?? rest.trim(),
			mend: "leave the quotes out, or put the whole value inside them; for inches write `in` instead of a quote",
		};
	}
	return {
		what: "text stands where no value can be",
		expected: ENTRY,
		found: rest.trim(),
		mend: "move it into a `name: value` entry, or start it with `#` if it is a remark",
	};
};

/** The value that begins at an offset, to the next comma, bracket or line end. */
const scalarAt = (text: string, offset: number): string =>
	/^[^\r\n,\]}]*/.exec(text.slice(offset, offset + 200))?.[0].trim() ?? "";

/** The last `{` or `[` before the offset that has no partner; brackets in quotes and remarks do not count. */
const lastOpener = (text: string, offset: number): Range | undefined => {
	const open: number[] = [];
	for (const [lexeme, start] of lexemes(text)) {
		if (start >= offset) break;
		if (lexeme === "{" || lexeme === "[") open.push(start);
		else if (lexeme === "}" || lexeme === "]") open.pop();
	}
	const last = open.at(-1);
	return last === undefined ? undefined : [last, last + 1];
};

/** A remark on the line of an opened bracket that swallows its closing one. */
const swallowed = (text: string, opener: Range, closer: string): Range | undefined => {
	const end = opener[0] + (/^[^\r\n]*/.exec(text.slice(opener[0]))?.[0].length ?? 0);
	for (const [lexeme, start] of lexemes(text)) {
		if (start >= end) return undefined;
		if (start > opener[0] && lexeme.startsWith("#") && lexeme.includes(closer))
			return [start, start + lexeme.trimEnd().length];
	}
	return undefined;
};

/** The quote that is open at an offset. */
const openQuote = (text: string, offset: number): Range | undefined => {
	for (const [lexeme, start] of lexemes(text))
		if (/^['"]/.test(lexeme) && start < offset && start + lexeme.length >= offset) return [start, start + 1];
	return undefined;
};

const secondName = (written: string): string | undefined => /\s([\w-]+)\s*:/.exec(written)?.[1];

/** Two entries in a `{ }` or `[ ]` that YAML reads as one, for want of a comma between them. */
const noComma = (written: string): Telling => ({
	what: written.includes(";")
		? "a `;` stands between two entries, where a comma is due"
		: "two entries stand side by side without a comma",
	expected: "one comma between two entries",
	found: written,
	mend: written.includes(";")
		? "write a comma instead"
		: `put a comma before ${secondName(written) === undefined ? "the second name" : `\`${secondName(written)}\``}`,
});

const telling = (error: YAMLError, text: string): Telling => {
	const [offset] = error.pos;
	const line = lineAt(text, offset);
	switch (error.code) {
		case "BAD_INDENT":
			if (/Flow (map|sequence)/.test(error.message))
				return /Flow map/.test(error.message) ? unclosed("`{`", "}") : unclosed("`[`", "]");
			return outOfColumn(line);
		case "MISSING_CHAR":
			if (/quote/.test(error.message)) {
				const mark = /Missing closing '/.test(error.message) ? "'" : '"';
				return {
					what: "the quote is not closed",
					expected: `a matching \`${mark}\` at the end of the value`,
					mend: `add the missing \`${mark}\`; for inches write \`in\` instead of a quote`,
				};
			}
			if (/Missing ,/.test(error.message)) {
				if (/:\s*\?\s*$/.test(text.slice(Math.max(0, offset - 80), offset)))
					return {
						what: "a `?` alone cannot be a value",
						expected: "a value, or no entry where it is not known yet",
						found: "?",
						mend: "give it a value, or take the entry out until it is known",
					};
				return {
					what: "two values stand side by side without a comma",
					expected: "one comma between two values",
					found: line.trim(),
					mend: "put a comma between them, or quotes around them if they are one value",
				};
			}
			return notAnEntry(line);
		case "MULTILINE_IMPLICIT_KEY":
		case "KEY_OVER_1024_CHARS":
			return notAnEntry(line);
		case "BLOCK_AS_IMPLICIT_KEY": {
			const next = furtherIn(text, offset);
			return next === undefined ? blockAsKey(line, false) : blockAsKey(lineAt(text, next[0]), true);
		}
		case "BLOCK_IN_FLOW":
			return noComma(text.slice(...error.pos));
		case "BAD_SCALAR_START":
			return {
				what: `a value cannot start with \`${text.charAt(offset)}\` unless it is quoted`,
				expected: "a letter, a digit or a quote first",
				found: scalarAt(text, offset),
				mend: /^%\s*\d/.test(text.slice(offset, offset + 8))
					? "write the number before the `%`, as in `30 %`"
					: "put the value in double quotes",
			};
		case "BAD_DQ_ESCAPE":
			return {
				what: "a backslash in double quotes starts an escape, and this one is none",
				expected: "text without backslashes, or in single quotes",
				found: text.slice(...error.pos),
				mend: "put the value in single quotes instead",
			};
		case "UNEXPECTED_TOKEN":
			return /block-seq-ind/.test(error.message)
				? {
						what: "a list starts on the line of its name",
						expected: "each item of a list on a line of its own, starting with `- `",
						found: line.trim(),
						mend: "move the `-` to the next line, or quote the value if it is only a dash",
					}
				: leftOver(text, offset);
		default:
			return {
				what: "the text cannot be read here",
				expected: ENTRY,
				found: line.trim(),
				mend: "rewrite this entry",
			};
	}
};

/** The parser's first complaint in our words. What it says after the first follows from it, so it is not repeated. */
export const yamlFault = (errors: readonly YAMLError[], text: string): YamlFault | undefined => {
	const [error] = [...errors].sort((a, b) => a.pos[0] - b.pos[0]);
	if (error === undefined) return undefined;
	const [start, end] = error.pos;
	const least = error.code === "BAD_DQ_ESCAPE" ? 2 : 1;
	const implicit = error.code === "BLOCK_AS_IMPLICIT_KEY";
	const whole = implicit ? /^[^\r\n]*/.exec(text.slice(start))?.[0].trimEnd() : undefined;
	const line = lineStart(text, start);
	const dash = implicit && /^\s*-[^\s-]/.test(lineAt(text, start)) ? line : start;
	const range: Range = (implicit ? furtherIn(text, start) : undefined) ??
		fromFirstLetter(text, dash) ?? [
			Math.min(start, text.length),
			Math.max(start + (whole?.length ?? least), end),
		];
	const indent = /^[ \t]*/.exec(lineAt(text, start))?.[0] ?? "";
	const tab = line + indent.indexOf("\t");
	if (error.code === "TAB_AS_INDENT" || (indent.includes("\t") && tab <= start)) {
		return {
			code: "syntax/tab",
			range: indent.includes("\t") ? [tab, tab + 1] : range,
			telling: {
				what: "the line is indented with a tab",
				expected: "spaces; YAML does not count tabs as indentation",
				mend: "replace the tab by spaces",
			},
		};
	}
	const opener =
		error.code === "BAD_INDENT" && /^Flow/.test(error.message)
			? lastOpener(text, start)
			: error.code === "MISSING_CHAR" && /quote/.test(error.message)
				? openQuote(text, start)
				: undefined;
	const fault = { code: "syntax/yaml", range, telling: telling(error, text) } as const;
	if (opener === undefined) return fault;
	const closer = text.charAt(opener[0]) === "[" ? "]" : "}";
	const remark = /^[[{]/.test(text.charAt(opener[0])) ? swallowed(text, opener, closer) : undefined;
	if (remark !== undefined)
		return {
			...fault,
			range: remark,
			telling: {
				what: `the \`#\` starts a remark, and the \`${closer}\` is inside it`,
				expected: `the \`${closer}\` before the remark`,
				mend: `move the remark behind the \`${closer}\`, or take it out`,
			},
		};
	return { ...fault, range: opener, next: range };
};
