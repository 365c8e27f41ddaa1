import type { Known } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { columnPressure, DATUM_DEPTH } from "../pressure/hydrostatic.ts";
import type { StimulationResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { pressureAsWritten, writtenAt } from "../written-at.ts";
import type { StageContext } from "./stage-results.ts";
import { surfaceOpeningPressure } from "./treating-pressure.ts";

const VALVE = "initiation valve";
const AT = ["stimulation", "toe"] as const;

/**
 * What must be read at the surface to open the initiation valve, under a column of base fluid where it is rated at its
 * own depth. A well that is plugged and perforated and does not say how its first stage is opened has a gap.
 */
export const toeOpening = ({ stimulation, path, gaps }: StageContext): Known<"pressure"> | undefined => {
	const { toe, method, baseFluid } = stimulation;
	if (toe === undefined)
		return method === "plug and perforate"
			? gaps.missing("stimulation.toe", message("calc/how-first-stage-is-opened-is"), [AT])
			: undefined;
	if (toe.kind !== VALVE) return undefined;
	if (toe.opensAt === undefined)
		return gaps.missing(
			"stimulation.toe_opens_at_surface",
			message("calc/initiation-valve-has-no-opening-pressure"),
			[[...AT, "opens_at"]],
		);
	return toe.opensAtMeasured === "valve"
		? surfaceOpeningPressure.of({
				P_v: toe.opensAt,
				P_h: columnPressure.of({
					ρ: baseFluid.density,
					D_top: DATUM_DEPTH,
					D_bottom: tvdAt(path, toe.depth),
				}),
			})
		: toe.opensAt;
};

/** A valve that the casing test opens, or that nothing allowed can open. */
export const toeFaults = (
	{ stimulation, strings }: Well,
	results: StimulationResults | undefined,
): readonly Diagnostic[] => {
	const opening = results?.toe_opens_at_surface;
	const stated = stimulation?.toe?.opensAt;
	if (stimulation === undefined || opening === undefined || stated === undefined) return [];
	const test = strings.find(({ id }) => id === stimulation.treatedThrough)?.pressureTest;
	const tested = test?.actual?.pressure ?? test?.pressure;
	const most = stimulation.limits?.maximumTreatingPressure ?? results?.limiting?.allowed;
	const fault = (what: Said, expected: Said, limit: Known, label: Said) =>
		diagnose("calc/toe-valve", writtenAt(stated, AT), {
			what,
			expected,
			found: pressureAsWritten(opening),
			mend: message("calc/toe-valve.mend"),
			...(limit.from.kind === "definition" ? { related: [{ at: writtenAt(limit, AT), label }] } : {}),
		});
	if (tested !== undefined && opening.value <= tested.value)
		return [
			fault(
				message("calc/casing-test-would-open-initiation-valve"),
				message("calc/above-at-surface", { pressureAsWritten: pressureAsWritten(tested) }),
				tested,
				message("calc/casing-test"),
			),
		];
	if (most !== undefined && opening.value > most.value)
		return [
			fault(
				message("calc/no-allowed-pressure-opens-initiation-valve"),
				message("calc/at-most-at-surface", { pressureAsWritten: pressureAsWritten(most) }),
				most,
				message("calc/maximum"),
			),
		];
	return [];
};
