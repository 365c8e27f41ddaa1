import type { CALC as ENGLISH } from "../en/calc.ts";
import type { Translation } from "../entries.ts";

export const CALC: Translation<typeof ENGLISH> = {
	"calc/the-survey": "el registro direccional",
	"calc/the-plan": "el plan",
	"calc/north.of-azimuths": "el norte desde el que se cuentan los azimuts",
	"calc/north.convergence": "la convergencia de cuadrícula",
	"calc/north.declination": "la declinación magnética",
	"calc/rating.internal-yield": "presión interna de cedencia",
	"calc/rating.collapse": "presión de colapso",
	"calc/rating.body-yield": "cedencia del cuerpo",
	"calc/the-mud": "el lodo",
	"calc/the-fluid": "{id}",
	"calc/the-slurry": "la lechada {id}",
	"calc/needed.net": "la presión neta",
	"calc/needed.roughness": "la rugosidad de la tubería",
	"calc/needed.discharge": "los coeficientes de descarga",
	"calc/needed.viscosity": "la viscosidad del fluido base",
	"calc/needed.rheology":
		"la viscosidad plástica o el punto de cedencia de {stiff} en la cementación de la TR {string}",
	"calc/needed.base": "la base de {formation}",
	"calc/needed.stiffness": "el módulo de Young de {formation}",
	"calc/needed.poisson": "la relación de Poisson de {formation}",
	"calc/needed.leakoff": "el coeficiente de filtrado de {formation}",
	"calc/needed.closure": "el gradiente de cierre de la formación tratada",
	"calc/needed.shots": "los disparos de cada clúster",
	"calc/needed.shot": "el diámetro de los disparos",
	"calc/needed.rate": "el gasto",
	"calc/symbol-and-value": "{symbol} {value}",
	"calc/norths-for-survey-error":
		"el modelo de error de la herramienta necesita la referencia de norte, la convergencia y la declinación",
};
