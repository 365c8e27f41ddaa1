import type { KnownTable } from "../../cite/known.ts";
import type { Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { GeologyResults } from "../results.ts";
import { verticalMark } from "./marks.ts";

/** Tops and bases of rock and water, placed on the hole. */
export const geologyResults = (well: Well, path: KnownTable): GeologyResults => {
	const { formations, water, protectedWater } = well.geology;
	const mark = (tvd: Parameters<typeof verticalMark>[1]) => verticalMark(path, tvd, well.datum);
	return {
		formations: formations.map(({ id, name, top, base }) => ({
			id,
			name,
			top: mark(top),
			...maybe("base", base && mark(base)),
		})),
		water: water.map(({ id, name, top, base }) => ({ id, name, top: mark(top), base: mark(base) })),
		...maybe("protected_water_base", protectedWater && mark(protectedWater.base)),
	};
};
