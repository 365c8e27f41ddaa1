import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import ICAL from "ical.js";
import { casebound, isThere, root, run, versionOf } from "./run.mjs";

const ending = (outputs, end) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(end)));
const projectRequire = createRequire(join(root, "package.json"));
const versionInstalled = (name) =>
	JSON.parse(readFileSync(new URL(`node_modules/${name}/package.json`, import.meta.url), "utf8")).version;

const calendar = {
	name: "ical.js",
	reads: "the calendar of deadlines (RFC 5545)",
	of: (outputs) => {
		const calendars = ending(outputs, ".ics");
		let events = 0;
		const found = calendars.flatMap((file) => {
			const parsed = new ICAL.Component(ICAL.parse(readFileSync(file, "utf8")));
			const all = parsed.getAllSubcomponents("vevent");
			events += all.length;
			const faults = all.flatMap((event) => {
				const { uid, summary, startDate } = new ICAL.Event(event);
				return [
					...(uid ? [] : ["an event without a UID"]),
					...(summary ? [] : ["an event without a summary"]),
					...(startDate?.isDate ? [] : ["a deadline that is not a whole day"]),
					...(event.getFirstPropertyValue("dtstamp") ? [] : ["an event without DTSTAMP"]),
				];
			});
			return [...(all.length === 0 ? ["no event"] : []), ...faults].map((what) => ({ where: file, what }));
		});
		return { version: versionInstalled("ical.js"), read: `${calendars.length} ICS`, checks: events, found };
	},
};

/** Rows of the CSV as another program reads them: quotes, commas and line ends by RFC 4180. */
const pythonRows = (file) => {
	const program =
		"import csv,json,sys; print(json.dumps(list(csv.reader(open(sys.argv[1], encoding='utf-8-sig', newline='')))))";
	return JSON.parse(run("python3", ["-c", program, file]).stdout);
};

const tables = {
	name: "Python's csv",
	reads: "the tables beside the papers: same rows and columns as the same tables in JSON, no ragged row",
	of: (outputs) => {
		if (!isThere("python3")) return { absent: "no Python on this machine" };
		const files = ending(outputs, ".csv");
		let cells = 0;
		const found = files.flatMap((file) => {
			const rows = pythonRows(file);
			cells += rows.reduce((sum, row) => sum + row.length, 0);
			const widths = new Set(rows.map((row) => row.length));
			if (rows.length < 2) return [{ where: file, what: "a table without a row" }];
			return widths.size > 1 ? [{ where: file, what: `rows of ${[...widths].join(" and ")} cells` }] : [];
		});
		return { version: versionOf("python3"), read: `${files.length} CSV`, checks: cells, found };
	},
};

const READ_WORKBOOK =
	"import json,openpyxl,sys,warnings; warnings.simplefilter('ignore'); book=openpyxl.load_workbook(sys.argv[1]); " +
	"print(json.dumps([[list(row) for row in sheet.iter_rows(values_only=True)] for sheet in book.worksheets], default=str))";

/** Debian's own Python, which its packages belong to. */
const PYTHON = "/usr/bin/python3";

/** What of the tables in JSON is not in the workbook as it was: numbers as numbers, texts as texts. */
const workbookFaults = (file) => {
	const read = run(PYTHON, ["-c", READ_WORKBOOK, file]);
	if (read.status !== 0) return { cells: 0, faults: [read.stderr.trim().split("\n").at(-1)] };
	const [, ...sheets] = JSON.parse(read.stdout);
	const { tables } = JSON.parse(readFileSync(file.replace(/xlsx$/, "tables.json"), "utf8"));
	if (sheets.length !== tables.length)
		return { cells: 0, faults: [`${sheets.length} sheets for ${tables.length} tables`] };
	let cells = 0;
	const faults = tables.flatMap(({ caption, columns, rows }, index) => {
		const [, ...found] = sheets[index];
		return rows.flatMap((row, at) =>
			columns.flatMap(({ id }, column) => {
				cells += 1;
				const asked = row[id] ?? null;
				const there = found[at]?.[column] ?? null;
				const same =
					typeof asked === "number" ? asked === there : String(asked ?? "") === String(there ?? "");
				return same
					? []
					: [`${caption}, row ${at + 1}, ${id}: ${JSON.stringify(there)} for ${JSON.stringify(asked)}`];
			}),
		);
	});
	return { cells, faults };
};

const workbooks = {
	name: "openpyxl",
	reads: "the workbooks: every cell of every table as in the JSON, numbers as numbers",
	of: (outputs) => {
		if (run(PYTHON, ["-c", "import openpyxl"]).status !== 0)
			return { absent: "no python3-openpyxl on this machine" };
		const books = ending(outputs, ".xlsx");
		const judged = books.map((file) => ({ file, ...workbookFaults(file) }));
		return {
			version: run(PYTHON, ["-c", "import openpyxl; print(openpyxl.__version__)"]).stdout.trim(),
			read: `${books.length} XLSX`,
			checks: judged.reduce((sum, { cells }) => sum + cells, 0),
			found: judged.flatMap(({ file, faults }) => faults.map((what) => ({ where: file, what }))),
		};
	},
};

const featuresIn = (file) => {
	const { status, stdout, stderr } = run("ogrinfo", ["-ro", "-al", "-q", file]);
	return { status, stderr, count: stdout.split("\n").filter((line) => line.startsWith("OGRFeature")).length };
};

const maps = {
	name: "GDAL",
	reads: "the maps: GeoJSON and KML open, and hold the same number of features",
	of: (outputs) => {
		if (!isThere("ogrinfo")) return { absent: "no ogrinfo on this machine" };
		const files = ending(outputs, ".geojson");
		let checks = 0;
		const found = files.flatMap((file) => {
			const json = featuresIn(file);
			const kml = featuresIn(file.replace(/geojson$/, "kml"));
			checks += json.count + kml.count;
			return [
				...(json.status !== 0 || json.stderr !== "" ? [`GeoJSON: ${json.stderr}`] : []),
				...(kml.status !== 0 || kml.stderr !== "" ? [`KML: ${kml.stderr}`] : []),
				...(json.count === 0 || json.count !== kml.count
					? [`${json.count} features, ${kml.count} in the KML`]
					: []),
			].map((what) => ({ where: file, what }));
		});
		return { version: versionOf("ogrinfo"), read: `${files.length} GeoJSON and KML`, checks, found };
	},
};

/** The starters against the schema that the tool publishes, by a validator of its own. */
const schema = {
	name: "ajv",
	reads: "the starters against the published JSON Schema",
	of: async () => {
		const { default: Ajv } = await import("ajv/dist/2020.js");
		const { parse } = await import("yaml");
		const told = JSON.parse(casebound(["schema"]).stdout);
		const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(told);
		const starters = ["horizontal", "horizontal-as-built", "vertical-metric"].map(
			(name) => `seeds/starters/${name}.yaml`,
		);
		const found = starters.flatMap((file) =>
			validate(parse(readFileSync(join(root, file), "utf8")))
				? []
				: validate.errors.map(({ instancePath, message }) => ({
						where: file,
						what: `${instancePath} ${message}`,
					})),
		);
		return {
			version: projectRequire("ajv/package.json").version,
			read: "3 YAML",
			checks: starters.length,
			found,
		};
	},
};

export const dataJudges = [calendar, tables, workbooks, maps, schema];
