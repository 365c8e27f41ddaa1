import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	utimesSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import process from "node:process";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { clearParts, partOf } from "../../src/cli/part-files.ts";
import { heedingSignals } from "../../src/cli/signals.ts";
import { type FileSet, writeSet } from "../../src/cli/write-set.ts";

let folder = "";
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-set-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const set = (definition: string, files: FileSet["files"], well = "Sorrel 1"): FileSet => ({
	slug: "sorrel-1",
	well,
	revision: definition.toUpperCase(),
	definition,
	files,
});
const [regulator, crew] = ["sorrel-1.regulator.pdf", "sorrel-1.crew.pdf"];
const text = (name: string): string => readFileSync(join(folder, name), "utf8");

describe("files of a well in one folder", () => {
	it("are recorded, and what a later run does not write anew is told of", async () => {
		const both = [regulator, crew].map((name) => ({ name, content: "one" }));
		expect(await writeSet(folder, set("a", both))).toEqual([]);
		expect(JSON.parse(text("sorrel-1.papers.json"))).toMatchObject({
			well: "Sorrel 1",
			files: { [regulator]: { revision: "A", definition: "a" }, [crew]: { definition: "a" } },
		});
		const one = [{ name: crew, content: "two" }];
		expect(await writeSet(folder, set("b", one))).toEqual([
			`out of date: ${join(folder, regulator)} (revision A, a)`,
		]);
		// And again, for it is still there; until it is gone.
		expect(await writeSet(folder, set("b", one))).toHaveLength(1);
		rmSync(join(folder, regulator));
		expect(await writeSet(folder, set("b", one))).toEqual([]);
		expect(text("sorrel-1.papers.json")).not.toContain(regulator);
	});

	it("are told of where nobody recorded them, or where they are not what was recorded", async () => {
		writeFileSync(join(folder, "sorrel-1.handout.pdf"), "from before there were records");
		writeFileSync(join(folder, "sorrel-10.handout.pdf"), "another well's");
		await writeSet(folder, set("a", [{ name: regulator, content: "one" }]));
		writeFileSync(join(folder, regulator), "left by a run that was cut short");
		expect(await writeSet(folder, set("a", [{ name: crew, content: "one" }]))).toEqual([
			`not on record, may be out of date: ${join(folder, "sorrel-1.handout.pdf")}`,
			`changed since it was written, or left by a run that was cut short: ${join(folder, regulator)}`,
		]);
	});

	it("replace a folder of tables whole, and never one that holds something else", async () => {
		const name = "sorrel-1.regulator.tables";
		const of = (...tables: readonly string[]) => [
			{ name, content: tables.map((each) => ({ name: each, content: each })) },
		];
		await writeSet(folder, set("a", of("01-casing.csv", "02-cement.csv")));
		await writeSet(folder, set("b", of("01-cement.csv")));
		expect(readdirSync(join(folder, name))).toEqual(["01-cement.csv"]);
		writeFileSync(join(folder, name, "my notes.txt"), "mine");
		await expect(writeSet(folder, set("c", of("01-x.csv")))).rejects.toThrow("holds my notes.txt");
		expect(readdirSync(join(folder, name)).sort()).toEqual(["01-cement.csv", "my notes.txt"]);
	});

	it("never take the names of another well's", async () => {
		await writeSet(folder, set("a", [{ name: regulator, content: "one" }]));
		await expect(
			writeSet(folder, set("b", [{ name: regulator, content: "two" }], "Sorrel-1")),
		).rejects.toThrow('those of "Sorrel 1"');
		expect(text(regulator)).toBe("one");
	});

	it("are all written or none, where one cannot be", async () => {
		await writeSet(folder, set("a", [{ name: regulator, content: "one" }]));
		mkdirSync(join(folder, crew));
		const both = [regulator, crew].map((name) => ({ name, content: "two" }));
		await expect(writeSet(folder, set("b", both))).rejects.toThrow("a folder of that name is there");
		expect(text(regulator)).toBe("one");
		const tooLong = [
			{ name: regulator, content: "two" },
			{ name: `sorrel-1.${"x".repeat(300)}`, content: "" },
		];
		await expect(writeSet(folder, set("b", tooLong))).rejects.toThrow("the name is too long for the disk");
		expect(text(regulator)).toBe("one");
		expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
	});
});

describe("parts of files", () => {
	it("go when the process that wrote them is gone, and stay while it is there", () => {
		const own = partOf(join(folder, "x.pdf"));
		const gone = own.replace(`-${process.pid}-`, "-4194000-");
		const elsewhere = own.replace(/\.[0-9a-f]{6}-/u, ".000000-");
		const old = join(folder, ".x.pdf.01234567.part");
		for (const file of [own, gone, elsewhere, old]) writeFileSync(file, "");
		writeFileSync(join(folder, "mine.part"), "");
		clearParts(folder);
		const left = () => readdirSync(folder).sort();
		expect(left()).toEqual([basename(elsewhere), basename(old), basename(own), "mine.part"].sort());
		for (const file of [elsewhere, old]) utimesSync(file, 0, 0);
		clearParts(folder);
		expect(left()).toEqual([basename(own), "mine.part"].sort());
		expect(existsSync(own)).toBe(true);
	});
});

describe("signals during work that must not be cut in two", () => {
	it("are heeded after it, by the process's own end", async () => {
		const others = process.listeners("SIGTERM");
		let ended: unknown;
		const kill = process.kill;
		process.kill = (_, signal) => {
			ended = signal;
			return true;
		};
		try {
			await heedingSignals(
				async ({ toEnd }) => {
					expect(toEnd()).toBe(false);
					process.emit("SIGTERM", "SIGTERM");
					expect(toEnd()).toBe(true);
					expect(ended).toBeUndefined();
				},
				() => expect.unreachable("nothing is to tidy after one signal"),
			);
			expect(ended).toBe("SIGTERM");
			let tidied = 0;
			await heedingSignals(
				async () => {
					process.emit("SIGINT", "SIGINT");
					process.emit("SIGINT", "SIGINT");
					expect(tidied).toBe(1);
				},
				() => (tidied += 1),
			);
			expect(ended).toBe("SIGINT");
		} finally {
			process.kill = kill;
		}
		expect(process.listeners("SIGTERM")).toEqual(others);
	});
});
