import { defineConfig } from "vitest/config";

/** `npm run torture -- --minutes N`: runs for as long as it is told, and prints how much was tried and what failed. */
export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		include: ["tests/torture/*.run.ts"],
		testTimeout: 24 * 3_600_000,
		hookTimeout: 600_000,
		fileParallelism: false,
		reporters: ["verbose"],
	},
});
