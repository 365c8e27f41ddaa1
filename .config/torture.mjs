import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

/** Starts the torture runs for a number of minutes; `--seed` starts them over in the same way. */

const { values } = parseArgs({ options: { minutes: { type: "string", default: "5" }, seed: { type: "string" } } });
const root = fileURLToPath(new URL("..", import.meta.url));
const vitest = join(dirname(createRequire(import.meta.url).resolve("vitest/package.json")), "vitest.mjs");
const { status } = spawnSync(process.execPath, [vitest, "run", "--config", ".config/vitest.torture.config.ts"], {
	cwd: root,
	stdio: "inherit",
	env: {
		...process.env,
		TORTURE_MINUTES: values.minutes,
		TORTURE_SEED: values.seed ?? String(Math.floor(Math.random() * 1_000_000)),
	},
});
process.exitCode = status ?? 1;
