import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Well } from "../../well/well.ts";
import { holeAt } from "../cement/annulus.ts";
import { boreInterval, sectionAt } from "../cement/bore.ts";
import { pipeCapacity } from "../cement/capacity.ts";
import { middleOf, piecesBetween } from "../cement/cuts.ts";
import { exactSacks, sacks } from "../cement/sacks.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { EndOfLifeResults, ZoneIsolation } from "../results.ts";
import { plugsClosing, plugVolume, zonesUnplugged } from "./abandonment.ts";

type Depth = Known<"measured-depth">;

const NO_EXCESS = constant("share", 0, "no excess is stated", cite("definition"));

/** The bore at a depth: of the innermost string there, else of the hole. */
const boreAt = (well: Well, md: number): Known<"diameter"> | undefined => {
	const inner = well.strings.findLast(({ top, shoe }) => top.value <= md && md <= shoe.value);
	return inner === undefined
		? holeAt(well.holes, md)?.diameter
		: sectionAt(inner.sections, md)?.insideDiameter;
};

const bores = (well: Well, top: Depth, bottom: Depth) => {
	const changes = [
		...well.strings.flatMap((s) => [s.top, s.shoe, ...s.sections.map((each) => each.bottom)]),
		...well.holes.map((hole) => hole.bottom),
	];
	return piecesBetween(top, bottom, changes).flatMap((piece) => {
		const d = boreAt(well, middleOf(piece));
		return d === undefined
			? []
			: [{ C: pipeCapacity.of({ d }), L: boreInterval(piece[0], piece[1], d).length }];
	});
};

/** The plan of abandonment: volume and sacks of each plug, and which zones it leaves open; nothing without plugs. */
export const endOfLifeResults = (
	well: Well,
	path: KnownTable,
	zones: readonly ZoneIsolation[],
): EndOfLifeResults | undefined => {
	const plan = well.endOfLife;
	if (plan === undefined || plan.plugs.length === 0) return undefined;
	const plugs = plan.plugs.map(({ what, top, bottom, excess }) => {
		const pieces = bores(well, top, bottom);
		const volume = plugVolume.of({
			C_i: pieces.map(({ C }) => C),
			L_i: pieces.map(({ L }) => L),
			e: excess ?? NO_EXCESS,
		});
		return {
			what,
			top: holeMark(path, top, well.datum),
			bottom: holeMark(path, bottom, well.datum),
			volume,
			...maybe("sacks", plan.yield && sacks.of({ n: exactSacks.of({ V: volume, y: plan.yield }) })),
		};
	});
	const closed = zones
		.filter(({ kind }) => kind !== "water")
		.map((zone) => ({
			zone: zone.id,
			name: zone.name,
			kind: zone.kind,
			plugs: plugsClosing.of({
				z: zone.kind === "base of protected water" ? zone.base : zone.top,
				TVD_top: plugs.map(({ top }) => top.tvd),
				TVD_bottom: plugs.map(({ bottom }) => bottom.tvd),
			}),
		}));
	return { plugs, closed, open_zones: zonesUnplugged.of({ n_i: closed.map((each) => each.plugs) }) };
};
