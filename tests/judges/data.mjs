import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import Ajv from "ajv/dist/2020.js";
import ICAL from "ical.js";
import { parse } from "yaml";
import { casebound, root, versionInstalled } from "./run.mjs";

const ending = (outputs, end) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(end)));
const projectRequire = createRequire(join(root, "package.json"));
const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"].map(
	(name) => `seeds/starters/${name}.yaml`,
);

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

/** What the tool publishes a JSON Schema of, and the documents that must follow it. */
const PUBLISHED = [
	{ of: "definition", document: (file) => parse(readFileSync(join(root, file), "utf8")) },
	{ of: "results", document: (file) => JSON.parse(casebound(["results", file]).stdout) },
];

const schemas = {
	name: "ajv",
	reads: "the starters and their results against the published JSON Schemas",
	of: () => {
		const documents = PUBLISHED.flatMap(({ of, document }) => {
			const schema = JSON.parse(casebound(["schema", "--of", of]).stdout);
			const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(schema);
			return STARTERS.map((file) => {
				const faults = validate(document(file)) ? [] : validate.errors;
				return faults.map(({ instancePath, message }) => ({
					where: `${of} of ${file}`,
					what: `${instancePath} ${message}`,
				}));
			});
		});
		return {
			version: projectRequire("ajv/package.json").version,
			read: `${STARTERS.length} YAML, ${STARTERS.length} JSON`,
			checks: documents.length,
			found: documents.flat(),
		};
	},
};

export const dataJudges = [calendar, schemas];
