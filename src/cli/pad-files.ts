import { dirname, join } from "node:path";
import { readPad } from "../definition/pad.ts";
import { readYaml } from "../source/read-yaml.ts";
import type { Surroundings } from "../understand.ts";
import { type UnderstoodPad, understandPad } from "../understand-pad.ts";
import { textOf } from "./is-pad-file.ts";
import { nameOf, readBytes } from "./read-bytes.ts";
import { filesOnDisk } from "./read-well.ts";
import type { ShippedData } from "./shipped.ts";

/** The definitions that a pad file names, as paths; none where it cannot be read. */
export const wellFilesOf = (file: string): readonly string[] => {
	const tree = readYaml(textOf(file) ?? "", file).value?.value;
	return (readPad(tree).value?.wells ?? []).map((well) => join(dirname(file), well));
};

/**
 * Reads a pad file, the definitions that it names and everything those draw on; faults are told in what comes back.
 *
 * @throws FileFault for the pad file itself
 */
export const understandPadFile = (
	file: string,
	ownRules: Surroundings["ownRules"],
	{ catalog, version, own }: ShippedData,
): UnderstoodPad =>
	understandPad(
		{ name: nameOf(file), bytes: readBytes(file) },
		{
			catalog,
			version,
			ownRules,
			readFile: filesOnDisk(file),
			beside: filesOnDisk,
			...(own === undefined ? {} : { own }),
		},
	);
