import { formula } from "../../cite/formula.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString, PipeSection, Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import { temperatureAtDepth } from "../pressure/hydrostatic.ts";
import type { HoleMark, SourServiceResults } from "../results.ts";

/** Atmospheric pressure, which a gauge does not show [psi]. */
const ATMOSPHERE = 14.7;

export const sulfidePartialPressure = formula({
	id: "casing/sulfide-partial-pressure",
	name: "Partial pressure of hydrogen sulfide",
	expression: "p = y (P + 14.7) / 10⁶, y in ppm of the gas, P the gauge pressure",
	source: cite("iso-15156-2", "partial pressure: mole fraction times total absolute pressure"),
	inputs: { y: "gas-fraction", P: "pressure" },
	gives: "pressure",
	validity: "gas, or oil above its bubble point, at P",
	compute: ({ y, P }) => (y / 1e6) * (P + ATMOSPHERE),
});

/** The greatest of the pressures that gas may reach a string with. */
export const greatestGasSeen = formula({
	id: "casing/greatest-pore-pressure",
	name: "Greatest pore pressure of the rock open to a string",
	expression: "max over the formations, each at its base",
	source: cite("definition"),
	inputs: { P: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one formation",
	compute: ({ P }) => (P.length === 0 ? Number.NaN : Math.max(...P)),
});

const NONE = constant("gas-fraction", 0, "no hydrogen sulfide is expected", cite("definition"));

/** What a section of pipe is laid beside. */
export interface SourExposure {
	/** Greatest pressure of gas that may reach the string; absent where no pore pressure is given. */
	readonly pressure: Known<"pressure"> | undefined;
	readonly string: CasingString;
	readonly well: Well;
}

/**
 * A section's steel and its connection against hydrogen sulfide: by stated data only. Where a datum or a row is missing
 * it cannot be told, and what is missing is named. The coldest place of the section is its top, at rest; pipe cooled by
 * pumping is not looked at.
 *
 * @source iso-15156-2, Table A.3, from memory
 */
export const sourServiceOf = (
	section: PipeSection,
	top: HoleMark,
	{ pressure, well }: SourExposure,
): SourServiceResults => {
	const { hydrogen_sulfide: stated } = well.safety ?? {};
	if (stated === undefined) return { finding: "cannot tell", missing: "hydrogen sulfide" };
	const fraction = stated.fraction ?? (stated.expected ? undefined : NONE);
	if (fraction === undefined) return { finding: "cannot tell", missing: "fraction" };
	if (fraction.value === 0) return { finding: "not sour" };
	if (pressure === undefined) return { finding: "cannot tell", missing: "pore pressure" };
	const partial = sulfidePartialPressure.of({ y: fraction, P: pressure });
	const threshold = well.designBasis.sourThreshold;
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	const coldest = T_s && G && temperatureAtDepth.of({ T_s, G, D: top.below_ground });
	const found = { partial_pressure: partial, threshold, ...maybe("coldest", coldest) };
	if (partial.value < threshold.value) return { ...found, finding: "not sour" };
	return { ...found, ...steelAndConnection(section, coldest) };
};

type Judged = Pick<SourServiceResults, "finding" | "missing" | "lowest_temperature">;

const steelAndConnection = (section: PipeSection, coldest: Known<"temperature"> | undefined): Judged => {
	const { sourService: row, stated, connection } = section;
	if (stated?.sourService !== undefined)
		return { finding: stated.sourService ? "stated fit" : "stated unfit" };
	if (row === undefined) return { finding: "cannot tell", missing: "grade" };
	const lowest = row.lowestTemperature;
	const limit = maybe("lowest_temperature", lowest);
	if (lowest !== undefined && coldest === undefined)
		return { ...limit, finding: "cannot tell", missing: "temperature" };
	if (lowest !== undefined && coldest !== undefined && coldest.value < lowest.value)
		return { ...limit, finding: "outside the limits" };
	// Welds, and connections of makers, have requirements that the grade's row does not speak of.
	if (section.threads === undefined)
		return { ...limit, finding: "cannot tell", missing: connection === "plain end" ? "welds" : "connection" };
	return { ...limit, finding: "within the limits" };
};
