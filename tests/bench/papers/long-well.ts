import { readFileSync } from "node:fs";
import { loadCatalog } from "../../../src/catalog/load-catalog.ts";
import type { Findings } from "../../../src/paper/context.ts";
import { understand } from "../../../src/pipeline.ts";

/** The fictional well of a hundred stages, surveyed every 3.45 ft: 5,000 stations. */

const STATIONS = 5000;
const STEP = 3.45;
const [KICKOFF, BUILD] = [8360, 10];

const survey = (): string => {
	const rows = Array.from({ length: STATIONS }, (_, i) => {
		const md = i * STEP;
		const planned = Math.min(90, Math.max(0, ((md - KICKOFF) * BUILD) / 100));
		return `${md.toFixed(2)},${(planned + (i === 0 ? 0 : 0.2 * (1 + Math.sin(i / 31)))).toFixed(3)},${(158 + Math.sin(i / 47)).toFixed(3)}`;
	});
	return `md [ft],inclination [deg],azimuth [deg]\n${rows.join("\n")}\n`;
};

/** @throws Error if the well has faults */
export const longWell = (): Findings => {
	const folder = new URL("../../../fixtures/wells/", import.meta.url);
	const text = readFileSync(new URL("hundred-stages.yaml", folder), "utf8");
	const surveyed = text
		.replace(
			/\n {2}plan: \{ kickoff: 8360 ft[^\n]*/u,
			(plan) => `${plan}\n  actual: { survey: { file: survey.csv } }`,
		)
		.replace(/\n {2}spud: 2026/u, "\n  spud: 2025");
	if (surveyed === text) throw new Error("the well of a hundred stages has another plan");
	const { value: catalog } = loadCatalog();
	if (catalog === undefined) throw new Error("the shipped catalogue does not load");
	const { findings, diagnostics } = understand(
		{ name: "hundred-stages.yaml", bytes: Buffer.from(surveyed) },
		{
			catalog,
			version: "0.0.0",
			ownRules: [],
			readFile: (file) => ({
				file,
				bytes: file === "survey.csv" ? Buffer.from(survey()) : readFileSync(new URL(file, folder)),
			}),
		},
	);
	if (findings === undefined)
		throw new Error(diagnostics.map(({ code, what }) => `${code}: ${what}`).join("\n"));
	return findings;
};
