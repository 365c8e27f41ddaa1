import type { RULES_ON_THE_JOB as ENGLISH } from "../en/rules-on-the-job.ts";
import type { Translation } from "../entries.ts";

export const RULES_ON_THE_JOB: Translation<typeof ENGLISH> = {
	"rules/simultaneous-work-not-agreed": "trabajo en otros pozos de la localización que no está acordado",
	"rules/no-work-on-the-pad-at-the-same-time":
		"no se indica que se trabaje a la vez en otro pozo de la localización",
	"rules/work-at-the-same-time-is-agreed": "a la vez se trabaja en {wells}, acordado con {who}",
	"rules/work-at-the-same-time-is-not-agreed":
		"a la vez se trabaja en {wells}, y no se indica a quién se avisa ni quién tiene el plan de los dos",
	"rules/treatment-before-drilling-ends": "tratamiento antes de terminar la perforación",
	"rules/no-dates-to-hold-together": "no se dan fechas de la perforación y del tratamiento",
	"rules/treatment-starts-before-drilling-ends":
		"el tratamiento empieza el {starts}, antes de que la perforación termine el {over}",
	"rules/treatment-starts-after-drilling-ends":
		"el tratamiento empieza el {starts}, la perforación termina el {over}",
	"rules/greatest-proppant-concentration": "concentración más alta de apuntalante",
	"rules/fluid-is-not-slickwater": "el tratamiento no se bombea con agua reductora de fricción",
	"rules/no-proppant-is-pumped": "no se bombea apuntalante",
	"rules/slickwater-carries": "el agua reductora de fricción ha de llevar hasta {part} de apuntalante",
	"rules/wellhead-rating-at-casing-test": "presión de trabajo del cabezal instalado en la prueba de la TR",
	"rules/no-casing-test-is-planned": "no se planea una prueba de la TR {string}",
	"rules/wellhead-at-casing-test-is-rated": "el cabezal instalado en la prueba de la TR es para {part}",
	"rules/lead-slurry-above-treated-interval": "altura de la lechada de relleno sobre el intervalo tratado",
	"rules/no-lead-slurry-over-treated-interval":
		"la TR {string} no tiene lechada de relleno sobre un intervalo tratado",
	"rules/foot-of-slurry": "el pie de la lechada {slurry}",
	"rules/spacer-plastic-viscosity": "viscosidad plástica del espaciador",
	"rules/no-spacer-is-pumped": "no se bombea espaciador para la TR {string}",
	"rules/plastic-viscosity-and-yield-point-of-spacer":
		"viscosidad plástica y punto de cedencia del espaciador de la TR {string}",
	"rules/spacer-has-viscosity": "el espaciador de la TR {string} tiene una viscosidad plástica de {part}",
	"rules/noise-at-the-nearest-dwelling": "ruido en la casa más cercana",
	"rules/no-limit-on-noise-is-stated": "no se indica un límite de ruido en las casas",
	"rules/distance-to-a-dwelling": "una casa con su distancia",
	"rules/noise-at-dwelling-is": "el ruido en {name} mientras se bombea es de {part}",
	"rules/stated-limit-on-noise": "límite de ruido indicado",
	"rules/limit-on-noise-is": "el límite de ruido en las casas es de {part}",
};
