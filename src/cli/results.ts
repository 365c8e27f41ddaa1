import { Argument, Command, Option } from "commander";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { resultsLines } from "../render/json/results-lines.ts";
import { EXIT } from "./exit-codes.ts";
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
		.addHelpText("after", "\nExample:\n  casebound results my-well.yaml --only stimulation.limiting")
		.action(async (file: string, options: { readonly rules: readonly string[]; readonly only?: string }) => {
			const findings = readWell(file, options.rules, openShipped(), session);
			if (findings === undefined) return;
			const notEvaluated = findings.results.undetermined;
			const keys = [...findings.index.byKey.keys(), ...notEvaluated.map(({ key }) => `results.${key}`)];
			const prefix = prefixOf(options.only ?? "", keys);
			if (prefix === undefined) {
				terminal.err(nothingBegins(options.only ?? "", keys));
				return session.end(EXIT.usage);
			}
			await terminal.stream(resultsLines(findings.index, { prefix, notEvaluated }));
		});

/** The prefix as keys have it: `casing.surface` stands for `results.casing.surface`. Nothing where no key begins so. */
const prefixOf = (asked: string, keys: readonly string[]): string | undefined =>
	[asked, `results.${asked}`, `well.${asked}`].find((prefix) => keys.some((key) => key.startsWith(prefix)));

const nothingBegins = (asked: string, keys: readonly string[]): string => {
	const beginnings = new Set(
		keys.flatMap((key) => {
			const steps = key.replace(/^results\./u, "").split(".");
			return steps.map((_, i) => steps.slice(0, i + 1).join("."));
		}),
	);
	const near = nearestName(asked.replace(/^results\./u, "").replace(/\.$/u, ""), [...beginnings]);
	const topics = [...new Set([...beginnings].flatMap((each) => (each.includes(".") ? [] : [each])))];
	return near === undefined
		? `casebound: no result's key begins with "${asked}"; keys begin with ${topics.join(", ")}`
		: `casebound: no result's key begins with "${asked}"; did you mean "${near}"?`;
};
