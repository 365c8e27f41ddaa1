import type { Known, KnownTable } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { isGrouted } from "../../well/grouted.ts";
import type { CasingString, CementJob, Well } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { CasingResults, CementResults, TopBasis } from "../results.ts";
import { annulusIntervals, annulusVolume, holeAt, holeDiameter } from "./annulus.ts";
import { type BoreInterval, boreInterval, boreIntervals, boreVolume, DATUM } from "./bore.ts";
import { intervalLength, totalVolume } from "./capacity.ts";
import { floatCollar } from "./column.ts";
import { gasFlow } from "./gas-flow.ts";
import { mudRemoval } from "./job-mud-removal.ts";
import { jobPlacement } from "./job-placement.ts";
import { asPlaced, jobRecord, type WorkedTop, workedTops } from "./job-record.ts";
import { furtherJobs, settingResults } from "./job-setting.ts";
import { centralizerCounts, standoffProfile, standoffResults } from "./job-standoff.ts";
import { trainOf } from "./job-train.ts";
import { landedPressures } from "./landed-pressures.ts";
import { contactTime, pumpedOverCalculated, pumpStrokes, totalSacks } from "./sacks.ts";
import { secondStage } from "./second-stage.ts";
import { type AtShoe, slurryResults } from "./slurry-results.ts";
import { columnsOf, SAME_PLACE, throughShoe } from "./stages.ts";
import { slurryTemperatures } from "./strength-tests.ts";

type Depth = Known<"measured-depth">;

/** Every string that is cemented, by string id, in order. What lacks an input is a gap. */
export const cementResults = (
	well: Well,
	path: KnownTable,
	casing: Readonly<Record<string, CasingResults>>,
	gaps: Gaps,
): Readonly<Record<string, CementResults>> =>
	Object.fromEntries(
		well.strings.flatMap((string, i) =>
			string.cement === undefined || string.cement.slurries.length === 0
				? []
				: [
						[
							string.id,
							jobResults(
								{
									well,
									path,
									gaps,
									string,
									job: string.cement,
									at: ["casing", i],
								},
								casing[string.id],
							),
						] as const,
					],
		),
	);

export interface JobContext {
	readonly well: Well;
	readonly path: KnownTable;
	readonly gaps: Gaps;
	readonly string: CasingString;
	readonly job: CementJob;
	/** Where the string is written. */
	readonly at: readonly (string | number)[];
}

const jobResults = (context: JobContext, casing: CasingResults | undefined): CementResults => {
	const { well, path, gaps, string, job } = context;
	const mark = (md: Depth) => holeMark(path, md, well.datum);
	const key = `cement.${string.id}`;
	const collar = collarOf(context);
	const bottom = deepest(job, string);
	const track = collar && boreVolume(boreIntervals(string, collar, string.shoe));
	const rathole = ratholeVolume(context);
	const slurries = job.slurries.map((slurry) =>
		slurryResults(
			well,
			path,
			string,
			job,
			slurry,
			slurry === bottom.slurry ? { ...maybe("shoeTrack", track), ...maybe("rathole", rathole) } : NOTHING,
		),
	);
	const total = totalVolume.of({ V_i: slurries.map((s) => s.volume) });
	const tops = workedTops(context, bottom.depth, slurries);
	const top = columnTop(context, tops);
	const pumped = pumpedVolume(job);
	const displaced = displacement(context, collar);
	const first: JobContext = { ...context, job: throughShoe(job) };
	const placement = jobPlacement(first, { key, slurries, displacement: displaced, rathole, casing });
	const second = secondStage(context, slurries, casing);
	const columns = columnsOf(job, top.depth, bottom.depth);
	const placed = asPlaced(first.job, top.basis === "calculated" ? tops : undefined);
	const landed = landedPressures(
		{ ...first, job: placed },
		{
			key,
			top: job.stageTool === undefined ? top.depth : lower(top.depth, plannedTop(first.job)),
			collar,
			slurry: placed.slurries.find(({ id }) => id === bottom.slurry?.id),
			casing,
		},
	);
	const standoff = standoffResults(context);
	return {
		id: string.id,
		top: mark(top.depth),
		top_basis: top.basis,
		top_method: top.method,
		...maybe("planned_top", top.basis === "planned" ? undefined : mark(plannedTop(job))),
		bottom: mark(bottom.depth),
		columns: columns.map((column) => ({ top: mark(column.top), bottom: mark(column.bottom) })),
		to_surface: columns.length === 1 && top.depth.value <= well.datum.groundLevel.value + SAME_PLACE,
		slurries,
		...maybe("float_collar", collar && mark(collar)),
		...maybe("shoe_track_volume", track),
		...maybe("rathole_volume", rathole),
		...maybe("displacement_volume", displaced),
		...maybe("displacement_strokes", strokes(job, displaced)),
		slurry_volume: total,
		sacks: totalSacks.of({ n_i: slurries.map((s) => s.sacks) }),
		mix_water: totalVolume.of({ V_i: slurries.map((s) => s.mix_water) }),
		annulus_volume: annulusVolume(
			columns.flatMap((column) => annulusIntervals(well, string, job.volumeBasis, column.top, column.bottom)),
		),
		...maybe("spacer_contact_time", contact(job)),
		...landed,
		gas_flow: gasFlow(context, landed.annulus_column, top.depth),
		temperatures: slurryTemperatures(context),
		...maybe("placement", placement),
		...maybe("second_stage", second),
		...maybe(
			"setting",
			settingResults(
				context,
				bottom.slurry,
				[placement, second?.placement].filter((each) => each !== undefined),
			),
		),
		centralizers: centralizerCounts(context),
		standoff,
		standoff_profile: standoffProfile(context, top.depth),
		mud_removal: mudRemoval(context, standoff, trainOf(first, { slurries, displacement: displaced })),
		further: furtherJobs(context),
		...maybe("fall_back", fallBack(context)),
		...maybe("pumped_volume", pumped),
		...maybe(
			"pumped_over_calculated",
			pumped &&
				gaps.finite(
					`${key}.pumped_over_calculated`,
					pumpedOverCalculated.of({ V_pumped: pumped, V: total }),
					message("calc/calculated-volume-is-zero"),
				),
		),
		...maybe(
			"record",
			jobRecord(context, {
				slurries,
				tops,
				highest: workedTops(context, bottom.depth, slurries, "without excess"),
				lowest: workedTops(context, bottom.depth, slurries, "twice the excess"),
				lift: landed.final_lift,
				placement,
			}),
		),
	};
};

const NOTHING: AtShoe = {};

/** Where cement was recorded lower than the plan's top of a stage, it stands there. */
const lower = (recorded: Depth, planned: Depth): Depth =>
	recorded.value > planned.value ? recorded : planned;

/** The shallowest planned top. */
export const plannedTop = ({ slurries: [first, ...rest] }: CementJob): Depth => {
	if (first === undefined) throw new RangeError("a cement job has at least one slurry");
	return rest.reduce((top, s) => (s.top.value < top.value ? s.top : top), first.top);
};

/**
 * As recorded, else as cement seen at surface shows, else as the volumes pumped come to, else as planned. A top that the
 * record itself calls calculated is no higher than the volumes put it.
 */
const columnTop = (
	{ well, job }: JobContext,
	worked: readonly WorkedTop[] | undefined,
): {
	readonly depth: Depth;
	readonly basis: TopBasis;
	readonly method: CementResults["top_method"];
} => {
	const { actual } = job;
	const calculated = worked?.at(-1) && {
		depth: worked.reduce(
			(top, { depth }) => (depth.value < top.value ? depth : top),
			worked[0]?.depth ?? plannedTop(job),
		),
		basis: "calculated" as const,
		method: "calculated" as const,
	};
	if (actual?.top !== undefined)
		return actual.top.method === "calculated" &&
			calculated !== undefined &&
			calculated.depth.value > actual.top.depth.value + SAME_PLACE
			? calculated
			: { ...actual.top, basis: "recorded" };
	if (actual?.returnsToSurface !== undefined && actual.returnsToSurface.value > 0)
		return {
			depth: well.datum.groundLevel,
			basis: "recorded",
			method: "returns seen",
		};
	return calculated ?? { depth: plannedTop(job), basis: "planned", method: job.topMethod };
};

/** The deepest slurry and where its column ends: the shoe, where it reaches it. */
const deepest = (job: CementJob, string: CasingString) => {
	const slurry = [...job.slurries].sort((a, b) => b.bottom.value - a.bottom.value)[0];
	const depth = slurry?.bottom ?? string.shoe;
	return Math.abs(depth.value - string.shoe.value) <= SAME_PLACE
		? { slurry, depth: string.shoe }
		: { slurry: undefined, depth };
};

/** Cement came back, and was later found lower. */
const fallBack = ({ well, job }: JobContext): Known<"length"> | undefined => {
	const { actual } = job;
	if (actual?.top === undefined || (actual.returnsToSurface?.value ?? 0) <= 0) return undefined;
	const ground = well.datum.groundLevel;
	return actual.top.depth.value <= ground.value + SAME_PLACE
		? undefined
		: intervalLength.of({ MD_top: ground, MD_bottom: actual.top.depth });
};

const collarOf = ({ string, gaps, at }: JobContext): Depth | undefined => {
	if (string.shoeTrack === undefined) return undefined;
	return gaps.finite(
		`cement.${string.id}.float_collar`,
		floatCollar.of({ MD_shoe: string.shoe, L: string.shoeTrack }),
		message("calc/shoe-track-is-longer-than-string"),
		[[...at, "shoe_track"]],
	);
};

/** Hole drilled below the shoe, without excess. */
const ratholeVolume = ({ well, string, job }: JobContext): Known<"volume"> | undefined => {
	const hole = holeAt(well.holes, string.shoe.value);
	if (hole === undefined || string.hole.id !== hole.id || hole.bottom.value <= string.shoe.value)
		return undefined;
	const below = [string.shoe, hole.bottom] as const;
	return boreInterval(...below, holeDiameter(hole, job.volumeBasis, below)).volume;
};

export const grouted = ({ string }: JobContext): boolean => isGrouted(string);

const displacement = (context: JobContext, collar: Depth | undefined): Known<"volume"> | undefined => {
	const { string, gaps, at } = context;
	const key = `cement.${string.id}.displacement_volume`;
	if (string.kind === "liner" && string.runningString === undefined)
		return gaps.missing(key, message("calc/liner-is-displaced-through-its-running"), [
			[...at, "running_string"],
		]);
	if (collar === undefined)
		return grouted(context)
			? undefined
			: gaps.missing(key, message("calc/no-shoe-track-is-given-so"), [[...at, "shoe_track"]]);
	return boreVolume(pumpedThrough(string, collar));
};

/** What the displacement comes to in strokes of the pump. */
export const strokes = (job: CementJob, volume: Known<"volume"> | undefined): Known<"count"> | undefined => {
	const output = job.displacement?.pumpOutput;
	return output && volume && pumpStrokes.of({ V: volume, V_s: output });
};

/** The bores from the rig floor down to a depth in a string; of a liner, its running string first. */
export const pumpedThrough = (string: CasingString, to: Depth): readonly BoreInterval[] =>
	string.kind === "liner" && string.runningString !== undefined
		? [
				boreInterval(DATUM, string.top, string.runningString.insideDiameter),
				...boreIntervals(string, string.top, to),
			]
		: boreIntervals(string, DATUM, to);

const contact = ({ spacer, displacement: pushed }: CementJob): Known<"duration"> | undefined =>
	spacer === undefined || pushed?.rate === undefined
		? undefined
		: contactTime.of({ V: spacer.volume, Q: pushed.rate });

/** Fluids of the record that are this job's slurries, by id or role. */
const pumpedVolume = ({ slurries, actual }: CementJob): Known<"volume"> | undefined => {
	const names = new Set(slurries.flatMap((s) => [s.id, s.role]).map((name) => name.toLowerCase()));
	const cement = (actual?.pumped ?? []).filter(({ fluid }) => names.has(fluid.trim().toLowerCase()));
	return cement.length === 0 ? undefined : totalVolume.of({ V_i: cement.map((p) => p.volume) });
};
