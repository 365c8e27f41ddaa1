import type { RULES as ENGLISH } from "../en/rules.ts";
import type { Translation } from "../entries.ts";

export const RULES: Translation<typeof ENGLISH> = {
	"rules/not-given": "{count, plural, one {no se indicó} other {no se indicaron}} {what}.",
	"rules/many-not-given": "faltan {count} datos, entre ellos {first}.",
	"rules/need-not-given": "no se indicó lo que se necesita.",
};
