import type { KnownTable } from "../../../cite/known.ts";
import { hookLoads } from "./hook-loads.ts";
import { pulledForce } from "./soft-string.ts";
import type { StringContext } from "./string-frame.ts";

/**
 * The string as it slides to bottom and is pulled back, with the greatest friction, and hook loads over the whole range.
 *
 * @returns undefined for a liner or a tieback, which is let down on another string
 */
export const slidingOf = ({ well, path, string }: StringContext, sections: KnownTable, mud: KnownTable) => {
	if (string.kind !== "casing") return undefined;
	const { cased, openHole } = well.designBasis.friction;
	const outer = well.strings.find(({ id }) => id === string.within);
	const hole = {
		path,
		sections,
		inside: mud,
		outside: mud,
		MD_cased: outer?.shoe ?? string.top,
	};
	return {
		pulled: pulledForce.of({ ...hole, μ_cased: cased[1], μ_open: openHole[1] }),
		hookLoads: hookLoads.of({ ...hole, μ_cased: cased, μ_open: openHole }),
	};
};
