import type { Said } from "../messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import { type Finding, isOpen } from "../rules/finding.ts";
import type { Findings } from "./context.ts";

/** Checks of a string that the protection of water rests on; of other strings they say nothing about it. */
const OF_STRING: ReadonlySet<string> = new Set([
	"surface-shoe-depth",
	"cement-to-surface",
	"casing-pressure-test",
	"drilling-fluid",
]);
const OF_WELL: ReadonlySet<string> = new Set(["cement-coverage", "separation"]);

type Verdicts = Pick<Findings, "judgement" | "results">;

/** The string that has to protect the water: surface casing by name, else the one found to. */
const protects = ({ results }: Verdicts, subject: Said): boolean =>
	tellSaid(subject, ENGLISH_READER).split("-").includes("surface") ||
	subject === results.isolation.protecting_string;

/** Findings on the protection of water that are not met or cannot be told. */
export const openOnWater = (context: Verdicts): readonly Finding[] =>
	context.judgement.findings.filter(
		({ check, subject, verdict }) =>
			isOpen(verdict) && (OF_WELL.has(check) || (OF_STRING.has(check) && protects(context, subject))),
	);

/** Whether a public paper may speak of the water as protected: a string was found that does, and no check on it is open. */
export const isWaterShownProtected = (context: Verdicts): boolean =>
	context.results.isolation.protecting_string !== undefined && openOnWater(context).length === 0;
