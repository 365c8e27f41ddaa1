import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { packageFile } from "./package-file.ts";

/** Where the build puts the shipped data that it found good. */
const BUILT_FOLDER = "dist/shipped/";

const builtFile = (name: string): URL => packageFile(`${BUILT_FOLDER}${name}`);

/** Data that the build made. */
export const builtJson = (name: string): unknown => JSON.parse(readFileSync(builtFile(name), "utf8"));

/** As `builtJson`, or nothing where there is no such file. */
export const builtJsonIfThere = (name: string): unknown => {
	try {
		return builtJson(name);
	} catch (cause) {
		if (cause instanceof Error && "code" in cause && cause.code === "ENOENT") return undefined;
		throw cause;
	}
};

const require = createRequire(import.meta.url);

/** A program that the build made, as it stands behind its `module.exports`. */
export const builtProgram = (name: string): unknown => require(fileURLToPath(builtFile(name)));
