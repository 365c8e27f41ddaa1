import type { CHECK as ENGLISH } from "../en/check.ts";
import type { Translation } from "../entries.ts";

export const CHECK: Translation<typeof ENGLISH> = {
	"check/closing":
		"Los resultados son aritmética sobre los límites que conocemos, no una opinión sobre si se cumple la ley.",
	"check/unknown-jurisdiction": "Aquí no se conocen reglas de “{code}”: no se revisó nada contra ellas.",
	"check/margin": "Margen {margin}.",
	"check/stops": "Detiene: {jobs}.",
	"check/practice": "práctica",
	"check/at": "En {places}.",
	"check/asked": "se pide y no se dio ({count})",
	"check/write-it": "{what}: escríbalo en {place} ({rules})",
};
