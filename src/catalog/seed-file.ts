import { readFileSync } from "node:fs";
import { packageFile } from "../shipped/package-file.ts";

/** Gives the text of a file under `seeds/`, or nothing if there is none. */
export type ReadSeed = (name: string) => string | undefined;

/** The only door of the catalog to the file system: the seeds that ship with the tool. */
export const readShippedSeed: ReadSeed = (name) => {
	try {
		return readFileSync(packageFile(`seeds/${name}`), "utf8");
	} catch {
		return undefined;
	}
};
