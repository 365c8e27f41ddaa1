import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { Figures } from "./figures.ts";
import { MAIN } from "./revisions.ts";

const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"].map((name) =>
	fileURLToPath(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url)),
);
const NODES = fileURLToPath(new URL("../../out/nodes", import.meta.url));
/** The registry has each release of Node as a package for each machine, without a script to install it. */
const PACKAGE = `node-${process.platform === "win32" ? "win" : process.platform}-${process.arch}`;

/** Other releases of Node, brought by npm; a release that cannot be had is left out, and named. */
const nodesOf = (figures: Figures): readonly string[] =>
	[20, 22, 24].flatMap((release) => {
		const folder = join(NODES, String(release));
		const node = join(folder, "node_modules", PACKAGE, "bin", "node");
		if (!existsSync(node)) {
			mkdirSync(folder, { recursive: true });
			writeFileSync(join(folder, "package.json"), "{}");
			spawnSync("npm", ["install", "--silent", "--no-save", "--ignore-scripts", `${PACKAGE}@${release}`], {
				cwd: folder,
			});
		}
		if (existsSync(node)) return [node];
		figures.see(`Node ${release} could not be had`);
		return [];
	});

const digestOf = (folder: string): string => {
	const hash = createHash("sha256");
	for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true }).sort((a, b) =>
		join(a.parentPath, a.name) < join(b.parentPath, b.name) ? -1 : 1,
	))
		if (entry.isFile()) hash.update(entry.name).update(readFileSync(join(entry.parentPath, entry.name)));
	return hash.digest("hex");
};

it("the same bytes on every supported release of Node", () => {
	const figures = new Figures("bytes on other releases of Node");
	const first = new Map<string, string>();
	for (const node of [process.execPath, ...nodesOf(figures)])
		for (const starter of STARTERS) {
			const folder = mkdtempSync(join(tmpdir(), "casebound-nodes-"));
			const extras = ["--with", "html,csv,json,xlsx,calendar", "--out", folder];
			const papers = "regulator,landowner,handout,crew";
			const { status, stderr } = spawnSync(node, [MAIN, "bind", starter, "--for", papers, ...extras], {
				encoding: "utf8",
			});
			const digest = digestOf(folder);
			rmSync(folder, { recursive: true });
			figures.tried += 1;
			if (status !== 0) figures.failed.push(`${node}: ${stderr}`);
			else if ((first.get(starter) ?? digest) !== digest)
				figures.failed.push(`${starter} differs on ${node}`);
			first.set(starter, first.get(starter) ?? digest);
		}
	for (const node of nodesOf(figures))
		figures.see(`Node ${spawnSync(node, ["--version"], { encoding: "utf8" }).stdout.trim()}`);
	figures.tell();
	expect(figures.failed).toEqual([]);
});
