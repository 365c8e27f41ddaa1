import type { Known, KnownTable } from "../cite/known.ts";
import type { TrajectoryDefinition } from "../definition/definition.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, maybe, placeOf, SAME_DEPTH } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { readNamedTable } from "./read-table.ts";
import { asWritten, measured } from "./said.ts";
import type { Survey, Trajectory, TrajectoryPlan } from "./well.ts";

type PlanDefinition = NonNullable<TrajectoryDefinition["plan"]>;
type SurveyDefinition = NonNullable<TrajectoryDefinition["actual"]>["survey"];

const COLUMNS = {
	md: { dimension: "measured-depth", aliases: ["measured_depth", "depth", "dept"] },
	inclination: { dimension: "angle", aliases: ["inc", "incl", "inclin", "deviation", "devi", "dev"] },
	azimuth: { dimension: "angle", aliases: ["az", "azi", "azim", "azm", "hazi"] },
} as const;

/** The planned path and the surveyed one; at least one of them. */
export const resolveTrajectory = (
	written: TrajectoryDefinition,
	totalDepth: Known<"measured-depth"> | undefined,
	files: ReadFile,
	desk: Desk,
): Trajectory => {
	const plan = written.plan === undefined ? undefined : resolvePlan(written.plan);
	const survey =
		written.actual === undefined ? undefined : resolveSurvey(written.actual, totalDepth, files, desk);
	if (plan === undefined && written.actual === undefined)
		fault(desk, "well/no-path", ["trajectory"], {
			what: message("well/no-path.what"),
			expected: message("well/no-path.expected"),
			mend: message("well/no-path.mend"),
		});
	if (plan !== undefined) checkPlanAngles(plan, desk);
	if (plan !== undefined && totalDepth !== undefined) checkReach(plan, totalDepth, desk);
	return {
		...maybe("plan", plan),
		...maybe("survey", survey),
		...maybe("verticalSectionAzimuth", written.vertical_section_azimuth),
		...maybe("verticalSectionOrigin", written.vertical_section_origin),
		...maybe("uncertainty", written.uncertainty),
		...maybe("errorModel", errorModelOf(written, desk)),
	};
};

const errorModelOf = (
	{ error_model: written }: TrajectoryDefinition,
	{ catalog }: Desk,
): Trajectory["errorModel"] => {
	const model = catalog.errorModels.find(({ tool }) => tool === written?.tool);
	return written === undefined || model === undefined
		? undefined
		: { name: model.name, table: model.table, field: written.magnetic_field, dip: written.dip };
};

const resolvePlan = (written: PlanDefinition): TrajectoryPlan => {
	if ("vertical" in written) return { kind: "vertical", to: written.to };
	if ("segments" in written) return { kind: "segments", segments: written.segments };
	const { kickoff, build, azimuth } = written;
	return "target" in written
		? { kind: "build-and-hold", kickoff, build, azimuth, target: written.target }
		: {
				kind: "build-and-land",
				kickoff,
				build,
				azimuth,
				landingInclination: written.landing_inclination,
				lateral: written.lateral,
			};
};

/** Measured depth where the plan ends, where its words fix that; a hold goes on as far as the hole. */
const endOf = (plan: TrajectoryPlan): number | undefined => {
	switch (plan.kind) {
		case "vertical":
			return plan.to.value;
		case "build-and-land":
			return (
				plan.kickoff.value + (100 * plan.landingInclination.value) / plan.build.value + plan.lateral.value
			);
		case "segments":
			return plan.segments.reduce((sum, { length }) => sum + length.value, 0);
		case "build-and-hold":
			return undefined;
	}
};

const checkReach = (plan: TrajectoryPlan, totalDepth: Known<"measured-depth">, desk: Desk): void => {
	const end = endOf(plan);
	if (end === undefined || !Number.isFinite(end) || end >= totalDepth.value - SAME_DEPTH) return;
	fault(
		desk,
		"well/path-short",
		{ path: ["trajectory", "plan"] },
		{
			what: message("well/path-short.what", { end: measured("measured-depth", end, totalDepth.value) }),
			expected: message("well/path-short.expected", { totalDepth: asWritten(totalDepth) }),
			found: measured("measured-depth", end, totalDepth.value),
			mend: message("well/path-short.mend"),
			related: [{ at: placeOf(totalDepth, ["holes"]), label: message("well/beyond-total-depth.label") }],
		},
	);
};

interface Station {
	readonly md: number;
	readonly inclination: number;
	readonly azimuth: number;
	readonly places: Readonly<Record<"md" | "inclination" | "azimuth", Place>>;
}

const AT: Path = ["trajectory", "actual", "survey"];

type StationTable = KnownTable<"md" | "inclination" | "azimuth">;

/**
 * Stations from a file or a list, as a table that knows where each row stands.
 *
 * @param at     where the survey is written
 * @param reach  where the hole ends; a station beyond it is a fault
 * @returns      nothing where a station is at fault; the fault is filed
 */
export const resolveStations = (
	written: Pick<SurveyDefinition, "file" | "columns" | "stations">,
	at: Path,
	reach: Known<"measured-depth"> | undefined,
	files: ReadFile,
	desk: Desk,
): StationTable | undefined => {
	const stations = stationsOf(written, at, files, desk);
	if (stations === undefined || !stationsHold(stations, desk)) return undefined;
	if (reach !== undefined) checkLast(stations, reach, desk);
	const rows = stations.map(({ places }) => places.md.range).filter((range) => range !== undefined);
	const { file } = written;
	return {
		columns: { md: "measured-depth", inclination: "angle", azimuth: "angle" },
		rows: stations.map(({ md, inclination, azimuth }) => ({ md, inclination, azimuth })),
		from: {
			kind: "definition",
			at,
			text: file ?? `stations[${stations.length}]`,
			...maybe("file", file),
			...(rows.length === 0 ? {} : { rows }),
		},
	};
};

const resolveSurvey = (
	actual: NonNullable<TrajectoryDefinition["actual"]>,
	totalDepth: Known<"measured-depth"> | undefined,
	files: ReadFile,
	desk: Desk,
): Survey | undefined => {
	const stations = resolveStations(actual.survey, AT, totalDepth, files, desk);
	if (stations === undefined) return undefined;
	return {
		stations,
		...maybe("north", actual.north),
		...maybe("company", actual.company),
		...maybe("tool", actual.tool),
		...maybe("dates", actual.dates),
	};
};

const stationsOf = (
	survey: Pick<SurveyDefinition, "file" | "columns" | "stations">,
	at: Path,
	files: ReadFile,
	desk: Desk,
): readonly Station[] | undefined => {
	if (survey.file === undefined)
		return (survey.stations ?? []).map(({ md, inclination, azimuth }, i) => ({
			md: md.value,
			inclination: inclination.value,
			azimuth: azimuth.value,
			places: {
				md: { path: [...at, "stations", i, "md"] },
				inclination: { path: [...at, "stations", i, "inclination"] },
				azimuth: { path: [...at, "stations", i, "azimuth"] },
			},
		}));
	const read = readNamedTable(survey.file, [...at, "file"], COLUMNS, files, desk, survey.columns);
	const here: Place = { path: [...at, "file"] };
	return read?.columns.rows.map(({ numbers, at: cells }) => ({
		md: numbers.md ?? Number.NaN,
		inclination: numbers.inclination ?? Number.NaN,
		azimuth: numbers.azimuth ?? Number.NaN,
		places: { md: cells.md ?? here, inclination: cells.inclination ?? here, azimuth: cells.azimuth ?? here },
	}));
};

/** A survey ends in the hole; what lies beyond is one fault, told at the first station there. */
const checkLast = (stations: readonly Station[], totalDepth: Known<"measured-depth">, desk: Desk): void => {
	const beyond = stations.find(({ md }) => md > totalDepth.value + SAME_DEPTH);
	if (beyond === undefined) return;
	fault(desk, "well/beyond-total-depth", beyond.places.md, {
		what: message("well/beyond-total-depth.survey-goes-below-bottom-deepest"),
		expected: message("well/beyond-total-depth.at-most", { totalDepth: asWritten(totalDepth) }),
		found: measured("measured-depth", beyond.md, totalDepth.value),
		mend: message("well/beyond-total-depth.correct-depth-station-or-depth"),
		related: [{ at: placeOf(totalDepth, ["holes"]), label: message("well/beyond-total-depth.label") }],
	});
};

/** Inclination is from straight down to straight up, azimuth once round. */
const checkAngles = (
	inclination: number,
	azimuth: number,
	places: { readonly inclination: Place; readonly azimuth: Place },
	desk: Desk,
): void => {
	if (inclination < 0 || inclination > 180)
		fault(desk, "well/survey-angle", places.inclination, {
			what: message("well/survey-angle.what"),
			expected: message("well/survey-angle.expected"),
			found: `${inclination}°`,
			mend: message("well/survey-angle.mend"),
		});
	if (azimuth < 0 || azimuth > 360)
		fault(desk, "well/survey-angle", places.azimuth, {
			what: message("well/survey-angle.azimuth-is-not-between-0"),
			expected: message("well/survey-angle.degrees-clockwise-from-north"),
			found: `${azimuth}°`,
			mend: message("well/survey-angle.correct-azimuth"),
		});
};

/** The angles of a plan, each where it is written. */
const checkPlanAngles = (plan: TrajectoryPlan, desk: Desk): void => {
	const at: Path = ["trajectory", "plan"];
	const check = (inclination: Known<"angle"> | undefined, azimuth: Known<"angle">, block: Path): void =>
		checkAngles(
			inclination?.value ?? 0,
			azimuth.value,
			{ inclination: placeOf(inclination, block), azimuth: placeOf(azimuth, block) },
			desk,
		);
	if (plan.kind === "segments")
		for (const [i, { inclination, azimuth }] of plan.segments.entries())
			check(inclination, azimuth, [...at, "segments", i]);
	else if (plan.kind === "build-and-land") check(plan.landingInclination, plan.azimuth, at);
	else if (plan.kind === "build-and-hold") check(undefined, plan.azimuth, at);
};

const stationsHold = (stations: readonly Station[], desk: Desk): boolean => {
	const before = desk.faults.length;
	for (const [i, { md, inclination, azimuth, places }] of stations.entries()) {
		const above = stations[i - 1];
		if (above !== undefined && md <= above.md)
			fault(desk, "well/survey-order", places.md, {
				what: message("well/survey-order.what"),
				expected: message("well/survey-order.expected", { md: measured("measured-depth", above.md, md) }),
				found: measured("measured-depth", md, above.md),
				mend: message("well/survey-order.mend"),
			});
		checkAngles(inclination, azimuth, places, desk);
	}
	return desk.faults.length === before;
};
