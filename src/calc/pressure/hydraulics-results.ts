import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { drillPipeFoot } from "../casing/drill-string.ts";
import { openRock } from "../casing/loads/open-rock.ts";
import { porePressure } from "../casing/loads/surface-pressures.ts";
import { type AnnulusInterval, annulusIntervals } from "../cement/annulus.ts";
import { DATUM } from "../cement/bore.ts";
import { intervalLength } from "../cement/capacity.ts";
import { holeMark, verticalMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { HydraulicsResults, OpenHoleMargin, SurgeResults } from "../results.ts";
import { annulusFrictionGradient, frictionLoss, pipeFrictionGradient, totalLoss } from "./bingham-flow.ts";
import { fracturePressure } from "./fracture-gradient.ts";
import { annulusYieldFriction, pipeYieldFriction } from "./herschel-bulkley.ts";
import { equivalentMudWeight } from "./hydrostatic.ts";
import {
	bitLoss,
	clingingConstant,
	closedPipeVelocity,
	columnDensityAt,
	loadedDensity,
	movingColumn,
	rateOfVelocity,
	swabbedColumn,
} from "./moving-pipe.ts";
import { densityMargin, rockBetween } from "./open-hole.ts";
import {
	consistency,
	flowIndex,
	plasticViscosityOfReadings,
	yieldPointOfReadings,
	yieldStress,
} from "./rheometer.ts";

type Rate = Known<"flow-rate">;
type Gradient = Known<"pressure-gradient">;

/** How a fluid rubs: by Herschel and Bulkley where the dial was read, by Bingham where only PV and YP are stated. */
interface Rubbing {
	readonly model: HydraulicsResults["model"];
	readonly annulus: (Q: Rate, D: Known<"diameter">, d: Known<"diameter">) => Gradient;
	readonly pipe: (Q: Rate, d: Known<"diameter">) => Gradient;
	readonly found: Pick<HydraulicsResults, "yield_stress" | "flow_index" | "consistency">;
}

const rubbingOf = ({ fluid }: Hole, ρ: Known<"density">): Rubbing | undefined => {
	if (fluid?.readings !== undefined) {
		const { six_hundred: R_600, three_hundred: R_300, six: R_6, three: R_3 } = fluid.readings;
		const PV = plasticViscosityOfReadings.of({ R_600, R_300 });
		const YP = yieldPointOfReadings.of({ R_600, R_300 });
		const τ_y = yieldStress.of({ R_6, R_3 });
		const n = flowIndex.of({ PV, YP, τ_y });
		const k = consistency.of({ PV, YP, τ_y, n });
		return {
			model: "Herschel–Bulkley",
			annulus: (Q, D, d) => annulusYieldFriction.of({ ρ, Q, τ_y, n, k, D, d }),
			pipe: (Q, d) => pipeYieldFriction.of({ ρ, Q, τ_y, n, k, d }),
			found: { yield_stress: τ_y, flow_index: n, consistency: k },
		};
	}
	const { plasticViscosity: PV, yieldPoint: YP } = fluid ?? {};
	return PV === undefined || YP === undefined
		? undefined
		: {
				model: "Bingham",
				annulus: (Q, D, d) => annulusFrictionGradient.of({ ρ, Q, PV, YP, D, d }),
				pipe: (Q, d) => pipeFrictionGradient.of({ ρ, Q, PV, YP, d }),
				found: {},
			};
};

/** The drill string at the bottom of a hole, as annuli see a string: pipe, and collars below it. */
const drillingString = (
	well: Well,
	hole: Hole,
	above: CasingString | undefined,
): CasingString | undefined => {
	const { drillString: drill } = well;
	if (drill === undefined) return undefined;
	const joint = hole.bottom;
	const collars = drill.collars;
	const foot = collars === undefined ? joint : drillPipeFoot.of({ MD: joint, L_collars: collars.length });
	const runs = [
		{ top: DATUM, bottom: foot, outsideDiameter: drill.pipe.od },
		...(collars === undefined || foot.value >= joint.value
			? []
			: [{ top: foot, bottom: joint, outsideDiameter: collars.od }]),
	];
	return {
		id: "drill string",
		kind: "casing",
		hole,
		...maybe("within", above?.id),
		top: DATUM,
		shoe: joint,
		sections: runs,
	} as unknown as CasingString;
};

interface Column {
	readonly path: KnownTable;
	readonly ρ: Known<"density">;
	readonly MD_bottom: readonly Known<"measured-depth">[];
	readonly G: readonly Gradient[];
}

const withInner = (intervals: readonly AnnulusInterval[]) =>
	intervals.flatMap((each) => (each.inner === undefined ? [] : [{ ...each, inner: each.inner }]));

/** What the annulus loses where the fluid passes at the rate that each stretch asks for. */
const columnOf = (
	{ path, ρ }: Pick<Column, "path" | "ρ">,
	rubbing: Rubbing,
	intervals: readonly AnnulusInterval[],
	rate: (outer: Known<"diameter">, inner: Known<"diameter">) => Rate,
): Column | undefined => {
	const stretches = withInner(intervals);
	const G = stretches.map(({ outer, inner }) => rubbing.annulus(rate(outer, inner), outer, inner));
	return stretches.length === 0 || G.some(({ value }) => !Number.isFinite(value))
		? undefined
		: { path, ρ, MD_bottom: stretches.map(({ bottom }) => bottom), G };
};

interface Open {
	readonly well: Well;
	readonly path: KnownTable;
	readonly hole: Hole;
	/** The string that is drilled out of, and what the rock at its shoe bears. */
	readonly above: CasingString | undefined;
	readonly strength: Known<"density"> | undefined;
}

/** The rock at the bottom of the hole: along a lateral the column goes on changing where the rock does not. */
const atBottom = ({ well, path, hole }: Open) => {
	const { tvd, below_ground } = holeMark(path, hole.bottom, well.datum);
	const rock = well.geology.formations.findLast(({ top }) => top.value <= tvd.value);
	if (rock === undefined) return [];
	const density = (p: Known<"pressure">) => equivalentMudWeight.of({ p, D: tvd });
	return [
		{
			place: rock.name,
			md: hole.bottom,
			fracture:
				rock.fractureGradient && density(fracturePressure.of({ F: rock.fractureGradient, D: below_ground })),
			pore: rock.porePressure && density(porePressure.of({ ρ_pore: rock.porePressure, D: below_ground })),
		},
	];
};

/** The weakest place of the open hole against a column: its shoe, or a formation's top below. */
const weakestOver = (column: KnownTable, open: Open) => {
	const { well, path, hole, above, strength } = open;
	const bottom = holeMark(path, hole.bottom, well.datum);
	const shoe = above && holeMark(path, above.shoe, well.datum);
	if (above === undefined || shoe === undefined || strength === undefined) return undefined;
	const places = [
		{ place: above.id, md: shoe.md, density: strength },
		...rockBetween(well, path, shoe.tvd, bottom.tvd).flatMap(({ formation, at, density }) =>
			at.md === undefined ? [] : [{ place: formation, md: at.md, density }],
		),
		...atBottom(open).flatMap(({ place, md, fracture: density }) =>
			density === undefined ? [] : [{ place, md, density }],
		),
	];
	return leastMargin(column, places, (bears, moving) =>
		densityMargin.of({ ρ_upper: bears, ρ_lower: moving }),
	);
};

/** The open rock whose pores come nearest to a column, or exceed it most. */
const strongestUnder = (column: KnownTable, open: Open) => {
	const { well, path, hole, above } = open;
	const from = above === undefined ? hole.top : above.shoe;
	const pores = openRock(well, path, holeMark(path, from, well.datum).tvd, hole).flatMap(
		({ formation, depth, pressure }) => {
			const { md } = verticalMark(path, depth, well.datum);
			const density = equivalentMudWeight.of({ p: pressure, D: depth });
			return md === undefined || !Number.isFinite(density.value)
				? []
				: [{ place: formation.name, md, density }];
		},
	);
	const below = atBottom(open).flatMap(({ place, md, pore: density }) =>
		density === undefined ? [] : [{ place, md, density }],
	);
	return leastMargin(column, [...pores, ...below], (pore, moving) =>
		densityMargin.of({ ρ_upper: moving, ρ_lower: pore }),
	);
};

/** Of the places, the one where the column has the least room. */
const leastMargin = (
	column: KnownTable,
	places: readonly {
		readonly place: string;
		readonly md: Known<"measured-depth">;
		readonly density: Known<"density">;
	}[],
	marginOf: (against: Known<"density">, moving: Known<"density">) => Known<"density">,
): OpenHoleMargin | undefined =>
	places
		.map(({ place, md, density: against }) => {
			const moving = columnDensityAt.of({ column, MD: md });
			return { place, density: moving, against, margin: marginOf(against, moving) };
		})
		.filter(({ margin }) => Number.isFinite(margin.value))
		.sort((a, b) => a.margin.value - b.margin.value)[0];

const NO_LOSS = constant("pressure", 0, "no tools are stated", cite("definition"));

/** Losses down the string and through the bit, where bore and nozzles are stated. */
const pumpOf = (
	{ drillString: drill }: Well,
	{ drilling }: Hole,
	string: CasingString,
	rubbing: Rubbing,
	{ ρ, Q }: { readonly ρ: Known<"density">; readonly Q: Rate },
): Pick<HydraulicsResults, "string_loss" | "bit_loss"> => {
	const bores = string.sections.map((_, i) => (i === 0 ? drill?.pipe.id : drill?.collars?.id));
	const losses = string.sections.flatMap(({ top, bottom }, i) => {
		const d = bores[i];
		return d === undefined
			? []
			: [
					frictionLoss.of({
						G: rubbing.pipe(Q, d),
						L: intervalLength.of({ MD_top: top, MD_bottom: bottom }),
					}),
				];
	});
	const { nozzles: N = [] } = drilling ?? {};
	return {
		...maybe("string_loss", losses.length === bores.length ? totalLoss.of({ ΔP_i: losses }) : undefined),
		...maybe("bit_loss", N.length > 0 ? bitLoss.of({ ρ, Q, N }) : undefined),
	};
};

/** What pumps and moving pipe add to the mud of a hole, or take from it; nothing where rate and speeds are not stated. */
export const hydraulicsOf = (open: Open): HydraulicsResults | undefined => {
	const { well, path, hole, above } = open;
	const density = hole.fluid?.density;
	const rubbing = density && rubbingOf(hole, density);
	const string = drillingString(well, hole, above);
	if (density === undefined || rubbing === undefined) return undefined;
	const speeds = movingStrings(open, string);
	const { rate: Q, cuttings } = hole.drilling ?? {};
	if (Q === undefined && speeds.length === 0) return undefined;
	const ρ = cuttings === undefined ? density : loadedDensity.of({ ρ: density, Δρ: cuttings });
	const column = Q && string && columnOf({ path, ρ }, rubbing, around(well, string), () => Q);
	const circulating = column && movingColumn.of(column);
	const pump = Q && string && pumpOf(well, hole, string, rubbing, { ρ: density, Q });
	const annulus =
		column &&
		totalLoss.of({
			ΔP_i: withInner(around(well, string as CasingString)).flatMap(({ length: L }, i) => {
				const G = column.G[i];
				return G === undefined ? [] : [frictionLoss.of({ G, L })];
			}),
		});
	const tools = well.drillString?.tool_loss ?? NO_LOSS;
	return {
		model: rubbing.model,
		...rubbing.found,
		...maybe("rate", Q),
		...maybe("circulating", circulating),
		...maybe("annulus_loss", annulus),
		...maybe("ecd_at_bottom", circulating && columnDensityAt.of({ column: circulating, MD: hole.bottom })),
		...maybe(
			"ecd_at_shoe",
			circulating && above && columnDensityAt.of({ column: circulating, MD: above.shoe }),
		),
		...maybe("weakest_over_ecd", circulating && weakestOver(circulating, open)),
		...pump,
		...maybe(
			"pump_pressure",
			annulus && pump?.string_loss && pump.bit_loss
				? totalLoss.of({ ΔP_i: [annulus, pump.string_loss, pump.bit_loss, tools] })
				: undefined,
		),
		moving: speeds.flatMap((moving) => surgeOf(open, rubbing, density, moving) ?? []),
	};
};

const around = (well: Well, string: CasingString): readonly AnnulusInterval[] =>
	annulusIntervals(well, string, "gauge hole", string.top, string.shoe);

interface Moving {
	readonly by: string;
	readonly string: CasingString;
	readonly speed: Known<"fluid-velocity">;
	/** Casing with a float is run, and not meant to be pulled. */
	readonly pulled: boolean;
}

const movingStrings = ({ well, hole }: Open, drill: CasingString | undefined): readonly Moving[] => {
	const trip = hole.drilling?.tripSpeed;
	return [
		...(drill === undefined || trip === undefined
			? []
			: [{ by: "drill string", string: drill, speed: trip, pulled: true }]),
		...well.strings.flatMap((string): readonly Moving[] =>
			string.hole.id !== hole.id || string.running?.speed === undefined || string.kind === "tieback"
				? []
				: [{ by: string.id, string, speed: string.running.speed, pulled: false }],
		),
	];
};

const surgeOf = (
	open: Open,
	rubbing: Rubbing,
	ρ: Known<"density">,
	{ by, string, speed, pulled }: Moving,
): SurgeResults | undefined => {
	const column = columnOf({ path: open.path, ρ }, rubbing, around(open.well, string), (D, d) => {
		const v = closedPipeVelocity.of({ κ: clingingConstant.of({ D, d }), D, d, v_p: speed });
		return rateOfVelocity.of({ v, D, d });
	});
	if (column === undefined) return undefined;
	const run = movingColumn.of(column);
	const out = pulled ? swabbedColumn.of(column) : undefined;
	const MD = string.shoe;
	return {
		by,
		speed,
		surge: run,
		surge_at_bottom: columnDensityAt.of({ column: run, MD }),
		...maybe("weakest_over_surge", weakestOver(run, open)),
		...maybe("swab", out),
		...maybe("swab_at_bottom", out && columnDensityAt.of({ column: out, MD })),
		...maybe("swab_over_pore", out && strongestUnder(out, open)),
	};
};
