import { Argument, Command, Option } from "commander";
import { JURISDICTION_CODES, loadJurisdictions } from "../catalog/jurisdictions.ts";
import type { Jurisdiction } from "../catalog/limits/limit.ts";
import { LANGUAGES, type Language, PAPERS, type Paper } from "../document/document.ts";
import { EXPLAINED_CHECKS, explainedIn } from "../messages/explained.ts";
import { type Message, message } from "../messages/message.ts";
import { type Reader, tellPhrase } from "../messages/print.ts";
import { CHECKS } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import { comparisonSheet, limitsTable } from "./limits-list.ts";
import type { Session } from "./program.ts";
import { readDefinition, rulesOption } from "./read-well.ts";
import { openShipped, readRulesFiles, type ShippedData } from "./shipped.ts";
import { starterKind, starterNames } from "./starters.ts";
import { terminal } from "./terminal.ts";

export const KINDS = [
	"jurisdictions",
	"limits",
	"checks",
	"pipe",
	"grades",
	"cements",
	"sources",
	"starters",
	"papers",
	"jobs",
] as const;
type Kind = (typeof KINDS)[number];

/** `casebound list`: what ships with the tool, a line each. */
export const listCommand = (session: Session): Command =>
	new Command("list")
		.addArgument(new Argument("<what>", "what to list").choices(KINDS))
		.option(
			"--for <file>",
			"of limits: the sheet a person fills while comparing those that apply to this well",
		)
		.addOption(new Option("--lang <language>", "en or es").choices(LANGUAGES).default("en"))
		.addOption(rulesOption())
		.addHelpText("after", "\nExamples:\n  casebound list pipe\n  casebound list limits --for my-well.yaml")
		.action((what: Kind, options: ListOptions) => {
			const reader: Reader = { language: options.lang, units: "field" };
			if (what !== "limits" && (options.for !== undefined || options.rules.length > 0)) {
				terminal.err(`casebound: ${tellPhrase(message("list/belongs-to-limits"), reader)}`);
				return session.end(EXIT.usage);
			}
			if (options.for === undefined) {
				const own = readRulesFiles(options.rules).map(({ jurisdiction }) => jurisdiction);
				for (const line of listed(what, { shipped: openShipped(), own, reader })) terminal.tell(line);
				return;
			}
			const { findings, units } = readDefinition(
				options.for,
				options.rules,
				openShipped(),
				session,
				options.lang,
			);
			const sheet = findings === undefined ? [] : comparisonSheet(findings, { ...reader, units });
			for (const line of sheet) terminal.out(line);
		});

interface ListOptions {
	readonly for?: string;
	readonly rules: readonly string[];
	readonly lang: Language;
}

/** What a list is made of: what ships, a company's own rules, and who reads. */
interface ListOf {
	readonly shipped: ShippedData;
	readonly own: readonly Jurisdiction[];
	readonly reader: Reader;
}

/** The lines of a list, their columns below each other. */
export const listed = (what: Kind, of: ListOf): readonly string[] =>
	aligned(
		LISTS[what](of).map((row) =>
			row.map((cell) => (typeof cell === "string" ? cell : tellPhrase(cell, of.reader))),
		),
	);

const PAPERS_ARE: Readonly<Record<Paper, Message>> = {
	regulator: message("list/paper-regulator"),
	"regulator-appendix": message("list/paper-regulator-appendix"),
	transmittal: message("list/paper-transmittal"),
	landowner: message("list/paper-landowner"),
	handout: message("list/paper-handout"),
	answers: message("list/paper-answers"),
	crew: message("list/paper-crew"),
	slides: message("list/paper-slides"),
	notes: message("list/paper-notes"),
};

const shippedSets = () => loadJurisdictions(JURISDICTION_CODES).value ?? [];

type Row = readonly (string | Message)[];

const LISTS: Readonly<Record<Kind, (of: ListOf) => readonly Row[]>> = {
	jurisdictions: () =>
		shippedSets().map(({ code, name, rules }) => {
			const copies = rules.filter(({ publicCopy }) => publicCopy !== undefined).length;
			return [
				code,
				name,
				message("list/rules", { count: rules.length }),
				message("list/compared-with-copy", { count: copies }),
			];
		}),
	limits: ({ own, reader }) => limitsTable([...shippedSets(), ...own], reader),
	checks: ({ reader }) =>
		CHECKS.map((check) => [check.id, explainedIn(check, EXPLAINED_CHECKS[check.id], reader).title]),
	pipe: ({ shipped: { catalog } }) =>
		catalog.casing.map((row) => [
			quantityString({ ...row.outsideDiameter, style: { pipeSize: true } }, "field"),
			`${row.nominalWeight.value.toFixed(2)} lb/ft`,
			message("list/wall", { wall: `${row.wall.value.toFixed(3)} in` }),
			message("list/drift", { drift: `${row.drift.value.toFixed(3)} in` }),
			row.grades.join(" "),
		]),
	grades: ({ shipped: { catalog } }) =>
		catalog.grades.map((row) => [
			row.id,
			message("list/yield", {
				least: `${row.minimumYield.value}`,
				greatest: `${row.maximumYield.value} psi`,
			}),
			message("list/tensile", { least: `${row.minimumTensile.value} psi` }),
		]),
	cements: ({ shipped: { catalog } }) =>
		catalog.cementClasses.map((row) => [
			row.id,
			`${row.water.value} gal/sk`,
			`${row.density.value} lb/gal`,
			`${row.yield.value} ft³/sk`,
		]),
	sources: ({ shipped: { catalog } }) =>
		Object.values(catalog.sources).map((source) => [
			source.key,
			[source.authors ?? source.publisher, source.title, source.year]
				.filter((part) => part !== undefined)
				.join(", "),
		]),
	starters: () => starterNames().map((name) => [name, starterKind(name)]),
	papers: () => [
		...PAPERS.map((paper) => [paper, PAPERS_ARE[paper]]),
		["changes", message("list/paper-changes")],
	],
	jobs: ({ shipped: { catalog } }) =>
		catalog.jobs.map((job) => [
			job.id,
			job.on === "string" ? message("list/job-of-string") : message("list/job-of-well"),
		]),
};

/** Columns padded to the widest, the last one left as it is. */
const aligned = (rows: readonly (readonly string[])[]): string[] => {
	const widths: number[] = [];
	for (const row of rows)
		row.forEach((text, i) => {
			widths[i] = Math.max(widths[i] ?? 0, text.length);
		});
	return rows.map((row) =>
		row.map((text, i) => (i === row.length - 1 ? text : text.padEnd(widths[i] ?? 0))).join("  "),
	);
};
