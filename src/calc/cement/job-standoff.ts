import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { CentralizerRun } from "../../well/well.ts";
import { holeMark, verticalMark } from "../depths/marks.ts";
import type { CentralizerCount, ProfileStation, StandoffResults } from "../results.ts";
import { azimuthAt, inclinationAt, tvdAt } from "../trajectory/at-depth.ts";
import { annulusIntervals, holeAt } from "./annulus.ts";
import { sectionAt } from "./bore.ts";
import type { JobContext } from "./cement-results.ts";
import { profileDepths } from "./job-mud-removal.ts";
import {
	bowSpringStandoff,
	centralizerCount,
	centralizerSpacing,
	hangingTension,
	rigidStandoff,
	sagStandoff,
	sideLoad,
} from "./standoff.ts";

type Depth = Known<"measured-depth">;

/** How many centralizers the patterns come to; needs the length of a joint. */
export const centralizerCounts = ({ string, gaps, at }: JobContext): readonly CentralizerCount[] =>
	string.centralizers.flatMap((run): CentralizerCount[] => {
		const joint = sectionAt(string.sections, run.bottom.value)?.joint;
		if (joint === undefined) {
			gaps.missing(`cement.${string.id}.centralizers`, message("calc/length-joint-is-not-given"), [
				[...at, "pipe"],
			]);
			return [];
		}
		const count = centralizerCount.of({
			MD_top: run.top,
			MD_bottom: run.bottom,
			k: run.everyJoints,
			L_joint: joint,
		});
		return [{ kind: run.kind, top: run.top, bottom: run.bottom, count }];
	});

/** Standoff at the shoe and at the base of each water zone in open hole; what is missing for one is a gap of its own. */
export const standoffResults = (context: JobContext): readonly StandoffResults[] => {
	const { well, path, string } = context;
	const outer = well.strings.find(({ id }) => id === string.within);
	const places = [
		...well.geology.water.flatMap(({ name, base }) => {
			const md = verticalMark(path, base, well.datum).md;
			const open = md !== undefined && md.value < string.shoe.value && md.value > (outer?.shoe.value ?? 0);
			return md !== undefined && open ? [{ name, md }] : [];
		}),
		{ name: "shoe", md: string.shoe },
	];
	if (string.centralizers.length === 0) return [];
	return places.flatMap(({ name, md }) => standoffAt(context, name, md) ?? []);
};

const standoffAt = (context: JobContext, name: string, md: Depth): StandoffResults | undefined => {
	const { well, path, string, gaps, at } = context;
	const key = `cement.${string.id}.standoff.${name}`;
	const pipe = sectionAt(string.sections, md.value);
	// The lowest centralizer may sit anywhere on the lowest joint, as the rules that ask for one there have it.
	const run = runAt(string.centralizers, md.value, name === "shoe" ? pipe?.joint?.value : undefined);
	const hole = holeAt(well.holes, md.value - 1e-6);
	const mud = string.hole.fluid?.density;
	if (run === undefined)
		return gaps.missing(key, message("calc/no-centralizers-stand-there"), [[...at, "centralizers"]]);
	if (pipe?.joint === undefined || hole === undefined || mud === undefined)
		return gaps.missing(key, message("calc/length-joint-or-density-mud-is"), [[...at, "pipe"]]);
	const { L, F, hanging } = loadAt(context, md, run, pipe.joint, pipe.nominalWeight, mud);
	const held = heldAt(run, F, pipe.outsideDiameter, hole.diameter);
	if (held === undefined)
		return gaps.missing(
			key,
			run.kind === "rigid"
				? message("calc/diameter-over-blades-rigid-centralizers-is")
				: message("calc/restoring-force-bow-springs-is-not"),
			[[...at, "centralizers", run.kind === "rigid" ? "rigid" : "bow_spring"]],
		);
	const atCentralizer = gaps.finite(key, held, message("calc/blades-are-smaller-than-pipe-or"));
	if (atCentralizer === undefined) return undefined;
	return {
		at_name: name,
		at: holeMark(path, md, well.datum),
		spacing: L,
		side_load: F,
		at_centralizer: atCentralizer,
		between: sagStandoff.of({
			S: atCentralizer,
			F,
			T: hangingTension.of(hanging),
			L,
			D_pipe: pipe.outsideDiameter,
			d_pipe: pipe.insideDiameter,
			D_hole: hole.diameter,
		}),
	};
};

/** Spacing and side load at a depth. */
const loadAt = (
	{ path, string }: JobContext,
	md: Depth,
	run: CentralizerRun,
	joint: Known<"length">,
	w: Known<"linear-weight">,
	ρ: Known<"density">,
) => {
	const L = centralizerSpacing.of({ k: run.everyJoints, L_joint: joint });
	const upper = constant(
		"measured-depth",
		Math.max(0, md.value - L.value),
		"one spacing above",
		cite("definition"),
	);
	const hanging = { w, ρ, D_shoe: tvdAt(path, string.shoe), D: tvdAt(path, md) };
	const F = sideLoad.of({
		...hanging,
		L,
		I_1: inclinationAt(path, upper),
		I_2: inclinationAt(path, md),
		A_1: azimuthAt(path, upper),
		A_2: azimuthAt(path, md),
	});
	return { L, F, hanging };
};

/**
 * Standoff at evenly spaced depths of the cemented length, in open hole and inside the string around it. A station
 * without centralizers has none, and one whose centralizers' force or blades are not given is left out.
 */
export const standoffProfile = (context: JobContext, top: Depth): readonly ProfileStation[] => {
	const { well, path, string } = context;
	const mud = string.hole.fluid?.density;
	if (string.centralizers.length === 0 || mud === undefined) return [];
	return profileDepths(context, top).flatMap((md): ProfileStation[] => {
		const above = constant("measured-depth", md.value - 1, "just above the station", cite("definition"));
		const [around] = annulusIntervals(well, string, "gauge hole", above, md);
		const pipe = sectionAt(string.sections, md.value);
		const at = { at: holeMark(path, md, well.datum), inclination: inclinationAt(path, md) };
		if (around === undefined || pipe?.joint === undefined) return [];
		const last = md.value >= string.shoe.value - 1 ? pipe.joint.value : undefined;
		const run = runAt(string.centralizers, md.value, last);
		if (run === undefined) return [at];
		const { L, F, hanging } = loadAt(context, md, run, pipe.joint, pipe.nominalWeight, mud);
		const held = heldAt(run, F, pipe.outsideDiameter, around.outer);
		if (held === undefined || !Number.isFinite(held.value)) return [];
		const between = sagStandoff.of({
			S: held,
			F,
			T: hangingTension.of(hanging),
			L,
			D_pipe: pipe.outsideDiameter,
			d_pipe: pipe.insideDiameter,
			D_hole: around.outer,
		});
		return [{ ...at, side_load: F, at_centralizer: held, between }];
	});
};

/** The closest-spaced run over a depth, or within reach above it; ends count. */
const runAt = (runs: readonly CentralizerRun[], md: number, reach = 1): CentralizerRun | undefined =>
	runs
		.filter(({ top, bottom }) => md >= top.value - 1 && (md <= bottom.value + 1 || md < bottom.value + reach))
		.sort((a, b) => a.everyJoints.value - b.everyJoints.value)[0];

const heldAt = (
	run: CentralizerRun,
	F: Known<"force">,
	pipe: Known<"diameter">,
	hole: Known<"diameter">,
): Known<"share"> | undefined =>
	run.kind === "rigid"
		? run.outsideDiameter &&
			rigidStandoff.of({
				D_blades: run.outsideDiameter,
				D_pipe: pipe,
				D_hole: hole,
			})
		: run.restoringForce && bowSpringStandoff.of({ F, F_67: run.restoringForce });
