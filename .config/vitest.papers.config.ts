import { defineConfig } from "vitest/config";

/** Times of whole papers, each in a process of its own, into `out/bench-papers.md`; a part of `npm run bench`. */
export default defineConfig({
	test: {
		root: new URL("..", import.meta.url).pathname,
		include: ["tests/bench/papers/*.run.ts"],
		testTimeout: 3_600_000,
		hookTimeout: 180_000,
		reporters: ["verbose"],
	},
});
