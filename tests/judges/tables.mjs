import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { isThere, outFolder, PYTHON, run, versionOf } from "./run.mjs";

const ending = (outputs, end) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(end)));

/** The tables of a paper as its JSON holds them, which every other form is laid beside. */
const tablesOf = (json) => JSON.parse(readFileSync(json, "utf8")).tables;

/** Cells of a table in the order of its columns; an empty one is the empty text. */
const cellsOf = ({ columns, rows }) => rows.map((row) => columns.map(({ id }) => row[id] ?? ""));

/** A number survives as a number to the fifteen digits that spreadsheets hold, a text as the same text. */
const same = (asked, there) => {
	if (typeof asked === "number")
		return typeof there === "number" && Math.abs(asked - there) <= 1e-14 * Math.abs(asked);
	return asked === (there ?? "");
};

/** CSV has no kinds: a text that spells a number or a date may come back as that number, that date. */
const sameInCsv = (asked, there) =>
	same(asked, there) ||
	(typeof asked === "string" &&
		(typeof there === "number" ? Number(asked.replaceAll(",", "")) === there : there === `date: ${asked}`));

/** What of a table's rows another program did not read as they were; its first row is the heads. */
const differing = ({ caption, rows, columns }, [, ...read], alike) => {
	const asked = cellsOf({ rows, columns });
	if (asked.length !== read.length) return [`${caption}: ${read.length} rows for ${asked.length}`];
	return asked.flatMap((row, at) =>
		row.flatMap((cell, column) =>
			alike(cell, read[at][column])
				? []
				: [
						`${caption}, row ${at + 1}, ${columns[column].id}: ` +
							`${JSON.stringify(read[at][column])} for ${JSON.stringify(cell)}`,
					],
		),
	);
};

const count = (tables) => tables.reduce((sum, { rows, columns }) => sum + rows.length * columns.length, 0);

/** The papers' tables as another program read them, beside the same tables in JSON. */
const compared = (where, tables, read, alike = same) => {
	if (tables.length !== read.length)
		return [{ where, what: `${read.length} tables for ${tables.length} in the JSON` }];
	return tables.flatMap((table, at) => differing(table, read[at], alike).map((what) => ({ where, what })));
};

const foldersOf = (outputs) =>
	ending(outputs, ".tables.json").map((json) => ({
		json,
		folder: json.replace(/\.json$/, ""),
		workbook: json.replace(/tables\.json$/, "xlsx"),
	}));

const csvIn = (folder) =>
	readdirSync(folder)
		.filter((name) => name.endsWith(".csv"))
		.sort()
		.map((name) => join(folder, name));

/** Rows of several CSV files as Python reads them. */
const pythonRows = (files) => {
	const program = [
		"import csv,json,sys",
		"read = lambda name: list(csv.reader(open(name, encoding='utf-8-sig', newline='')))",
		"print(json.dumps([read(name) for name in json.load(sys.stdin)]))",
	].join("\n");
	const { status, stdout, stderr } = run(PYTHON, ["-c", program], { input: JSON.stringify(files) });
	if (status !== 0) throw new Error(`Python's csv: ${stderr}`);
	return JSON.parse(stdout);
};

/** A number as the CSV spells it, read back by the table's own kinds. */
const numbered = (table, [heads, ...rows]) => {
	const asked = cellsOf(table);
	return [
		heads,
		...rows.map((row, at) =>
			row.map((cell, column) => (typeof asked[at]?.[column] === "number" ? Number(cell) : cell)),
		),
	];
};

const csv = {
	name: "Python's csv",
	reads: "the tables beside the papers: every cell as in the JSON (RFC 4180)",
	of: (outputs) => {
		if (!isThere(PYTHON)) return { absent: "no Python on this machine" };
		const papers = foldersOf(outputs);
		let files = 0;
		let checks = 0;
		const found = papers.flatMap(({ json, folder }) => {
			const tables = tablesOf(json);
			const names = csvIn(folder);
			files += names.length;
			checks += count(tables);
			const read = pythonRows(names).map((rows, at) => (tables[at] ? numbered(tables[at], rows) : rows));
			return compared(folder, tables, read);
		});
		return { version: versionOf(PYTHON), read: `${files} CSV`, checks, found };
	},
};

const READ_WORKBOOK =
	"import json,openpyxl,sys,warnings; warnings.simplefilter('ignore'); book=openpyxl.load_workbook(sys.argv[1]); " +
	"print(json.dumps([[list(row) for row in sheet.iter_rows(values_only=True)] for sheet in book.worksheets], default=str))";

const workbooks = {
	name: "openpyxl",
	reads: "the workbooks: every cell of every table as in the JSON, numbers as numbers",
	of: (outputs) => {
		if (run(PYTHON, ["-c", "import openpyxl"]).status !== 0)
			return { absent: "no python3-openpyxl on this machine" };
		const papers = foldersOf(outputs);
		let checks = 0;
		const found = papers.flatMap(({ json, workbook }) => {
			const read = run(PYTHON, ["-c", READ_WORKBOOK, workbook]);
			if (read.status !== 0) return [{ where: workbook, what: read.stderr.trim().split("\n").at(-1) }];
			const [, ...sheets] = JSON.parse(read.stdout);
			const tables = tablesOf(json);
			checks += count(tables);
			return compared(workbook, tables, sheets);
		});
		return {
			version: run(PYTHON, ["-c", "import openpyxl; print(openpyxl.__version__)"]).stdout.trim(),
			read: `${papers.length} XLSX`,
			checks,
			found,
		};
	},
};

/** Fields of LibreOffice's CSV filter: comma, quotation mark, UTF-8, from line 1; plain numbers are numbers, everything else is text. */
const CSV_FILTER = "CSV:44,34,76,1,,1033,false,false";

/** Files that one start of LibreOffice is given; of more than a few hundred it leaves some out without a word. */
const AT_ONCE = 100;

/** Opens files in LibreOffice, saves them as flat OpenDocument, and gives the sheets of each. */
const opened = (files, to, options) => {
	mkdirSync(to, { recursive: true });
	const profile = pathToFileURL(join(outFolder, "libreoffice")).href;
	for (let at = 0; at < files.length; at += AT_ONCE) {
		const { status, stderr } = run("soffice", [
			...[`-env:UserInstallation=${profile}`, "--headless", ...options],
			...["--convert-to", "fods", "--outdir", to, ...files.slice(at, at + AT_ONCE)],
		]);
		if (status !== 0) throw new Error(`LibreOffice: ${stderr}`);
	}
	const saved = files.map((file) => join(to, basename(file).replace(/\.\w+$/, ".fods")));
	const { status, stdout, stderr } = run(PYTHON, ["tests/judges/python/sheets.py"], {
		input: JSON.stringify(saved),
	});
	if (status !== 0) throw new Error(`what LibreOffice saved: ${stderr}`);
	return JSON.parse(stdout);
};

const spreadsheet = {
	name: "LibreOffice",
	reads: "the workbooks and the CSV, opened and saved again: every cell as in the JSON, numbers as numbers",
	of: (outputs) => {
		if (!isThere("soffice")) return { absent: "no LibreOffice on this machine" };
		const folder = join(outFolder, "saved");
		rmSync(folder, { recursive: true, force: true });
		mkdirSync(join(folder, "asked"), { recursive: true });
		// Papers of several editions have one name; a number before it keeps them apart, and starting the program seldom saves minutes.
		const marked = (file, mark) => {
			const copy = join(folder, "asked", `${mark}-${basename(file)}`);
			copyFileSync(file, copy);
			return copy;
		};
		const papers = foldersOf(outputs);
		const books = opened(
			papers.map(({ workbook }, at) => marked(workbook, at)),
			join(folder, "books"),
			[],
		);
		const singles = papers.map(({ folder: tables }, at) => csvIn(tables).map((file) => marked(file, at)));
		const read = opened(singles.flat(), join(folder, "singles"), [`--infilter=${CSV_FILTER}`]);
		let checks = 0;
		const found = papers.flatMap(({ json, folder: tables, workbook }, at) => {
			const asked = tablesOf(json);
			checks += 2 * count(asked);
			// The first sheet is about the paper.
			const [, ...sheets] = books[at];
			const own = read.splice(0, singles[at].length).map(([sheet]) => sheet);
			return [...compared(workbook, asked, sheets), ...compared(tables, asked, own, sameInCsv)];
		});
		return {
			version: versionOf("soffice"),
			read: `${papers.length} XLSX, ${singles.flat().length} CSV`,
			checks,
			found,
		};
	},
};

export const tableJudges = [csv, workbooks, spreadsheet];
