import { lstatSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { InvalidArgumentError, Option } from "commander";
import { EXIT } from "./exit-codes.ts";
import { FileFault, reasonOf } from "./file-fault.ts";
import { isPadFile } from "./is-pad-file.ts";
import { wellFilesOf } from "./pad-files.ts";
import { STANDARD_INPUT } from "./read-bytes.ts";

/** One part of several that work on a folder is split into: the `number`-th of `of`, from 1. */
export interface Shard {
	readonly number: number;
	readonly of: number;
}

/** `--shard 3/10`. */
export const shardOption = (): Option =>
	new Option(
		"--shard <part>",
		"only one part of the definitions, such as 3/10: the same split on every machine",
	).argParser((text: string): Shard => {
		const [, number, of] = /^(\d{1,6})\/(\d{1,6})$/u.exec(text) ?? [];
		const shard = { number: Number(number), of: Number(of) };
		if (!(shard.number >= 1 && shard.number <= shard.of))
			throw new InvalidArgumentError("write a part and how many there are, such as 3/10.");
		return shard;
	});

/**
 * The definitions and pads that the arguments name: files as they are named, and of a folder every definition and pad in
 * it and below it, in the order of their names. A definition that a pad there names comes with its pad. Of a shard, those that fall to it: the definitions are dealt out in turn.
 *
 * @throws FileFault for a folder that holds none, or cannot be read
 */
export const definitionsOf = (named: readonly string[], shard?: Shard): readonly string[] => {
	const all = named.flatMap((name) => (isFolder(name) ? definitionsIn(name) : [name]));
	return shard === undefined ? all : all.filter((_, i) => i % shard.of === shard.number - 1);
};

/** What cannot be looked at is no folder: reading it as a file says why. */
const isFolder = (name: string): boolean => {
	if (name === STANDARD_INPUT) return false;
	try {
		return statSync(name).isDirectory();
	} catch {
		return false;
	}
};

const definitionsIn = (folder: string): readonly string[] => {
	const files = yamlBelow(folder);
	const pads = files.filter(isPadFile);
	const ofPads = new Set(pads.flatMap(wellFilesOf));
	const found = files.filter((file) => pads.includes(file) || !(ofPads.has(file) || isOfAnotherKind(file)));
	if (found.length === 0)
		throw new FileFault(`cannot read ${folder}: the folder holds no definition (*.yaml)`, EXIT.cannotRead);
	return found;
};

/** Names are put in the order of their letters, not of a language, so that every machine has the same. */
const yamlBelow = (folder: string): readonly string[] => {
	let names: readonly string[];
	try {
		names = readdirSync(folder).sort();
	} catch (cause) {
		throw new FileFault(`cannot read ${folder}: ${reasonOf(cause)}`, EXIT.cannotRead);
	}
	return names.flatMap((name): readonly string[] => {
		if (name.startsWith(".") || name === "node_modules") return [];
		const place = join(folder, name);
		const stats = lstatSync(place, { throwIfNoEntry: false });
		if (stats?.isDirectory() === true) return yamlBelow(place);
		return stats?.isFile() === true && /\.ya?ml$/iu.test(name) ? [place] : [];
	});
};

/** What a file of another kind begins its entries with, and a definition has none of. */
const OTHER_KINDS = /^(?:rules|pad|house)[ \t]*:/mu;
const DEFINITION = /^definition[ \t]*:/mu;

/** Whether a file is plainly no definition. One that cannot be told is taken for one, and its faults are told. */
const isOfAnotherKind = (file: string): boolean => {
	try {
		const text = readFileSync(file, "utf8");
		return OTHER_KINDS.test(text) && !DEFINITION.test(text);
	} catch {
		return false;
	}
};
