import type { KnownTable } from "../../../cite/known.ts";
import { hookLoads } from "./hook-loads.ts";
import { greatestReach, slackOffCompression, slackOffHookLoad } from "./slack-off.ts";
import { pulledForce } from "./soft-string.ts";
import type { StringContext } from "./string-frame.ts";

/**
 * The string as it slides to bottom and is pulled back, with the greatest friction, and hook loads over the whole range;
 * how hard it is pressed on its way down beside what would coil it.
 *
 * @returns undefined for a liner or a tieback, which is let down on another string
 */
export const slidingOf = ({ well, path, string }: StringContext, sections: KnownTable, mud: KnownTable) => {
	if (string.kind !== "casing") return undefined;
	const { cased, openHole } = well.designBasis.friction;
	const outer = well.strings.find(({ id }) => id === string.within);
	const collar = string.running?.flotationCollar;
	const hole = {
		path,
		sections,
		inside: mud,
		outside: mud,
		MD_cased: outer?.shoe ?? string.top,
		MD_collar: collar === undefined ? [] : [collar],
	};
	const [D_cased] =
		outer?.sections.map(({ insideDiameter }) => insideDiameter).sort((a, b) => a.value - b.value) ?? [];
	const slackOff = (end: 0 | 1) => ({
		...hole,
		μ_cased: cased[end],
		μ_open: openHole[end],
		// The wider the room, the easier the coil: the open hole's own diameter, and inside casing its bore.
		D_cased: D_cased ?? string.hole.diameter,
		D_open: string.hole.diameter,
	});
	const least = slackOffHookLoad.of(slackOff(0));
	const greatest = slackOffHookLoad.of(slackOff(1));
	const reach = { least: greatestReach.of({ line: least }), greatest: greatestReach.of({ line: greatest }) };
	return {
		least,
		greatest,
		reach,
		compression: slackOffCompression.of({ ...slackOff(1), MD_shoe: reach.greatest }),
		pulled: pulledForce.of({ ...hole, μ_cased: cased[1], μ_open: openHole[1] }),
		hookLoads: hookLoads.of({ ...hole, μ_cased: cased, μ_open: openHole }),
	};
};
