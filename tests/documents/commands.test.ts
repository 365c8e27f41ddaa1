import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { COMMANDS } from "../../src/cli/commands.ts";
import { EXIT } from "../../src/cli/exit-codes.ts";

const README = new URL("../../src/cli/README.md", import.meta.url);
const CODES = readFileSync(new URL("../../src/cli/exit-codes.ts", import.meta.url), "utf8");

/** The remark that stands over each exit code in the source. */
const meaningOf = (name: string): string => {
	const found = new RegExp(`/\\*\\* ([^*]+) \\*/\\s+${name}:`).exec(CODES)?.[1];
	if (found === undefined) throw new Error(`the exit code ${name} has no remark`);
	return found.trim();
};

const page = async (): Promise<string> => {
	const sections = await Promise.all(
		COMMANDS.map(async ({ name, about, load }) => {
			const command = (await load({ end: () => undefined })).description(about).name(name);
			command.configureHelp({ helpWidth: 100 });
			let after = "";
			command.configureOutput({ writeOut: (text) => (after += text) });
			command.outputHelp();
			return `## ${name}\n\n\`\`\`text\n${after.trimEnd().replace(/^Usage: /, "casebound ")}\n\`\`\`\n`;
		}),
	);
	const codes = Object.entries(EXIT).map(([name, code]) => `| ${code} | ${meaningOf(name)} |`);
	return [
		"# Commands\n",
		"Written from the program's own help; `npm run golden` writes it anew. `casebound` is this checkout's program after",
		"`npm run build && npm link`, or that of a tarball made by `npm pack`. The name is not published on a registry.\n",
		...sections,
		"## Exit codes\n",
		"| code | meaning |\n|---|---|",
		...codes,
		"\nA batch ends with the greatest.\n",
	].join("\n");
};

describe("the page of the commands", () => {
	it("says what the program's own help says", async () => {
		const due = await page();
		if (process.env["GOLDEN"] === "write") writeFileSync(README, due);
		expect(readFileSync(README, "utf8"), "write it anew with: npm run golden").toBe(due);
	});
	it("has every command", async () => {
		const due = await page();
		for (const { name } of COMMANDS) expect(due).toContain(`\n## ${name}\n`);
	});
});
