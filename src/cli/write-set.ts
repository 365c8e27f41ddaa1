import { lstatSync, readdirSync, renameSync, rmSync, type Stats } from "node:fs";
import { mkdir, open } from "node:fs/promises";
import { join } from "node:path";
import { EXIT } from "./exit-codes.ts";
import { FileFault, reasonOf } from "./file-fault.ts";
import {
	digestOf,
	digestOfFolder,
	digestOnDisk,
	type Made,
	type Manifest,
	manifestName,
	manifestText,
	readManifest,
} from "./manifest.ts";
import { clearParts, partOf, writeFolderToDisk, writeToDisk } from "./part-files.ts";
import { heedingSignals } from "./signals.ts";

type Content = Uint8Array | string;

/** A file to write, or a folder of files. */
export interface NewFile {
	readonly name: string;
	readonly content: Content | readonly { readonly name: string; readonly content: Content }[];
}

/** What one run makes of one well. */
export interface FileSet {
	/** What the names of all its files begin with. */
	readonly slug: string;
	readonly well: string;
	readonly revision?: string;
	/** Fingerprint of the definition. */
	readonly definition: string;
	readonly files: readonly NewFile[];
}

/**
 * Writes the files of a well together: all to the disk under other names, then each under its own, and the record of
 * them last. Either every file is of this run, or the record shows which is not. A folder is replaced whole.
 *
 * @returns what else lies there of the well and is not of this state of the definition, in words
 * @throws FileFault
 */
export const writeSet = async (folder: string, set: FileSet): Promise<readonly string[]> => {
	await made(folder, () => mkdir(folder, { recursive: true }));
	clearParts(folder);
	const before = readManifest(folder, set.slug);
	refuseOtherWell(folder, set, before);
	for (const file of set.files) refuseWhatLiesThere(folder, file);
	const record = recordOf(folder, set, before);
	const parts: string[] = [];
	/** What is to go and cannot: the next run tries again. */
	const tidy = (): readonly FileFault[] =>
		parts.flatMap((part) => {
			try {
				rmSync(part, { recursive: true, force: true });
				return [];
			} catch (cause) {
				return [new FileFault(`cannot remove ${part}: ${reasonOf(cause)}`, EXIT.cannotWrite)];
			}
		});
	await heedingSignals(async ({ toEnd }) => {
		try {
			const written: { readonly part: string; readonly place: string }[] = [];
			const all = [...set.files, { name: manifestName(set.slug), content: manifestText(record) }];
			for (const { name, content } of all) {
				const place = join(folder, name);
				const part = partOf(place);
				parts.push(part);
				await made(place, () =>
					isFolder(content) ? writeFolderToDisk(part, content) : writeToDisk(part, content),
				);
				if (toEnd()) {
					tidy();
					return;
				}
				written.push({ part, place });
			}
			for (const { part, place } of written) await made(place, async () => putInPlace(part, place, parts));
			await toDisk(folder);
		} catch (cause) {
			tidy();
			throw cause;
		}
		const [stays] = tidy();
		if (stays !== undefined) throw stays;
	}, tidy);
	return outOfDate(folder, set, before);
};

const made = async (place: string, work: () => Promise<unknown>): Promise<void> => {
	try {
		await work();
	} catch (cause) {
		throw new FileFault(`cannot write ${place}: ${reasonOf(cause)}`, EXIT.cannotWrite);
	}
};

const isFolder = (content: NewFile["content"]): content is Exclude<NewFile["content"], Content> =>
	Array.isArray(content);

/** A folder cannot be renamed over another one: the old one goes aside first. */
const putInPlace = (part: string, place: string, parts: string[]): void => {
	if (lstatSync(place, { throwIfNoEntry: false })?.isDirectory() === true) {
		const aside = partOf(place);
		parts.push(aside);
		renameSync(place, aside);
	}
	renameSync(part, place);
};

/** The names themselves reach the disk with the folder; where a folder cannot be opened, the system sees to it. */
const toDisk = async (folder: string): Promise<void> => {
	try {
		const handle = await open(folder, "r");
		try {
			await handle.sync();
		} finally {
			await handle.close();
		}
	} catch {
		// Not every system lets a folder be opened.
	}
};

const refuseOtherWell = (folder: string, { slug, well }: FileSet, before: Manifest | undefined): void => {
	if (before === undefined || before.well === well) return;
	throw new FileFault(
		`cannot write the papers of "${well}" into ${folder}: their names are taken by those of "${before.well}" (${manifestName(slug)} says so); choose another folder with --out, or remove that file if it is the same well under a new name`,
		EXIT.cannotWrite,
	);
};

/** The only files that a folder of tables of ours has. */
const TABLE = /^\d{2,}-[^/]*\.csv$/u;

const refuseWhatLiesThere = (folder: string, { name, content }: NewFile): void => {
	const place = join(folder, name);
	const refuse = (why: string): never => {
		throw new FileFault(`cannot write ${place}: ${why}`, EXIT.cannotWrite);
	};
	let isThere: Stats | undefined;
	try {
		isThere = lstatSync(place, { throwIfNoEntry: false });
	} catch (cause) {
		refuse(reasonOf(cause));
	}
	if (isThere === undefined) return;
	if (isThere.isDirectory() !== isFolder(content))
		refuse(isFolder(content) ? "a file of that name is there" : "a folder of that name is there");
	if (!isFolder(content)) return;
	const strange = readdirSync(place).find((each) => !TABLE.test(each));
	if (strange !== undefined)
		refuse(`the folder is replaced whole, and holds ${strange}, which is no table; move it away first`);
};

/** The new record: what this run writes, and what earlier ones wrote that still lies there. */
const recordOf = (folder: string, set: FileSet, before: Manifest | undefined): Manifest => {
	const of = (sha256: string): Made => ({
		...(set.revision === undefined ? {} : { revision: set.revision }),
		definition: set.definition,
		sha256,
	});
	const kept = Object.entries(before?.files ?? {}).filter(
		([name]) => lstatSync(join(folder, name), { throwIfNoEntry: false }) !== undefined,
	);
	const written = set.files.map(({ name, content }): [string, Made] => [
		name,
		of(isFolder(content) ? digestOfFolder(content) : digestOf(content)),
	]);
	return { well: set.well, files: Object.fromEntries([...kept, ...written]) };
};

const outOfDate = (folder: string, set: FileSet, before: Manifest | undefined): readonly string[] => {
	const own = new Set([manifestName(set.slug), ...set.files.map(({ name }) => name)]);
	return readdirSync(folder)
		.filter((name) => name.startsWith(`${set.slug}.`) && !own.has(name))
		.sort()
		.flatMap((name) => {
			const known = before?.files[name];
			if (known === undefined) return [`not on record, may be out of date: ${join(folder, name)}`];
			if (digestOnDisk(join(folder, name)) !== known.sha256)
				return [`changed since it was written, or left by a run that was cut short: ${join(folder, name)}`];
			if (known.definition === set.definition) return [];
			const revision = known.revision === undefined ? "" : `revision ${known.revision}, `;
			return [`out of date: ${join(folder, name)} (${revision}${known.definition})`];
		});
};
