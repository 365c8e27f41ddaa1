import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message, type Said } from "../../messages/message.ts";
import { listOf } from "../../well/said.ts";
import type { Formation } from "../../well/well.ts";
import { depthBelowGround, holeMark, verticalMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import { fracturePressure, porePressure } from "../pressure/fracture-gradient.ts";
import type {
	CasingResults,
	PlacementResults,
	PumpedFluid,
	SlurryResults,
	TightestMargin,
} from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { totalVolume } from "./capacity.ts";
import { grouted, type JobContext } from "./cement-results.ts";
import { type FluidColumn, pressureUnder } from "./column.ts";
import { piecesBetween } from "./cuts.ts";
import { openAt, testedAtShoe } from "./fracture-margin.ts";
import { bumpLimit, bumpWeakest } from "./job-bump.ts";
import { type Fluid, scheduleOf, trainOf } from "./job-train.ts";
import { type JobWay, jobWay } from "./job-way.ts";
import { leastAsDensity } from "./margin-density.ts";
import {
	bumpPressure,
	finalCirculatingPressure,
	fractureMargins,
	freeFallFrom,
	greatestEmpty,
	greatestPumpPressure,
	leastNetForce,
	leastNetForceWhen,
	lostFrom,
	placement,
	poreMargins,
	tightestAt,
	tightestMargin,
	tightestWhen,
	timeAtPlace,
} from "./placement.ts";
import { volumeLeft } from "./sacks.ts";

type Depth = Known<"measured-depth">;

interface Parts {
	/** Of the stage, for gaps. */
	readonly key: string;
	readonly slurries: readonly SlurryResults[];
	readonly displacement: Known<"volume"> | undefined;
	readonly rathole: Known<"volume"> | undefined;
	readonly casing: CasingResults | undefined;
	/** Where the fluids leave the pipe; the shoe, where absent. */
	readonly tool?: Depth;
	/** What stands still below the tool, down to the cement of the first stage. */
	readonly under?: readonly FluidColumn[];
}

const AIR = constant("density", 0, "air weighs nothing here", cite("hydrostatics"));
const NO_VISCOSITY = constant("plastic-viscosity", 0, "friction is left out", cite("definition"));
const NO_YIELD = constant("yield-point", 0, "friction is left out", cite("definition"));

/** The job from the first spacer to the landing of the plug; nothing of a string that is grouted from the surface. */
export const jobPlacement = (context: JobContext, parts: Parts): PlacementResults | undefined => {
	const { well, path, string, job, gaps, at } = context;
	const key = `${parts.key}.placement`;
	const outlet = parts.tool ?? string.shoe;
	if (grouted(context) || parts.displacement === undefined) return undefined;
	const mud = string.hole.fluid;
	const before = mud?.kind === "air" ? AIR : mud?.density;
	const fluids = trainOf(context, parts);
	if (before === undefined || fluids === undefined)
		return gaps.missing(
			key,
			before === undefined
				? message("calc/density-mud-is-not-given")
				: message("calc/pump-rate-or-density-spacer-or"),
			[[...at, "cement"]],
		);
	const moving = before === AIR || (mud?.plasticViscosity !== undefined && mud.yieldPoint !== undefined);
	const stiff: Said[] = [
		...(moving ? [] : [message("calc/the-mud")]),
		...fluids
			.filter(({ PV, YP }) => PV === undefined || YP === undefined)
			.map(({ id }) =>
				id === "spacer" || id.endsWith("displacement")
					? message("calc/the-fluid", { id })
					: message("calc/the-slurry", { id }),
			),
	];
	const withFriction = stiff.length === 0;
	if (!withFriction)
		gaps.missing(
			`${key}.friction`,
			message("calc/plastic-viscosity-or-yield-point-is", { stiff: listOf(stiff) }),
			[[...at, "cement"]],
			[message("calc/needed.rheology", { stiff: listOf(stiff), string: string.id })],
		);
	const way = jobWay(well, path, string, job, {
		outlet,
		rathole: parts.rathole,
		changes: rockChanges(context),
	});
	const flow = {
		...way.inputs,
		ρ_i: [before, ...fluids.map(({ ρ }) => ρ)],
		PV_i: [mud?.plasticViscosity, ...fluids.map(({ PV }) => PV)].map(
			(PV) => (withFriction ? PV : undefined) ?? NO_VISCOSITY,
		),
		YP_i: [mud?.yieldPoint, ...fluids.map(({ YP }) => YP)].map(
			(YP) => (withFriction ? YP : undefined) ?? NO_YIELD,
		),
		V_i: fluids.map(({ V }) => V),
		Q_i: fluids.map(({ Q }) => Q),
	};
	const end = string.sections.at(-1);
	if (end === undefined || parts.casing === undefined) return undefined;
	const steps = placement.of({
		...flow,
		W: parts.casing.weight_in_air,
		D_end: end.outsideDiameter,
	});
	const schedule = scheduleOf(fluids);
	const last = schedule.at(-1);
	if (last === undefined) return undefined;
	const under = parts.under ?? [];
	const final = finalCirculatingPressure.of({ job: steps });
	const falls = freeFallFrom.of({ job: steps });
	const whole =
		parts.tool === undefined &&
		string.kind === "casing" &&
		new Set(string.sections.map((s) => s.outsideDiameter.value)).size === 1;
	const bump = withFriction ? job.bump && bumpPressure.of({ p_final: final, Δp: job.bump }) : undefined;
	return {
		schedule,
		pumped: last.cumulative,
		time: last.elapsed,
		cement_at_shoe: cementAtShoe(way, fluids),
		steps,
		with_friction: withFriction,
		...maybe("fracture", margin(context, way, flow, steps, schedule, under, "fracture")),
		...maybe("pore", margin(context, way, flow, steps, schedule, under, "pore")),
		...(withFriction
			? { greatest_pump_pressure: greatestPumpPressure.of({ job: steps }), final_circulating_pressure: final }
			: {}),
		...maybe("bump_pressure", bump),
		...maybe("bump_weakest", bumpWeakest(context, parts.casing)),
		...maybe("bump_limit", bumpLimit(context, parts.casing)),
		...(Number.isFinite(falls.value)
			? {
					free_fall: {
						from: falls,
						most_empty: greatestEmpty.of({ job: steps }),
					},
				}
			: {}),
		...(whole
			? {
					least_net_force: {
						force: leastNetForce.of({ job: steps }),
						at_pumped: leastNetForceWhen.of({ job: steps }),
					},
				}
			: {}),
		contact: contactTimes(context, way, steps, fluids, parts),
		...maybe("returns_at_measure", returnsAtMeasure(context, parts.slurries)),
	};
};

/** Spacer, and the pipe down to where the fluids leave it. */
const cementAtShoe = ({ inputs }: JobWay, fluids: readonly Fluid[]): Known<"volume"> =>
	totalVolume.of({
		V_i: [...fluids.filter(({ id }) => id === "spacer").map(({ V }) => V), ...inputs.V_pipe],
	});

/** Depths where rock or water changes, along the hole. */
const rockChanges = ({ well, path }: JobContext): readonly Depth[] =>
	[...well.geology.formations, ...well.geology.water].flatMap(({ top, base }) =>
		[top, base].flatMap((tvd) => (tvd === undefined ? [] : (verticalMark(path, tvd, well.datum).md ?? []))),
	);

type Flow = Omit<Parameters<typeof placement.of>[0], "W" | "D_end">;

/** A place of open hole: a boundary of the annulus, or one below the stage tool with what stands between the two. */
interface Place {
	readonly boundary: number;
	readonly md: Depth;
	readonly under: Known<"pressure">;
}

const ON_THE_WAY = constant("pressure", 0, "the place lies on the way of the fluids", cite("definition"));

const placesOf = (
	context: JobContext,
	{ boundaries }: JobWay,
	under: readonly FluidColumn[],
): readonly Place[] => {
	const last = boundaries.length - 1;
	const changes = rockChanges(context);
	const { path } = context;
	const still = under.flatMap((column, i) =>
		piecesBetween(column.from, column.to, changes).map(
			([, bottom]): Place => ({
				boundary: last,
				md: bottom,
				under: pressureUnder([...under.slice(0, i), { ...column, to: bottom, bottom: tvdAt(path, bottom) }]),
			}),
		),
	);
	return [...boundaries.map((md, boundary) => ({ boundary, md, under: ON_THE_WAY })), ...still];
};

/** Places of open hole with what the rock bears there; at a contact the weaker rock, or the stronger flow. */
const rockAt = (
	context: JobContext,
	way: JobWay,
	under: readonly FluidColumn[],
	which: "fracture" | "pore",
) => {
	const { well, path, string } = context;
	const outer = well.strings.find(({ id }) => id === string.within);
	const tested = which === "fracture" ? testedAtShoe(context) : undefined;
	return placesOf(context, way, under).flatMap((place) => {
		const tvd = tvdAt(path, place.md);
		if (outer === undefined ? !openAt(context, tvd) : place.md.value < outer.shoe.value - 1e-6) return [];
		const shown =
			tested !== undefined && Math.abs(tested.at.value - tvd.value) < TOUCHING
				? [{ formation: "shoe test", pressure: tested.pressure }]
				: [];
		const pressures = well.geology.formations
			.filter(
				({ top, base }) =>
					tvd.value >= top.value - TOUCHING &&
					tvd.value <= (base?.value ?? Number.POSITIVE_INFINITY) + TOUCHING,
			)
			.flatMap((formation) => {
				const pressure = pressureOf(
					formation,
					which,
					depthBelowGround.of({ TVD: tvd, height: well.datum.aboveGround }),
				);
				return pressure === undefined ? [] : [{ formation: formation.name, pressure }];
			})
			.concat(shown)
			.sort((a, b) => (which === "fracture" ? 1 : -1) * (a.pressure.value - b.pressure.value));
		const [worst] = pressures;
		return worst === undefined ? [] : [{ ...place, tvd, ...worst }];
	});
};

const TOUCHING = 1e-3;

/** Gradients of rock act from ground level. */
const pressureOf = (
	{ fractureGradient, porePressure: pore }: Formation,
	which: "fracture" | "pore",
	D: Known<"depth-below-ground">,
): Known<"pressure"> | undefined =>
	which === "fracture"
		? fractureGradient && fracturePressure.of({ F: fractureGradient, D })
		: pore && porePressure.of({ ρ_p: pore, D });

const margin = (
	context: JobContext,
	way: JobWay,
	flow: Flow,
	job: KnownTable,
	schedule: readonly PumpedFluid[],
	under: readonly FluidColumn[],
	which: "fracture" | "pore",
): TightestMargin | undefined => {
	const places = rockAt(context, way, under, which);
	if (places.length === 0) return undefined;
	const method = which === "fracture" ? fractureMargins : poreMargins;
	const steps = method.of({
		...flow,
		job,
		n_j: places.map(({ boundary }) =>
			constant("count", boundary, "boundary of the annulus, from its top", cite("definition")),
		),
		D_j: places.map(({ tvd }) => tvd),
		u_j: places.map((place) => place.under),
		p_j: places.map(({ pressure }) => pressure),
	});
	const tvd = tightestAt.of({ margins: steps });
	const when = tightestWhen.of({ margins: steps });
	const place = places.find((each) => Math.abs(each.tvd.value - tvd.value) < TOUCHING);
	const during = schedule.find(({ cumulative }) => when.value <= cumulative.value + TOUCHING);
	return {
		steps,
		margin: tightestMargin.of({ margins: steps }),
		least_as_density: leastAsDensity.of({ margins: steps }),
		at: verticalMark(context.path, tvd, context.well.datum),
		formation: place?.formation ?? "",
		at_pumped: when,
		during: during?.id ?? "",
		...lostAt(way, job, schedule, steps, tvd),
	};
};

/** Where the margin is lost for the first time, and what then stands at the place where it is lost most. */
const lostAt = (
	{ inputs }: JobWay,
	job: KnownTable,
	schedule: readonly PumpedFluid[],
	steps: KnownTable,
	place: Known<"true-vertical-depth">,
): Pick<TightestMargin, "lost"> => {
	const from = lostFrom.of({ margins: steps });
	if (!Number.isFinite(from.value)) return {};
	const row = job.rows.find(({ pumped }) => pumped === from.value);
	const above = inputs.D_annulus.findIndex((tvd) => Math.abs(tvd.value - place.value) < TOUCHING);
	const before = [...inputs.V_pipe, inputs.V_below, ...inputs.V_annulus.slice(0, Math.max(0, above))];
	const there = (row?.["displaced"] ?? 0) - before.reduce((sum, { value }) => sum + value, 0);
	const passing =
		there < 0 ? undefined : schedule.find(({ cumulative }) => there <= cumulative.value + TOUCHING);
	return { lost: { from, passing: passing?.id ?? "mud" } };
};

/** At the base of each water zone that the string passes, where cement is to stand. */
const contactTimes = (
	{ well, path, string }: JobContext,
	way: JobWay,
	steps: KnownTable,
	fluids: readonly Fluid[],
	{ rathole, tool: outlet = string.shoe }: Parts,
): PlacementResults["contact"] => {
	const cement = fluids.findIndex(({ id }) => id !== "spacer");
	const end = fluids.findIndex(({ id }) => id === "displacement");
	const before = (n: number) => totalVolume.of({ V_i: fluids.slice(0, n).map(({ V }) => V) });
	return well.geology.water.flatMap(({ id, name, base }) => {
		const md = verticalMark(path, base, well.datum).md;
		if (md === undefined || md.value >= outlet.value) return [];
		const above = way.boundaries.filter((boundary) => boundary.value > md.value + TOUCHING).length;
		const X = totalVolume.of({
			V_i: [
				...way.inputs.V_pipe,
				...(rathole === undefined ? [] : [rathole]),
				...way.inputs.V_annulus.slice(0, above),
			],
		});
		const flowing = timeAtPlace.of({
			job: steps,
			X,
			S_1: before(cement),
			S_2: before(end),
		});
		if (!(flowing.value > 0)) return [];
		return [
			{
				id,
				name,
				at: holeMark(path, md, well.datum),
				...(cement > 0
					? {
							spacer: timeAtPlace.of({
								job: steps,
								X,
								S_1: before(0),
								S_2: before(cement),
							}),
						}
					: {}),
				cement: flowing,
			},
		];
	});
};

/** What the excess comes to; it comes back where the hole is no larger than its measure. */
const returnsAtMeasure = (
	{ well, job }: JobContext,
	slurries: readonly SlurryResults[],
): Known<"volume"> | undefined => {
	const top = Math.min(...job.slurries.map((slurry) => slurry.top.value));
	if (top > well.datum.groundLevel.value + 1) return undefined;
	const pumped = slurries.filter(({ id }) => job.slurries.some((slurry) => slurry.id === id));
	const parts = pumped.flatMap(({ open_hole_volume: volume }) => {
		const { from } = volume;
		const bare = from.kind === "worked" ? from.inputs["V"] : undefined;
		return bare !== undefined && "dimension" in bare && bare.dimension === "volume"
			? [volumeLeft.of({ V: volume, V_last: bare as Known<"volume"> })]
			: [];
	});
	return totalVolume.of({ V_i: parts });
};
