import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

/** What the built tool says of the libraries in it. `npm test` builds first. */

const root = fileURLToPath(new URL("../..", import.meta.url));
const text = readFileSync(join(root, "dist/THIRD-PARTY.md"), "utf8");
const rows = [
	...text.matchAll(/^\| (\S+) \| (\d\S*) \| (.+?) \| (in the bundle|installed beside the tool) \|$/gmu),
].map(([, name = "", version = "", license = "", how = ""]) => ({ name, version, license, how }));

/** Terms under which the tool may be passed on with its libraries, all of them common for that. */
const PERMITTED = new Set([
	"MIT",
	"ISC",
	"0BSD",
	"BSD-2-Clause",
	"BSD-3-Clause",
	"Apache-2.0",
	"MPL-2.0",
	"Zlib",
	"MIT AND OFL-1.1",
	"(MIT AND Zlib)",
	"MIT OR Apache-2.0",
]);

interface Locked {
	readonly packages: Readonly<Record<string, { readonly version: string; readonly dev?: boolean }>>;
}
const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as Locked;
const nameOf = (place: string): string => place.split("node_modules/").at(-1) ?? "";

describe("dist/THIRD-PARTY.md", () => {
	it("names every package that npm installs beside the tool", () => {
		const installed = Object.entries(packages).filter(([place, { dev }]) => place !== "" && dev !== true);
		expect(installed.length).toBeGreaterThan(40);
		for (const [place, { version }] of installed)
			expect(rows, place).toContainEqual(expect.objectContaining({ name: nameOf(place), version }));
	});

	it("names every package that the bundle has a module of, as its source maps tell", () => {
		const maps = readdirSync(join(root, "dist"), { recursive: true, encoding: "utf8" }).filter((name) =>
			name.endsWith(".js.map"),
		);
		const sources = maps.flatMap(
			(name) => (JSON.parse(readFileSync(join(root, "dist", name), "utf8")) as { sources: string[] }).sources,
		);
		const bundled = new Set(
			sources.flatMap((source) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/u.exec(source)?.[1] ?? []),
		);
		for (const known of ["commander", "yaml", "zod", "handlebars"]) expect([...bundled]).toContain(known);
		const named = rows.filter(({ how }) => how === "in the bundle").map(({ name }) => name);
		for (const name of bundled) expect(named).toContain(name);
	});

	it("has terms that allow the tool to be passed on, and their words", () => {
		for (const { name, license } of rows) expect(PERMITTED.has(license), `${name}: ${license}`).toBe(true);
		expect(text).toContain("SIL OPEN FONT LICENSE");
		const terms = text.split("## Terms")[1] ?? "";
		for (const { name, version, how } of rows)
			if (how === "in the bundle") expect(terms, name).toContain(`${name} ${version}`);
	});

	it("is packed with the tool", () => {
		const told = execFileSync("npm", ["pack", "--dry-run", "--json"], { cwd: root, encoding: "utf8" });
		const [packed] = JSON.parse(told) as readonly { files: readonly { path: string }[] }[];
		expect(packed?.files.map(({ path }) => path)).toContain("dist/THIRD-PARTY.md");
	});
});

describe("the bill of materials", () => {
	it("has the same packages, and is the same whenever it is made", () => {
		const bill = (): string => {
			execFileSync(process.execPath, [join(root, ".config/sbom.mjs")], { cwd: root });
			return readFileSync(join(root, "out/sbom.cdx.json"), "utf8");
		};
		const made = bill();
		const { bomFormat, components } = JSON.parse(made) as {
			bomFormat: string;
			components: readonly { group?: string; name: string; version: string; purl: string }[];
		};
		expect(bomFormat).toBe("CycloneDX");
		const named = components.map(({ purl, version }) =>
			decodeURIComponent(purl.slice(8, purl.indexOf(`@${version}`, 9))),
		);
		for (const { name } of rows) expect(named).toContain(name);
		expect(bill()).toBe(made);
	});
});

it("no package that ships or builds the tool runs a script when it is installed", () => {
	expect(readFileSync(join(root, ".npmrc"), "utf8")).toContain("ignore-scripts=true");
	const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
		scripts: Record<string, string>;
	};
	for (const name of ["preinstall", "install", "postinstall", "prepare"])
		expect(scripts).not.toHaveProperty(name);
});
