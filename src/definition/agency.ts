import type * as z from "zod";
import { EVERY, PUBLIC } from "./audience.ts";
import { date, group, optional, text } from "./field.ts";

/** Who checks the operator, and how to reach them. */
export const agency = group("Agency", "People must be able to ask somebody other than the operator.", EVERY, {
	name: text("Name", "Whom to ask.", EVERY),
	phone: optional(text("Telephone", "How to ask.", EVERY)),
	website: optional(text("Web page", "Where the public record is.", PUBLIC)),
	address: optional(text("Address", "Where to write.", PUBLIC)),
	case: optional(text("Case number", "What to quote when asking.", PUBLIC)),
	comments_until: optional(date("Comments until", "The last day to be heard.", PUBLIC)),
});

export type Agency = z.output<typeof agency>;
