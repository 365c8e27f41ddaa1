import type { Known } from "../cite/known.ts";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import type { CasingString, CementJob, Formation, Well } from "../well/well.ts";
import { designSlurry } from "./cement/designed-slurry.ts";
import { correlate } from "./pressure/correlated-gradient.ts";

/**
 * A well whose figures are all there: slurries worked from their components, fracture gradients by correlation where the
 * definition asks for one. What is stated is never replaced; a stated slurry that its components contradict is told.
 *
 * @returns no value where a slurry cannot be worked
 */
export const completeWell = (well: Well): Checked<Well> => {
	const diagnostics: Diagnostic[] = [];
	const strings = well.strings.map((string, i) => withSlurries(string, i, diagnostics));
	const formations = well.geology.formations.map((formation, i) =>
		withGradient(formation, i, well.geology.overburden, diagnostics),
	);
	const failed = diagnostics.some(({ severity }) => severity === "error");
	return {
		diagnostics,
		...(failed
			? {}
			: {
					value: { ...well, strings, geology: { ...well.geology, formations } },
				}),
	};
};

const withSlurries = (string: CasingString, i: number, diagnostics: Diagnostic[]): CasingString => {
	const { cement } = string;
	if (cement === undefined || cement.slurries.every(({ design }) => design === undefined)) return string;
	const slurries: CementJob["slurries"] = cement.slurries.map((slurry, j) => {
		const designed = designSlurry(slurry, string.id, ["casing", i, "cement", "slurries", j]);
		diagnostics.push(...designed.diagnostics);
		return designed.value ?? slurry;
	});
	return { ...string, cement: { ...cement, slurries } };
};

const withGradient = (
	formation: Formation,
	i: number,
	overburden: Known<"pressure-gradient"> | undefined,
	diagnostics: Diagnostic[],
): Formation => {
	if (formation.fractureGradient !== undefined || formation.fractureFrom === undefined) return formation;
	const { value, diagnostics: faults } = correlate(formation, overburden, ["geology", "formations", i]);
	diagnostics.push(...faults);
	return value === undefined ? formation : { ...formation, fractureGradient: value };
};
