import type { Known } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Checked } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import { listOf } from "../../well/said.ts";
import type { Formation } from "../../well/well.ts";
import {
	eatonFractureGradient,
	hubbertWillisMaximum,
	hubbertWillisMinimum,
	matthewsKellyFractureGradient,
} from "./fracture-gradient.ts";
import { mudGradient } from "./hydrostatic.ts";

type Gradient = Known<"pressure-gradient">;

/** A formation's fracture gradient by the method it names; a warning where an input is missing or out of range. */
export const correlate = (
	{ name, porePressure, fractureFrom }: Formation,
	S: Gradient | undefined,
	at: Path,
): Checked<Gradient> => {
	if (fractureFrom === undefined) return { diagnostics: [] };
	const { method, poissonsRatio: ν, matrixStressCoefficient: K_i } = fractureFrom;
	const P = porePressure && mudGradient.of({ ρ: porePressure });
	const missing = [
		...(P === undefined ? ["pore_pressure"] : []),
		...(S === undefined && (method === "Eaton" || method === "Matthews-Kelly") ? ["overburden"] : []),
		...(ν === undefined && method === "Eaton" ? ["poissons_ratio"] : []),
		...(K_i === undefined && method === "Matthews-Kelly" ? ["matrix_stress_coefficient"] : []),
	];
	const value = P === undefined || missing.length > 0 ? undefined : worked(method, P, S, ν, K_i);
	if (value !== undefined && Number.isFinite(value.value)) return { diagnostics: [], value };
	return {
		diagnostics: [
			diagnose(
				"calc/fracture-correlation",
				{ path: [...at, "fracture_from"] },
				{
					what:
						missing.length > 0
							? message("calc/fracture-correlation.what", { method, name, missing: listOf(missing) })
							: message("calc/fracture-correlation.inputs-gradient-lie-outside-what", { method, name }),
					expected: message("calc/fracture-correlation.expected"),
					mend: message("calc/fracture-correlation.mend"),
				},
			),
		],
	};
};

const worked = (
	method: NonNullable<Formation["fractureFrom"]>["method"],
	P: Gradient,
	S: Gradient | undefined,
	ν: Known<"ratio"> | undefined,
	K_i: Known<"ratio"> | undefined,
): Gradient | undefined => {
	switch (method) {
		case "Hubbert-Willis lower":
			return hubbertWillisMinimum.of({ P });
		case "Hubbert-Willis upper":
			return hubbertWillisMaximum.of({ P });
		case "Eaton":
			return S && ν && eatonFractureGradient.of({ S, P, ν });
		case "Matthews-Kelly":
			return S && K_i && matthewsKellyFractureGradient.of({ K_i, S, P });
	}
};
