import { readdirSync, readFileSync } from "node:fs";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { validate } from "../../src/definition/validate.ts";
import type { Checked } from "../../src/diagnostics/diagnostic.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import type { ReadFile } from "../../src/well/read-file.ts";
import { resolveWell } from "../../src/well/resolve-well.ts";
import type { CasingString, Well } from "../../src/well/well.ts";
import { told } from "../told.ts";

const ROOT = new URL("../../", import.meta.url);
const STARTERS = new URL("seeds/starters/", ROOT);

const { value: shipped } = loadCatalog();
if (shipped === undefined) throw new Error("the shipped catalogue does not load");
export const catalog = shipped;

/** Starters by file name. */
export const starters = readdirSync(STARTERS).filter((name) => name.endsWith(".yaml"));
export const starterText = (name: string): string => readFileSync(new URL(name, STARTERS), "utf8");

const besideStarters: ReadFile = (name) => {
	try {
		return { file: name, bytes: readFileSync(new URL(name, STARTERS)) };
	} catch {
		return { refused: "there is no such file", code: "file/not-found" };
	}
};

/** Files that exist only in the test. */
export const filesOf =
	(files: Readonly<Record<string, string>>): ReadFile =>
	(name) =>
		files[name] === undefined
			? { refused: "there is no such file", code: "file/not-found" }
			: { file: name, bytes: new TextEncoder().encode(files[name]) };

/** The small sound well that the broken ones are made of, with pieces of its text replaced. */
export const smallWell = (...changes: readonly (readonly [from: string, to: string])[]): string =>
	changes.reduce(
		(text, [from, to]) => {
			if (text.split(from).length !== 2) throw new Error(`"${from}" does not stand once in the text`);
			return text.replace(from, to);
		},
		readFileSync(new URL("fixtures/broken/base.yaml", ROOT), "utf8"),
	);

/** A definition's text as the stages up to this one understand it. */
export const resolve = (text: string, files: ReadFile = besideStarters): Checked<Well> => {
	const tree = readYaml(text, "well.yaml");
	const definition = validate(tree.value?.value);
	if (definition.value === undefined || tree.diagnostics.length > 0)
		throw new Error([...tree.diagnostics, ...definition.diagnostics].map(({ what }) => what).join("; "));
	return resolveWell(definition.value, catalog, files);
};

/** The same, of a definition that is meant to be sound. */
export const understood = (text: string, files?: ReadFile): Well => {
	const { value, diagnostics } = resolve(text, files);
	if (value === undefined || diagnostics.length > 0)
		throw new Error(diagnostics.map(({ code, what }) => `${code}: ${told(what)}`).join("; "));
	return value;
};

export const codesOf = (text: string, files?: ReadFile): string[] =>
	resolve(text, files).diagnostics.map(({ code }) => code);

export const stringOf = (well: Well, id: string): CasingString => {
	const found = well.strings.find((string) => string.id === id);
	if (found === undefined) throw new Error(`no string ${id}`);
	return found;
};
