import { defineConfig } from "vitest/config";

/**
 * Of the samples that the long sweeps are cut down to: one that is known, so that a change is judged alike everywhere.
 * `SAMPLE_SEED=random` draws another, and prints which; a number asks for one again.
 */
const asked = process.env["SAMPLE_SEED"] ?? "20261130";
const seed = asked === "random" ? String(Math.floor(Math.random() * 1e6)) : asked;

/** The tests of every change: `npm test`. */
export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		include: ["tests/**/*.test.ts"],
		globalSetup: ["tests/run/global-setup.ts"],
		setupFiles: ["tests/run/property-seed.ts"],
		env: { SAMPLE_SEED: seed },
		// Modules are read once a worker, not once a file: no test may leave anything changed behind it.
		pool: "threads",
		isolate: false,
		maxWorkers: "100%",
		testTimeout: 180_000,
		hookTimeout: 180_000,
		reporters: process.env["CI"] ? ["default", "json"] : ["default"],
		outputFile: { json: "out/vitest.json" },
	},
});
