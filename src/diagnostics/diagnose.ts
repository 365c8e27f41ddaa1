import { CODES, type Code } from "./codes.ts";
import type { Diagnostic, Place } from "./diagnostic.ts";

/** What a diagnostic says, apart from its code and place. */
export type Telling = Omit<Diagnostic, "code" | "severity" | "at">;

/** A diagnostic with the severity that the catalogue gives its code. */
export const diagnose = (code: Code, at: Place, telling: Telling): Diagnostic => ({
	code,
	severity: CODES[code].severity,
	at,
	...telling,
});
