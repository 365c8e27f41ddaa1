import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { renderHtml } from "../../src/render/html/render-html.ts";
import { type Attachment, renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { samplePaper } from "./sample-paper.ts";

const run = promisify(execFile);
const root = new URL("../..", import.meta.url).pathname;
const place = join(root, "out", "render-determinism");
const sha = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

const SCRIPT = `
import { readFileSync } from "node:fs";
import { createHash } from "node:crypto";
import { renderPdf } from "./render-pdf.js";
import { renderHtml } from "./render-html.js";
const paper = JSON.parse(readFileSync(process.argv[2], "utf8"));
const attachments = [{ name: "well.yaml", bytes: readFileSync(process.argv[2]), mime: "application/yaml", description: "señal", relationship: "Source" }];
const { bytes, findings } = await renderPdf(paper, { attachments });
if (findings.length > 0) throw new Error(JSON.stringify(findings));
const sha = (content) => createHash("sha256").update(content).digest("hex");
process.stdout.write(sha(bytes) + " " + sha(renderHtml(paper)));
`;

beforeAll(async () => {
	await build({
		root,
		configFile: false,
		logLevel: "silent",
		oxc: { jsx: { runtime: "automatic", development: false } },
		build: {
			ssr: true,
			outDir: place,
			emptyOutDir: true,
			rollupOptions: {
				input: ["src/render/pdf/render-pdf.ts", "src/render/html/render-html.ts"],
				output: { entryFileNames: "[name].js" },
			},
		},
	});
	mkdirSync(place, { recursive: true });
	writeFileSync(join(place, "run.mjs"), SCRIPT);
	writeFileSync(join(place, "paper.json"), JSON.stringify(samplePaper()));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

const inProcess = async (env: Readonly<Record<string, string>>): Promise<string> => {
	const { stdout } = await run(process.execPath, [join(place, "run.mjs"), join(place, "paper.json")], {
		env: { PATH: process.env["PATH"] ?? "", ...env },
	});
	return stdout;
};

/** As the script has it. */
const attachment: Attachment = {
	name: "well.yaml",
	bytes: new TextEncoder().encode(JSON.stringify(samplePaper())),
	mime: "application/yaml",
	description: "señal",
	relationship: "Source",
};

describe("equal papers", () => {
	it("give equal bytes, in this process and in others, whatever time zone, locale and mode", async () => {
		const both = async (): Promise<string> => {
			const { bytes } = await renderPdf(samplePaper(), { attachments: [attachment] });
			return `${sha(bytes)} ${sha(new TextEncoder().encode(renderHtml(samplePaper())))}`;
		};
		const first = await both();
		expect(await both()).toBe(first);
		const elsewhere = await Promise.all([
			inProcess({ TZ: "America/Denver", LANG: "es_ES.UTF-8", NODE_ENV: "production" }),
			inProcess({ TZ: "Asia/Kathmandu", LC_ALL: "de_DE.UTF-8", NODE_ENV: "development" }),
		]);
		expect(elsewhere).toEqual([first, first]);
	});

	it("and unequal ones differ, in their identifier too", async () => {
		const paper = samplePaper();
		const one = (await renderPdf(paper)).bytes;
		const other = (await renderPdf({ ...paper, sections: paper.sections.slice(0, 2) })).bytes;
		const id = (bytes: Uint8Array): string | undefined =>
			/\/ID \[<([0-9a-f]+)>/.exec(Buffer.from(bytes).toString("latin1"))?.[1];
		expect(id(one)).toMatch(/^[0-9a-f]{32}$/);
		expect(id(other)).not.toBe(id(one));
	});
});
