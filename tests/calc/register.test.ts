import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { formulasIn } from "../../src/calc/formulas-in.ts";
import { FORMULAS, REGISTER } from "../../src/calc/register.ts";
import { isSourceKey } from "../../src/cite/source-keys.ts";
import { DIMENSIONS } from "../../src/units/dimensions.ts";
import { readRows, readUnchecked } from "../published/rows.ts";

const src = fileURLToPath(new URL("../../src/", import.meta.url));

/** The well is understood with a few formulas of its own; every other stands under `calc/`. */
const modules = ["calc", "well"].flatMap((room) =>
	readdirSync(join(src, room), { recursive: true, encoding: "utf8" })
		.filter((name) => name.endsWith(".ts") && !name.endsWith("index.ts") && name !== "register.ts")
		.map((name) => join(room, name)),
);

const exported = async () => {
	const loaded = await Promise.all(
		modules.map(async (name) => ({
			name,
			formulas: formulasIn((await import(join(src, name))) as Record<string, unknown>),
		})),
	);
	return loaded.flatMap(({ name, formulas }) => formulas.map((formula) => ({ name, formula })));
};

describe("register of formulas", () => {
	test("ids are unique, and begin with the topic", () => {
		expect(FORMULAS.length).toBeGreaterThan(150);
		const ids = FORMULAS.map(({ id }) => id);
		expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
		for (const id of ids) expect(id).toMatch(/^[a-z]+\/[a-z0-9-]+$/);
	});

	test("every exported formula is registered", async () => {
		const found = await exported();
		expect(modules.length).toBeGreaterThan(50);
		expect(found.length).toBeGreaterThanOrEqual(FORMULAS.length - 10);
		for (const { name, formula } of found)
			expect(REGISTER.get(formula.id), `${name}: ${formula.id}`).toBe(formula);
	});

	test.each(FORMULAS.map((f) => [f.id, f] as const))(
		"%s cites a source, names its symbols, knows its dimensions",
		(_, f) => {
			expect(isSourceKey(f.source.key)).toBe(true);
			expect(f.name.length).toBeGreaterThan(2);
			expect(f.expression.length).toBeGreaterThan(0);
			const dimensions = [
				...Object.values(f.inputs).flatMap((kind) =>
					typeof kind === "string" ? [kind] : "many" in kind ? [kind.many] : [],
				),
				...(typeof f.gives === "string" ? [f.gives] : Object.values(f.gives)),
			];
			for (const dimension of dimensions) expect(DIMENSIONS[dimension]).toBeDefined();
		},
	);
});

describe("outside checks", () => {
	const checked = new Set(
		readRows("published").flatMap(({ checks }) =>
			checks.filter(({ expected }) => expected !== undefined).map(({ formula }) => formula),
		),
	);
	const unchecked = readUnchecked();

	test("every formula has a published value or stands among those without, with the test that stands in", () => {
		const listed = new Set(unchecked.map(({ formula }) => formula));
		const missing = FORMULAS.map(({ id }) => id).filter((id) => !checked.has(id) && !listed.has(id));
		expect(
			missing,
			"add a row to fixtures/published/, or list it in fixtures/published/unchecked.yaml",
		).toEqual([]);
	});

	test.each(unchecked.map((each) => [each.formula, each] as const))(
		"%s: the test that stands in exists",
		(_, each) => {
			const source = readFileSync(new URL(`../../${each.file}`, import.meta.url), "utf8");
			expect(source).toContain(`"${each.test}"`);
		},
	);

	test("the list of those without names no formula that has one, or does not exist", () => {
		for (const { formula } of unchecked) {
			expect(REGISTER.has(formula), formula).toBe(true);
			expect(checked.has(formula), `${formula} has a published value`).toBe(false);
		}
		const ids = unchecked.map(({ formula }) => formula);
		expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
	});
});
