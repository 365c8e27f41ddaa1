import type { Known } from "../cite/known.ts";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import { asWritten, measured } from "./said.ts";
import type { CasingString, Stage, Stimulation } from "./well.ts";

const AT: Path = ["stimulation", "stages"];

/** The first value that was typed, in the value itself or in what it was worked from: where a reader can mend it. */
const typedIn = (value: Known): Known | undefined => {
	if (value.from.kind === "definition") return value;
	if (value.from.kind !== "worked") return undefined;
	for (const input of Object.values(value.from.inputs)) {
		if (Array.isArray(input) || "rows" in input) continue;
		const found = typedIn(input as Known);
		if (found !== undefined) return found;
	}
	return undefined;
};

/** Where a depth was typed, or what it was worked from. */
export const placeOfDepth = (depth: Known, otherwise: Path): Place => placeOf(typedIn(depth), otherwise);

const feet = (depth: Known): Said => asWritten(depth);

/** Stages lie in the treated string, follow each other up the hole, hold their clusters, and are parted by their plugs. */
export const checkStages = (
	stimulation: Stimulation,
	treated: CasingString | undefined,
	desk: Desk,
): void => {
	const { stages } = stimulation;
	const found: Desk = { ...desk, faults: [] };
	for (const [i, stage] of stages.entries()) {
		if (stage.bottom.value <= stage.top.value) {
			// A bottom that rose above its own top by an override shows as an overlap with the next stage instead.
			if (stages[i + 1]?.bottom !== stage.top)
				fault(found, "well/top-below-bottom", placeOfDepth(stage.bottom, AT), {
					what: message("well/top-below-bottom.what", { number: String(stage.number) }),
					expected: message("well/top-below-bottom.expected", { top: feet(stage.top) }),
					found: feet(stage.bottom),
					mend: message("well/top-below-bottom.mend"),
				});
		} else checkClusters(stage, stages[i + 1], found);
		const below = stages[i - 1];
		if (below !== undefined) checkOrder(stage, below, found);
		checkPlug(stage, below, found);
	}
	if (treated !== undefined) checkInside(stimulation, treated, found);
	desk.faults.push(...oncePerPlace(found.faults));
};

/** One slip in a layout puts every stage wrong alike; it is told once, of the deepest. */
const oncePerPlace = (faults: readonly Diagnostic[]): Diagnostic[] => {
	const seen = new Set<string>();
	return faults.filter(({ code, at }) => {
		const key = JSON.stringify([code, at]);
		if (seen.has(key)) return false;
		seen.add(key);
		return true;
	});
};

const checkClusters = (stage: Stage, next: Stage | undefined, desk: Desk): void => {
	// A top that is only the next stage's bottom says nothing of its own; the two are compared as stages.
	const ownTop = stage.top !== next?.bottom;
	const stray = stage.clusters.find(
		({ value }) =>
			value > stage.bottom.value + SAME_DEPTH || (ownTop && value < stage.top.value - SAME_DEPTH),
	);
	if (stray !== undefined)
		fault(desk, "well/stage-clusters", placeOfDepth(stray, AT), {
			what: message("well/stage-clusters.what", { number: String(stage.number) }),
			expected: message("well/stage-clusters.expected", { top: feet(stage.top), bottom: feet(stage.bottom) }),
			found: feet(stray),
			mend: message("well/stage-clusters.mend"),
		});
};

const checkOrder = (stage: Stage, below: Stage, desk: Desk): void => {
	const topBelow = below.clusters.at(-1) ?? below.top;
	const stated = below.top === stage.bottom ? topBelow : below.top;
	if (stage.bottom.value <= stated.value + (stated === topBelow ? -SAME_DEPTH : SAME_DEPTH)) return;
	fault(desk, "well/stage-overlap", placeOfDepth(stage.bottom, AT), {
		what: message("well/stage-overlap.what", { number: String(stage.number), number2: String(below.number) }),
		expected: message("well/stage-overlap.expected", { stated: feet(stated) }),
		found: feet(stage.bottom),
		mend: message("well/stage-overlap.mend"),
		related: [
			{
				at: placeOfDepth(stated, AT),
				label: message("well/stage-overlap.label", { number: String(below.number) }),
			},
		],
	});
};

const checkPlug = (stage: Stage, below: Stage | undefined, desk: Desk): void => {
	const { plug } = stage;
	if (plug === undefined) return;
	const lowest = stage.clusters[0] ?? stage.bottom;
	const topBelow = below?.clusters.at(-1) ?? below?.top;
	if (topBelow !== undefined && plug.value > lowest.value && plug.value < topBelow.value) return;
	// Where the stages themselves overlap, no plug can lie between them; that is told already.
	if (topBelow !== undefined && lowest.value >= topBelow.value) return;
	fault(desk, "well/plug-place", placeOfPlug(plug), {
		what:
			topBelow === undefined
				? message("well/plug-place.what", { number: String(stage.number) })
				: message("well/plug-place.plug-stage-is-not-between", {
						number: String(stage.number),
						number2: String(below?.number),
					}),
		expected:
			topBelow === undefined
				? message("well/plug-place.expected")
				: message("well/plug-place.between-and", { lowest: feet(lowest), topBelow: feet(topBelow) }),
		found: feet(plug),
		mend:
			topBelow === undefined
				? message("well/plug-place.mend")
				: message("well/plug-place.set-it-between-two-stages"),
	});
};

/** A worked plug is mended at its distance from the cluster, not at the cluster. */
const placeOfPlug = (plug: Known): Place => {
	const distance = plug.from.kind === "worked" ? plug.from.inputs["a"] : undefined;
	return distance !== undefined && "value" in distance ? placeOf(distance, AT) : placeOfDepth(plug, AT);
};

const checkInside = ({ stages, toe }: Stimulation, treated: CasingString, desk: Desk): void => {
	const collar = treated.shoe.value - (treated.shoeTrack?.value ?? 0);

	const [deepest] = stages;
	const shallowest = stages.at(-1);
	const related: NonNullable<Diagnostic["related"]> = [
		{
			at: placeOf(treated.shoe, ["casing"]),
			label: message("well/stage-outside.shoe", { treated: treated.id }),
		},
		...(treated.shoeTrack === undefined
			? []
			: [{ at: placeOf(treated.shoeTrack, ["casing"]), label: message("well/its-shoe-track") }]),
	];
	const tooDeep = deepest !== undefined && deepest.bottom.value > collar;
	if (tooDeep)
		fault(desk, "well/stage-outside", placeOfDepth(deepest.bottom, AT), {
			what: message("well/stage-outside.what", { number: String(deepest.number), treated: treated.id }),
			expected: message("well/stage-outside.expected", {
				collar: measured("measured-depth", collar, deepest.bottom.value),
			}),
			found: feet(deepest.bottom),
			mend: message("well/stage-outside.mend"),
			related,
		});
	if (shallowest !== undefined && shallowest.top.value < treated.top.value)
		fault(desk, "well/stage-outside", placeOfDepth(shallowest.top, AT), {
			what: message("well/stage-outside.stage-reaches-above-top-string", {
				number: String(shallowest.number),
				treated: treated.id,
			}),
			expected: message("well/stage-outside.at-least", { top: feet(treated.top) }),
			found: feet(shallowest.top),
			mend: message("well/stage-outside.fewer-or-shorter-stages-or"),
		});
	if (toe === undefined || deepest === undefined || tooDeep) return;
	const floor = toe.kind === "initiation valve" ? treated.shoe.value : collar;
	if (toe.depth.value >= deepest.bottom.value - SAME_DEPTH && toe.depth.value <= floor) return;
	fault(desk, "well/toe-depth", placeOf(toe.depth, ["stimulation", "toe", "depth"]), {
		what: message("well/toe-depth.what"),
		expected: message("well/toe-depth.expected", {
			number: String(deepest.number),
			bottom: feet(deepest.bottom),
			floor: measured("measured-depth", floor, toe.depth.value),
		}),
		found: feet(toe.depth),
		mend: message("well/toe-depth.mend"),
		related: [
			{
				at: placeOfDepth(deepest.bottom, AT),
				label: message("well/toe-depth.label", { number: String(deepest.number) }),
			},
		],
	});
};
