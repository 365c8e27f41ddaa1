import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
import { measured } from "../../well/said.ts";
import type { Well } from "../../well/well.ts";
import type { PressureResults } from "../results.ts";

/** Shoes and preventers that do not hold what they are there for, each with its number. Diverted holes are not shut in. */
export const pressureFaults = (well: Well, { holes }: PressureResults): readonly Diagnostic[] =>
	holes.flatMap((hole, i) => {
		const shut = hole.preventer_rating !== undefined;
		const { kick_margin: short, kick_tolerance: held, design_kick: kick } = hole;
		const drilled = well.strings.some((string) => string.hole.id === hole.id && string.landed !== undefined);
		const found: Diagnostic[] = [];
		if (drilled) return found;
		if (shut && held !== undefined && kick !== undefined && short !== undefined && short.value < 0)
			found.push(
				diagnose(
					"calc/kick-not-held",
					{ path: ["holes", i] },
					{
						what: message("calc/kick-not-held.what", {
							detail: hole.shoe ?? "",
							held: measured("volume", held.value),
							hole: hole.id,
							short: measured("volume", -short.value),
						}),
						expected: message("calc/kick-not-held.expected", { kick: measured("volume", kick.value) }),
						found: measured("volume", held.value),
						mend: message("calc/kick-not-held.mend"),
					},
				),
			);
		const { anticipated_surface_pressure: gas, preventer_rating: rating, preventer_margin: margin } = hole;
		if (gas !== undefined && rating !== undefined && margin !== undefined && margin.value < 0)
			found.push(
				diagnose(
					"calc/preventers-too-weak",
					{ path: ["well_control", "preventers"] },
					{
						what: message("calc/preventers-too-weak.what", {
							hole: hole.id,
							gas: measured("pressure", gas.value),
							rating: measured("pressure", rating.value),
						}),
						expected: message("calc/preventers-too-weak.expected", { gas: measured("pressure", gas.value) }),
						found: measured("pressure", rating.value),
						mend: message("calc/preventers-too-weak.mend"),
					},
				),
			);
		return found;
	});
