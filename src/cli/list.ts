import { Argument, Command } from "commander";
import { JURISDICTION_CODES, loadJurisdictions } from "../catalog/jurisdictions.ts";
import { PAPERS, type Paper } from "../document/document.ts";
import { CHECKS } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import { comparisonSheet, limitsTable } from "./limits-list.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped, readRulesFiles, type ShippedData } from "./shipped.ts";
import { starterKind, starterNames } from "./starters.ts";
import { terminal } from "./terminal.ts";

const KINDS = [
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
		.addOption(rulesOption())
		.addHelpText("after", "\nExamples:\n  casebound list pipe\n  casebound list limits --for my-well.yaml")
		.action((what: Kind, options: { readonly for?: string; readonly rules: readonly string[] }) => {
			if (what !== "limits" && (options.for !== undefined || options.rules.length > 0)) {
				terminal.err(`casebound: --for and --rules belong to "list limits"`);
				return session.end(EXIT.usage);
			}
			if (options.for === undefined) {
				const shipped = openShipped();
				const own = readRulesFiles(options.rules).map(({ jurisdiction }) => jurisdiction);
				const lines = what === "limits" ? limitsTable([...shippedSets(), ...own]) : LISTS[what](shipped);
				for (const line of aligned(lines)) terminal.out(line);
				return;
			}
			const findings = readWell(options.for, options.rules, openShipped(), session);
			for (const line of findings === undefined ? [] : comparisonSheet(findings)) terminal.out(line);
		});

const PAPERS_ARE: Readonly<Record<Paper, string>> = {
	regulator: "attachment to the agency's own forms",
	"regulator-appendix": "what the attachment is proved by; bound with it",
	transmittal: "one page on top of what is sent to the agency",
	landowner: "packet for the neighbors; --neighbor makes one neighbor's own edition",
	handout: "one sheet for a meeting or a notice board",
	answers: "the presenter's sheet for a meeting",
	crew: "pre-job safety sheet; --job says of which job",
	slides: "slides for a public meeting, 16:9, a claim and a picture each",
	notes: "the speaker's: of each slide the exact numbers, where they come from, and the likely question",
};

const shippedSets = () => loadJurisdictions(JURISDICTION_CODES).value ?? [];

const LISTS: Readonly<
	Record<Exclude<Kind, "limits">, (shipped: ShippedData) => readonly (readonly string[])[]>
> = {
	jurisdictions: () =>
		shippedSets().map(({ code, name, rules }) => {
			const copies = rules.filter(({ publicCopy }) => publicCopy !== undefined).length;
			return [code, name, `${rules.length} rules`, `${copies} compared with a public copy`];
		}),
	checks: () => CHECKS.map(({ id, title }) => [id, title]),
	pipe: ({ catalog }) =>
		catalog.casing.map((row) => [
			quantityString({ ...row.outsideDiameter, style: { pipeSize: true } }, "field"),
			`${row.nominalWeight.value.toFixed(2)} lb/ft`,
			`wall ${row.wall.value.toFixed(3)} in`,
			`drift ${row.drift.value.toFixed(3)} in`,
			row.grades.join(" "),
		]),
	grades: ({ catalog }) =>
		catalog.grades.map((row) => [
			row.id,
			`yield ${row.minimumYield.value} to ${row.maximumYield.value} psi`,
			`tensile ${row.minimumTensile.value} psi`,
		]),
	cements: ({ catalog }) =>
		catalog.cementClasses.map((row) => [
			row.id,
			`${row.water.value} gal/sk`,
			`${row.density.value} lb/gal`,
			`${row.yield.value} ft³/sk`,
		]),
	sources: ({ catalog }) =>
		Object.values(catalog.sources).map((source) => [
			source.key,
			[source.authors ?? source.publisher, source.title, source.year]
				.filter((part) => part !== undefined)
				.join(", "),
		]),
	starters: () => starterNames().map((name) => [name, starterKind(name)]),
	papers: () => [
		...PAPERS.map((paper) => [paper, PAPERS_ARE[paper]]),
		["changes", "what a revision changed, for an amendment; made by compare --out and bind --since"],
	],
	jobs: ({ catalog }) =>
		catalog.jobs.map((job) => [job.id, job.on === "string" ? "once a casing string" : "once for the well"]),
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
