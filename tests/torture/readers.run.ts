import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { mayAppear } from "../../src/definition/privacy.ts";
import { PAPERS, type Paper } from "../../src/document/document.ts";
import { understandText } from "../starters.ts";
import { Figures, forMinutes, MINUTES, randomOf, SEED } from "./figures.ts";
import { narrow, narrowable, planted, treeOf } from "./planted.ts";
import { MAIN } from "./revisions.ts";

const starter = (name: string): string =>
	readFileSync(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url), "utf8");
const STARTERS = ["horizontal", "vertical-metric"].map(starter);

const isThere = (program: string): boolean => spawnSync("which", [program]).status === 0;

/** The words of a file as its reader meets them. */
const textOf = (file: string): string => {
	if (file.endsWith(".pdf"))
		return spawnSync("pdftotext", [file, "-"], { encoding: "utf8", maxBuffer: 1 << 26 }).stdout;
	return readFileSync(file, "utf8");
};

/** The paper that a file belongs to, by its name. */
const paperOf = (name: string): Paper | undefined =>
	[...PAPERS].sort((a, b) => b.length - a.length).find((paper) => name.includes(`.${paper}.`));

describe.runIf(isThere("pdftotext"))(`words written for one reader (seed ${SEED})`, () => {
	it("are in no other reader's paper, edition, table or drawing", async () => {
		const figures = new Figures("words planted for one reader, looked for in every output");
		const random = randomOf(SEED + 6);
		await forMinutes(MINUTES / 12, (n) => {
			const tree = treeOf(STARTERS[n % STARTERS.length] ?? "");
			for (const { path, papers } of narrowable(tree)) {
				const some = papers.filter(() => random() < 0.5);
				if (random() < 0.5 && some.length > 0) narrow(tree, path, some);
			}
			// A word of letters alone is broken nowhere, and stands in no text of ours.
			const word = (i: number): string =>
				`Zq${[...String(1000 + i)].map((digit) => "bcdfghjkmp"[Number(digit)]).join("")}x`;
			const { tree: marked, marks } = planted(tree, (text, i) => `${word(i)} ${text}`);
			const text = JSON.stringify(marked, null, 1);
			if (understandText(text).findings === undefined) {
				figures.see("refused");
				return;
			}
			const folder = mkdtempSync(join(tmpdir(), "casebound-readers-"));
			const file = join(folder, "well.yaml");
			writeFileSync(file, text);
			const out = join(folder, "papers");
			const language = n % 2 === 0 ? "en" : "es";
			const all = ["--for", "regulator,landowner,handout,answers,crew,slides", "--with", "html,csv,json"];
			const { status, stderr } = spawnSync(
				process.execPath,
				[MAIN, "bind", file, ...all, "--lang", language, "--out", out],
				{ encoding: "utf8" },
			);
			if (status !== 0) figures.failed.push(`ended with ${status}: ${stderr.slice(-1000)}`);
			for (const entry of readdirSync(out, { recursive: true, withFileTypes: true })) {
				const name = join(entry.parentPath, entry.name).slice(out.length + 1);
				const paper = paperOf(name);
				if (!entry.isFile() || paper === undefined) continue;
				figures.see("files read");
				const printed = textOf(join(out, name));
				for (const [mark, paths] of marks) {
					const [planted = ""] = mark.split(" ");
					figures.tried += 1;
					if (!printed.includes(planted)) continue;
					figures.see("words met where they may be");
					if (!paths.some((path) => mayAppear(paper, path, marked)))
						figures.failed.push(`${name} prints ${mark} (${paths.map((path) => path.join(".")).join(", ")})`);
				}
			}
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});
});

const browser = ["chromium", "chromium-browser", "google-chrome"].find(isThere);

/** What would run, fetch or break out if one sign were not escaped; in short words, so that it still sets into columns. */
const RUN = `document . body . id = "ran"`;
const HOSTILE = [
	`<script> ${RUN} </script>`,
	`"> <img src=x onerror='${RUN}'>`,
	`'> <svg onload='${RUN}'>`,
	`javascript: ${RUN}`,
	`</title> </style> </svg> </desc> <script> ${RUN} </script>`,
	"{{#with this}} {{{raw}}} {{/with}}",
	`&lt;script&gt; ${RUN} &lt;/script&gt;`,
	`" onfocus='${RUN}' autofocus x="`,
	`]]> <script> ${RUN} </script> <![CDATA[`,
];

describe.runIf(browser !== undefined)("a hostile definition in a browser", () => {
	it("runs nothing and loads nothing", async () => {
		const figures = new Figures("hostile words in every text, opened in Chromium");
		await forMinutes(MINUTES / 32, (n) => {
			const { tree } = planted(
				treeOf(STARTERS[n % STARTERS.length] ?? ""),
				(text, i) => `${text} ${HOSTILE[(n + i) % HOSTILE.length]}`,
			);
			const text = JSON.stringify(tree, null, 1);
			if (understandText(text).findings === undefined) {
				figures.see("refused");
				return;
			}
			const folder = mkdtempSync(join(tmpdir(), "casebound-hostile-"));
			const file = join(folder, "well.yaml");
			writeFileSync(file, text);
			const { status, stderr } = spawnSync(
				process.execPath,
				[MAIN, "bind", file, "--for", "regulator,landowner,answers,crew", "--with", "html", "--out", folder],
				{ encoding: "utf8" },
			);
			if (status !== 0) figures.failed.push(`ended with ${status}: ${stderr.slice(-1000)}`);
			for (const name of readdirSync(folder).filter((each) => each.endsWith(".html"))) {
				figures.tried += 1;
				const page = readFileSync(join(folder, name), "utf8");
				if (!page.includes("body . id")) figures.see("without the hostile words");
				const { stdout } = spawnSync(
					browser ?? "",
					[
						...["--headless", "--no-sandbox", "--disable-gpu", "--virtual-time-budget=3000", "--dump-dom"],
						`file://${join(folder, name)}`,
					],
					{ encoding: "utf8", maxBuffer: 1 << 28, timeout: 120_000 },
				);
				if (!stdout.includes("<html")) figures.failed.push(`${name} was not opened`);
				if (/<body[^>]* id="?ran/.test(stdout)) figures.failed.push(`${name} ran a script of the definition`);
				if (/<(?:script|img|svg|iframe)[^>]*(?:onerror|onload)|<script[^>]*> document /.test(stdout))
					figures.failed.push(`${name} holds an element of the definition`);
			}
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});
});
