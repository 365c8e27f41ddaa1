import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Well } from "../../well/well.ts";
import type { PressureResults } from "../results.ts";

const bbl = (value: number): string => value.toFixed(1);
const psi = (value: number): string => value.toLocaleString("en-US", { maximumFractionDigits: 0 });

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
						what: `the ${hole.shoe ?? ""} shoe holds a kick of ${bbl(held.value)} bbl while the ${hole.id} hole is drilled, ${bbl(-short.value)} bbl less than the design kick`,
						expected: `at least ${bbl(kick.value)} bbl`,
						found: `${bbl(held.value)} bbl`,
						mend: "test the shoe to more, set it deeper, or state a smaller `kick` for a hole whose pressures are known",
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
						what: `gas of the ${hole.id} hole may bring ${psi(gas.value)} psi to preventers rated for ${psi(rating.value)} psi`,
						expected: `at least ${psi(gas.value)} psi`,
						found: `${psi(rating.value)} psi`,
						mend: "fit stronger preventers, or show that less can come",
					},
				),
			);
		return found;
	});
