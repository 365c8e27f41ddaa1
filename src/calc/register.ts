import type { AnyFormula } from "../cite/formula.ts";
import { barriersFormulas } from "./barriers/index.ts";
import { casingFormulas } from "./casing/index.ts";
import { cementFormulas } from "./cement/index.ts";
import { depthFormulas } from "./depths/index.ts";
import { isolationFormulas } from "./isolation/index.ts";
import { logisticsFormulas } from "./logistics/index.ts";
import { padFormulas } from "./pad/index.ts";
import { pressureFormulas } from "./pressure/index.ts";
import { safetyFormulas } from "./safety/index.ts";
import { siteFormulas } from "./site/index.ts";
import { stimulationFormulas } from "./stimulation/index.ts";
import { trajectoryFormulas } from "./trajectory/index.ts";

/** Every formula of every topic. */
export const FORMULAS: readonly AnyFormula[] = [
	...trajectoryFormulas,
	...depthFormulas,
	...casingFormulas,
	...cementFormulas,
	...pressureFormulas,
	...stimulationFormulas,
	...isolationFormulas,
	...barriersFormulas,
	...siteFormulas,
	...safetyFormulas,
	...logisticsFormulas,
	...padFormulas,
];

/** Every formula by its id: what `explain`, the published checks and the regulator's appendix look up. */
export const REGISTER: ReadonlyMap<string, AnyFormula> = new Map(FORMULAS.map((f) => [f.id, f]));
