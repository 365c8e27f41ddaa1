import { readFileSync } from "node:fs";
import { packageFile } from "../shipped/package-file.ts";

const manifest: unknown = JSON.parse(readFileSync(packageFile("package.json"), "utf8"));

/** The package's version, as `--version` and the metadata of papers print it. */
export const VERSION: string =
	typeof manifest === "object" && manifest !== null && "version" in manifest
		? String(manifest.version)
		: "unknown";
