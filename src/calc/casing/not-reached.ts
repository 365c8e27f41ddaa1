import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { CasingString } from "../../well/well.ts";
import type { CasingResults, LoadCaseResults, LoadSituation } from "../results.ts";
import { sectionPath } from "./section-ratings.ts";

/** Words of a message; papers have their own. */
const SAID: Readonly<Record<LoadSituation, string>> = {
	running: "while it is run and pulled back",
	bending: "pulled back while bent in the curve",
	shock: "stopped while it is run",
	overpull: "stuck and pulled",
	cementing: "with wet cement outside",
	"bumped-plug": "when the plug is bumped",
	"pressure-test": "in its pressure test",
	"gas-kick": "with a gas kick shut in",
	evacuation: "emptied of fluid",
	stimulation: "in the stimulation",
	"shut-in-gas": "shut in full of gas",
	"tubing-leak": "with a tubing leak near the surface",
	drawdown: "with the rock drawn down",
	"mobile-salt": "where salt creeps onto it",
};

const shortfall = ({ least_factor, required }: LoadCaseResults): number =>
	(least_factor?.value ?? Number.POSITIVE_INFINITY) / required.value;

const weakness = ({ kind, governed_by }: LoadCaseResults): string =>
	governed_by === undefined ? kind : kind === "collapse" ? `${governed_by} collapse` : governed_by;

/** One message a string: its worst case, and how many more there are. */
export const notReached = (string: CasingString, { loads }: CasingResults): readonly Diagnostic[] => {
	const short = loads
		.filter(({ reached }) => reached === false)
		.toSorted((a, b) => shortfall(a) - shortfall(b));
	const [worst] = short;
	const section =
		string.sections.find((s) => s.bottom.value >= (worst?.at?.md.value ?? 0)) ?? string.sections.at(-1);
	if (worst?.least_factor === undefined || section === undefined) return [];
	const others = short.length - 1;
	return [
		diagnose(
			"calc/factor-not-reached",
			{ path: sectionPath(section) },
			{
				what: `the ${string.id} string does not reach its factor of ${worst.kind === "triaxial" ? "triaxial stress" : worst.kind} ${SAID[worst.situation]}`,
				expected: `a factor of ${worst.required.value} or more`,
				found: `${worst.least_factor.value.toFixed(3)} at ${Math.round(worst.at?.md.value ?? 0)} ft, by its ${weakness(worst)}`,
				...(others === 0
					? {}
					: {
							why: `${others} more ${others === 1 ? "load case falls" : "load cases fall"} short; the results have each`,
						}),
				mend: "take stronger pipe or a stronger connection, lower the load, or state the factor that is asked for",
			},
		),
	];
};
