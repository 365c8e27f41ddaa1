import { REGISTER } from "../calc/register.ts";
import type { AnyFormula } from "../cite/formula.ts";
import { RULE_FORMULAS } from "./formulas.ts";

/** Every formula by its id: the calculation's, and those by which a limit's requirement is worked out. */
export const EVERY_FORMULA: ReadonlyMap<string, AnyFormula> = new Map([
	...REGISTER,
	...RULE_FORMULAS.map((formula) => [formula.id, formula] as const),
]);
