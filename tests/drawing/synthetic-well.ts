import type { DepthMark, HoleMark, Results } from "../../src/calc/results.ts";
import { placeAt } from "../../src/calc/trajectory/at-depth.ts";
import { minimumCurvaturePath, pathStationsOf } from "../../src/calc/trajectory/path.ts";
import type { Known, KnownTable } from "../../src/cite/known.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import { quantity } from "../../src/units/quantity.ts";
import type { CasingString, Formation, Lithology, Well } from "../../src/well/well.ts";

/** A value out of nowhere, for drawings that only need its size. */
export const known = <D extends Dimension>(dimension: D, value: number): Known<D> => ({
	dimension,
	value: quantity(dimension, value),
	from: { kind: "assumed", id: "synthetic" },
});

export interface StringSpec {
	readonly id: string;
	readonly od: number;
	readonly shoe: number;
	readonly kind?: CasingString["kind"];
	readonly top?: number;
	readonly within?: string;
	/** Measured depth of the cement's top; ground level for cement to surface; none for no cement. */
	readonly cementTop?: number;
	readonly recorded?: boolean;
	readonly plannedTop?: number;
	readonly rathole?: number;
	readonly shoeTrack?: number;
	readonly sections?: number;
}

export interface WellSpec {
	readonly name?: string;
	readonly groundLevel?: number;
	readonly strings: readonly StringSpec[];
	readonly total: number;
	readonly kickoff?: number;
	/** Degrees per 100 ft. */
	readonly build?: number;
	readonly inclination?: number;
	readonly azimuth?: number;
	readonly formations?: readonly {
		readonly name: string;
		readonly top: number;
		readonly base?: number;
		readonly lithology: Lithology;
		readonly target?: boolean;
		readonly confining?: boolean;
		readonly flowZone?: "gas";
	}[];
	readonly water?: readonly {
		readonly name: string;
		readonly top: number;
		readonly base: number;
	}[];
	readonly waterBase?: number;
	readonly neighbors?: readonly {
		readonly name: string;
		readonly depth: number;
	}[];
	readonly stages?: {
		readonly count: number;
		readonly clusters: number;
		readonly bottom: number;
		readonly length: number;
		readonly plugs?: boolean;
	};
	readonly method?: "plug and perforate" | "sliding sleeve";
	readonly valve?: boolean;
}

const slug = (text: string) => text.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");

const stationsOf = (spec: WellSpec): KnownTable => {
	const rows = [{ md: 0, inclination: 0, azimuth: 0 }];
	const { kickoff, build = 10, inclination = 90, azimuth = 158 } = spec;
	if (kickoff !== undefined) {
		const length = (inclination / build) * 100;
		const steps = Math.max(1, Math.ceil(length / 90));
		for (let i = 0; i <= steps; i += 1)
			rows.push({
				md: kickoff + (length * i) / steps,
				inclination: (inclination * i) / steps,
				azimuth,
			});
	}
	return {
		columns: { md: "measured-depth", inclination: "angle", azimuth: "angle" },
		rows,
		from: { kind: "assumed", id: "synthetic" },
	};
};

/** A well and results with everything the drawings read, and nothing else. */
export const syntheticWell = (spec: WellSpec): { well: Well; results: Results } => {
	const ground = spec.groundLevel ?? 26;
	const path = minimumCurvaturePath.of({
		stations: stationsOf(spec),
		TD: known("measured-depth", spec.total),
		Avs: known("angle", spec.azimuth ?? 158),
	});
	const stations = pathStationsOf(path);
	const tvdAt = (md: number) => placeAt(stations, md)?.tvd ?? md;
	const hole = (md: number): HoleMark => ({
		md: known("measured-depth", md),
		tvd: known("true-vertical-depth", tvdAt(md)),
		below_ground: known("depth-below-ground", tvdAt(md) - ground),
	});
	const vertical = (tvd: number): DepthMark => ({
		tvd: known("true-vertical-depth", tvd),
		below_ground: known("depth-below-ground", tvd - ground),
	});
	let holeTop = ground;
	const holes = spec.strings
		.filter((string) => string.kind !== "tieback")
		.map((string) => {
			const bottom = Math.min(spec.total, string.shoe + (string.rathole ?? 12));
			const made = {
				id: string.id,
				diameter: known("diameter", string.od + 3),
				top: known("measured-depth", holeTop),
				bottom: known("measured-depth", bottom),
				fluid: { kind: "water-based mud", density: known("density", 9.1) },
			};
			holeTop = bottom;
			return made;
		});
	const strings = spec.strings.map((string, i): CasingString => {
		const own = holes.find((each) => each.id === string.id) ?? holes.at(-1);
		const planned = string.plannedTop ?? string.cementTop;
		const top = string.top ?? ground + 2;
		const count = string.sections ?? 1;
		const made = {
			id: string.id,
			kind: string.kind ?? "casing",
			hole: own,
			within: string.within ?? spec.strings[i - 1]?.id,
			top: known("measured-depth", top),
			shoe: known("measured-depth", string.shoe),
			sections: Array.from({ length: count }, (_, at) => ({
				number: at + 1,
				outsideDiameter: known("diameter", string.od),
				nominalWeight: known("linear-weight", 40 + at),
				grade: "L80",
				connection: "BTC",
				condition: "new",
				top: known("measured-depth", top + ((string.shoe - top) * at) / count),
				bottom: known("measured-depth", top + ((string.shoe - top) * (at + 1)) / count),
			})),
			...(string.shoeTrack === undefined ? {} : { shoeTrack: known("length", string.shoeTrack) }),
			floats: [],
			centralizers: [],
			...(planned === undefined
				? {}
				: {
						cement: {
							slurries: [
								{
									id: "tail",
									role: "tail",
									top: known("measured-depth", planned),
									bottom: known("measured-depth", string.shoe),
								},
							],
						},
					}),
		};
		return made as unknown as CasingString;
	});
	const formations = (spec.formations ?? []).map(
		(bed): Formation => ({
			id: slug(bed.name),
			name: bed.name,
			top: known("true-vertical-depth", bed.top),
			...(bed.base === undefined ? {} : { base: known("true-vertical-depth", bed.base) }),
			lithology: bed.lithology,
			confining: bed.confining ?? false,
			target: bed.target ?? false,
			...(bed.flowZone === undefined ? {} : { flowZone: bed.flowZone }),
		}),
	);
	const water = (spec.water ?? []).map((zone) => ({
		id: slug(zone.name),
		name: zone.name,
		zone,
	}));
	const stages = stagesOf(spec, hole);
	const ends = path.rows.at(-1);
	const landing =
		spec.kickoff === undefined
			? undefined
			: spec.kickoff + ((spec.inclination ?? 90) / (spec.build ?? 10)) * 100;
	const level = landing !== undefined && (spec.inclination ?? 90) >= 80;
	const perforated = stages
		.flatMap((stage) => [stage.top, stage.bottom])
		.sort((a, b) => a.md.value - b.md.value);
	const [top, bottom] = [perforated[0], perforated.at(-1)];
	const protecting = strings.find(
		(string) =>
			spec.waterBase !== undefined && string.shoe.value > spec.waterBase && string.id !== "conductor",
	);
	const well = {
		identity: {
			name: spec.name ?? "Larkspur 4H (fictional)",
			operator: "Quillback Operating (fictional)",
			api_number: "42-000-00000-00-00",
			lease: "Larkspur Unit",
		},
		site: { county: "Marl County (fictional)" },
		datum: {
			name: "rotary table",
			aboveGround: known("length", ground),
			groundElevation: known("elevation", 1482),
			casingHanger: known("measured-depth", ground + 2),
			groundLevel: known("measured-depth", ground),
		},
		geology: {
			formations,
			water: water.map(({ id, name, zone }) => ({
				id,
				name,
				top: known("true-vertical-depth", zone.top),
				base: known("true-vertical-depth", zone.base),
				dissolvedSolids: known("dissolved-solids", 900),
			})),
			...(spec.waterBase === undefined
				? {}
				: {
						protectedWater: {
							base: known("true-vertical-depth", spec.waterBase),
							determinedBy: "groundwater protection letter",
						},
					}),
		},
		holes,
		strings,
		...(spec.stages === undefined
			? {}
			: {
					stimulation: {
						method: spec.method ?? "plug and perforate",
						treatedThrough: strings.at(-1)?.id,
						...(spec.valve === true
							? {
									toe: {
										kind: "initiation valve",
										depth: known("measured-depth", spec.stages.bottom + 20),
									},
								}
							: {}),
					},
				}),
		neighbors: [],
		offsetWells: [],
		offsetPaths: { paths: [] },
	};
	const results = {
		trajectory: {
			basis: "planned",
			path,
			vertical_section_azimuth: known("angle", spec.azimuth ?? 158),
			total_depth: hole(spec.total),
			...(spec.kickoff === undefined ? {} : { kickoff: hole(spec.kickoff) }),
			...(level && landing !== undefined
				? {
						landing: hole(landing),
						lateral_length: known("length", spec.total - landing),
					}
				: {}),
			maximum_inclination: known("angle", Math.max(...path.rows.map((row) => row.inclination ?? 0))),
			closure: known("length", Math.hypot(ends?.north ?? 0, ends?.east ?? 0)),
			closure_azimuth: known("angle", spec.azimuth ?? 158),
		},
		geology: {
			formations: formations.map((bed) => ({
				id: bed.id,
				name: bed.name,
				top: vertical(bed.top.value),
			})),
			water: water.map(({ id, name, zone }) => ({
				id,
				name,
				top: vertical(zone.top),
				base: vertical(zone.base),
			})),
			...(spec.waterBase === undefined ? {} : { protected_water_base: vertical(spec.waterBase) }),
		},
		casing: Object.fromEntries(
			strings.map((string) => [
				string.id,
				{
					id: string.id,
					top: hole(string.top.value),
					shoe: hole(string.shoe.value),
				},
			]),
		),
		cement: Object.fromEntries(
			spec.strings
				.filter((string) => string.cementTop !== undefined)
				.map((string) => [
					string.id,
					{
						id: string.id,
						top: hole(string.cementTop ?? ground),
						top_basis: string.recorded === true ? "recorded" : "planned",
						bottom: hole(string.shoe),
						columns: [{ top: hole(string.cementTop ?? ground), bottom: hole(string.shoe) }],
						to_surface: (string.cementTop ?? ground) <= ground,
					},
				]),
		),
		...(top === undefined || bottom === undefined || spec.stages === undefined
			? {}
			: {
					stimulation: {
						stages,
						top_perforation: top,
						bottom_perforation: bottom,
						stage_count: known("count", spec.stages.count),
					},
				}),
		isolation: {
			...(protecting === undefined || spec.waterBase === undefined
				? {}
				: {
						protecting_string: protecting.id,
						shoe_below_protected_water: known("offset", tvdAt(protecting.shoe.value) - spec.waterBase),
						steel_at_protected_water: known(
							"count",
							strings.filter(
								(string) =>
									string.top.value < (spec.waterBase ?? 0) && string.shoe.value > (spec.waterBase ?? 0),
							).length,
						),
					}),
			...(top === undefined || spec.waterBase === undefined
				? {}
				: {
						protected_water_to_top_perforation: known("offset", top.tvd.value - spec.waterBase),
					}),
			neighbor_wells: (spec.neighbors ?? []).map((each) => ({
				id: slug(each.name),
				name: each.name,
				depth: known("depth-below-ground", each.depth),
				bottom: known("true-vertical-depth", each.depth + ground),
			})),
		},
		barriers: { phases: barriersOf(strings), failures: [] },
		undetermined: [],
	};
	return {
		well: well as unknown as Well,
		results: results as unknown as Results,
	};
};

/** Steel alone, in each phase that is drawn: the last string before the one outside of it, and mud while it is drilled. */
const barriersOf = (strings: readonly CasingString[]) => {
	const [last, before] = strings.toReversed();
	const casing = (string: CasingString | undefined) =>
		string === undefined
			? []
			: [{ element: "casing", string: string.id, depth: string.shoe, tested: false, state: "holds" }];
	const fluid = (string: CasingString | undefined) =>
		string === undefined
			? []
			: [
					{
						element: "fluid column",
						depth: string.hole.bottom,
						density: known("density", 10),
						tested: false,
						state: "lighter than pore pressure",
					},
				];
	const phase = (id: string, primary: readonly unknown[], of?: string) => ({
		id,
		phase: id,
		...(of === undefined ? {} : { of }),
		primary,
		secondary: casing(before),
		required: known("count", 2),
		standing: known("count", 1),
		short: known("count", 1),
	});
	return [
		phase("drilling", fluid(last), last?.hole.id),
		phase("cementing", fluid(last), last?.id),
		phase("treating", casing(last)),
		phase("producing", casing(last)),
	];
};

const stagesOf = (spec: WellSpec, hole: (md: number) => HoleMark) => {
	if (spec.stages === undefined) return [];
	const { count, clusters, bottom, length, plugs = true } = spec.stages;
	return Array.from({ length: count }, (_, i) => {
		const low = bottom - i * length;
		const spacing = (length * 0.8) / Math.max(clusters, 1);
		return {
			number: i + 1,
			top: hole(low - spacing * (clusters - 1)),
			bottom: hole(low),
			clusters: Array.from({ length: clusters }, (_, at) => hole(low - at * spacing)),
			...(plugs && i > 0 ? { plug: hole(low + length * 0.1) } : {}),
		};
	});
};

/** The shape of a well that most of these drawings are for. */
export const LATERAL: WellSpec = {
	name: "Larkspur Unit 4H",
	total: 17_260,
	kickoff: 8360,
	strings: [
		{ id: "conductor", od: 20, shoe: 106, cementTop: 26, rathole: 2 },
		{ id: "surface", od: 13.375, shoe: 1185, cementTop: 26 },
		{ id: "intermediate", od: 9.625, shoe: 6480, cementTop: 26 },
		{ id: "production", od: 5.5, shoe: 17_245, cementTop: 5400, shoeTrack: 90 },
	],
	formations: [
		{ name: "Alder Gravel", top: 26, lithology: "gravel" },
		{ name: "Candle Sand", top: 180, lithology: "sandstone" },
		{ name: "Olive Clay", top: 1010, lithology: "claystone" },
		{ name: "Pellet Limestone", top: 3250, lithology: "limestone" },
		{
			name: "Tern Sand",
			top: 5900,
			base: 5985,
			lithology: "sandstone",
			flowZone: "gas",
		},
		{ name: "Ledge Shale", top: 5985, lithology: "shale" },
		{
			name: "Upper Rush Lime",
			top: 8610,
			lithology: "dolomite",
			confining: true,
		},
		{
			name: "Rush Shale",
			top: 8850,
			base: 9010,
			lithology: "shale",
			target: true,
		},
		{ name: "Lower Rush Marl", top: 9010, lithology: "marl" },
	],
	water: [
		{ name: "Alder water", top: 40, base: 120 },
		{ name: "Candle aquifer", top: 200, base: 985 },
	],
	waterBase: 1010,
	neighbors: [
		{ name: "Windmill well", depth: 285 },
		{ name: "House well", depth: 340 },
	],
	stages: { count: 39, clusters: 6, bottom: 17_110, length: 196 },
};
