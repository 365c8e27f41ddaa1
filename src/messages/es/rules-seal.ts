import type { RULES_SEAL as ENGLISH } from "../en/rules-seal.ts";
import type { Translation } from "../entries.ts";

export const RULES_SEAL: Translation<typeof ENGLISH> = {
	"rules/longest-bonded-interval": "el mayor intervalo adherido contra la roca",
	"rules/no-bond-log-is-recorded-of":
		"no se da por intervalos ningún registro de adherencia de la TR {string}",
	"rules/intervals-of-bond-log": "los intervalos del registro de adherencia",
	"rules/bond-log-shows-bonded-against-rock":
		"el registro de adherencia del {date} muestra {part} adheridos sin interrupción contra la roca",
	"rules/annulus-pressure-that-came-back": "la presión anular que regresó después de purgar",
	"rules/no-reading-is-recorded-of": "no hay lecturas de {name}",
	"rules/pressure-after-the-bleed": "la presión en {name} un tiempo después de purgar",
	"rules/annulus-pressure-came-back-after-bleed": "regresaron {part} después de purgar el espacio anular",
	"rules/annulus-pressure-did-not-come-back": "no regresó presión después de purgar el espacio anular",
	"rules/protected-water-without-shown-seal": "las profundidades de agua protegida sin sello comprobado",
	"rules/zones-without-a-plug": "las zonas sin tapón",
	"rules/no-plan-of-abandonment-is-given": "no se da ningún plan de abandono",
	"rules/zones-that-no-plug-closes": "zonas que ningún tapón planeado cierra: {part}",
	"rules/no-cement-job-is-recorded-yet": "todavía no hay registro de ninguna cementación",
	"rules/depths-of-protected-water-without-seal":
		"profundidades de agua protegida en las que ningún registro muestra cemento: {part}",
	"rules/no-squeeze-is-recorded-of": "no hay registro de cementación forzada en la TR {string}.",
	"rules/squeeze-did-not-hold-its-test": "la cementación forzada del {date} no sostuvo su prueba.",
	"rules/test-after-squeeze-of": "la prueba posterior a la cementación forzada del {date}",
	"rules/squeeze-held-its-test": "la cementación forzada del {date} sostuvo su prueba.",
	"rules/strings.bond-log-recorded": "con registro de adherencia",
	"rules/strings.squeeze-recorded": "con cementación forzada registrada",
	"rules/no-bond-log-is-recorded": "no se da ningún registro de adherencia por intervalos.",
	"rules/no-squeeze-is-recorded": "no hay registro de cementación forzada.",
};
