import type { Inline } from "../../document/inline.ts";

const OPEN = "\uE000";
const CLOSE = "\uE001";
const TOKEN = /\uE000(\d+)\uE001/g;
/** Private-use and control characters: never part of a word, and the tokens' own alphabet. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const UNPRINTABLE = /[\uE000-\uF8FF\u0000-\u0008\u000B\u000C\u000E-\u001F]/g;

/**
 * Keeps values away from the Markdown parser: each becomes an opaque token before the template runs, and is put back
 * into the parsed tree afterwards. So an asterisk, a link or a number in an engineer's text stays that text, and a
 * quantity stays a number until the renderer.
 */
export class Vault {
	readonly #values: Inline[] = [];

	/** Replaces every string, number and inline of a template's data by its token; keeps lists, objects and booleans. */
	seal(data: unknown): unknown {
		if (typeof data === "string") {
			const printable = data.replace(UNPRINTABLE, "");
			return printable === "" ? "" : this.#keep({ kind: "text", text: printable });
		}
		if (typeof data === "number") return this.#keep({ kind: "text", text: String(data) });
		if (Array.isArray(data)) return data.map((item) => this.seal(item));
		if (typeof data !== "object" || data === null) return data;
		if (isInline(data)) return this.#keep(data);
		const sealed = Object.create(null) as Record<string, unknown>;
		for (const [name, value] of Object.entries(data)) sealed[name] = this.seal(value);
		return sealed;
	}

	/** Turns text with tokens into inlines. */
	open(text: string): Inline[] {
		const inlines: Inline[] = [];
		let last = 0;
		for (const match of text.matchAll(TOKEN)) {
			if (match.index > last) inlines.push({ kind: "text", text: text.slice(last, match.index) });
			const value = this.#values[Number(match[1])];
			if (value) inlines.push(value);
			last = match.index + match[0].length;
		}
		if (last < text.length) inlines.push({ kind: "text", text: text.slice(last) });
		return inlines;
	}

	#keep(value: Inline): string {
		this.#values.push(value);
		return `${OPEN}${this.#values.length - 1}${CLOSE}`;
	}
}

const INLINE_KINDS: ReadonlySet<string> = new Set([
	"text",
	"strong",
	"emphasis",
	"link",
	"verdict",
	"quantity",
]);
const isInline = (value: object): value is Inline =>
	"kind" in value && typeof value.kind === "string" && INLINE_KINDS.has(value.kind);
