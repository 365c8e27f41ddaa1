import { statSync } from "node:fs";

/** How often the files are looked at [ms]: a change is met well within two seconds, and a slow disk is not kept busy. */
const LOOK_EVERY = 400;

/** What is told of a file: its size and when it was written; nothing where there is none. */
const stateOf = (file: string): string => {
	const stats = statSync(file, { throwIfNoEntry: false });
	return stats === undefined ? "" : `${stats.size} ${stats.mtimeMs} ${stats.ino}`;
};

/** What one run over some definitions was made from: of each, the files that it was read from. */
export type ReadFrom = ReadonlyMap<string, readonly string[]>;

export interface Watched {
	/** The definitions, found anew at each look: a folder may have come to hold another one. */
	readonly definitions: () => readonly string[];
	/** Works on some definitions, and says what each was read from. Never throws. */
	readonly run: (definitions: readonly string[]) => Promise<ReadFrom>;
	/** Between two looks; tells whether to go on. A test ends the watch so. */
	readonly goesOn?: () => boolean;
}

/**
 * Runs over all definitions, then again over each that has changed, or of which a file that it draws on has. Files are
 * looked at by their size and time, which holds on disks that tell of no change. Goes on until the process is ended.
 */
export const watch = async ({ definitions, run, goesOn = () => true }: Watched): Promise<void> => {
	const from = new Map<string, ReadonlyMap<string, string>>();
	const runAll = async (due: readonly string[]): Promise<void> => {
		// As they were before the run: what is written while it lasts is a change.
		const states = new Map(due.map((file) => [file, stateOf(file)]));
		const asked = new Map(
			due.flatMap((file) => [...(from.get(file)?.keys() ?? [])].map((each) => [each, stateOf(each)])),
		);
		const read = await run(due);
		for (const file of due) {
			const files = [file, ...(read.get(file) ?? [])];
			from.set(
				file,
				new Map(files.map((each) => [each, states.get(each) ?? asked.get(each) ?? stateOf(each)])),
			);
		}
	};
	await runAll(definitions());
	while (goesOn()) {
		await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
		const due = definitions().filter((file) => {
			const known = from.get(file);
			return known === undefined || [...known].some(([each, state]) => stateOf(each) !== state);
		});
		if (due.length > 0) await runAll(due);
	}
};
