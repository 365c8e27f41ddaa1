import { readFileSync } from "node:fs";

/** Gives the text of a file under `seeds/`, or nothing if there is none. */
export type ReadSeed = (name: string) => string | undefined;

// Two levels up from both src/catalog/ and dist/catalog/.
const SEEDS = new URL("../../seeds/", import.meta.url);

/** The only door of the catalog to the file system: the seeds that ship with the tool. */
export const readShippedSeed: ReadSeed = (name) => {
	try {
		return readFileSync(new URL(name, SEEDS), "utf8");
	} catch {
		return undefined;
	}
};
