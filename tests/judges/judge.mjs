import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import { dataJudges } from "./data.mjs";
import { htmlJudges } from "./html.mjs";
import { mapJudges } from "./maps.mjs";
import { numberJudges } from "./numbers.mjs";
import { bindOutputs } from "./outputs.mjs";
import { pdfJudges } from "./pdf.mjs";
import { outFolder, root } from "./run.mjs";
import { svgJudges } from "./svg.mjs";
import { tableJudges } from "./tables.mjs";
import { terminalJudges } from "./terminal.mjs";

const { values: options } = parseArgs({
	options: {
		short: { type: "boolean", default: false },
		bound: { type: "boolean", default: false },
		only: { type: "string" },
		write: { type: "boolean", default: false },
	},
});

const JUDGES = [
	...pdfJudges,
	...htmlJudges,
	...svgJudges,
	...tableJudges,
	...mapJudges,
	...dataJudges,
	...numberJudges,
	...terminalJudges,
].filter(({ name }) => options.only === undefined || name.toLowerCase().includes(options.only.toLowerCase()));

mkdirSync(outFolder, { recursive: true });
const started = Date.now();
const outputs = bindOutputs(options);
const seconds = () => Math.round((Date.now() - started) / 1000);
console.log(
	`bound ${outputs.flatMap(({ files }) => files).length} files in ${outputs.length} editions, ${seconds()} s`,
);

const shown = (where) => (where.startsWith("file:") ? where.slice(5) : where).replace(`${root}`, "");
const rows = [];
for (const { name, reads, of } of JUDGES) {
	const judged = await of(outputs);
	rows.push({ name, reads, ...judged });
	if (judged.absent !== undefined) {
		console.log(`ABSENT   ${name}: ${judged.absent}`);
		continue;
	}
	const { version, read, checks, found } = judged;
	console.log(
		`${found.length === 0 ? "passed " : "FOUND  "}  ${name} ${version}: ${read}, ${checks} checks, ${found.length} found`,
	);
	for (const { where, what } of found.slice(0, 20))
		console.log(`           ${shown(where)}\n             ${what.trim()}`);
	if (found.length > 20)
		console.log(
			`           and ${found.length - 20} more; all in ${relative(root, join(outFolder, "found.json"))}`,
		);
}
writeFileSync(join(outFolder, "found.json"), JSON.stringify(rows, null, 1));
console.log(`${seconds()} s in all`);

if (options.write) {
	const table = [
		`${new Date().toISOString().slice(0, 10)}, ${cpus().length} cores, Node ${process.versions.node}, \`npm run judge${options.short ? " -- --short" : ""}\`: ${outputs.length} editions of three starters.`,
		"",
		"| judge | version | reads | read | checks | found |",
		"|---|---|---|---|---:|---:|",
		...rows.map(({ name, reads, absent, version, read, checks, found }) =>
			absent === undefined
				? `| ${name} | ${version} | ${reads} | ${read} | ${checks.toLocaleString("en-US")} | ${found.length} |`
				: `| ${name} | | ${reads} | absent: ${absent} | | |`,
		),
	].join("\n");
	const page = join(root, "tests/judges/README.md");
	const [before, , after] = readFileSync(page, "utf8").split(/<!-- table -->|<!-- end of table -->/);
	writeFileSync(page, `${before}<!-- table -->\n\n${table}\n\n<!-- end of table -->${after}`);
}
process.exitCode = rows.some(({ found = [] }) => found.length > 0) ? 1 : 0;
