import process from "node:process";

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** What the work under way is told of a wish to end it. */
interface Wish {
	/** Somebody asked for an end: stop before anything that cannot be taken back. */
	readonly toEnd: () => boolean;
}

/**
 * Does work that must not be cut in two. A first signal is heeded once the work has come to a state that can be left;
 * a second one ends the process at once. Outside of such work signals end the process as they do any other.
 *
 * @param tidy  takes away what the work leaves lying, if it is ended at once
 */
export const heedingSignals = async <T>(work: (wish: Wish) => Promise<T>, tidy: () => void): Promise<T> => {
	let asked: (typeof SIGNALS)[number] | undefined;
	const onSignal = (signal: (typeof SIGNALS)[number]): void => {
		if (asked === undefined) {
			asked = signal;
			return;
		}
		tidy();
		endBy(signal);
	};
	for (const signal of SIGNALS) process.on(signal, onSignal);
	const leave = (): void => {
		for (const signal of SIGNALS) process.off(signal, onSignal);
	};
	const endBy = (signal: (typeof SIGNALS)[number]): void => {
		leave();
		process.kill(process.pid, signal);
	};
	try {
		return await work({ toEnd: () => asked !== undefined });
	} finally {
		leave();
		if (asked !== undefined) endBy(asked);
	}
};
