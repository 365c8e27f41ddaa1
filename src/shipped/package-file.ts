import { existsSync } from "node:fs";

/** The folder with this package's `package.json`: the code may lie in `src/`, or cut into pieces in `dist/`. */
const packageFolder = (): URL => {
	let folder = new URL("./", import.meta.url);
	while (!existsSync(new URL("package.json", folder))) {
		const above = new URL("../", folder);
		if (above.href === folder.href) throw new Error("no package.json lies above the code");
		folder = above;
	}
	return folder;
};

let known: URL | undefined;

/** Where a file of this package lies. */
export const packageFile = (name: string): URL => {
	known ??= packageFolder();
	return new URL(name, known);
};
