import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { type MessageCode, message } from "../../messages/message.ts";
import { measured } from "../../well/said.ts";
import type { CasingString } from "../../well/well.ts";
import type { CasingResults, LoadCaseResults, LoadSituation } from "../results.ts";
import { sectionPath } from "./section-ratings.ts";

/** Codes of the clauses that name a load case; papers have their own words. */
const SAID = {
	running: "calc/load.running",
	bending: "calc/load.bending",
	shock: "calc/load.shock",
	overpull: "calc/load.overpull",
	cementing: "calc/load.cementing",
	"bumped-plug": "calc/load.bumped-plug",
	"pressure-test": "calc/load.pressure-test",
	"gas-kick": "calc/load.gas-kick",
	evacuation: "calc/load.evacuation",
	stimulation: "calc/load.stimulation",
	"shut-in-gas": "calc/load.shut-in-gas",
	"tubing-leak": "calc/load.tubing-leak",
	drawdown: "calc/load.drawdown",
	"mobile-salt": "calc/load.mobile-salt",
} as const satisfies Record<LoadSituation, MessageCode>;

const KINDS = {
	burst: "calc/kind.burst",
	collapse: "calc/kind.collapse",
	tension: "calc/kind.tension",
	triaxial: "calc/kind.triaxial",
} as const satisfies Record<LoadCaseResults["kind"], MessageCode>;

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
				what: message("calc/factor-not-reached.what", {
					string: string.id,
					kind: message(KINDS[worst.kind]),
					situation: message(SAID[worst.situation]),
				}),
				expected: message("calc/factor-not-reached.expected", { required: { factor: worst.required } }),
				found: message("calc/factor-not-reached.found", {
					factor: { told: worst.least_factor, from: worst.required },
					depth: measured("measured-depth", worst.at?.md.value ?? 0),
					weakness: weakness(worst),
				}),
				...(others === 0
					? {}
					: {
							why: message("calc/factor-not-reached.why", { others }),
						}),
				mend: message("calc/factor-not-reached.mend"),
			},
		),
	];
};
