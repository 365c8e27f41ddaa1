import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { withFault } from "../tests/mutation/faults.ts";
import each from "./vitest.config.ts";

const fault: { file: string; start: number; end: number; instead: string } | undefined =
	process.env["FAULT"] === undefined ? undefined : JSON.parse(process.env["FAULT"]);
const place = fault && fileURLToPath(new URL(`../${fault.file}`, import.meta.url));

/** The same tests on sources with one fault in them: `npm run mutate`. */
export default defineConfig({
	...each,
	plugins: [
		{
			name: "one fault",
			enforce: "pre",
			load: (id) =>
				fault !== undefined && place !== undefined && id.split("?")[0] === place
					? withFault(readFileSync(place, "utf8"), fault)
					: undefined,
		},
	],
	test: { ...each.test, env: { SAMPLE_SEED: "1" }, reporters: ["json"], outputFile: "out/mutation-run.json" },
});
