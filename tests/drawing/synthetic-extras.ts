import type { LoadCaseResults, Results } from "../../src/calc/results.ts";
import type { KnownTable } from "../../src/cite/known.ts";
import type { Schedule } from "../../src/definition/definition.ts";
import { PHASES } from "../../src/definition/schedule.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import type { Well } from "../../src/well/well.ts";
import { known } from "./synthetic-well.ts";

const tabled = <C extends string>(
	columns: Readonly<Record<C, Dimension>>,
	rows: readonly Readonly<Record<C, number>>[],
): KnownTable<C> => ({ columns, rows, from: { kind: "assumed", id: "synthetic" } });

/** Numbers from 0 to 1 that a seed repeats. */
const numbers = (seed: number) => {
	let state = (seed * 2_654_435_761 + 1) >>> 0;
	return () => {
		state = (state * 1_664_525 + 1_013_904_223) >>> 0;
		return state / 2 ** 32;
	};
};

const SITUATIONS = {
	burst: [
		"pressure-test",
		"gas-kick",
		"bumped-plug",
		"stimulation",
		"shut-in-gas",
		"tubing-leak",
		"shut-in-hot",
		"tubing-leak-hot",
	],
	collapse: ["evacuation", "cementing", "drawdown", "producing-hot", "mobile-salt"],
	tension: [
		"running",
		"bending",
		"shock",
		"overpull",
		"bumped-plug",
		"pressure-test",
		"gas-kick",
		"stimulation",
		"shut-in-gas",
	],
} as const;

const loadsOf = (from: number, to: number, next: () => number): LoadCaseResults[] =>
	(["burst", "collapse", "tension"] as const).flatMap((kind) => {
		const rating = kind === "tension" ? 200_000 + 900_000 * next() : 500 + 12_000 * next();
		return SITUATIONS[kind]
			.filter(() => next() > 0.3)
			.map((situation): LoadCaseResults => {
				const [a, b] = [rating * (1.1 * next() - 0.1), rating * (1.1 * next() - 0.1)];
				const rows = Array.from({ length: 12 }, (_, i) => {
					const share = i / 11;
					return {
						md: from + (to - from) * share,
						tvd: from + (to - from) * share,
						load: a + (b - a) * share,
						rating: rating * (1 - 0.1 * share),
					};
				});
				const factor = Math.min(...rows.filter((row) => row.load > 0).map((row) => row.rating / row.load));
				return {
					id: `${kind}-${situation}`,
					kind,
					situation,
					phase: "drilling",
					line: tabled(
						{ md: "measured-depth", tvd: "true-vertical-depth", load: "pressure", rating: "pressure" },
						rows,
					),
					...(Number.isFinite(factor) ? { least_factor: known("ratio", factor) } : {}),
					required: known("ratio", kind === "collapse" ? 1.125 : 1.1),
				} as unknown as LoadCaseResults;
			});
	});

/** Pressures of rock, fluids and cement, loads, a treatment, a ladder and a schedule for a synthetic well. */
export const withExtras = (
	{ well, results }: { readonly well: Well; readonly results: Results },
	seed: number,
): { well: Well; results: Results } => {
	const next = numbers(seed);
	const ground = well.datum.groundLevel.value;
	const deepest = results.trajectory.total_depth.tvd.value;
	const beds = well.geology.formations;
	const windowRows = beds.flatMap((bed, i) => {
		const [top, base] = [bed.top.value, beds[i + 1]?.top.value ?? deepest];
		if (base <= top || next() < 0.1) return [];
		const [pore, fracture] = [8.4 + 4 * next(), 13 + 4 * next()];
		return [top, base].map((tvd) => ({
			tvd,
			pore: 0.052 * pore * (tvd - ground),
			fracture: 0.052 * fracture * (tvd - ground),
		}));
	});
	const holes = well.holes.map((hole, i) => {
		const before = well.strings[i - 1];
		const tvd = Math.min(hole.bottom.value, deepest);
		return {
			id: hole.id,
			bottom: {
				md: hole.bottom,
				tvd: known("true-vertical-depth", tvd),
				below_ground: known("depth-below-ground", tvd - ground),
			},
			mud_hydrostatic_at_bottom: known("pressure", 0.052 * (hole.fluid?.density?.value ?? 9) * tvd),
			...(before === undefined || next() < 0.3
				? {}
				: {
						shoe: before.id,
						shoe_strength: known("density", 12 + 5 * next()),
						shoe_strength_basis: "planned test" as const,
					}),
		};
	});
	const casing = Object.fromEntries(
		well.strings.map((string) => [
			string.id,
			{ ...results.casing[string.id], loads: loadsOf(string.top.value, string.shoe.value, next) },
		]),
	);
	const cement = Object.fromEntries(
		Object.entries(results.cement).map(([id, job]) => {
			const [top, shoe] = [job.top.tvd.value, results.casing[id]?.shoe.tvd.value ?? deepest];
			const fluid = 0.052 * 9 * top;
			return [
				id,
				{
					...job,
					annulus_column: tabled({ tvd: "true-vertical-depth", standing: "pressure" }, [
						{ tvd: 0, standing: 0 },
						{ tvd: top, standing: fluid },
						{ tvd: shoe, standing: fluid + 0.052 * 15 * (shoe - top) },
					]),
					equivalent_density_at_shoe: known("density", 12 + 3 * next()),
				},
			];
		}),
	);
	const steps = Array.from({ length: 1 + Math.floor(next() * 14) }, (_, i) => ({
		name: i === 0 ? "pad" : `sand ${i} of the long kind`.slice(0, 6 + Math.floor(next() * 18)),
		rate: known("flow-rate", 10 + 90 * next()),
		...(i === 0 ? {} : { concentration: known("proppant-concentration", 4 * next()) }),
		clean_volume: known("volume", 100),
		slurry_volume: known("volume", 110),
		proppant_mass: known("mass", 0),
		time: known("duration", 0.5 + 30 * next() ** 3),
	}));
	const total = steps.reduce((sum, step) => sum + step.time.value, 0);
	const treating = 3000 + 8000 * next();
	const rungs = [
		{ id: "expected", tier: "expected" as const, pressure: known("pressure", treating) },
		...Array.from({ length: Math.floor(next() * 5) }, (_, i) => ({
			id: `kickout-${i + 1}`,
			tier: "kickout" as const,
			name: `${i + 1}`,
			pressure: known("pressure", treating * (1.02 + 0.01 * i)),
		})),
		{ id: "relief", tier: "relief" as const, pressure: known("pressure", treating * 1.08) },
		{ id: "maximum", tier: "maximum" as const, pressure: known("pressure", treating * 1.1) },
		...["treating iron", "wellhead", "casing", "casing test", "a hose with a long name"]
			.slice(0, 1 + Math.floor(next() * 5))
			.map((element, i) => ({
				id: element.replaceAll(" ", "-"),
				tier: "element" as const,
				name: element,
				pressure: known("pressure", treating * (1.12 + 0.5 * next() ** (i + 1))),
			})),
		{ id: "line-test", tier: "line-test" as const, pressure: known("pressure", treating * 1.15) },
	];
	const elements = rungs.filter((rung) => rung.tier === "element");
	const weakest = [...elements].sort((a, b) => a.pressure.value - b.pressure.value)[0];
	const top = results.stimulation?.top_perforation.tvd.value ?? deepest;
	const given = results.stimulation;
	const schedule = PHASES.filter(() => next() > 0.4).map((phase, i) => {
		const base = 1 + 40 * next();
		const day = (days: number) => known("duration", days * 1440);
		return {
			phase,
			...(i === 0 && next() > 0.3 ? { starts: "2026-06-01" } : {}),
			days: next() > 0.3 ? [day(base * 0.7), day(base), day(base * 1.6)] : [day(Math.ceil(base))],
			...(next() > 0.4 ? { hours: "around the clock" } : {}),
		};
	}) as unknown as Schedule;
	return {
		well: {
			...well,
			schedule,
			...(well.stimulation === undefined
				? {}
				: {
						stimulation: {
							...well.stimulation,
							limits: { pumpKickouts: [], maximumTreatingPressure: known("pressure", treating * 1.1) },
							stages: (given?.stages ?? []).map(({ number }) => ({
								number,
								...(next() > 0.6
									? { actual: { averagePressure: known("pressure", treating * (0.8 + 0.3 * next())) } }
									: {}),
							})),
						},
					}),
			strings: well.strings.map((string) => ({
				...string,
				...(next() > 0.7
					? { plannedShoe: known("measured-depth", string.shoe.value * (0.94 + 0.1 * next())) }
					: {}),
				...(string.cement !== undefined && next() > 0.8
					? { cement: { ...string.cement, stageTool: known("measured-depth", string.shoe.value * 0.6) } }
					: {}),
			})),
		} as unknown as Well,
		results: {
			...results,
			casing: casing as unknown as Results["casing"],
			cement: cement as unknown as Results["cement"],
			pressure: {
				holes,
				window: tabled({ tvd: "true-vertical-depth", pore: "pressure", fracture: "pressure" }, windowRows),
			} as unknown as Results["pressure"],
			...(given === undefined
				? {}
				: {
						stimulation: {
							...given,
							stages: given.stages.map((stage) => ({ ...stage, steps })),
							boundary: elements.map((rung) => ({
								id: rung.id,
								element: rung.name ?? "",
								rating: known("pressure", rung.pressure.value / 0.9),
								allowed: rung.pressure,
							})),
							...(weakest === undefined
								? {}
								: { limiting: { element: weakest.name ?? "", allowed: weakest.pressure } }),
							ladder: { rungs, broken: [] },
							...(next() > 0.4
								? {
										hardest_stage: {
											number: 1,
											greatest: known("pressure", treating),
											course: tabled(
												{ time: "duration", surface: "pressure" },
												Array.from({ length: 20 }, (_, i) => ({
													time: (total * i) / 19,
													surface: i === 7 ? treating : treating * (0.7 + 0.3 * next()),
												})),
											),
										},
									}
								: {}),
							...(next() > 0.5
								? {
										fractures: {
											formation: "target",
											models: [
												{
													id: "radial",
													top: known("true-vertical-depth", top - 400 * next()),
													height: known("length", 700 * next()),
												},
											],
											highest_top: known("true-vertical-depth", top - 400),
										},
									}
								: {}),
						} as unknown as NonNullable<Results["stimulation"]>,
					}),
		},
	};
};
