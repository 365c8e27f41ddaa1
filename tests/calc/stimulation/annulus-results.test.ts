import { describe, expect, test } from "vitest";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CasingResults } from "../../../src/calc/results.ts";
import { boundaryResults } from "../../../src/calc/stimulation/boundary.ts";
import type { AnnulusLimit, CementJob, Stimulation } from "../../../src/well/well.ts";
import { hole, md, slurry, string, well } from "../a-well.ts";
import { given } from "../given.ts";
import { only, planned, pumped, results } from "./a-stimulation.ts";

const psi = (value: number) => given("pressure", value);
const wide = hole("wide", 17.5, 0, 3000, { mud: 9 });
const outer = string("outer", wide, 22, [[13.375, 12.415, 3000]]);
const middle = string("middle", hole("middle", 12.25, 0, 6000, { mud: 9 }), 22, [[9.625, 8.681, 6000]]);
const strings = [outer, middle, pumped];

const between = (inner: string, out: string, more: Partial<AnnulusLimit> = {}): AnnulusLimit => ({
	between: [inner, out],
	...more,
});
const limits: Stimulation["limits"] = { maximumTreatingPressure: psi(9000), pumpKickouts: [] };
const annuli = (list: readonly AnnulusLimit[], more: Partial<Stimulation> = {}, of = strings) =>
	results(planned({ annuli: list, limits, ...more }), {}, of).found?.annuli ?? [];

const treatingString = {
	sections: string("frac", only, 22, [[4.5, 4, 8000]]).sections,
	packer: { depth: md(8000) },
} as NonNullable<Stimulation["treatingString"]>;

describe("annuli", () => {
	test("rise by less with the outer pipe free than held, and outward by what the one inside rises to", () => {
		const [inside, outside] = annuli([between("production", "middle"), between("middle", "outer")]);
		expect(inside?.rise?.free.value).toBeGreaterThan(0);
		expect(inside?.rise?.held.value).toBeGreaterThan(inside?.rise?.free.value ?? Number.NaN);
		expect(inside?.highest?.value).toBe(inside?.rise?.held.value);
		expect(outside?.rise?.held.value).toBeGreaterThan(0);
		expect(outside?.rise?.held.value).toBeLessThan(inside?.rise?.held.value ?? Number.NaN);
		// The same, told in the other order; alone, nothing presses the outer one.
		const turned = annuli([between("middle", "outer"), between("production", "middle")]);
		expect(turned[0]?.rise?.held.value).toBe(outside?.rise?.held.value);
		expect(annuli([between("middle", "outer")])[0]).toEqual({ id: "middle-outer" });
	});

	test("a relief valve holds them, and spares the ones outside", () => {
		const relieved = annuli([
			between("production", "middle", { relief: psi(100) }),
			between("middle", "outer"),
		]);
		expect(relieved[0]?.highest?.value).toBe(100);
		expect(relieved[0]?.rise?.held.value).toBeGreaterThan(100);
		const closed = annuli([between("production", "middle"), between("middle", "outer")]);
		expect(relieved[1]?.rise?.held.value).toBeLessThan(closed[1]?.rise?.held.value ?? Number.NaN);
	});

	test("cement to the top of a string leaves nothing outside it to rise", () => {
		const cement = {
			slurries: [slurry("lead", 22, 5000)],
			plugs: [],
			topMethod: "returns seen",
			volumeBasis: "gauge hole",
		} as unknown as CementJob;
		const cemented = [outer, middle, { ...pumped, cement }];
		expect(annuli([between("production", "middle")], {}, cemented)[0]).toEqual({ id: "production-middle" });
		const short = [
			outer,
			middle,
			{ ...pumped, cement: { ...cement, slurries: [slurry("lead", 4000, 5000)] } },
		];
		expect(annuli([between("production", "middle")], {}, short)[0]?.rise?.free.value).toBeGreaterThan(0);
		const record = { top: { depth: md(24), method: "returns seen" } } as CementJob["actual"];
		const recorded = [
			outer,
			middle,
			{
				...pumped,
				cement: { ...cement, slurries: [slurry("lead", 4000, 5000)], actual: record } as CementJob,
			},
		];
		expect(annuli([between("production", "middle")], {}, recorded)[0]).toEqual({ id: "production-middle" });
	});

	test("a packer keeps treating pressure from the casing; its swelling tubing is what presses there", () => {
		const list = [between("treating-string", "production"), between("production", "middle")];
		const packed = annuli(list, { treatingString });
		const bare = annuli(list);
		expect(packed[0]?.rise?.free.value).toBeGreaterThan(0);
		expect(packed[1]?.rise?.held.value).toBeLessThan(bare[1]?.rise?.free.value ?? Number.NaN);
		// Open at its end, the same pressure stands around the pipe and on the casing.
		const { packer: _, ...open } = treatingString;
		const unpacked = annuli(list, { treatingString: open });
		expect(unpacked[0]).toEqual({ id: "treating-string-production" });
		expect(unpacked[1]?.rise?.free.value).toBe(bare[1]?.rise?.free.value);
	});

	test("strings named in a ring end", () => {
		expect(annuli([between("middle", "outer"), between("outer", "middle")]).length).toBe(2);
	});
});

describe("a treating string in the pressure boundary", () => {
	const rated = (yieldOf: number) =>
		treatingString.sections.map((section) => ({
			...section,
			wall: given("diameter", 0.25),
			minimumYield: psi(yieldOf),
			minimumTensile: psi(yieldOf + 10_000),
			connection: "plain end",
			nominalWeight: given("linear-weight", 11.6),
		})) as unknown as NonNullable<Stimulation["treatingString"]>["sections"];
	const of = (element: string, more: Partial<Stimulation>) =>
		results(planned({ boundary: [{ element, factor: given("ratio", 0.8) }], ...more }));

	test("is rated by its pipe, and is the weakest where it is", () => {
		const treating = { ...treatingString, sections: rated(80_000) };
		const { found } = of("treating string", { treatingString: treating });
		// Barlow: 0.875 · 2 · 80,000 · 0.25 / 4.5.
		expect(found?.boundary[0]?.rating.value).toBeCloseTo(0.875 * 2 * 80_000 * (0.25 / 4.5), 6);
		expect(found?.limiting?.element).toBe("treating string");
	});

	test("a packer is rated by the pressure across it", () => {
		const packer = { depth: md(8000), rating: psi(7000) };
		const { found } = of("packer", {
			treatingString: { ...treatingString, sections: rated(80_000), packer },
		});
		expect(found?.boundary[0]?.allowed.value).toBe(5600);
	});

	test("below its packer the casing is rated by pipe and coupling of the runs that reach below it, and no others", () => {
		const packer = { depth: md(8000), rating: psi(7000) };
		const run = (bottom: number, pipe: number, coupling?: number) => ({
			bottom: { md: md(bottom) },
			internal_yield: psi(pipe),
			...(coupling === undefined ? {} : { coupling_internal_yield: psi(coupling) }),
		});
		const rating = (...sections: readonly object[]) => {
			const stimulation = planned({
				boundary: [{ element: "casing", factor: given("ratio", 1) }],
				treatingString: { ...treatingString, sections: rated(80_000), packer },
			});
			const gaps = openGaps();
			const casing = { production: { sections } } as unknown as Readonly<Record<string, CasingResults>>;
			const of = well([only], [pumped], { stimulation });
			return boundaryResults(of, stimulation, casing, gaps)[0]?.rating.value;
		};
		expect(rating(run(8000, 5000, 4000), run(9000, 11_000, 9000))).toBe(9000);
		expect(rating(run(8000, 5000, 4000), run(9000, 11_000))).toBe(11_000);
		expect(rating(run(8001, 5000), run(9000, 11_000, 9000))).toBe(5000);
		expect(rating(run(8000, 5000, 4000))).toBeUndefined();
	});

	test("not listed, it is told", () => {
		const { gaps } = of("treating iron", {
			treatingString: { ...treatingString, sections: rated(80_000) },
			boundary: [{ element: "treating iron", rating: psi(15_000), factor: given("ratio", 0.9) }],
		});
		expect(gaps.map(({ key }) => key)).toEqual([
			"stimulation.boundary.treating-string",
			"stimulation.boundary.packer",
		]);
	});
});
