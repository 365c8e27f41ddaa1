import {
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { definitionsOf } from "../../src/cli/definitions-in.ts";
import { casebound, starter } from "./built.ts";

const WELL = readFileSync(starter("vertical-metric"), "utf8");
const NAME = /^ {2}name: .*$/mu;

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-folders-"));
	for (const place of ["wells/north", "wells/.old", "none", "wells/node_modules"])
		mkdirSync(join(folder, place), { recursive: true });
	for (const [i, name] of ["b", "a", "north/c", "north/d"].entries())
		writeFileSync(join(folder, "wells", `${name}.yaml`), WELL.replace(NAME, `  name: Invented ${i + 1}V`));
	writeFileSync(join(folder, "wells", "rules.yaml"), "rules: []\n");
	writeFileSync(join(folder, "wells", ".old", "x.yaml"), WELL);
	writeFileSync(join(folder, "wells", "node_modules", "x.yaml"), WELL);
	writeFileSync(join(folder, "wells", "notes.txt"), "no definition");
	symlinkSync(join(folder, "wells", "a.yaml"), join(folder, "wells", "link.yaml"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const within = (...names: readonly string[]) => names.map((name) => join(folder, "wells", name));

describe("a folder in the place of a definition", () => {
	it("is every definition in it and below it, by name; no hidden file, link or file of another kind", () => {
		expect(definitionsOf([join(folder, "wells")])).toEqual(
			within("a.yaml", "b.yaml", "north/c.yaml", "north/d.yaml"),
		);
	});

	it("is dealt out in shards: each definition to one of them, whatever their number", () => {
		const all = definitionsOf([join(folder, "wells")]);
		for (const of of [1, 2, 3, 4, 10]) {
			const shards = Array.from({ length: of }, (_, i) =>
				definitionsOf([join(folder, "wells")], { number: i + 1, of }),
			);
			expect(shards.flat().sort()).toEqual(all);
			expect(Math.max(...shards.map((shard) => shard.length))).toBe(Math.ceil(all.length / of));
		}
	});

	it("that holds none is told of with 66", () => {
		const { status, stderr } = casebound(folder, ["check", "none"]);
		expect([status, stderr]).toEqual([
			66,
			"casebound: cannot read none: the folder holds no definition (*.yaml)\n",
		]);
	});

	it("a shard that is none is a wrong use", () => {
		for (const shard of ["0/3", "4/3", "3", "a/b", "1/0"])
			expect(casebound(folder, ["check", "wells", "--shard", shard]).status, shard).toBe(64);
	});

	it("one bad file stops no other", () => {
		writeFileSync(join(folder, "wells", "aa.yaml"), "definition: 1\nwell: [\n");
		const { status, stdout, stderr } = casebound(folder, ["check", "wells", "--quiet"]);
		rmSync(join(folder, "wells", "aa.yaml"));
		expect(status).toBe(65);
		expect(stderr).toContain("wells/aa.yaml:2");
		expect(stdout.match(/Invented \dV/gu)).toEqual([
			"Invented 2V",
			"Invented 1V",
			"Invented 3V",
			"Invented 4V",
		]);
	});

	it("ten shards write, byte for byte, what one run writes", () => {
		const asked = ["--for", "handout", "--with", "json,calendar"];
		const one = casebound(folder, ["bind", "wells", ...asked, "--out", "one"]);
		expect([one.status, one.stderr]).toEqual([0, ""]);
		for (let number = 1; number <= 10; number++) {
			const shard = casebound(folder, ["bind", "wells", ...asked, "--out", "ten", "--shard", `${number}/10`]);
			expect(shard.status).toBe(0);
			expect(shard.stderr).toBe(number > 4 ? `casebound: no definition falls to part ${number} of 10\n` : "");
		}
		const names = readdirSync(join(folder, "one")).sort();
		expect(names).toHaveLength(16);
		expect(readdirSync(join(folder, "ten")).sort()).toEqual(names);
		for (const name of names)
			expect(
				readFileSync(join(folder, "ten", name)).equals(readFileSync(join(folder, "one", name))),
				name,
			).toBe(true);
	}, 240_000);
});
