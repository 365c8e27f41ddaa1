import { defineConfig } from "vitest/config";

export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		include: ["tests/**/*.test.ts"],
		setupFiles: ["tests/property-seed.ts"],
		testTimeout: 180_000,
		hookTimeout: 180_000,
		reporters: process.env["CI"] ? ["default", "json"] : ["default"],
		outputFile: { json: "out/vitest.json" },
	},
});
