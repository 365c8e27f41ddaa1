import type { PaperContext } from "../context.ts";

/** Words about a pad: how many wells, which, and whose pipe and depths are told. Of a single well nothing of it is there. */
export const padWords = ({ pad }: PaperContext): Record<string, unknown> => ({
	several: pad !== undefined,
	wells_count: pad === undefined ? false : { kind: "quantity", dimension: "count", value: pad.wells.length },
	pad_wells: (pad?.wells ?? []).map(({ well }) => ({ name: well.identity.name })),
	governing_well: pad?.governing ?? false,
});
