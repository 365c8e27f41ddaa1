import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
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
				what: message("calc/annulus-stop.what", { between: between.join(" – ") }),
				expected: message("calc/annulus-stop.expected", {
					pressureAsWritten: pressureAsWritten(highest, Math.ceil),
				}),
				found: pressureAsWritten(stopAbove, Math.ceil),
				mend:
					relief === undefined
						? message("calc/annulus-stop.mend")
						: message("calc/annulus-stop.set-relief-valve-below-stop"),
			}),
		];
	});
