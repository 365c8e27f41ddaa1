import { Argument, Command, Option } from "commander";
import { resultsLines } from "../render/json/results-lines.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";

/** `casebound results`: every value as JSON, with unit, formula, source and inputs. */
export const resultsCommand = (session: Session): Command =>
	new Command("results")
		.addArgument(new Argument("<file>", "a definition; - is standard input"))
		.addOption(rulesOption())
		.addOption(new Option("--only <prefix>", "only keys that begin so, such as casing.surface"))
		.addHelpText("after", "\nExample:\n  casebound results my-well.yaml --only stimulation.")
		.action(async (file: string, options: { readonly rules: readonly string[]; readonly only?: string }) => {
			const findings = readWell(file, options.rules, openShipped(), session);
			if (findings)
				await terminal.stream(
					resultsLines(findings.index, {
						prefix: options.only ?? "",
						notEvaluated: findings.results.undetermined,
					}),
				);
		});
