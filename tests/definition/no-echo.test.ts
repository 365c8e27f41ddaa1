import { describe, expect, it } from "vitest";
import { pathKey } from "../../src/diagnostics/path.ts";
import { sampleOf } from "../run/sample.ts";
import { understandText } from "../starters.ts";
import { PLANTED } from "./planted.ts";
import { changed, starterTree } from "./starter-trees.ts";

/* What cannot be read has something standing in for it while the parts are compared; nothing may be heard of that. */

describe("a fault of form brings no other in the stages behind it", () => {
	it.each(
		sampleOf("no echo", PLANTED, 30).map(
			(planted) => [`${planted.code} at ${pathKey(planted.path)}`, planted] as const,
		),
	)("%s", (_, { code, path, value, at, starter = "horizontal" }) => {
		const text = JSON.stringify(changed(starterTree(starter), path, value));
		const errors = understandText(text).diagnostics.filter(({ severity }) => severity === "error");
		expect(errors.map((each) => [each.code, pathKey(each.at.path)])).toEqual([[code, pathKey(at ?? path)]]);
	});
});
