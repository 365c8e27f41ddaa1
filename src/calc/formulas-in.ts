import type { AnyFormula } from "../cite/formula.ts";

const isFormula = (exported: unknown): exported is AnyFormula =>
	typeof exported === "object" &&
	exported !== null &&
	"id" in exported &&
	"expression" in exported &&
	"compute" in exported &&
	"of" in exported;

/** Every formula that the modules export, by export name, so that none is left out of a topic's list. */
export const formulasIn = (...modules: readonly Readonly<Record<string, unknown>>[]): readonly AnyFormula[] =>
	modules.flatMap((module) => Object.values(module).filter(isFormula));
