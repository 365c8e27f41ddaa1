import type { DepthMark } from "../calc/results.ts";
import type { Known } from "../cite/known.ts";
import type { Formation } from "../well/well.ts";
import type { Case } from "./case.ts";
import { outerOf, type StringSubject } from "./subject.ts";

interface OpenZone {
	readonly formation: Formation;
	/** Where the zone is first open: its top, or the previous shoe where that lies within it. */
	readonly top: { readonly md?: Known<"measured-depth">; readonly tvd: Known<"true-vertical-depth"> };
}

/** Formations that may flow: those marked as flow zones, and the one the well is for. */
export const isFlowZone = ({ flowZone, target }: Formation): boolean => flowZone !== undefined || target;

/**
 * Flow zones and targets open in the hole of a string, between the shoe before it and its own, from the shallowest down.
 * A formation without a mark is taken as one that does not flow; the finding says that it rests on the marks.
 */
export const openZones = (the: Case): readonly OpenZone[] => {
	const { string } = the.subject as StringSubject;
	const shoe = the.results.casing[string.id]?.shoe;
	const outer = outerOf(string, the.well);
	const above = outer && the.results.casing[outer.id]?.shoe;
	const marks = new Map<string, { readonly top: DepthMark; readonly base?: DepthMark }>(
		the.results.geology.formations.map((formation) => [formation.id, formation]),
	);
	if (shoe === undefined) return [];
	const drilled = the.results.trajectory.path.rows
		.filter(({ md }) => md <= shoe.md.value)
		.map(({ tvd }) => tvd);
	// A lateral that rises to its toe is deeper on the way than at its shoe.
	const deepest = Math.max(shoe.tvd.value, ...drilled);
	const shallowest = above?.tvd.value ?? 0;
	return the.well.geology.formations.filter(isFlowZone).flatMap((formation): OpenZone[] => {
		const top = marks.get(formation.id)?.top ?? { tvd: formation.top };
		const base = formation.base?.value ?? Number.POSITIVE_INFINITY;
		if (top.tvd.value >= deepest || base <= shallowest) return [];
		return [{ formation, top: above !== undefined && top.tvd.value < shallowest ? above : top }];
	});
};
