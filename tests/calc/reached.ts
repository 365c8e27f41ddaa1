import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseAst } from "rolldown/parseAst";

/*
 * What the program comes to from `main.ts`, name by name: a module may be read in whole while half of what it declares is
 * asked for by nobody. Lists of a topic's formulas (`formulasIn`) ask for nothing: they are there to be looked up.
 */

const SRC = fileURLToPath(new URL("../../src/", import.meta.url));
/** The command, and what the build runs. */
const ROOTS = ["main.ts", "build/make-shipped.ts"].map((name) => join(SRC, name));

interface Node {
	readonly type: string;
	readonly [key: string]: unknown;
}

interface Module {
	/** Local name → file and the name there; `*` for all of it. */
	readonly imports: Map<string, readonly [file: string, name: string]>;
	readonly exports: Map<string, readonly [file: string, name: string]>;
	readonly declared: Map<string, Node>;
	/** Files that are exported again in whole. */
	readonly again: string[];
	/** Statements that are run when the module is read. */
	readonly run: Node[];
}

const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";
const nodes = (value: unknown): readonly Node[] => (Array.isArray(value) ? value : [value]).filter(isNode);
const nameOf = (value: unknown): string => (isNode(value) ? String(value["name"] ?? value["value"]) : "");

const namesIn = (pattern: unknown): readonly string[] => {
	if (!isNode(pattern)) return [];
	if (pattern.type === "Identifier") return [nameOf(pattern)];
	return nodes(pattern["properties"] ?? pattern["elements"] ?? pattern["left"] ?? []).flatMap((part) =>
		namesIn(part["value"] ?? part["argument"] ?? part),
	);
};

const readModule = (file: string): Module => {
	const module: Module = { imports: new Map(), exports: new Map(), declared: new Map(), again: [], run: [] };
	const from = (statement: Node): string =>
		resolve(dirname(file), String((statement["source"] as Node | null)?.["value"] ?? ""));
	const declare = (declaration: Node): void => {
		if (declaration.type !== "VariableDeclaration")
			module.declared.set(nameOf(declaration["id"]), declaration);
		else
			for (const each of nodes(declaration["declarations"]))
				for (const name of namesIn(each["id"])) module.declared.set(name, each);
	};
	const lang = file.endsWith("x") ? "tsx" : "ts";
	for (const statement of nodes(parseAst(readFileSync(file, "utf8"), { lang }).body)) {
		const specifiers = nodes(statement["specifiers"] ?? []);
		if (statement.type === "ImportDeclaration")
			for (const each of specifiers)
				module.imports.set(nameOf(each["local"]), [from(statement), nameOf(each["imported"] ?? "") || "*"]);
		else if (statement.type === "ExportAllDeclaration") module.again.push(from(statement));
		else if (statement.type === "ExportDefaultDeclaration")
			module.declared.set("default", statement["declaration"] as Node);
		else if (statement.type === "ExportNamedDeclaration") {
			for (const each of specifiers)
				module.exports.set(nameOf(each["exported"]), [
					isNode(statement["source"]) ? from(statement) : file,
					nameOf(each["local"]),
				]);
			if (isNode(statement["declaration"])) declare(statement["declaration"]);
		} else if (statement.type.endsWith("Declaration")) declare(statement);
		else module.run.push(statement);
	}
	return module;
};

/** A name of a file, as the answers have it. */
export const placeOf = (file: string, name: string): string => `${file}#${name}`;

export interface Sources {
	readonly modules: ReadonlyMap<string, Module>;
	/** Every name that is come to; see `placeOf`. */
	readonly reached: ReadonlySet<string>;
}

export const readSources = (): Sources => {
	const modules = new Map(
		readdirSync(SRC, { recursive: true, encoding: "utf8" })
			.filter((name) => /\.tsx?$/u.test(name))
			.map((name) => [join(SRC, name), readModule(join(SRC, name))]),
	);
	const reached = new Set<string>();
	const read = new Set<string>();
	const waiting: (() => void)[] = [];

	const readIn = (file: string): void => {
		const module = modules.get(file);
		if (module === undefined || read.has(file)) return;
		read.add(file);
		for (const [other] of module.imports.values()) readIn(other);
		for (const statement of module.run) waiting.push(() => look(statement, file));
	};
	const reach = (file: string, name: string): void => {
		const module = modules.get(file);
		if (module === undefined || reached.has(placeOf(file, name))) return;
		reached.add(placeOf(file, name));
		readIn(file);
		if (name === "*") {
			for (const each of [...module.declared.keys(), ...module.exports.keys()]) reach(file, each);
			for (const other of module.again) reach(other, "*");
			return;
		}
		const declared = module.declared.get(name);
		const elsewhere = module.exports.get(name) ?? module.imports.get(name);
		if (declared !== undefined) waiting.push(() => look(declared, file));
		else if (elsewhere !== undefined) reach(...elsewhere);
		else for (const other of module.again) reach(other, name);
	};
	const look = (value: unknown, file: string): void => {
		if (Array.isArray(value)) for (const each of value) look(each, file);
		if (!isNode(value)) return;
		for (const [place, name] of namesAsked(value, file, modules)) reach(place, name);
	};
	for (const root of ROOTS) reach(root, "*");
	for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) next();
	return { modules, reached };
};

/** The names that a piece of code asks for, of its own file and of others. Types ask for nothing. */
export const namesAsked = (
	code: unknown,
	file: string,
	modules: ReadonlyMap<string, Module>,
): readonly (readonly [file: string, name: string])[] => {
	const module = modules.get(file);
	if (module === undefined) return [];
	const asked: (readonly [string, string])[] = [];
	const walk = (value: unknown): void => {
		if (Array.isArray(value)) for (const each of value) walk(each);
		if (!isNode(value) || /^TS(?!As|Satisfies|NonNull)/u.test(value.type)) return;
		const { type, object, property, computed, callee, source } = value;
		if (type === "CallExpression" && nameOf(callee) === "formulasIn") return;
		if (type === "ImportExpression" && isNode(source))
			asked.push([resolve(dirname(file), String(source["value"])), "*"]);
		if (type === "Identifier" || type === "JSXIdentifier") {
			const name = nameOf(value);
			const imported = module.imports.get(name);
			if (module.declared.has(name)) asked.push([file, name]);
			else if (imported !== undefined) asked.push(imported);
		} else if (type === "MemberExpression") {
			const whole = module.imports.get(nameOf(object));
			if (whole?.[1] === "*" && computed !== true) asked.push([whole[0], nameOf(property)]);
			else walk(object);
			if (computed === true) walk(property);
		} else if (type === "Property") {
			if (computed === true) walk(value["key"]);
			walk(value["value"]);
		} else for (const [key, child] of Object.entries(value)) if (key !== "typeAnnotation") walk(child);
	};
	walk(code);
	return asked;
};
