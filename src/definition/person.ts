import { type Audience, PRIVATE } from "./audience.ts";
import { entry, narrowing, optional, text } from "./field.ts";

/** Somebody who signs or is asked. Persons stay in the regulator's copy unless they are a public contact. */
export const person = (title: string, why: string, papers: Audience = PRIVATE) =>
	entry(title, why, papers, {
		name: text("Name", "A signature or a question needs a person.", papers),
		role: optional(text("Role", "Says in what capacity the person answers.", papers, "Completions engineer")),
		license: optional(
			text("License", "Some agencies ask for the license of whoever prepares the filing.", papers),
		),
		phone: optional(text("Telephone", "Where the reviewer can ask.", papers)),
		email: optional(text("E-mail", "Where the reviewer can ask in writing.", papers)),
		papers: narrowing(papers),
	});
