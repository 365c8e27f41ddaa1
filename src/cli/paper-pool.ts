import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { packageFile } from "../shipped/package-file.ts";
import type { PaperSet, PaperTask } from "./set-paper.ts";

/** Sets papers, several at once where there are threads for it. */
export interface PaperPool {
	readonly set: (task: PaperTask) => Promise<PaperSet>;
	/** How many papers may be under way at once; whoever hands in more holds them all in memory. */
	readonly atOnce: number;
	readonly close: () => Promise<void>;
}

/** Two where there are two: a third would mostly wait for memory. */
export const usualThreads = (): number => Math.min(2, availableParallelism());

/** A thread that has grown beyond this is ended after its paper, and a new one takes its place [bytes]. */
const LARGEST_THREAD = 800 * 2 ** 20;

/**
 * A pool of threads; with one thread, or without the built worker, papers are set where they are asked for. Threads are
 * started when the first paper comes.
 */
export const openPaperPool = async (threads: number): Promise<PaperPool> => {
	const worker = packageFile("dist/paper-worker.js");
	if (threads < 2 || !existsSync(worker)) {
		const { setPaper } = await import("./set-paper.ts");
		return { set: setPaper, atOnce: 1, close: async () => undefined };
	}
	const { Tinypool } = await import("tinypool");
	const pool = new Tinypool({
		filename: fileURLToPath(worker),
		minThreads: 0,
		maxThreads: threads,
		isolateWorkers: false,
		maxMemoryLimitBeforeRecycle: LARGEST_THREAD,
	});
	return {
		set: (task) => pool.run(task) as Promise<PaperSet>,
		atOnce: threads,
		close: () => pool.destroy(),
	};
};
