import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const SRC = fileURLToPath(new URL("../src", import.meta.url));

/** Rooms of the source, each with the rooms it may import from and why the fence stands there. */
const ROOMS: Readonly<Record<string, { readonly may: readonly string[]; readonly because: string }>> = {
	units: { may: [], because: "units are the ground everything stands on" },
	messages: { may: ["units"], because: "words are kept apart from whoever says them" },
	diagnostics: {
		may: ["units", "messages"],
		because: "a fault is told without knowing which stage found it",
	},
	cite: {
		may: ["units", "messages", "diagnostics"],
		because: "origins are paths and sources, whatever the value is of",
	},
	measure: { may: ["units"], because: "text is measured alike for every drawing and renderer" },
	shipped: { may: [], because: "where this package's own files lie is known without knowing what they hold" },
	document: {
		may: ["units", "messages", "diagnostics", "cite"],
		because: "the seam between composing and rendering is types",
	},
	source: {
		may: ["units", "messages", "diagnostics", "cite"],
		because: "text becomes a tree without knowing what the tree means",
	},
	definition: {
		may: ["units", "messages", "diagnostics", "cite", "document", "source"],
		because: "what may be written does not depend on what is made of it",
	},
	catalog: {
		may: ["units", "messages", "diagnostics", "cite", "shipped", "document", "source"],
		because: "shipped data is read like a user's file, and knows no well",
	},
	well: {
		may: ["units", "messages", "diagnostics", "cite", "document", "source", "definition", "catalog"],
		because: "understanding comes before calculating",
	},
	calc: {
		may: ["units", "messages", "diagnostics", "cite", "well", "definition"],
		because: "pure engineering: from a well to numbers, nothing else",
	},
	rules: {
		may: ["units", "messages", "diagnostics", "cite", "document", "definition", "catalog", "well", "calc"],
		because: "checks meet limits; they neither compute the well nor print it",
	},
	compare: {
		may: ["units", "messages", "diagnostics", "cite", "document", "definition", "well", "rules"],
		because: "two states are laid side by side as they were found; nothing is worked anew",
	},
	drawing: {
		may: [
			"units",
			"messages",
			"diagnostics",
			"cite",
			"measure",
			"document",
			"definition",
			"catalog",
			"well",
			"calc",
			"rules",
		],
		because: "drawings are made of results, never of papers",
	},
	paper: {
		may: [
			"units",
			"messages",
			"diagnostics",
			"shipped",
			"cite",
			"measure",
			"document",
			"source",
			"definition",
			"catalog",
			"well",
			"calc",
			"rules",
			"compare",
			"drawing",
		],
		because: "a paper chooses and orders; a renderer prints",
	},
	render: {
		may: ["units", "messages", "diagnostics", "cite", "measure", "document"],
		because: "a renderer sees the document and nothing behind it",
	},
	cli: { may: ["*"], because: "the only place for process, console and files" },
	understand: {
		may: [
			"units",
			"messages",
			"diagnostics",
			"cite",
			"measure",
			"document",
			"source",
			"definition",
			"catalog",
			"well",
			"calc",
			"rules",
			"paper",
		],
		because: "the first half of the tour, which is run without the second: of papers it knows a type",
	},
	"understand-pad": {
		may: ["diagnostics", "messages", "units", "source", "definition", "well", "calc", "understand"],
		because: "wells of one pad are understood like any other, and then beside each other",
	},
	pipeline: { may: ["*"], because: "the tour calls every stage" },
	build: {
		may: ["diagnostics", "document", "shipped", "catalog", "paper"],
		because: "shipped data is made of what the tool's own readers read",
	},
	main: { may: ["cli"], because: "arguments in, exit code out" },
};

/** Libraries and Node modules, each with the rooms (or folders) that may import it. Anything else is a breach. */
const LIBRARIES: Readonly<Record<string, { readonly rooms: readonly string[]; readonly because: string }>> = {
	yaml: {
		rooms: ["source"],
		because: "one reader of YAML, so that every file gives the same located faults",
	},
	zod: { rooms: ["definition", "catalog"], because: "shapes are declared where things are read" },
	react: { rooms: ["render/pdf"], because: "only the PDF renderer knows React" },
	"@react-pdf/primitives": {
		rooms: ["render/pdf"],
		because: "only the PDF renderer knows the elements that papers are made of",
	},
	"@react-pdf/renderer": {
		rooms: ["render/pdf/reference"],
		because: "the reference engine is loaded only where it is asked for",
	},
	pdfkit: { rooms: ["render/pdf"], because: "only the PDF renderer knows its engine" },
	handlebars: { rooms: ["paper/words"], because: "words are filled in one place" },
	"mdast-util-from-markdown": { rooms: ["paper/words"], because: "words are parsed in one place" },
	mdast: { rooms: ["paper/words"], because: "words are parsed in one place" },
	fontkit: { rooms: ["measure"], because: "one opener of typefaces" },
	"d3-shape": { rooms: ["drawing"], because: "curves belong to drawings" },
	"d3-scale": { rooms: ["drawing"], because: "axes belong to drawings" },
	"simplify-js": {
		rooms: ["drawing"],
		because: "only drawings have lines with more points than can be seen",
	},
	commander: { rooms: ["cli"], because: "arguments are read at the door" },
	"geographiclib-geodesic": {
		rooms: ["calc/site"],
		because: "geodesics are a solved problem; the rest of calc takes no library",
	},
	"@resvg/resvg-js": { rooms: ["render/png"], because: "one maker of pictures" },
	"write-excel-file": { rooms: ["render/xlsx"], because: "one writer of workbooks" },
	fflate: {
		rooms: ["render/xlsx", "source/foreign"],
		because: "a workbook is an archive, which is made without the time of its making, and read",
	},
	"@bomb.sh/tab": { rooms: ["cli"], because: "shells are completed where arguments are read" },
	proj4: {
		rooms: ["definition"],
		because: "projections are a solved problem; a place on a grid is a place as it is read",
	},
	"fast-xml-parser": { rooms: ["source/foreign"], because: "one reader of other programs' XML" },
	"@placemarkio/tokml": { rooms: ["render/map"], because: "one writer of maps" },
	"csv-stringify": { rooms: ["render/tables"], because: "one writer of tables" },
	"ical-generator": { rooms: ["render/calendar"], because: "one writer of calendars" },
	"intl-messageformat": {
		rooms: ["messages"],
		because: "plurals and choices of a language are a solved problem",
	},
	"fastest-levenshtein": {
		rooms: ["diagnostics"],
		because: "near names are suggested where faults are told",
	},
	"node:fs": {
		rooms: ["cli", "shipped", "build", "catalog", "paper/words", "measure"],
		because: "user files at the door, shipped files through one small door a room",
	},
	"node:fs/promises": { rooms: ["cli"], because: "files are touched at the door" },
	"node:child_process": { rooms: ["cli"], because: "git is asked for an earlier state at the door" },
	"node:path": { rooms: ["cli"], because: "paths belong with files" },
	"node:url": {
		rooms: ["cli", "shipped", "measure"],
		because: "shipped files are found beside the code",
	},
	"node:module": {
		rooms: ["main", "shipped", "measure", "cli"],
		because: "the shipped typeface and built programs are found by name; compiled code is kept",
	},
	"node:crypto": {
		rooms: ["understand", "cli", "render/pdf", "render/html"],
		because:
			"the digest is over everything read, known only to the tour; temporary names belong with files; a page states the digest of its one script",
	},
	"node:zlib": { rooms: ["render/png"], because: "a picture's chunks carry a checksum" },
	"node:os": {
		rooms: ["cli"],
		because: "how many threads there are, and whose file it is, is the door's to know",
	},
	tinypool: { rooms: ["cli"], because: "threads are started at the door" },
	"node:process": { rooms: ["cli", "main"], because: "the process belongs to the door" },
};

interface Module {
	readonly path: string;
	readonly room: string;
	readonly imports: readonly string[];
}

const IMPORT =
	/(?:^|\n)\s*(?:import|export)\b[^;'"`]*?from\s*["']([^"']+)["']|\bimport\s*\(\s*["']([^"']+)["']\s*\)|(?:^|\n)\s*import\s*["']([^"']+)["']/gu;

/** Declarations for libraries that ship none are no modules. */
const files = readdirSync(SRC, { recursive: true, encoding: "utf8" }).filter(
	(file) => /\.tsx?$/u.test(file) && !file.endsWith(".d.ts"),
);

/** Reached from tests or the build alone, each with its reason. */
const NOT_FROM_MAIN: Readonly<Record<string, string>> = {
	"render/text/render-text.ts": "papers as text, for goldens that can be read and diffed",
	"build/make-shipped.ts": "the build runs it, and ships what it gives",
	"cli/paper-worker.ts": "what a thread of the pool runs; it is built as a file of its own",
	"shipped/built-file.ts": "reads what the build made, for the two modules below",
	"catalog/shipped-as-built.ts": "the build puts it in the place of catalog/shipped.ts",
	"paper/words/word-files-as-built.ts": "the build puts it in the place of paper/words/word-files.ts",
};
const modules: Module[] = files.map((file) => {
	const path = file.split(sep).join("/");
	const text = readFileSync(join(SRC, file), "utf8").replaceAll(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/[^\n]*/gu, "");
	const imports = [...text.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? match[3] ?? "");
	return { path, room: (path.split("/")[0] ?? "").replace(/\.ts$/u, ""), imports };
});

const target = (from: Module, specifier: string): string =>
	relative(SRC, join(SRC, dirname(from.path), specifier))
		.split(sep)
		.join("/");

const packageOf = (specifier: string): string =>
	specifier.startsWith("@")
		? specifier.split("/").slice(0, 2).join("/")
		: specifier.startsWith("node:")
			? specifier
			: (specifier.split("/")[0] ?? "");

describe("fence", () => {
	it("saw every module, and every room of the table exists", () => {
		expect(modules.length).toBe(files.length);
		expect(modules.length).toBeGreaterThan(150);
		const seen = new Set(modules.map((module) => module.room));
		expect([...seen].sort()).toEqual(Object.keys(ROOMS).sort());
		expect(modules.reduce((sum, module) => sum + module.imports.length, 0)).toBeGreaterThan(modules.length);
	});

	it("imports run downhill only", () => {
		const breaches = modules.flatMap((module) =>
			module.imports.flatMap((specifier) => {
				if (!specifier.startsWith(".")) return [];
				const room = (target(module, specifier).split("/")[0] ?? "").replace(/\.ts$/u, "");
				const fence = ROOMS[module.room];
				const allowed =
					room === module.room || fence?.may.includes("*") === true || fence?.may.includes(room) === true;
				return allowed
					? []
					: [`${module.path} imports ${target(module, specifier)}: ${fence?.because ?? "no such room"}`];
			}),
		);
		expect(breaches).toEqual([]);
	});

	it("each library stays in its room", () => {
		const breaches = modules.flatMap((module) =>
			module.imports.flatMap((specifier) => {
				if (specifier.startsWith(".") || specifier.startsWith("#")) return [];
				const library = LIBRARIES[packageOf(specifier)];
				const allowed =
					library?.rooms.some(
						(room) => module.path === `${room}.ts` || module.path.startsWith(`${room}/`),
					) === true;
				return allowed
					? []
					: [
							`${module.path} imports ${specifier}: ${library?.because ?? "a library that the table does not know"}`,
						];
			}),
		);
		expect(breaches).toEqual([]);
	});

	it("every module is reached from main.ts", () => {
		const byPath = new Map(modules.map((module) => [module.path, module]));
		const reached = new Set<string>();
		const visit = (path: string): void => {
			const module = byPath.get(path);
			if (module === undefined || reached.has(path)) return;
			reached.add(path);
			for (const specifier of module.imports) if (specifier.startsWith(".")) visit(target(module, specifier));
		};
		visit("main.ts");
		expect(
			modules.map((module) => module.path).filter((path) => !reached.has(path) && !(path in NOT_FROM_MAIN)),
		).toEqual([]);
		for (const path of Object.keys(NOT_FROM_MAIN))
			expect(byPath.has(path) && !reached.has(path), path).toBe(true);
	});

	it("calc has no clock and no randomness", () => {
		const breaches = modules
			.filter((module) => ["calc", "rules", "well", "drawing", "paper"].includes(module.room))
			.filter((module) =>
				/\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\./u.test(
					readFileSync(join(SRC, module.path), "utf8"),
				),
			)
			.map((module) => module.path);
		expect(breaches).toEqual([]);
	});
});
