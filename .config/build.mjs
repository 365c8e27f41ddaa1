import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { rolldown } from "rolldown";
import { packagePlaceOf, shippedPackages, thirdPartyText } from "./third-party.mjs";

/*
 * Builds the shipped tool into dist/.
 *
 * One bundle, cut where one command loads more than another. What package.json names under "dependencies" stays
 * outside, as npm installs it for the user; every other library is taken in. Shipped data and templates are read and
 * checked here, once, and shipped in the form they are used in: two modules that read the sources give way to two that
 * read what is made here.
 */

const root = fileURLToPath(new URL("..", import.meta.url));
const dist = join(root, "dist");
const { dependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const outside = Object.keys(dependencies);

const AS_BUILT = {
	"src/catalog/shipped.ts": "src/catalog/shipped-as-built.ts",
	"src/paper/words/word-files.ts": "src/paper/words/word-files-as-built.ts",
};

/** Puts what reads the built data in the place of what reads the sources. */
const asBuilt = {
	name: "as-built",
	async resolveId(source, importer, options) {
		const found = await this.resolve(source, importer, { ...options, skipSelf: true });
		const built = Object.entries(AS_BUILT).find(([from]) => found?.id === join(root, from));
		return built === undefined ? found : { ...found, id: join(root, built[1]) };
	},
};

const bundle = async (input, folder, plugins, output) => {
	const made = await rolldown({
		cwd: root,
		input,
		platform: "node",
		external: (id) => outside.some((name) => id === name || id.startsWith(`${name}/`)),
		tsconfig: "tsconfig.json",
		plugins,
	});
	const { output: pieces } = await made.write({ dir: folder, format: "esm", entryFileNames: "[name].js", ...output });
	await made.close();
	return pieces.flatMap(({ moduleIds }) => moduleIds ?? []);
};

rmSync(dist, { recursive: true, force: true });

const making = join(dist, "making");
await bundle({ "make-shipped": "src/build/make-shipped.ts" }, making, [], {});
const { makeShipped } = await import(pathToFileURL(join(making, "make-shipped.js")).href);
for (const [name, text] of makeShipped()) {
	const file = join(dist, "shipped", name);
	mkdirSync(dirname(file), { recursive: true });
	writeFileSync(file, text);
}
rmSync(making, { recursive: true });

const modules = await bundle({ main: "src/main.ts", "paper-worker": "src/cli/paper-worker.ts" }, dist, [asBuilt], {
	chunkFileNames: "chunks/[name]-[hash].js",
	sourcemap: true,
	comments: false,
});
const places = [...new Set(modules.flatMap((file) => packagePlaceOf(file) ?? []))].sort();
const bundled = places.map((place) => place.slice(root.length).replaceAll("\\", "/"));
writeFileSync(join(dist, "bundled.json"), JSON.stringify(bundled));
writeFileSync(join(dist, "THIRD-PARTY.md"), thirdPartyText(shippedPackages(root, places)));
chmodSync(join(dist, "main.js"), 0o755);
