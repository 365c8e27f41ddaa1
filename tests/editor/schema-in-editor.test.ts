import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { definitionJsonSchema } from "../../src/definition/json-schema.ts";
import { EditorSession, type Position } from "./language-server.ts";

/* The schema in an editor: what the YAML language server that editors run says of it, over the protocol they speak. */

const STARTER = readFileSync(new URL("../../seeds/starters/horizontal.yaml", import.meta.url), "utf8");
const MODELINE = "# yaml-language-server: $schema=well.schema.json\n";

let folder = "";
let session: EditorSession;
let opened = 0;

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "casebound-editor-"));
	writeFileSync(join(folder, "well.schema.json"), JSON.stringify(definitionJsonSchema()));
	session = await EditorSession.open(folder, pathToFileURL(folder).href);
});
afterAll(async () => {
	await session.close();
	rmSync(folder, { recursive: true, force: true });
});

/** Opens a text that names the schema; `‸` in it is where the cursor stands. */
const open = async (text: string) => {
	opened += 1;
	const whole = MODELINE + text;
	const at = whole.indexOf("‸");
	const before = whole.slice(0, Math.max(0, at)).split("\n");
	const cursor: Position = { line: before.length - 1, character: (before.at(-1) ?? "").length };
	const uri = pathToFileURL(join(folder, `well-${opened}.yaml`)).href;
	const complaints = await session.show(uri, whole.replace("‸", ""));
	return { uri, cursor, complaints };
};

const completionsAt = async (text: string) => {
	const { uri, cursor } = await open(text);
	return session.completions(uri, cursor);
};

const hoverAt = async (text: string): Promise<string> => {
	const { uri, cursor } = await open(text);
	return session.hover(uri, cursor);
};

describe("in an editor with a YAML language server", () => {
	it("nothing is flagged in a starter", async () => {
		const { complaints } = await open(STARTER);
		expect(complaints).toEqual([]);
	});

	it("completion offers the topics, each with what it is for", async () => {
		const offered = await completionsAt("definition: 1\n‸\n");
		const labels = offered.map(({ label }) => label);
		for (const topic of ["well", "site", "geology", "trajectory", "holes", "casing", "stimulation"])
			expect(labels).toContain(topic);
		expect(offered.find(({ label }) => label === "casing")?.documentation).toContain("outermost inward");
	});

	it("completion offers the names of a block, each with its reason and units", async () => {
		const offered = await completionsAt("definition: 1\ncasing:\n  - id: surface\n    ‸\n");
		const labels = offered.map(({ label }) => label);
		for (const name of ["hole", "pipe", "shoe_track", "cement", "pressure_test"])
			expect(labels).toContain(name);
		// What is written already is not offered again.
		expect(labels).not.toContain("id");
		const track = offered.find(({ label }) => label === "shoe_track")?.documentation ?? "";
		expect(track).toContain("from collar to shoe");
		expect(track).toContain("Units: ft, m");
	});

	it("completion offers the words of a closed list", async () => {
		const offered = await completionsAt("definition: 1\nwell:\n  state: ‸\n");
		expect(offered.map(({ label }) => label)).toEqual(
			expect.arrayContaining(["draft", "issued for review", "for operations", "superseded"]),
		);
	});

	it("hover says what a field is, why it is asked, its units and its papers", async () => {
		const text = await hoverAt("definition: 1\nsite:\n  ground_ele‸vation: 1482 ft\n");
		expect(text).toContain("Ground elevation");
		expect(text).toContain("Ties depths to sea level");
		expect(text).toContain("Units: ft, m");
		expect(text).toContain("May appear in: regulator, answers, crew");
	});

	it("hover says what kinds of depth a field takes", async () => {
		const text = await hoverAt(
			"definition: 1\ngeology:\n  formations:\n    - name: Osage Clay\n      t‸op: 640 ft TVD\n",
		);
		expect(text).toContain("8850 ft TVD");
		expect(text).toContain("984 ft below ground");
	});

	it.each([
		["an unknown name", "definition: 1\nwell:\n  nmae: Tansy Draw 2\n", 3, /nmae/],
		[
			"a word that is not one of the list",
			"definition: 1\nwell:\n  state: final\n",
			3,
			/draft|allowed|enum/i,
		],
		[
			"a bare number where a quantity is due",
			"definition: 1\nsite:\n  ground_elevation: 1482\n",
			3,
			/string|type/i,
		],
		["another version", "definition: 2\n", 1, /1/],
	] as const)("%s is flagged at its line", async (_, text, line, message) => {
		const { complaints } = await open(text);
		expect(complaints.filter((each) => each.line === line).map((each) => each.message)).toEqual(
			expect.arrayContaining([expect.stringMatching(message)]),
		);
	});
});
