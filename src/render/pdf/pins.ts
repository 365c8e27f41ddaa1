import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import layoutDocument from "@react-pdf/layout";
import renderNodes from "@react-pdf/render";
import { Font, pdf } from "@react-pdf/renderer";
import type PDFDocument from "pdfkit";
import type { ReactElement } from "react";
import { FACES, FAMILY, NO_LIGATURES } from "../../measure/faces.ts";
import type { LayoutNode, PageNode, RunFont } from "./layout-node.ts";
import { piecesOf } from "./pieces.ts";

/**
 * The only file that touches the insides of the PDF libraries. What it relies on is no promise of theirs, so the exact
 * versions it was written against are asserted, and the golden tests guard the rest.
 */
const PINNED: Readonly<Record<string, string>> = {
	"@react-pdf/renderer": "4.9.0",
	"@react-pdf/layout": "5.2.0",
	"@react-pdf/render": "4.7.0",
	pdfkit: "0.20.1",
	react: "19.3.1",
};

const require = createRequire(import.meta.url);

const installedVersion = (name: string): string => {
	const places = require.resolve.paths(name) ?? [];
	const manifest = places.map((place) => join(place, name, "package.json")).find((path) => existsSync(path));
	if (manifest === undefined) return "missing";
	const { version }: { version?: unknown } = JSON.parse(readFileSync(manifest, "utf8"));
	return String(version);
};

/** @throws Error naming the package whose version is not the pinned one */
export const assertPins = (): void => {
	for (const [name, wanted] of Object.entries(PINNED)) {
		const found = installedVersion(name);
		if (found !== wanted)
			throw new Error(`${name} is ${found}; the PDF renderer is written for exactly ${wanted}`);
	}
};

interface OpenFont extends RunFont {
	readonly characterSet: readonly number[];
	glyphForCodePoint(codePoint: number): unknown;
	layout(text: string, features?: unknown, ...rest: readonly unknown[]): unknown;
}
interface FontKey {
	readonly fontFamily: string;
	readonly fontWeight: number;
	readonly fontStyle: "normal" | "italic";
}
interface FontStore {
	load(key: FontKey): Promise<void>;
	getFont(key: FontKey): { readonly data?: OpenFont } | undefined;
}
const store = Font as unknown as FontStore;

/**
 * Shapes each distinct text once per font: the engine reads the shaped runs and never writes them. Without ligatures,
 * which the engine counts as one character when it cuts a text into lines, and so parts the word that ends the line.
 */
const rememberShaping = (font: OpenFont): void => {
	const shape = font.layout.bind(font);
	const shaped = new Map<string, unknown>();
	font.layout = (text, _features, ...rest) => {
		const key = `${text}\u0000${JSON.stringify(rest)}`;
		const known = shaped.get(key);
		if (known !== undefined) return known;
		if (shaped.size >= 20_000) shaped.clear();
		const run = shape(text, NO_LIGATURES, ...rest);
		shaped.set(key, run);
		return run;
	};
};

/**
 * Makes every glyph known by its character before any paper is set. The font keeps the first form in which a glyph is
 * asked for; a period asked for as a part of a colon would have no character, and could not be copied or read aloud
 * from a paper set later in the same run.
 */
const nameGlyphs = (font: OpenFont): void => {
	for (const codePoint of font.characterSet) font.glyphForCodePoint(codePoint);
};

const keyOf = (weight: number, italic: boolean): FontKey => ({
	fontFamily: FAMILY,
	fontWeight: weight,
	fontStyle: italic ? "italic" : "normal",
});

let prepared: Promise<void> | undefined;

/** Registers the shipped family, once; asserts the pins. */
export const prepareEngine = (): Promise<void> => {
	prepared ??= (async () => {
		assertPins();
		Font.register({
			family: FAMILY,
			fonts: FACES.map((face) => ({
				src: face.path,
				fontWeight: face.css,
				fontStyle: face.italic ? ("italic" as const) : ("normal" as const),
			})),
		});
		Font.registerHyphenationCallback(piecesOf);
		for (const face of FACES) {
			const key = keyOf(face.css, face.italic);
			await store.load(key);
			const font = store.getFont(key)?.data;
			if (font === undefined) throw new Error(`The face ${face.path} could not be opened`);
			nameGlyphs(font);
			rememberShaping(font);
		}
	})();
	return prepared;
};

/** The opened font that running matter is set in. */
export const runningFont = (weight: 400 | 600): RunFont => {
	const font = store.getFont(keyOf(weight, false))?.data;
	if (font === undefined) throw new Error("The shipped family is not registered");
	return font;
};

interface Instance {
	readonly container: { readonly document: unknown };
}
const lay = layoutDocument as unknown as (root: unknown, fonts: unknown) => Promise<{ children: PageNode[] }>;
const paint = renderNodes as unknown as (context: PDFDocument, root: { children: LayoutNode[] }) => void;

/** Lays a document element out into pages. */
export const layoutPages = async (element: ReactElement): Promise<readonly PageNode[]> => {
	const instance = pdf(element as Parameters<typeof pdf>[0]) as unknown as Instance;
	const tree = await lay(instance.container.document, Font);
	if (tree.children.length === 0) throw new Error("The layout gave no pages");
	return tree.children;
};

/** Paints one node, with whatever is inside it, onto the current page. The page's `end` must be put off. */
export const paintNode = (context: PDFDocument, node: LayoutNode): void =>
	paint(context, { children: [node] });

/** What pdfkit keeps to itself and this tool must reach. */
interface Insides {
	end: () => unknown;
	_id: Uint8Array;
	_addInfo: () => void;
	info: Record<string, unknown>;
	font: (source: unknown, family?: unknown, size?: unknown) => unknown;
	fontSize: (size: number) => unknown;
	_font: unknown;
	_fontSource: unknown;
}

/** Puts off the end that each call of `paintNode` would make of the document; answers with the real end. */
export const putOffEnd = (context: PDFDocument): (() => void) => {
	const insides = context as unknown as Insides;
	const end = insides.end;
	insides.end = () => context;
	return () => end.call(context);
};

/** The file identifier: 16 bytes. pdfkit would take it from the Info dictionary alone. */
export const setFileId = (context: PDFDocument, id: Uint8Array): void => {
	(context as unknown as Insides)._id = id;
};

/** pdfkit writes Info into XMP as it stands; an ampersand in a title would make the XML ill-formed. */
export const escapeMetadata = (context: PDFDocument, escaped: (text: string) => string): void => {
	const insides = context as unknown as Insides;
	const addInfo = insides._addInfo;
	insides._addInfo = () => {
		const plain = insides.info;
		insides.info = Object.fromEntries(
			Object.entries(plain).map(([key, value]) => [key, typeof value === "string" ? escaped(value) : value]),
		);
		addInfo.call(context);
		insides.info = plain;
	};
};

/** pdfkit opens and compares a font anew at each run of text; remember the answer for each opened font. */
export const rememberFonts = (context: PDFDocument): void => {
	const insides = context as unknown as Insides;
	const choose = insides.font.bind(context);
	const chosen = new Map<unknown, unknown>();
	insides.font = (source, family, size) => {
		const points = typeof family === "number" ? family : size;
		const known = typeof source === "object" ? chosen.get(source) : undefined;
		if (known === undefined) {
			choose(source, family, size);
			if (typeof source === "object") chosen.set(source, insides._font);
			return context;
		}
		insides._font = known;
		insides._fontSource = source;
		if (typeof points === "number") insides.fontSize(points);
		return context;
	};
};

/**
 * Runs `work` with what the libraries print to the console caught instead: they report lost content nowhere else.
 */
export const withWarnings = async <T>(
	work: () => Promise<T>,
): Promise<{ value: T; warnings: readonly string[] }> => {
	const sink = globalThis.console;
	const kept = { warn: sink.warn, error: sink.error, log: sink.log };
	const warnings: string[] = [];
	const keep = (...words: readonly unknown[]): void => {
		warnings.push(words.map(String).join(" "));
	};
	Object.assign(sink, { warn: keep, error: keep, log: keep });
	try {
		return { value: await work(), warnings };
	} finally {
		Object.assign(sink, kept);
	}
};
