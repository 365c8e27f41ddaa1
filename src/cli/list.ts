import { Argument, Command } from "commander";
import { JURISDICTION_CODES, loadJurisdictions } from "../catalog/jurisdictions.ts";
import { PAPERS } from "../document/document.ts";
import { CHECKS } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import type { Session } from "./program.ts";
import { openShipped, type ShippedData } from "./shipped.ts";
import { starterNames } from "./starters.ts";
import { terminal } from "./terminal.ts";

const KINDS = [
	"jurisdictions",
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
export const listCommand = (_session: Session): Command =>
	new Command("list")
		.addArgument(new Argument("<what>", "what to list").choices(KINDS))
		.addHelpText("after", "\nExample:\n  casebound list pipe")
		.action((what: Kind) => {
			for (const line of aligned(LISTS[what](openShipped()))) terminal.out(line);
		});

const LISTS: Readonly<Record<Kind, (shipped: ShippedData) => readonly (readonly string[])[]>> = {
	jurisdictions: () =>
		(loadJurisdictions(JURISDICTION_CODES).value ?? []).map(({ code, name, rules }) => {
			const compared = rules.filter((rule) => rule.standing === "compared").length;
			return [code, name, `${rules.length} rules`, `${compared} compared with the official text`];
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
	starters: () => starterNames().map((name) => [name, "fictional"]),
	papers: () => PAPERS.filter((paper) => paper !== "handout" && paper !== "answers").map((paper) => [paper]),
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
