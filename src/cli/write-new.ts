import { closeSync, fsyncSync, mkdirSync, openSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { EXIT } from "./exit-codes.ts";
import { FileFault, reasonOf } from "./file-fault.ts";

/**
 * Writes files that must not be there yet: all of them or, where one cannot be, none. Folders that were made for them go
 * again too.
 *
 * @throws FileFault
 */
export const writeNew = (
	files: readonly { readonly place: string; readonly content: Uint8Array }[],
): void => {
	const made: string[] = [];
	const folders: { readonly from: string; readonly to: string }[] = [];
	let under = "";
	try {
		for (const { place, content } of files) {
			under = place;
			const first = mkdirSync(dirname(place), { recursive: true });
			if (first !== undefined) folders.push({ from: dirname(place), to: first });
			// Fails where anything is there, a link that leads nowhere included.
			const handle = openSync(place, "wx");
			made.push(place);
			try {
				writeFileSync(handle, content);
				fsyncSync(handle);
			} finally {
				closeSync(handle);
			}
		}
	} catch (cause) {
		for (const place of made) rmSync(place, { force: true });
		for (const folder of folders.reverse()) removeEmpty(folder.from, folder.to);
		throw new FileFault(`cannot write ${under}: ${reasonOf(cause)}`, EXIT.cannotWrite);
	}
};

/** A folder and those above it up to the last one, as far as they are empty. */
const removeEmpty = (from: string, to: string): void => {
	try {
		for (let folder = from; ; folder = dirname(folder)) {
			rmdirSync(folder);
			if (resolve(folder) === resolve(to)) return;
		}
	} catch {
		// Somebody put something in it meanwhile; it is theirs now.
	}
};
