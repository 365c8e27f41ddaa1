import type { YAMLError } from "yaml";
import type { Code } from "../diagnostics/codes.ts";
import type { Telling } from "../diagnostics/diagnose.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { message, type Said } from "../messages/message.ts";
import { lexemes } from "./lexemes.ts";

/** A fault of form, worded for somebody who knows wells and not YAML. */
interface YamlFault {
	readonly code: Code;
	readonly range: Range;
	readonly telling: Telling;
	/** Of a bracket or quote that is not closed: where the reader saw that it is not. */
	readonly next?: Range;
}

const ENTRY: Said = message("syntax/yaml.entries");

const lineStart = (text: string, offset: number): number =>
	offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;

const lineAt = (text: string, offset: number): string =>
	/^[^\r\n]*/.exec(text.slice(lineStart(text, offset)))?.[0] ?? "";

const indentOf = (line: string): number => line.length - line.trimStart().length;

/** The first `name:value` on the line, where a space is missing after the colon. */
const missingSpace = (line: string): string | undefined =>
	/^\s*(?:- )?([\w-]+:(?=[^\s/])\S*)/.exec(line)?.[1];

const spaceAfterColon = (joined: string): Telling => ({
	what: message("syntax/colon.what"),
	expected: ENTRY,
	found: joined,
	mend: message("syntax/write.mend", { joined: joined.replace(":", ": ") }),
});

const unclosed = (what: Said, closer: string): Telling => ({
	what: message("syntax/unclosed.what", { what }),
	expected: message("syntax/unclosed.expected", { closer }),
	mend: message("syntax/unclosed.mend", { closer }),
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
			what: message("syntax/dash.what"),
			expected: message("syntax/dash.expected"),
			found: line.trim(),
			mend: message("syntax/dash.mend", { line: line.trim().replace("-", "- ") }),
		};
	if (further)
		return {
			what: message("syntax/further-in.what"),
			expected: ENTRY,
			found: line.trim(),
			mend: message("syntax/column.mend"),
		};
	if (SEVERAL_ENTRIES.test(line))
		return {
			what: message("syntax/several-on-line.what"),
			expected: ENTRY,
			found: line.trim(),
			mend: message("syntax/several-on-line.mend", {
				how: line.trimEnd().endsWith("}")
					? message("syntax/several-on-line.opening")
					: message("syntax/several-on-line.or-lines"),
			}),
		};
	return {
		what: message("syntax/colon-in-value.what"),
		expected: ENTRY,
		found: line.trim(),
		mend: message("syntax/colon-in-value.mend"),
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
	what: message("syntax/column.what"),
	expected: ENTRY,
	found: line.trim(),
	mend: message("syntax/column.mend"),
});

const notAnEntry = (line: string): Telling => {
	const joined = missingSpace(line);
	if (joined !== undefined) return spaceAfterColon(joined);
	if (/^\s+[\w-]+:(?:\s|$)/.test(line)) return outOfColumn(line);
	return {
		what: message("syntax/no-entry.what"),
		expected: ENTRY,
		found: line.trim(),
		mend: message("syntax/no-entry.mend"),
	};
};

const leftOver = (text: string, offset: number): Telling => {
	const rest = /^[^\r\n]*/.exec(text.slice(offset))?.[0] ?? "";
	if (/^[\]}]/.test(rest)) {
		return {
			what: message("syntax/closer.what", { mark: rest.charAt(0) }),
			expected: message("syntax/closer.expected"),
			mend: message("syntax/closer.mend", { mark: rest.charAt(0) }),
		};
	}
	if (rest.startsWith(",")) {
		return {
			what: message("syntax/comma.what"),
			expected: message("syntax/comma.expected"),
			mend: message("syntax/comma.mend"),
		};
	}
	if (/['"]/.test(text.charAt(offset - 1)) || /['"]\s*$/.test(text.slice(Math.max(0, offset - 40), offset))) {
		return {
			what: message("syntax/after-quote.what"),
			expected: message("syntax/after-quote.expected"),
			found: rest.split(/[,\]}]/, 1)[0]?.trim() ?? rest.trim(),
			mend: message("syntax/after-quote.mend"),
		};
	}
	return {
		what: message("syntax/stray-text.what"),
		expected: ENTRY,
		found: rest.trim(),
		mend: message("syntax/stray-text.mend"),
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
	what: written.includes(";") ? message("syntax/no-comma.semicolon") : message("syntax/no-comma.what"),
	expected: message("syntax/no-comma.expected"),
	found: written,
	mend: written.includes(";")
		? message("syntax/no-comma.instead")
		: message("syntax/no-comma.mend", {
				where:
					secondName(written) === undefined
						? message("syntax/no-comma.second-name")
						: `\`${secondName(written)}\``,
			}),
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
					what: message("syntax/open-quote.what"),
					expected: message("syntax/open-quote.expected", { mark }),
					mend: message("syntax/open-quote.mend", { mark }),
				};
			}
			if (/Missing ,/.test(error.message)) {
				if (/:\s*\?\s*$/.test(text.slice(Math.max(0, offset - 80), offset)))
					return {
						what: message("syntax/question-mark.what"),
						expected: message("syntax/question-mark.expected"),
						found: "?",
						mend: message("syntax/question-mark.mend"),
					};
				return {
					what: message("syntax/no-comma.values"),
					expected: message("syntax/comma.expected"),
					found: line.trim(),
					mend: message("syntax/no-comma.values-mend"),
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
				what: message("syntax/first-character.what", { character: text.charAt(offset) }),
				expected: message("syntax/first-character.expected"),
				found: scalarAt(text, offset),
				mend: /^%\s*\d/.test(text.slice(offset, offset + 8))
					? message("syntax/first-character.percent")
					: message("syntax/first-character.mend"),
			};
		case "BAD_DQ_ESCAPE":
			return {
				what: message("syntax/backslash.what"),
				expected: message("syntax/backslash.expected"),
				found: text.slice(...error.pos),
				mend: message("syntax/backslash.mend"),
			};
		case "UNEXPECTED_TOKEN":
			return /block-seq-ind/.test(error.message)
				? {
						what: message("syntax/list-on-line.what"),
						expected: message("syntax/list-on-line.expected"),
						found: line.trim(),
						mend: message("syntax/list-on-line.mend"),
					}
				: leftOver(text, offset);
		default:
			return {
				what: message("syntax/yaml.what"),
				expected: ENTRY,
				found: line.trim(),
				mend: message("syntax/yaml.mend"),
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
				what: message("syntax/tab.what"),
				expected: message("syntax/tab.expected"),
				mend: message("syntax/tab.mend"),
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
				what: message("syntax/closer-in-remark.what", { closer }),
				expected: message("syntax/closer-in-remark.expected", { closer }),
				mend: message("syntax/closer-in-remark.mend", { closer }),
			},
		};
	return { ...fault, range: opener, next: range };
};
