import fc from "fast-check";
import { LITHOLOGIES, type Lithology } from "../../src/well/well.ts";
import type { StringSpec, WellSpec } from "./synthetic-well.ts";

const name = fc.oneof(
	fc.constantFrom(
		"Alder Sand",
		"Ledge Shale",
		"Rush",
		"Upper Pellet Limestone Member",
		"Olive Clay & <Marl>",
	),
	fc
		.string({ minLength: 1, maxLength: 40, unit: fc.constantFrom(..."abcdefghij KLMNO-&<é½") })
		.filter((text) => text.trim() !== ""),
);

/** Depths in order, each a share of the whole apart. */
const spread = (count: number, from: number, to: number): fc.Arbitrary<number[]> =>
	fc.array(fc.integer({ min: 1, max: 100 }), { minLength: count, maxLength: count }).map((shares) => {
		const whole = shares.reduce((sum, share) => sum + share, 0);
		let passed = 0;
		return shares.map((share) => {
			passed += share;
			return Math.round(from + ((to - from) * passed) / whole);
		});
	});

const ODS = [30, 20, 13.375, 9.625, 7, 4.5];

/** Wells from 500 ft vertical to 25,000 ft along the hole, of 2 to 6 strings and none to 120 stages. */
export const randomWell: fc.Arbitrary<WellSpec> = fc
	.record({
		total: fc.integer({ min: 500, max: 25_000 }),
		shape: fc.constantFrom("vertical", "slanted", "lateral" as const),
		count: fc.integer({ min: 2, max: 6 }),
		ground: fc.integer({ min: 2, max: 45 }),
		beds: fc.integer({ min: 0, max: 16 }),
		zones: fc.integer({ min: 0, max: 5 }),
		waterShare: fc.option(fc.double({ min: 0.02, max: 0.5, noNaN: true })),
		stages: fc.option(fc.integer({ min: 1, max: 120 })),
		clusters: fc.integer({ min: 1, max: 15 }),
		wells: fc.array(fc.record({ name, depth: fc.integer({ min: 20, max: 1500 }) }), { maxLength: 6 }),
		kickoffShare: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
		inclination: fc.integer({ min: 5, max: 65 }),
		liner: fc.boolean(),
		sleeve: fc.boolean(),
		valve: fc.boolean(),
	})
	.chain((seed) => {
		const level = seed.shape === "lateral" && seed.total > 4000;
		const kickoff = seed.shape === "vertical" ? undefined : Math.round(seed.total * seed.kickoffShare);
		const build = level ? 10 : 3;
		const inclination = level ? 90 : seed.inclination;
		const turned = kickoff === undefined ? seed.total : kickoff + (inclination / build) * 100;
		const deepest = level && kickoff !== undefined ? kickoff + 573 : seed.total * 0.8;
		const vertical = level ? (kickoff ?? seed.total) : seed.total;
		return fc
			.record({
				shoes: spread(seed.count - 1, seed.ground + 30, Math.max(vertical * 0.8, seed.ground + 60)),
				tops: fc.array(fc.option(fc.double({ min: 0, max: 0.9, noNaN: true })), {
					minLength: seed.count,
					maxLength: seed.count,
				}),
				recorded: fc.array(fc.boolean(), { minLength: seed.count, maxLength: seed.count }),
				sections: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: seed.count, maxLength: seed.count }),
				beds: spread(Math.max(seed.beds, 1), seed.ground, Math.max(deepest, 100)),
				rocks: fc.array(fc.constantFrom(...(LITHOLOGIES as readonly Lithology[])), {
					minLength: 16,
					maxLength: 16,
				}),
				names: fc.array(name, { minLength: 24, maxLength: 24 }),
				zones: spread(Math.max(seed.zones * 2, 2), seed.ground + 2, Math.max(deepest * 0.4, 60)),
			})
			.map((more): WellSpec => {
				const strings = [...more.shoes, seed.total - 10].map((shoe, i): StringSpec => {
					const before = more.shoes[i - 1] ?? seed.ground;
					const share = more.tops[i] ?? undefined;
					const liner = seed.liner && i === seed.count - 1 && i > 1;
					const top = liner ? Math.max(seed.ground + 4, before - 80) : undefined;
					const low = top ?? seed.ground;
					return {
						id:
							["conductor", "surface", "intermediate", "deep-intermediate", "drilling", "production"][i] ??
							`s${i}`,
						od: ODS[i] ?? 4,
						shoe,
						rathole: 5,
						sections: more.sections[i] ?? 1,
						...(liner ? { kind: "liner" as const } : {}),
						...(top === undefined ? {} : { top }),
						...(share === undefined
							? {}
							: { cementTop: Math.round(share < 0.3 ? low : low + (shoe - low) * share) }),
						recorded: more.recorded[i] ?? false,
						...(i === seed.count - 1 ? { shoeTrack: Math.min(80, (seed.total - before) / 4) } : {}),
					};
				});
				const from = level ? turned : seed.total * 0.85;
				const length = seed.stages === null ? 0 : Math.max(1, (seed.total - 60 - from) / seed.stages);
				return {
					name: `Larkspur ${more.names[0] ?? ""}`,
					groundLevel: seed.ground,
					total: seed.total,
					strings,
					...(kickoff === undefined ? {} : { kickoff, build, inclination }),
					formations:
						seed.beds === 0
							? []
							: more.beds.map((top, i) => ({
									name: `${more.names[i] ?? "Bed"} ${i}`,
									top: i === 0 ? seed.ground : Math.max(top, seed.ground + i),
									lithology: more.rocks[i % 16] ?? "shale",
									target: i === more.beds.length - 1,
									confining: i === more.beds.length - 2,
								})),
					water: Array.from({ length: seed.zones }, (_, i) => ({
						name: `Water ${i}`,
						top: more.zones[i * 2] ?? 10,
						base: (more.zones[i * 2 + 1] ?? 20) + 1,
					})),
					...(seed.waterShare === null
						? {}
						: { waterBase: Math.round(seed.ground + (deepest - seed.ground) * seed.waterShare) }),
					neighbors: seed.wells.map((each, i) => ({
						...each,
						name: `${each.name} ${i}`,
						depth: Math.min(each.depth, deepest * 0.5),
					})),
					...(seed.stages === null || seed.total - 60 <= from
						? {}
						: { stages: { count: seed.stages, clusters: seed.clusters, bottom: seed.total - 60, length } }),
					method: seed.sleeve ? "sliding sleeve" : "plug and perforate",
					valve: seed.valve,
				};
			});
	});
