import { EVERY, PUBLIC, RECORD, TECHNICAL } from "./audience.ts";
import { casNumber } from "./cas-number.ts";
import { entry, identifier, list, narrowing, optional, text } from "./field.ts";
import { part, q, ratio } from "./quantity-field.ts";

/** Grains that hold a fracture open. */
export const proppant = entry("Proppant", "What holds the fractures open.", EVERY, {
	id: identifier("Short name", "Treatment steps refer to it.", EVERY),
	material: text("Material", "Told to neighbors; silica dust harms crews.", EVERY, "sand"),
	specific_gravity: ratio("Specific gravity", "Slurry volume.", TECHNICAL),
	bulk_density: optional(q("bulk-density", "Bulk density", "Silo and truck counts.", TECHNICAL)),
	cas: optional(casNumber("CAS number", "Disclosure.", PUBLIC)),
	supplier: optional(text("Supplier", "Disclosure.", RECORD)),
});

const ingredient = entry("Ingredient", "Disclosure is by ingredient.", PUBLIC, {
	name: text(
		"Name",
		"As the safety data sheet has it; the class of chemical where a trade secret is claimed.",
		PUBLIC,
	),
	cas: optional(casNumber("CAS number", "One chemical has many names and one number.", PUBLIC)),
	max_share: optional(part("Greatest share of the additive", "By mass.", PUBLIC)),
	trade_secret: optional(
		text("Trade secret claimed by", "Who withholds the identity, and under what rule.", PUBLIC),
	),
});

/** Anything but water and proppant that is pumped. */
export const additive = entry("Additive", "What it is, what for, how much, and what is in it.", EVERY, {
	id: identifier("Short name", "Treatment steps refer to it.", EVERY),
	name: text("Trade name", "On the safety data sheet and the drum.", EVERY),
	purpose: text("Purpose", "Neighbors ask what it is for.", EVERY, "friction reducer"),
	supplier: optional(text("Supplier", "Disclosure.", RECORD)),
	rate: optional(q("additive-rate", "Rate", "Volume for a volume of base fluid.", PUBLIC)),
	density: optional(q("density", "Density", "Turns volume to mass.", RECORD)),
	handling: optional(text("Handling", "What the crew wears and where the eyewash is.", ["crew"])),
	ingredients: list("Ingredients", "From the safety data sheet.", PUBLIC, ingredient),
	papers: narrowing(EVERY),
});
