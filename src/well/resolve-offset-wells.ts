import type { Known } from "../cite/known.ts";
import type { OffsetWell, TrajectoryDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { assume, type Desk, maybe } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { resolveStations } from "./resolve-trajectory.ts";
import { listOf } from "./said.ts";
import type { OffsetPath, OffsetPaths } from "./well.ts";

/** Of a radius stated without one: twice the standard deviation and a little more, as survey reports mostly print it. */
const CONFIDENCE = 0.95;

/**
 * Where the other wells go, as far as the definition says it; a well without a path has none here, and is not evaluated.
 * What the separation factor needs and the definition leaves open is filled in and recorded.
 */
export const resolveOffsetWells = (
	wells: readonly OffsetWell[],
	own: TrajectoryDefinition["uncertainty"],
	files: ReadFile,
	desk: Desk,
): OffsetPaths => {
	const paths = wells.flatMap((well, i): OffsetPath[] => {
		const path = resolvePath(well, ["site", "offset_wells", i], files, desk);
		return path === undefined ? [] : [path];
	});
	if (paths.length === 0) return { paths };
	assumeDatums(wells, desk);
	const stated = [own, ...wells.map((well) => well.path?.uncertainty)].filter((each) => each !== undefined);
	if (stated.length > 0) assumeGrowth(desk);
	const open =
		stated.some(({ confidence }) => confidence === undefined) ||
		wells.some(({ position_uncertainty }) => position_uncertainty !== undefined);
	return { paths, ...maybe("confidence", open ? assumeConfidence(desk) : undefined) };
};

const resolvePath = (well: OffsetWell, at: Path, files: ReadFile, desk: Desk): OffsetPath | undefined => {
	const { id, path, total_depth } = well;
	if (path === undefined) return undefined;
	if (path.bottom_hole !== undefined) return { id, kind: "bottom hole", ...path.bottom_hole };
	if (path.vertical !== undefined)
		// Straight down, both ways of counting a depth are one.
		return total_depth === undefined
			? undefined
			: { id, kind: "vertical", depth: straight(total_depth.depth) };
	const { file, columns, stations: listed, north } = path;
	const written = { ...maybe("file", file), ...maybe("columns", columns), ...maybe("stations", listed) };
	const stations = resolveStations(written, [...at, "path"], undefined, files, desk);
	return stations && { id, kind: "surveyed", stations, ...maybe("north", north) };
};

const straight = (
	depth: Known<"measured-depth"> | Known<"true-vertical-depth">,
): Known<"true-vertical-depth"> =>
	({ ...depth, dimension: "true-vertical-depth" }) as Known<"true-vertical-depth">;

const assumeDatums = (wells: readonly OffsetWell[], desk: Desk): void => {
	const open = wells.filter((well) => well.path !== undefined && well.depth_datum_elevation === undefined);
	if (open.length === 0) return;
	desk.assumptions.push({
		id: "offset-datum",
		at: ["site", "offset_wells"],
		what: message("well/offset-datum.what", { open: listOf(open.map(({ name }) => name)) }),
		why: message("well/offset-datum.why"),
	});
};

const assumeGrowth = (desk: Desk): void => {
	desk.assumptions.push({
		id: "uncertainty-growth",
		at: ["trajectory", "uncertainty"],
		what: message("well/uncertainty-growth.what"),
		why: message("well/uncertainty-growth.why"),
	});
};

const assumeConfidence = (desk: Desk): Known<"share"> =>
	assume(desk, {
		id: "uncertainty-confidence",
		at: ["trajectory", "uncertainty", "confidence"],
		what: message("well/uncertainty-confidence.what"),
		why: message("well/uncertainty-confidence.why"),
		dimension: "share",
		value: CONFIDENCE,
	});
