import { readFileSync } from "node:fs";

const manifest: unknown = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));

/** The package's version, as `--version` and the metadata of papers print it. */
export const VERSION: string =
	typeof manifest === "object" && manifest !== null && "version" in manifest
		? String(manifest.version)
		: "unknown";
