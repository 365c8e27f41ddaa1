import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Well } from "../../well/well.ts";
import type { StimulationResults } from "../results.ts";
import { pressureAsWritten, writtenAt } from "../written-at.ts";

/** Annuli that treating pressure alone may bring above where the job stops: the stop would not tell a leak from the work. */
export const annulusFaults = (
	{ stimulation }: Well,
	results: StimulationResults | undefined,
): readonly Diagnostic[] =>
	(stimulation?.annuli ?? []).flatMap(({ between, stopAbove, relief }) => {
		const highest = results?.annuli.find(({ id }) => id === between.join("-"))?.highest;
		if (stopAbove === undefined || highest === undefined || highest.value <= stopAbove.value) return [];
		return [
			diagnose("calc/annulus-stop", writtenAt(stopAbove, ["stimulation", "annuli"]), {
				what: `the ${between.join(" – ")} annulus may rise above where the job stops without a leak`,
				expected: `at least ${pressureAsWritten(highest, Math.ceil)}`,
				found: pressureAsWritten(stopAbove, Math.ceil),
				mend:
					relief === undefined
						? "state the relief valve that holds the annulus below the stop, or raise the stop as far as both strings allow"
						: "set the relief valve below the stop",
			}),
		];
	});
