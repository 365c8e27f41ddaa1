import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { validate } from "../../src/definition/validate.ts";
import { CODES } from "../../src/diagnostics/codes.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import { told } from "../told.ts";
import { PLANTED } from "./planted.ts";
import { changed, STARTERS, type Starter, starterTree } from "./starter-trees.ts";

const trees = new Map(STARTERS.map((starter) => [starter, starterTree(starter)] as const));
const tree = (starter: Starter = "horizontal"): unknown => trees.get(starter);

const nameOfFirst = (): string => {
	const definition = validate(tree()).value;
	return definition?.geology.formations[0]?.name ?? "";
};

describe("one fault gives one message at its place", () => {
	it.each(PLANTED.map((planted) => [`${planted.code} at ${pathKey(planted.path)}`, planted] as const))(
		"%s",
		(_, planted) => {
			const { value, diagnostics } = validate(changed(tree(planted.starter), planted.path, planted.value));
			expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
				[planted.code, pathKey(planted.at ?? planted.path)],
			]);
			expect(value).toBeUndefined();
			expect(diagnostics[0]?.severity).toBe("error");
			if (planted.mend !== undefined) expect(told(diagnostics[0]?.mend)).toMatch(planted.mend);
		},
	);

	it("shows every error of this stage", () => {
		const mine = Object.entries(CODES)
			.filter(([code, { severity }]) => /^(definition|quantity)\//.test(code) && severity === "error")
			.map(([code]) => code);
		const shown = new Set<string>(PLANTED.map(({ code }) => code));
		expect(mine.filter((code) => !shown.has(code))).toEqual([]);
	});

	it("warns of a name that stands twice in a list, whatever its case and spaces", () => {
		const { value, diagnostics } = validate(
			changed(tree(), ["geology", "formations", 1, "name"], ` ${nameOfFirst().toUpperCase()}  `),
		);
		expect(diagnostics.map(({ code, severity, at }) => [code, severity, pathKey(at.path)])).toEqual([
			["definition/same-name", "warning", "geology.formations[1].name"],
		]);
		expect(value).toBeDefined();
	});

	it("tells a date that crosses several others once, at that date", () => {
		const late = changed(tree("horizontal-as-built"), ["casing", 1, "actual", "date"], "2026-02-01");
		const { diagnostics } = validate(late);
		expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
			["definition/dates-out-of-order", "casing[1].actual.date"],
		]);
	});

	it("tells a misspelled required name once, and says which was meant", () => {
		const good = tree();
		const without = changed(good, ["casing", 1, "pressure_test", "pressure"], undefined);
		const { diagnostics } = validate(changed(without, ["casing", 1, "pressure_test", "presure"], "1000 psi"));
		expect(diagnostics.map(({ code }) => code)).toEqual(["definition/unknown-key"]);
		expect(told(diagnostics[0]?.mend)).toContain("`pressure`");
		expect(diagnostics[0]?.at.key).toBe(true);
	});

	it("judges a plan by the kind it is nearest to", () => {
		const plan = { vertical: true };
		const { diagnostics } = validate(changed(tree(), ["trajectory", "plan"], plan));
		expect(diagnostics.map(({ code, at }) => [code, pathKey(at.path)])).toEqual([
			["definition/missing", "trajectory.plan.to"],
		]);
	});
});

describe("all faults in one run", () => {
	const single = PLANTED.filter(
		({ code, starter, path, value, at }) =>
			starter === undefined &&
			code !== "definition/duplicate-id" &&
			at === undefined &&
			value !== undefined &&
			path.length > 2,
	);

	it("tells every one of many", () => {
		// Later plants may overwrite what earlier ones hit; keep the first at each block.
		const taken = new Set<string>();
		const apart = single.filter(({ path }) => {
			const block = pathKey(path.slice(0, 3));
			return !taken.has(block) && taken.add(block);
		});
		expect(apart.length).toBeGreaterThan(20);
		const broken = apart.reduce((each, { path, value }) => changed(each, path, value), tree());
		const found = validate(broken).diagnostics.map(({ code, at }) => `${code} ${pathKey(at.path)}`);
		expect([...found].sort()).toEqual(apart.map(({ code, path }) => `${code} ${pathKey(path)}`).sort());
	});
});

describe("whatever the tree", () => {
	const sound = (found: ReturnType<typeof validate>): void => {
		expect(found.value === undefined).toBe(found.diagnostics.length > 0);
		for (const each of found.diagnostics) {
			expect(told(each.what)).not.toBe("");
			expect(told(each.mend)).not.toBe("");
			expect(told(each.expected)).not.toBe("");
			// The schema library's own words never reach a reader.
			expect(`${told(each.what)} ${told(each.expected)} ${told(each.mend)}`).not.toMatch(
				/Invalid|received|Unrecognized|Too (small|big)/,
			);
		}
	};

	it("never throws and always explains", () => {
		fc.assert(
			fc.property(fc.anything({ withNullPrototype: true, maxDepth: 4 }), (anything) =>
				sound(validate(anything)),
			),
			{ numRuns: 300 },
		);
	});

	it("never throws on a starter with anything put anywhere", () => {
		const good = tree();
		const paths: Path[] = [];
		const collect = (node: unknown, path: Path): void => {
			if (path.length > 0) paths.push(path);
			if (typeof node !== "object" || node === null) return;
			for (const [key, child] of Object.entries(node))
				collect(child, [...path, Array.isArray(node) ? Number(key) : key]);
		};
		collect(good, []);
		fc.assert(
			fc.property(fc.constantFrom(...paths), fc.anything({ maxDepth: 2 }), (path, value) => {
				const found = validate(changed(good, path, value === undefined ? null : value));
				sound(found);
			}),
			{ numRuns: 300 },
		);
	});

	it("survives a tree that contains itself", () => {
		const loop: Record<string, unknown> = { definition: 1 };
		loop["well"] = loop;
		loop["casing"] = [loop];
		sound(validate(loop));
	});
});
