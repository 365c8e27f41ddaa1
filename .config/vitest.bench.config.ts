import { defineConfig } from "vitest/config";

/** Times are recorded in `out/bench.json`; nothing depends on them, and the tests do not run them. */
export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		benchmark: { include: ["tests/bench/**/*.bench.ts"], outputJson: "out/bench.json" },
	},
});
