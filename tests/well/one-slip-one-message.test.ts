import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { valueAt } from "../../src/definition/fault.ts";
import { withoutStandIns } from "../../src/definition/stand-ins.ts";
import { validate } from "../../src/definition/validate.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { resolveWell } from "../../src/well/resolve-well.ts";
import { catalog, filesOf } from "./resolve.ts";

const BASE = readFileSync(new URL("../../fixtures/broken/base.yaml", import.meta.url), "utf8");
const tree: unknown = JSON.parse(JSON.stringify(readYaml(BASE, "well.yaml").value?.value));

const pathsOf = (node: unknown, path: Path = []): Path[] =>
	typeof node === "object" && node !== null
		? Object.entries(node).flatMap(([key, child]) => {
				const here = [...path, Array.isArray(node) ? Number(key) : key];
				return [here, ...pathsOf(child, here)];
			})
		: [];

const QUANTITY = /^([\d.]+)(?: (\d+)\/(\d+))?( .*)$/;

const scaled = (value: unknown, factor: number): unknown => {
	if (typeof value === "number") return value * factor;
	const [, whole, over = "0", under = "1", rest] = QUANTITY.exec(String(value)) ?? [];
	if (whole === undefined) return undefined;
	return `${Number(((Number(whole) + Number(over) / Number(under)) * factor).toPrecision(6))}${rest}`;
};

const withValue = (path: Path, value: unknown): unknown => {
	const copy: unknown = structuredClone(tree);
	const holder = valueAt(copy, path.slice(0, -1)) as Record<string | number, unknown>;
	holder[path.at(-1) ?? ""] = value;
	return copy;
};

const errorsOf = (written: unknown): string[] => {
	const { value, partial, diagnostics } = validate(written);
	const definition = value ?? partial?.definition;
	const found = definition === undefined ? [] : resolveWell(definition, catalog, filesOf({})).diagnostics;
	const behind = value === undefined ? withoutStandIns(found, partial?.suspects ?? []) : found;
	return [...diagnostics, ...behind]
		.filter(({ severity }) => severity === "error")
		.map(({ code, at }) => `${code} at ${pathKey(at.path)}`);
};

/** With half the shoe's depth, cement and stages both reach below it; either might be wrong as well. */
const TWO_DISAGREE = "casing[1].pipe[0].to x 0.5";

/** A point, a zero or a factor of two that slipped: what people do to a figure. */
const SLIPS = [0.1, 0.5, 2, 10];

test("a figure that slips is told of once, whichever of the parts stumble over it", () => {
	const told: string[] = [];
	let slips = 0;
	for (const path of pathsOf(tree))
		for (const factor of SLIPS) {
			const value = scaled(valueAt(tree, path), factor);
			if (value === undefined) continue;
			slips += 1;
			const errors = errorsOf(withValue(path, value));
			told.push(...errors);
			if (errors.length > 1 && `${pathKey(path)} x ${factor}` !== TWO_DISAGREE)
				expect([pathKey(path), factor, ...errors]).toEqual([pathKey(path), factor, errors[0]]);
		}
	expect(slips).toBeGreaterThan(300);
	expect(told.length).toBeGreaterThan(60);
	expect(new Set(told.map((each) => each.split(" ")[0])).size).toBeGreaterThan(15);
});
