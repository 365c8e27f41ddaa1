import type { CasingString, Well } from "./well.ts";

/** What the trade calls a string. A production liner is both `production` and `liner`. */
export type Role = "conductor" | "surface" | "intermediate" | "production" | "liner" | "tieback";

const ROLE_WORDS: Readonly<Record<Exclude<Role, "tieback">, readonly string[]>> = {
	conductor: ["conductor", "drive", "structural"],
	surface: ["surface"],
	intermediate: ["intermediate", "protective"],
	production: ["production"],
	liner: ["liner"],
};

/**
 * The roles of a string, by the word its short name carries, its kind, and whether it is treated through. Empty where
 * none of these says: a name such as `casing-2` leaves the question open.
 */
export const rolesOf = (string: CasingString, well: Well): readonly Role[] => {
	if (string.kind === "tieback") return ["tieback"];
	const words = string.id.split("-");
	const named = (Object.keys(ROLE_WORDS) as (keyof typeof ROLE_WORDS)[]).filter((role) =>
		ROLE_WORDS[role].some((word) => words.includes(word)),
	);
	const kind: readonly Role[] = string.kind === "liner" ? ["liner"] : [];
	const innermost = well.strings.at(-1)?.id === string.id && string.id === well.stimulation?.treatedThrough;
	const roles = new Set<Role>([...named, ...kind]);
	if (innermost && !["surface", "intermediate", "conductor"].some((role) => roles.has(role as Role)))
		roles.add("production");
	return [...roles];
};
