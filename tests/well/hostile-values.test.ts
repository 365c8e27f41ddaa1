import { expect, test } from "vitest";
import { isKnown, type Known } from "../../src/cite/known.ts";
import { validate } from "../../src/definition/validate.ts";
import { pathKey } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { resolveWell } from "../../src/well/resolve-well.ts";
import { catalog, filesOf, smallWell } from "./resolve.ts";

const knownsOf = (node: unknown): Known[] => {
	if (typeof node !== "object" || node === null) return [];
	return isKnown(node) ? [node] : Object.values(node).flatMap(knownsOf);
};

const scaled = (node: unknown, target: Known, factor: number): unknown => {
	if (node === target) return { ...target, value: target.value * factor };
	if (typeof node !== "object" || node === null || isKnown(node)) return node;
	if (Array.isArray(node)) return node.map((item) => scaled(item, target, factor));
	return Object.fromEntries(Object.entries(node).map(([key, child]) => [key, scaled(child, target, factor)]));
};

const definition = validate(readYaml(smallWell(), "well.yaml").value?.value).value;

test("a value gone to nothing, to a thousandth or a thousandfold never throws and is never two errors at one place", () => {
	const values = knownsOf(definition);
	expect(values.length).toBeGreaterThan(80);
	let told = 0;
	for (const value of values)
		for (const factor of [0, 0.001, 1000]) {
			const changed = scaled(definition, value, factor) as NonNullable<typeof definition>;
			const { value: well, diagnostics } = resolveWell(changed, catalog, filesOf({}));
			expect(well).toBeDefined();
			told += diagnostics.length;
			const places = diagnostics.map(({ at }) => pathKey(at.path));
			const from = value.from.kind === "definition" ? pathKey(value.from.at) : "";
			expect(new Set(places).size, `${from} x ${factor}: ${places.join("; ")}`).toBe(places.length);
		}
	expect(told).toBeGreaterThan(100);
});
