import { describe, expect, it } from "vitest";
import { type FileAccess, filesBeside, nameFault } from "../../src/source/locate-files.ts";

const bytes = new Uint8Array([1]);

/** A disk of real paths; a link stands for another path. */
const disk = (links: Readonly<Record<string, string>>): FileAccess => ({
	realPath: (path) => links[path],
	readBytes: (path) => {
		if (path.endsWith("locked.csv")) throw new Error("permission is denied");
		return bytes;
	},
});

const access = disk({
	wells: "/home/a/wells",
	"wells/survey.csv": "/home/a/wells/survey.csv",
	"wells/data/stages.csv": "/home/a/wells/data/stages.csv",
	"wells/locked.csv": "/home/a/wells/locked.csv",
	"wells/link.csv": "/etc/passwd",
	"wells/near-link.csv": "/home/a/wells/survey.csv",
	"wells/out/x.csv": "/home/b/x.csv",
	".": "/home/a",
	"beside.csv": "/home/a/beside.csv",
	"/": "/",
	"/root.csv": "/root.csv",
	"C:\\wells": "C:\\wells",
	"C:\\wells/survey.csv": "C:\\wells\\Survey.csv",
});

describe("filesBeside", () => {
	it.each([
		["wells/a.yaml", "survey.csv", "wells/survey.csv"],
		["wells/a.yaml", "./survey.csv", "wells/survey.csv"],
		["wells/a.yaml", "data/stages.csv", "wells/data/stages.csv"],
		["a.yaml", "beside.csv", "beside.csv"],
		["/a.yaml", "root.csv", "/root.csv"],
		["C:\\wells\\a.yaml", "survey.csv", "C:\\wells/survey.csv"],
	])("%s may name %s", (definition, name, file) => {
		expect(filesBeside(definition, access)(name)).toEqual({ file, bytes });
	});

	it.each([
		["gone.csv", "file/not-found"],
		["locked.csv", "file/not-found"],
		["link.csv", "file/link"],
		["near-link.csv", "file/link"],
		["out/x.csv", "file/link"],
		["../survey.csv", "file/not-beside"],
		["data/../../survey.csv", "file/not-beside"],
		["/etc/passwd", "file/not-beside"],
		["~/survey.csv", "file/not-beside"],
		["C:/survey.csv", "file/not-beside"],
		["data\\stages.csv", "file/not-beside"],
		["\\\\server\\share", "file/not-beside"],
		["https://example.org/survey.csv", "file/not-beside"],
		["data/./stages.csv", "file/not-beside"],
		["data//stages.csv", "file/not-beside"],
		["data/", "file/not-beside"],
		["", "file/not-beside"],
		["sur\u0000vey.csv", "file/not-beside"],
	])("%s may not be had: %s", (name, code) => {
		expect(filesBeside("wells/a.yaml", access)(name)).toMatchObject({ code });
	});

	it("takes ordinary names, dots and all", () => {
		for (const name of ["survey.csv", "a b.csv", "..survey", "s.2026.csv", "é.csv"])
			expect(nameFault(name)).toBeUndefined();
	});
});
