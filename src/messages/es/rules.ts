import type { RULES as ENGLISH } from "../en/rules.ts";
import type { Translation } from "../entries.ts";

export const RULES: Translation<typeof ENGLISH> = {
	"rules/not-given": "{count, plural, one {no se indicó} other {no se indicaron}} {what}.",
	"rules/many-not-given": "faltan {count} datos, entre ellos {first}.",
	"rules/missing-of-string": "{what} de la TR {string}",
	"rules/missing": "{what}",
	"rules/lies-below": "{subject} está {size} por debajo de {place}",
	"rules/lies-above": "{subject} está {size} por encima de {place}",
	"rules/multiple": "{factor} × {value}, {noun}",
	"rules/need-not-given": "no se indicó lo que se necesita.",
};
