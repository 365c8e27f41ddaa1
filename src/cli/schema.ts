import { Command } from "commander";
import { definitionJsonSchema } from "../definition/json-schema.ts";
import type { Session } from "./program.ts";
import { terminal } from "./terminal.ts";

/** `casebound schema`: JSON Schema of the definition, for editors. */
export const schemaCommand = (_session: Session): Command =>
	new Command("schema")
		.description("print the JSON Schema of the definition, for editors")
		.addHelpText(
			"after",
			"\nExample:\n  casebound schema > well.schema.json\n  and as first line of a definition: # yaml-language-server: $schema=well.schema.json",
		)
		.action(() => terminal.out(JSON.stringify(definitionJsonSchema(), null, 2)));
