import { tmpdir } from "node:os";
import { expect, it } from "vitest";
import { sampleOf } from "../run/sample.ts";
import { shell, starter } from "./built.ts";

/** Whoever reads what a command prints may close the pipe, or the disk may be full: neither is a fault of the tool. */

const WELL = starter("vertical-metric");
const COMMANDS = [
	"--help",
	"check --help",
	`check ${WELL}`,
	`check ${WELL} --format json`,
	`results ${WELL}`,
	"explain quantity/no-unit",
	"list checks",
	"schema",
	"schema --format table",
];

it.each(sampleOf("a closed pipe", COMMANDS, 4))("%s ends quietly where nobody reads on", (command) => {
	const { stdout, stderr } = shell(tmpdir(), `$TOOL ${command} | true; echo "\${PIPESTATUS[0]}"`);
	expect(stderr).toBe("");
	// What fits into the pipe before it is closed leaves no trace.
	expect(["0", "141"]).toContain(stdout.trim());
});

it.each(sampleOf("a full disk", COMMANDS, 4))("%s says that the disk is full", (command) => {
	const { status, stderr } = shell(tmpdir(), `$TOOL ${command} > /dev/full`);
	expect(stderr).toBe("casebound: cannot write to standard output: the disk is full\n");
	expect(status).toBe(73);
});

it("stops asking for more once the reader of a long answer has left", () => {
	const { stdout, stderr } = shell(tmpdir(), `$TOOL results ${WELL} | head -1; echo "\${PIPESTATUS[0]}"`);
	expect(stderr).toBe("");
	expect(stdout.split("\n").slice(0, 2)).toEqual(["{", "141"]);
});
