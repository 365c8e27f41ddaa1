import { Argument, Command, Option } from "commander";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { diagnosticsToJson } from "../diagnostics/json.ts";
import { showPath } from "../diagnostics/path.ts";
import { VERDICTS } from "../document/verdict.ts";
import type { Findings } from "../paper/context.ts";
import type { Finding } from "../rules/finding.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { rulesOption, tellDiagnostics, understandFile } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";

interface CheckOptions {
	readonly format: "text" | "json";
	readonly strict?: boolean;
	readonly rules: readonly string[];
}

/** `casebound check`: every fault at once, then what each limit comes to here. Writes nothing. */
export const checkCommand = (session: Session): Command =>
	new Command("check")
		.addArgument(new Argument("<file...>", "one definition or more"))
		.addOption(
			new Option("--format <format>", "text for people, json for editors and scripts")
				.choices(["text", "json"])
				.default("text"),
		)
		.addOption(rulesOption())
		.option("--strict", "exit with 2 if a check is not met or cannot be told")
		.addHelpText("after", "\nExample:\n  casebound check my-well.yaml --strict")
		.action((files: readonly string[], options: CheckOptions) => {
			const shipped = openShipped();
			for (const file of files) {
				const understanding = understandFile(file, options.rules, shipped);
				if (hasErrors(understanding.diagnostics)) session.end(EXIT.badDefinition);
				const { findings } = understanding;
				if (options.format === "json")
					terminal.out(
						JSON.stringify(
							{
								file,
								diagnostics: diagnosticsToJson(understanding.diagnostics, understanding.texts),
								verdicts: findings?.judgement.findings.map(findingJson) ?? [],
								missing:
									findings?.missing.map((item) => ({
										what: item.what,
										at: item.at,
										asked_by: item.askedBy,
									})) ?? [],
							},
							null,
							2,
						),
					);
				else {
					tellDiagnostics(understanding);
					if (findings) terminal.out(verdictText(file, findings));
				}
				const { counts } = findings?.judgement ?? { counts: undefined };
				if (options.strict === true && counts && counts["not met"] + counts["cannot tell"] > 0)
					session.end(EXIT.verdicts);
			}
		});

const howKnown = ({ cite }: Finding): string => {
	const { way, confidence } = cite.howKnown;
	return confidence === undefined ? way : `${way}, ${confidence} confidence`;
};

const findingJson = (finding: Finding) => ({
	check: finding.check,
	subject: finding.subject,
	verdict: finding.verdict,
	because: finding.because,
	requirement: finding.requirement,
	citation: finding.cite.citation,
	rule: finding.cite.rule,
	standing: finding.cite.standing,
	how_known: howKnown(finding),
	text_as_of: finding.cite.textAsOf,
	missing: finding.missing?.map((item) => ({ what: item.what, at: item.at })) ?? [],
});

const verdictText = (file: string, { judgement, missing, well }: Findings): string => {
	const lines = [`${file}: ${well.identity.name}`, ""];
	for (const verdict of VERDICTS) {
		const of = judgement.findings.filter((finding) => finding.verdict === verdict);
		if (of.length === 0) continue;
		lines.push(`${verdict} (${of.length})`);
		for (const finding of of) {
			const standing = finding.cite.standing === "compared" ? "" : `  [not compared: ${howKnown(finding)}]`;
			lines.push(`  ${finding.cite.citation}, ${finding.subject}: ${finding.because}${standing}`);
			for (const item of finding.missing ?? [])
				lines.push(`      missing ${item.what}: write it at ${showPath(item.at)}`);
		}
		lines.push("");
	}
	for (const code of judgement.unknownJurisdictions)
		lines.push(`no rules are known for "${code}": nothing was checked against it`, "");
	if (missing.length > 0) {
		lines.push(`asked for and not given (${missing.length})`);
		for (const item of missing)
			lines.push(`  ${item.what}: write it at ${showPath(item.at)} (${item.askedBy.join("; ")})`);
		lines.push("");
	}
	lines.push(
		"Check results are arithmetic on limits as we know them, not an opinion on whether a law is satisfied.",
	);
	return lines.join("\n");
};
