import type { DimensionDefinition } from "./dimensions/dimension.ts";
import { FLUIDS } from "./dimensions/fluids.ts";
import { FORCES } from "./dimensions/forces.ts";
import { NUMBERS } from "./dimensions/numbers.ts";
import { PRESSURES } from "./dimensions/pressures.ts";
import { SPACE } from "./dimensions/space.ts";
import { SURROUNDINGS } from "./dimensions/surroundings.ts";
import { TIME_AND_TEMPERATURE } from "./dimensions/time-and-temperature.ts";
import { VOLUMES } from "./dimensions/volumes.ts";

export type * from "./dimensions/dimension.ts";

/**
 * Every dimension the tool knows, with its units. The canonical unit is the trade's own, so that a formula reads like
 * the handbook page it cites.
 *
 * @source nist-sp-811, Appendix B, through `factors.ts`
 */
export const DIMENSIONS = {
	...SPACE,
	...PRESSURES,
	...FORCES,
	...VOLUMES,
	...TIME_AND_TEMPERATURE,
	...FLUIDS,
	...SURROUNDINGS,
	...NUMBERS,
} as const satisfies Record<string, DimensionDefinition>;

export type Dimension = keyof typeof DIMENSIONS;
