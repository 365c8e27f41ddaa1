import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Minutes of the whole run, and its seed. */
export const MINUTES = Number(process.env["TORTURE_MINUTES"] ?? 1);
export const SEED = Number(process.env["TORTURE_SEED"] ?? 1);

const FIGURES = fileURLToPath(new URL("../../out/torture.json", import.meta.url));

/** What came of one class of attacks: how many were tried, what failed, and how often each thing was seen. */
export class Figures {
	readonly #class: string;
	readonly #seen = new Map<string, number>();
	readonly failed: string[] = [];
	tried = 0;

	constructor(name: string) {
		this.#class = name;
	}

	see(what: string): void {
		this.#seen.set(what, (this.#seen.get(what) ?? 0) + 1);
	}

	/** Prints the figures, and adds them to `out/torture.json`. */
	tell(): void {
		const told = { tried: this.tried, failed: this.failed.length, ...Object.fromEntries(this.#seen) };
		process.stdout.write(`${this.#class}: ${JSON.stringify(told)}\n`);
		mkdirSync(new URL("../../out/", import.meta.url), { recursive: true });
		let before: object = {};
		try {
			before = JSON.parse(readFileSync(FIGURES, "utf8")) as object;
		} catch {
			// The first class of the run.
		}
		const faults = this.failed.slice(0, 20);
		writeFileSync(
			FIGURES,
			`${JSON.stringify({ ...before, [this.#class]: { ...told, faults } }, null, "\t")}\n`,
		);
	}
}

/** Numbers from 0 to 1 that a seed gives, always the same (mulberry32). */
export const randomOf = (seed: number): (() => number) => {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
	};
};

/** Repeats until the share of the run's time is over, at least once. */
export const forMinutes = async (
	minutes: number,
	once: (n: number) => Promise<void> | void,
): Promise<void> => {
	const end = Date.now() + minutes * 60_000;
	let n = 0;
	do {
		await once(n);
		n += 1;
	} while (Date.now() < end);
};
