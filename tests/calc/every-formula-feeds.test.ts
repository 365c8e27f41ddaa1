import { parseAst } from "rolldown/parseAst";
import { describe, expect, test } from "vitest";
import { formulasIn } from "../../src/calc/formulas-in.ts";
import { FORMULAS } from "../../src/calc/register.ts";
import { namesAsked, placeOf, readSources } from "./reached.ts";

/*
 * Every formula feeds what a reader sees: the program comes to it from `main.ts`, or to the arithmetic that it shares with
 * a formula that does (a stress at one depth beside the line of a whole string). A topic's list of its formulas does not count.
 */

/** Formulas that feed nothing yet, each with what a reader would have of it. Whoever wires one strikes it out here. */
const IDLE: Readonly<Record<string, string>> = {
	"casing/end-force": "the force of pressure on a closed end, beside the axial loads",
	"casing/engaged-thread-length": "the thread's engagement, where the tables give its parts and not itself",
	"casing/worn-wall": "the wall that a stated wear leaves, in the table of ratings",
	"logistics/stages-duration-by-cycle": "days of treating where a cycle is stated and no pace",
	"pressure/adjusted-annulus-surface-pressure": "the allowable annular pressure at another mud weight",
	"pressure/annulus-velocity": "the velocity of mud in each annulus",
	"pressure/leak-off-equivalent": "a leak-off test as a mud weight",
	"pressure/matrix-stress": "the stress that the rock's frame carries, beside a correlated gradient",
	"pressure/matrix-stress-gradient": "the same as a gradient",
	"pressure/maximum-formation-pressure": "the greatest pore pressure that the kick tolerance allows for",
	"pressure/pipe-velocity": "the velocity of mud in the pipe",
	"pressure/weight-up-sacks": "barite to kill a kick of the stated intensity",
	"safety/h2s-mass-per-hour": "a release in pounds an hour",
	"safety/h2s-radius-annex-c-puff": "the radius of a release of a stated volume",
	"safety/line-test-pressure": "a number of one state's law: it belongs in that state's rules",
	"safety/silica-twa": "an exposure averaged over the shift, where levels and times are stated",
	"stimulation/closure-stress": "the closure stress at the perforations",
	"stimulation/hindered-settling-velocity": "how far proppant settles while the fracture closes",
	"stimulation/kgd-growth": "the plane-strain model without leakoff, in which the one with leakoff must end",
	"stimulation/kgd-length": "the same",
	"stimulation/kgd-pressure": "the same",
	"stimulation/net-pressure-for-height": "the net pressure at which the fracture outgrows its barriers",
	"stimulation/pad-fraction-alternative": "a second opinion on the pad",
	"stimulation/plane-strain-modulus-from-shear": "the modulus where shear is measured",
	"stimulation/proppant-per-minute": "what the blender must take, by step",
	"stimulation/radial-radius": "the radial model without leakoff, in which the one with leakoff must end",
	"stimulation/radial-width": "the same",
	"stimulation/ramp-concentration": "the ramp at one volume, beside its means by step",
	"stimulation/ramp-mass": "the proppant of a ramp, beside the sum of its steps",
	"stimulation/settling-velocity": "how far proppant settles while the fracture closes",
	"trajectory/arc-departure": "the departure that a build makes, in the plan",
	"trajectory/arc-depth": "the depth that a build makes, in the plan",
};

/** Arithmetic that says nothing of a formula: turning units. */
const TURNS = ["radians", "degrees", "inSi", "cubicFeet"];

const sources = readSources();

/** Whether the program does the arithmetic of a declaration, however far down it stands. */
const isDone = (file: string, name: string, seen: ReadonlySet<string> = new Set()): boolean => {
	const declared = sources.modules.get(file)?.declared.get(name);
	return namesAsked(declared, file, sources.modules).some(([place, other]) => {
		const key = placeOf(place, other);
		if (seen.has(key) || !/\/src\/(?:calc|definition)\//u.test(place) || TURNS.includes(other)) return false;
		const node = sources.modules.get(place)?.declared.get(other);
		const init = node?.["init"] as { readonly type: string } | undefined;
		const isFunction = node?.type === "FunctionDeclaration" || /Function/u.test(init?.type ?? "");
		return isFunction && (sources.reached.has(key) || isDone(place, other, new Set([...seen, key])));
	});
};

const idle = async (): Promise<readonly string[]> => {
	const files = [...sources.modules.keys()].filter((file) => /\/src\/calc\/(?!register)/u.test(file));
	const found: string[] = [];
	for (const file of files.filter((name) => !name.endsWith("index.ts"))) {
		const loaded = (await import(file)) as Readonly<Record<string, unknown>>;
		const own = Object.entries(loaded).filter(([name]) => sources.modules.get(file)?.declared.has(name));
		for (const [name, value] of own)
			for (const { id } of formulasIn({ [name]: value }))
				if (!sources.reached.has(placeOf(file, name)) && !isDone(file, name)) found.push(id);
	}
	return found.sort();
};

describe("formulas", () => {
	test("feed what a reader sees, but for those that are listed", async () => {
		expect(FORMULAS.length).toBeGreaterThan(400);
		expect(sources.reached.size).toBeGreaterThan(2000);
		expect(await idle()).toEqual(Object.keys(IDLE).sort());
	});

	test("are not reached by a topic's list of them", () => {
		const code = parseAst("import * as all from './sacks.ts'; export const list = formulasIn(all);").body;
		const list = [...sources.modules.keys()].find((file) => file.endsWith("/calc/cement/index.ts")) ?? "";
		expect(namesAsked(code[1], list, sources.modules).filter(([, name]) => name !== "list")).toEqual([]);
		const unused = [...sources.modules.keys()].find((file) => file.endsWith("/calc/safety/silica.ts")) ?? "";
		expect(sources.modules.get(unused)?.declared.has("silicaTimeWeightedAverage")).toBe(true);
		expect(sources.reached.has(placeOf(unused, "silicaTimeWeightedAverage"))).toBe(false);
	});
});
