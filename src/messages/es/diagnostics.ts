import type { DIAGNOSTICS as ENGLISH } from "../en/diagnostics.ts";
import type { Translation } from "../entries.ts";

export const DIAGNOSTICS: Translation<typeof ENGLISH> = {
	"diagnostics/item": "elemento {number}",
	"diagnostics/errors": "{count, plural, one {# error} other {# errores}}",
	"diagnostics/warnings": "{count, plural, one {# advertencia} other {# advertencias}}",
	"diagnostics/notes": "{count, plural, one {# nota} other {# notas}}",
	"diagnostics/not-shown": "{counted}; {count, number} de ellos no se muestran",
};
