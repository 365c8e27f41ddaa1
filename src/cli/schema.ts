import { Command, Option } from "commander";
import { fieldTable } from "../definition/field-table.ts";
import { definitionJsonSchema } from "../definition/json-schema.ts";
import { resultsJsonSchema } from "../render/json/results-schema.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { terminal } from "./terminal.ts";

/** `casebound schema`: JSON Schema of the definition, for editors, or its fields as a table, for people; or that of the results, for scripts. */
export const schemaCommand = (session: Session): Command =>
	new Command("schema")
		.addOption(
			new Option("--format <format>", "form of the answer").choices(["json", "table"]).default("json"),
		)
		.addHelpText(
			"after",
			"\nExamples:\n  casebound schema > well.schema.json\n  casebound schema --of results > results.schema.json\n  and as first line of a definition: # yaml-language-server: $schema=well.schema.json",
		)
		.addOption(
			new Option("--of <what>", "the definition, or what casebound results prints")
				.choices(["definition", "results"])
				.default("definition"),
		)
		.action(({ format, of }: { format: string; of: string }) => {
			const schema = of === "results" ? resultsJsonSchema() : definitionJsonSchema();
			if (format === "json") return terminal.out(JSON.stringify(schema, null, 2));
			if (of === "definition") return terminal.out(fieldTable());
			terminal.err("casebound: the table is of the fields of the definition; leave out --of results");
			session.end(EXIT.usage);
		});
