import { describe, expect, it } from "vitest";
import { diagnose } from "../../src/diagnostics/diagnose.ts";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { withoutEchoes } from "../../src/diagnostics/echoes.ts";
import type { Path } from "../../src/diagnostics/path.ts";

const at = (code: Diagnostic["code"], path: Path): Diagnostic =>
	diagnose(code, { path }, { what: "x", expected: "y", mend: "z" });

describe("withoutEchoes", () => {
	const reading = [at("syntax/comma-in-number", ["casing", 0, "to"]), at("syntax/merge-key", ["well"])];

	it.each<[Path, number]>([
		[["casing", 0, "to"], 0],
		[["casing", 0, "to", "deeper"], 0],
		[["casing", 0], 1],
		[["casing", 1, "to"], 1],
		[["casing", 0, "top"], 1],
		[["well", "name"], 1],
		[[], 1],
	])("%j", (path, left) => {
		expect(withoutEchoes([at("syntax/yaml", path)], reading)).toHaveLength(left);
	});
});
