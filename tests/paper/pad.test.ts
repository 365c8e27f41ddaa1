import { describe, expect, it, test } from "vitest";
import { jointNoise, loudAtOnce } from "../../src/calc/pad/joint-noise.ts";
import { jointPhases } from "../../src/calc/pad/joint-schedule.ts";
import { countOfWells, massOfWells, spanOfPhase, volumeOfWells } from "../../src/calc/pad/sums.ts";
import { constant, type Known } from "../../src/cite/known.ts";
import { cite } from "../../src/cite/source.ts";
import { deadlineCalendar } from "../../src/paper/deadlines.ts";
import { jointFindings } from "../../src/paper/pad/joint-findings.ts";
import { isWaterShownProtected } from "../../src/paper/water-verdict.ts";
import { wellMap } from "../../src/paper/well-map.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import { padFindings } from "../pads.ts";
import { composeOnce } from "../run/compose-once.ts";

const [first, ...rest] = padFindings();
if (first === undefined) throw new Error("the pad has no well");
const wells = [first, ...rest];
const pad = jointFindings("Bristle Creek pad", [first, ...rest], "00000000");
const given = <D extends Dimension>(dimension: D, value: number): Known<D> =>
	constant(dimension, value, "given", cite("definition"));
const sum = (values: readonly (number | undefined)[]): number =>
	values.reduce<number>((total, value) => total + (value ?? Number.NaN), 0);

describe("the wells of a pad as one piece of work", () => {
	test("sums are those of the wells, and of one well its own", () => {
		const { stimulation } = pad.results;
		expect(stimulation?.water_volume.value).toBeCloseTo(
			sum(wells.map(({ results }) => results.stimulation?.water_volume.value)),
			6,
		);
		expect(stimulation?.proppant_mass.value).toBeCloseTo(
			sum(wells.map(({ results }) => results.stimulation?.proppant_mass.value)),
			3,
		);
		expect(stimulation?.stage_count.value).toBe(3 * 39);
		expect(volumeOfWells.of({ V_i: [given("volume", 7)] }).value).toBe(7);
		expect(massOfWells.of({ m_i: [given("mass", 7), given("mass", 5)] }).value).toBe(12);
		expect(countOfWells.of({ n_i: [] }).value).toBe(0);
	});

	test("a phase spans from its first start to its last end: of one well its days, of two in a row the days of both", () => {
		const days = (...values: readonly number[]) => values.map((value) => given("duration", value * 1440));
		const span = (starts: readonly number[], lengths: readonly number[]) =>
			spanOfPhase.of({ s_i: days(...starts), t_i: days(...lengths) }).value / 1440;
		expect(span([40], [9])).toBe(9);
		expect(span([40, 49], [9, 6])).toBe(15);
		expect(span([49, 40], [6, 30])).toBe(30);
		expect(span([40, 60], [9, 6])).toBe(26);
		expect(span([40], [9, 6])).toBeNaN();
	});

	it("has one schedule: the site built once, each other phase from the first well's start to the last one's end", () => {
		expect(
			pad.well.schedule.map(({ phase, starts, days }) => [
				phase,
				starts,
				...days.map(({ value }) => value / 1440),
			]),
		).toEqual([
			["location", "2026-08-03", 18, 21, 28],
			// From August 28; the third well begins on October 9, day 42, and drills 16, 19 or 26 days.
			["drilling", "2026-08-28", 58, 61, 68],
			["stimulation", "2026-11-02", 48, 52, 58],
			["plug drill-out", "2026-12-28", 13, 14, 16],
			["flowback", "2027-01-01", 20, 31, 50],
		]);
	});

	it("has the truck loads of all wells, and those of building the site once", () => {
		const own = wells.map(({ results }) => results.logistics);
		const site = own[0]?.by_phase.find(({ phase }) => phase === "location")?.loads.value ?? Number.NaN;
		expect(pad.results.logistics?.total_loads?.value).toBe(
			sum(own.map((each) => each?.total_loads?.value)) - 2 * site,
		);
		const of = (phase: string, from = pad) =>
			from.results.logistics?.by_phase.find((each) => each.phase === phase);
		// Treated one after another: no day is busier than a single well's. Flowing back together: the days add up.
		expect(of("stimulation")?.busiest_day?.value).toBe(of("stimulation", first)?.busiest_day?.value);
		expect(of("flowback")?.busiest_day?.value).toBe(3 * (of("flowback", first)?.busiest_day?.value ?? 0));
	});

	it("is as loud as the wells that do loud work on one day, added as sound adds", () => {
		const phases = jointPhases(wells.map(({ well }) => well)) ?? [];
		expect(loudAtOnce(phases)).toBe(1);
		const home = (atOnce: number) =>
			jointNoise(
				wells.map(({ results }) => results.safety),
				atOnce,
			)?.noise_at_nearest_dwelling?.level.value ?? 0;
		expect(pad.results.safety?.noise_at_nearest_dwelling?.level.value).toBe(home(1));
		// Two equal sources are 3 dB louder than one, three are 4.8 dB: 10 log n.
		expect(home(2) - home(1)).toBeCloseTo(10 * Math.log10(2), 1);
		expect(home(3) - home(1)).toBeCloseTo(10 * Math.log10(3), 1);
	});

	it("counts of each neighbor the nearest well", () => {
		for (const { id, from_path } of pad.results.site.neighbors)
			expect(from_path?.value).toBe(
				Math.min(
					...wells.flatMap(
						({ results }) => results.site.neighbors.find((each) => each.id === id)?.from_path?.value ?? [],
					),
				) === Number.POSITIVE_INFINITY
					? undefined
					: Math.min(
							...wells.flatMap(
								({ results }) =>
									results.site.neighbors.find((each) => each.id === id)?.from_path?.value ?? [],
							),
						),
			);
	});

	it("does not show the water as protected where one of its wells does not", () => {
		expect(isWaterShownProtected(pad)).toBe(true);
		const [finding] = first.judgement.findings.filter(({ check }) => check === "cement-coverage");
		if (finding === undefined) throw new Error("no such finding");
		const open = { ...finding, verdict: "not met" as const };
		const last = wells.at(-1) ?? first;
		const faulty = {
			...last,
			judgement: { ...last.judgement, findings: [...last.judgement.findings, open] },
		};
		expect(isWaterShownProtected(jointFindings("pad", [first, faulty], "00000000"))).toBe(false);
	});
});

describe("the joint papers of a pad", () => {
	const text = (language: "en" | "es", paper: "landowner" | "handout") => {
		const [document] = composeOnce(pad, [{ paper, language, units: "field" }]).documents;
		if (document === undefined) throw new Error("no paper");
		return { name: document.name, text: renderText(document.paper).replaceAll(/\s+/gu, " ") };
	};

	it("are named by the pad, and tell how many wells there are and which", () => {
		const packet = text("en", "landowner");
		expect(packet.name).toBe("bristle-creek-pad.landowner");
		expect(packet.text).toContain("plans 3 wells from one site");
		for (const { well } of wells) expect(packet.text).toContain(well.identity.name);
		expect(packet.text).toContain("it means Bristle Creek Unit 1-21H");
		expect(packet.text).not.toContain("one well for");
		expect(text("en", "handout").text).toContain("plans 3 wells from one site");
		expect(text("es", "landowner").text).toContain("planea perforar 3 pozos desde un solo sitio");
	});

	it("have one calendar and one map of all wells", () => {
		const words = loadWords("en");
		const { entries } = deadlineCalendar(pad, words);
		expect(entries).toHaveLength(sum(wells.map((each) => deadlineCalendar(each, words).entries.length)));
		expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
		const map = wellMap(pad, words);
		if (typeof map === "string") throw new Error(map);
		const count = (kind: string) => map.features.filter((each) => each.kind === kind).length;
		expect([count("wellhead"), count("well path"), count("offset well"), count("dwelling")]).toEqual([
			3, 3, 0, 1,
		]);
	});
});
