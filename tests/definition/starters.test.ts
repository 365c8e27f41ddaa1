import { describe, expect, it } from "vitest";
import { isKnown } from "../../src/cite/known.ts";
import type { Definition } from "../../src/definition/definition.ts";
import { validate } from "../../src/definition/validate.ts";
import { STARTERS, type Starter, sideFile, starterTree } from "./starter-trees.ts";

const definitionOf = (starter: Starter): Definition => {
	const { value, diagnostics } = validate(starterTree(starter));
	if (value === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return value;
};

const at = (tree: unknown, path: readonly (string | number)[]): unknown =>
	path.reduce<unknown>((node, step) => (node as Record<string | number, unknown>)[step], tree);

/** Every value in a read definition, with what it says of its place. */
const knowns = (node: unknown): { readonly text: string; readonly path: readonly (string | number)[] }[] => {
	if (typeof node !== "object" || node === null) return [];
	if (isKnown(node))
		return node.from.kind === "definition" ? [{ text: node.from.text, path: node.from.at }] : [];
	return Object.values(node).flatMap(knowns);
};

describe.each(STARTERS)("starter %s", (starter) => {
	it("is accepted without a word", () => {
		expect(validate(starterTree(starter)).diagnostics).toEqual([]);
	});

	it("keeps the place of every value", () => {
		const tree = starterTree(starter);
		const all = knowns(definitionOf(starter));
		expect(all.length).toBeGreaterThan(150);
		for (const { text, path } of all)
			expect([path, String(at(tree, path))]).toEqual([path, text.replace(/ days$/, "")]);
	});

	it("is marked as invented, in the file and in the names that are printed", () => {
		expect(sideFile(`${starter}.yaml`).slice(0, 400)).toMatch(/all fictional/);
		const { well, site } = definitionOf(starter);
		expect(well.operator).toMatch(/\(fictional\)$/);
		expect(site.county).toMatch(/\(fictional\)$/);
		// Telephone numbers from the block kept for fiction, 555-0100 to 555-0199 (common practice, no source).
		for (const phone of sideFile(`${starter}.yaml`).match(/\b\d{3}-\d{4}\b/g) ?? [])
			expect(phone).toMatch(/^555-01/);
		// No county has the code 000 (API bulletin D12A, from memory).
		expect(well.api_number).toMatch(/^42-000-/);
	});

	it("has pressures in the order that keeps the crew safe", () => {
		const { stimulation, casing } = definitionOf(starter);
		const limits = stimulation?.limits;
		const test = casing.find(({ id }) => id === stimulation?.treated_through)?.pressure_test;
		const iron = stimulation?.pressure_boundary?.find(({ element }) => element === "treating iron");
		const ladder = [
			...(limits?.pump_kickouts ?? []),
			limits?.relief_valve,
			limits?.maximum_treating_pressure,
			test?.pressure,
		].map((known) => known?.value ?? Number.NaN);
		expect(ladder.length).toBeGreaterThanOrEqual(6);
		expect([...ladder].sort((a, b) => a - b)).toEqual(ladder);
		const lineTest = limits?.line_test?.value ?? Number.NaN;
		expect(lineTest).toBeGreaterThan(limits?.maximum_treating_pressure?.value ?? Number.NaN);
		expect(lineTest).toBeLessThan(iron?.rating?.value ?? Number.NaN);
	});

	it("has mud between pore pressure and fracture gradient in every hole", () => {
		const { holes, geology } = definitionOf(starter);
		for (const hole of holes) {
			const mud = hole.fluid?.density?.value;
			if (mud === undefined) continue;
			const above = holes[holes.indexOf(hole) - 1]?.to.value ?? 0;
			for (const { top, pore_pressure, fracture_gradient } of geology.formations) {
				if (top.depth.value > hole.to.value || top.depth.value < above) continue;
				expect(mud).toBeGreaterThan((pore_pressure?.value ?? Number.NaN) - 1e-9);
				// lb/gal from psi/ft: 7.4805 gal in a cubic foot over 144 in² in a square foot.
				expect(mud).toBeLessThan((fracture_gradient?.value ?? Number.NaN) * (144 / 7.480519));
			}
		}
	});

	it("covers the water with steel, and the steel with cement to the surface", () => {
		const { casing, geology, site } = definitionOf(starter);
		const surface = casing.find(({ id }) => id === "surface");
		const shoe = surface?.actual?.shoe ?? surface?.pipe.at(-1)?.to;
		const base = geology.protected_water?.base;
		const down =
			(base?.depth.value ?? Number.NaN) +
			(base?.reference === "ground" ? site.depth_datum.above_ground.value : 0);
		expect((shoe?.value ?? Number.NaN) - down).toBeGreaterThan(25);
		expect(surface?.cement?.slurries[0]?.from).toEqual({ surface: true });
	});
});
