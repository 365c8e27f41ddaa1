import { Composer, type CST, type Document, Lexer, Parser } from "yaml";
import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { message } from "../messages/message.ts";
import { textFault } from "./decode-text.ts";
import { hashTraps } from "./hash-trap.ts";
import type { PositionIndex } from "./position-index.ts";
import { yamlFault } from "./yaml-fault.ts";
import { DEEPEST, yamlTree } from "./yaml-tree.ts";

interface YamlRead {
	/** Null-prototype maps, lists, text, numbers, true, false and null. Dates and quantities are text. */
	readonly value: unknown;
	readonly positions: PositionIndex;
	/** The text that positions count in: without a byte order mark. */
	readonly text: string;
}

interface Parsed {
	readonly tokens: readonly CST.Token[];
	/** Offset where the nesting passes the limit. */
	readonly tooDeep?: number;
}

/** The parser keeps its open collections in a list, so depth can be watched before anything recurses. */
const parse = (text: string): Parsed => {
	const parser = new Parser();
	const tokens: CST.Token[] = [];
	for (const lexeme of new Lexer().lex(text)) {
		for (const token of parser.next(lexeme)) tokens.push(token);
		if (parser.stack.length > DEEPEST + 2) return { tokens, tooDeep: parser.offset };
	}
	for (const token of parser.end()) tokens.push(token);
	return { tokens };
};

const compose = (tokens: readonly CST.Token[], length: number): Document.Parsed[] => {
	const options = { schema: "failsafe", version: "1.2", uniqueKeys: false, resolveKnownTags: false } as const;
	const composer = new Composer({ ...options, prettyErrors: false, logLevel: "silent" });
	return [...composer.compose(tokens, true, length)];
};

const DIRECTIVE: Telling = {
	what: message("syntax/directive.what"),
	expected: message("syntax/directive.expected"),
	mend: message("syntax/directive.mend"),
};

const SEVERAL: Telling = {
	what: message("syntax/several-documents.what"),
	expected: message("syntax/several-documents.expected"),
	mend: message("syntax/several-documents.mend"),
};

const EMPTY: Telling = {
	what: message("syntax/empty.what"),
	expected: message("syntax/empty.expected"),
	mend: message("syntax/empty.mend"),
};

const TOO_DEEP: Telling = {
	what: message("syntax/nesting.what", { deepest: DEEPEST }),
	expected: message("syntax/nesting.expected"),
	mend: message("syntax/nesting.mend"),
};

/**
 * Reads YAML 1.2 text. The value is absent where the text is too broken to go on; faults that could be mended are
 * reported and the value goes on as it was meant. A value with errors must never reach a paper.
 *
 * @param fileName as the user named it; it goes into the place of every fault
 */
export const readYaml = (text: string, fileName: string): Checked<YamlRead> => {
	const body = text.replace(/^\ufeff/, "").replace(/\r(?!\n)/g, "\n");
	const at = (range: Range) => ({ file: fileName, path: [], range });
	const stop = (code: Code, range: Range, telling: Telling): Checked<YamlRead> => ({
		diagnostics: [diagnose(code, at(range), telling)],
	});

	const unreadable = textFault(body, fileName);
	if (unreadable !== undefined) return { diagnostics: [unreadable] };
	const { tokens, tooDeep } = parse(body);
	if (tooDeep !== undefined) return stop("syntax/nesting", [tooDeep, tooDeep + 1], TOO_DEEP);
	const hashes = hashTraps(body);
	const documents = compose(tokens, body.length);
	const [document, second] = documents;
	const directive = tokens.find((token) => token.type === "directive");
	if (directive !== undefined) {
		const length = "source" in directive ? directive.source.length : 1;
		return stop("syntax/directive", [directive.offset, directive.offset + length], DIRECTIVE);
	}
	const fault = yamlFault(
		documents.flatMap(({ errors }) => errors),
		body,
	);
	if (document === undefined || (document.contents === null && fault === undefined))
		return { diagnostics: [diagnose("syntax/empty", { file: fileName, path: [] }, EMPTY)] };
	const tree = yamlTree(document.contents, body, fileName, hashes);
	if (fault !== undefined) {
		const hash = tree.diagnostics.find(({ code }) => code === "syntax/hash-in-value");
		if (hash !== undefined) return { diagnostics: [hash] };
		const related = fault.next && [{ at: at(fault.next), label: message("syntax/yaml.read-so-far") }];
		return stop(fault.code, fault.range, { ...fault.telling, ...(related && { related }) });
	}
	const diagnostics: Diagnostic[] = [...tree.diagnostics];
	if (second !== undefined) {
		const [start] = second.range;
		diagnostics.push(diagnose("syntax/several-documents", at([start, start + 3]), SEVERAL));
	}
	return { value: { value: tree.value, positions: tree.positions, text: body }, diagnostics };
};
