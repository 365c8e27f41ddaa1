import { createHash } from "node:crypto";
import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { VERSION } from "./version.ts";

/*
 * The record of what was written of one well into one folder: `<well>.papers.json`. It says of every file which revision
 * and which state of the definition it was made from, and what its bytes are.
 */

/** Of what a file was made. */
export interface Made {
	/** Of the definition; absent where it names none. */
	readonly revision?: string;
	/** Fingerprint of the definition and the files it draws on, as papers print it. */
	readonly definition: string;
	/** SHA-256 of the file, or of every file of a folder. */
	readonly sha256: string;
}

export interface Manifest {
	readonly well: string;
	readonly files: Readonly<Record<string, Made>>;
}

export const manifestName = (slug: string): string => `${slug}.papers.json`;

export const manifestText = ({ well, files }: Manifest): string => {
	const sorted = Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1));
	const document = { casebound: VERSION, well, files: Object.fromEntries(sorted) };
	return `${JSON.stringify(document, null, "\t")}\n`;
};

/** The record in a folder; nothing where there is none, or none that can be read. */
export const readManifest = (folder: string, slug: string): Manifest | undefined => {
	try {
		const read: unknown = JSON.parse(readFileSync(join(folder, manifestName(slug)), "utf8"));
		return isManifest(read) ? { well: read.well, files: read.files } : undefined;
	} catch {
		return undefined;
	}
};

const isManifest = (read: unknown): read is Manifest =>
	isRecord(read) &&
	typeof read["well"] === "string" &&
	isRecord(read["files"]) &&
	Object.values(read["files"]).every(
		(made) => isRecord(made) && typeof made["definition"] === "string" && typeof made["sha256"] === "string",
	);

const isRecord = (node: unknown): node is Readonly<Record<string, unknown>> =>
	typeof node === "object" && node !== null && !Array.isArray(node);

export const digestOf = (content: Uint8Array | string): string =>
	createHash("sha256").update(content).digest("hex");

/** Of a folder: over the names of its files and what they hold, in order. */
export const digestOfFolder = (
	files: readonly { readonly name: string; readonly content: Uint8Array | string }[],
): string => {
	const hash = createHash("sha256");
	for (const { name, content } of files.toSorted((a, b) => (a.name < b.name ? -1 : 1)))
		hash.update(`${name}\n${digestOf(content)}\n`);
	return hash.digest("hex");
};

/** Digest of what lies at a place; nothing where nothing does, and no digest at all of what cannot be read. */
export const digestOnDisk = (place: string): string | undefined => {
	const stats = lstatSync(place, { throwIfNoEntry: false });
	if (stats === undefined) return undefined;
	try {
		return stats.isDirectory()
			? digestOfFolder(readdirSync(place).map((name) => ({ name, content: readFileSync(join(place, name)) })))
			: digestOf(readFileSync(place));
	} catch {
		return "";
	}
};
