import { defineConfig } from "vitest/config";

/** The long run: `FUZZ_CASES` and `FUZZ_SEED` say how many and which. */
export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		include: ["tests/fuzz/*.test.ts"],
		testTimeout: 60_000,
		env: { FUZZ_CASES: process.env["FUZZ_CASES"] ?? "20000", FUZZ_SEED: process.env["FUZZ_SEED"] ?? "20260504" },
		reporters: ["verbose"],
	},
});
