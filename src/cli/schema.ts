import { Command, Option } from "commander";
import { fieldTable } from "../definition/field-table.ts";
import { definitionJsonSchema } from "../definition/json-schema.ts";
import type { Session } from "./program.ts";
import { terminal } from "./terminal.ts";

/** `casebound schema`: JSON Schema of the definition, for editors; or its fields as a table, for people. */
export const schemaCommand = (_session: Session): Command =>
	new Command("schema")
		.addOption(
			new Option("--format <format>", "form of the answer").choices(["json", "table"]).default("json"),
		)
		.addHelpText(
			"after",
			"\nExample:\n  casebound schema > well.schema.json\n  and as first line of a definition: # yaml-language-server: $schema=well.schema.json",
		)
		.action(({ format }: { format: string }) =>
			terminal.out(format === "table" ? fieldTable() : JSON.stringify(definitionJsonSchema(), null, 2)),
		);
