import { verticalMark } from "../calc/depths/marks.ts";
import { message, type Said } from "../messages/message.ts";
import type { Formation, Hole } from "../well/well.ts";
import { type Case, missingAt } from "./case.ts";
import type { MissingInput } from "./finding.ts";

/**
 * Rock of a hole, below the shoe above it, of which a pressure is not given: the least or the highest of those that are
 * given then only bounds what the hole meets.
 */
const unknownRock = (
	{ well, results }: Pick<Case, "well" | "results">,
	hole: Hole,
	of: (formation: Formation) => unknown,
	what: (formation: string) => Said,
	key: string,
): readonly MissingInput[] => {
	const { formations } = well.geology;
	const mdOf = (tvd: Formation["top"] | undefined): number | undefined =>
		tvd === undefined ? undefined : verticalMark(results.trajectory.path, tvd, well.datum).md?.value;
	const shoe = Math.max(
		0,
		...well.strings
			.filter((string) => string.hole.id !== hole.id && string.shoe.value < hole.bottom.value)
			.map((string) => string.shoe.value),
	);
	return formations.flatMap((formation, i) => {
		if (of(formation) !== undefined) return [];
		const top = mdOf(formation.top) ?? Number.POSITIVE_INFINITY;
		const base = mdOf(formation.base ?? formations[i + 1]?.top) ?? Number.POSITIVE_INFINITY;
		return top < hole.bottom.value && base > shoe
			? [missingAt(what(formation.name), "geology", "formations", i, key)]
			: [];
	});
};

export const unknownPore = (the: Pick<Case, "well" | "results">, hole: Hole): readonly MissingInput[] =>
	unknownRock(
		the,
		hole,
		({ porePressure }) => porePressure,
		(formation) => message("rules/pore-pressure-of", { formation }),
		"pore_pressure",
	);

export const unknownFracture = (the: Pick<Case, "well" | "results">, hole: Hole): readonly MissingInput[] =>
	unknownRock(
		the,
		hole,
		({ fractureGradient }) => fractureGradient,
		(formation) => message("rules/fracture-gradient-of", { formation }),
		"fracture_gradient",
	);
