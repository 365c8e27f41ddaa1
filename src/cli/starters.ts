import { readdirSync, readFileSync } from "node:fs";
import { packageFile } from "../shipped/package-file.ts";

export const STARTERS_FOLDER = packageFile("seeds/starters/");

export const starterNames = (): string[] =>
	readdirSync(STARTERS_FOLDER)
		.filter((name) => name.endsWith(".yaml"))
		.map((name) => name.slice(0, -".yaml".length))
		.sort();

/** The CSV files that a starter names. */
export const sideFilesOf = (starter: string): string[] => {
	const text = readFileSync(new URL(`${starter}.yaml`, STARTERS_FOLDER), "utf8");
	return readdirSync(STARTERS_FOLDER)
		.filter((name) => name.endsWith(".csv") && text.includes(name))
		.sort();
};
