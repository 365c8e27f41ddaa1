import { isKnown, type Known } from "../cite/known.ts";
import type { Definition } from "../definition/definition.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf, SAME_DEPTH, spokenOf } from "./desk.ts";
import { asWritten } from "./said.ts";

/**
 * Depths that are no depths of this well's hole: of neighbors and old wells, and of rock that the geologist describes
 * further down than the hole goes.
 */
const ELSEWHERE: readonly (readonly string[])[] = [["site"], ["geology"]];

/** A plan may lead past the hole; the survey is judged where it is read. */
const PASSED_OVER = new Set(["holes", "trajectory.plan.to", "trajectory.actual"]);

/**
 * No depth of the well is below the bottom of its deepest hole, planned or drilled; true vertical depths least of all,
 * which are nowhere greater than the depth along the hole.
 *
 * Comes late: a depth that a fault speaks of already is not told of again.
 */
export const checkDepths = (definition: Definition, desk: Desk): void => {
	const bottom = definition.holes
		.flatMap(({ to, actual }) => (actual?.to === undefined ? [to] : [to, actual.to]))
		.reduce((deepest, to) => (to.value > deepest.value ? to : deepest));
	const told = spokenOf(desk);
	const toldBeside = new Set(
		desk.faults.filter(({ severity }) => severity === "error").map(({ at }) => pathKey(at.path.slice(0, -1))),
	);
	for (const { depth, at } of typedDepths(definition, [])) {
		if (depth.value <= bottom.value + SAME_DEPTH) continue;
		if (told.has(pathKey(at)) || toldBeside.has(pathKey(at.slice(0, -1)))) continue;
		const vertical = depth.dimension === "true-vertical-depth";
		fault(desk, "well/beyond-total-depth", placeOf(depth, at), {
			what: vertical
				? message("well/beyond-total-depth.what")
				: message("well/beyond-total-depth.depth-below-bottom-deepest-hole"),
			expected: message("well/beyond-total-depth.expected", { bottom: asWritten(bottom) }),
			found: asWritten(depth),
			mend: message("well/beyond-total-depth.mend"),
			related: [{ at: placeOf(bottom, ["holes"]), label: message("well/beyond-total-depth.label") }],
		});
	}
};

interface Typed {
	readonly depth: Known<"measured-depth" | "true-vertical-depth">;
	readonly at: Path;
}

const isDepth = (value: Known): value is Typed["depth"] =>
	value.dimension === "measured-depth" || value.dimension === "true-vertical-depth";

const typedDepths = (node: unknown, path: Path): readonly Typed[] => {
	if (typeof node !== "object" || node === null) return [];
	if (ELSEWHERE.some((start) => start.every((step, i) => step === path[i]))) return [];
	if (PASSED_OVER.has(pathKey(path))) return [];
	if (isKnown(node))
		return isDepth(node) && node.from.kind === "definition" ? [{ depth: node, at: node.from.at }] : [];
	return Object.entries(node).flatMap(([key, child]) =>
		typedDepths(child, [...path, Array.isArray(node) ? Number(key) : key]),
	);
};
