import type { DIAGNOSTICS as ENGLISH } from "../en/diagnostics.ts";
import type { Translation } from "../entries.ts";

export const DIAGNOSTICS: Translation<typeof ENGLISH> = {
	"diagnostics/item": "elemento {number}",
};
