import type { Known } from "../../cite/known.ts";
import type { Stimulation, Well } from "../../well/well.ts";
import { pathStrings } from "../cement/bore.ts";
import type { Gaps } from "../gaps.ts";
import type { CasingResults, StimulationResults } from "../results.ts";
import { allowedPressure, leastPressure } from "./treating-pressure.ts";

type Boundary = StimulationResults["boundary"];

/**
 * Every element that sees treating pressure, each with what it may see.
 *
 * The casing's rating is the least internal yield of pipe and coupling over every string pumped through; the casing
 * test's is the pressure it was tested to, else the pressure it is to be tested to.
 */
export const boundaryResults = (
	well: Well,
	stimulation: Stimulation,
	casing: Readonly<Record<string, CasingResults>>,
	gaps: Gaps,
): Boundary =>
	stimulation.boundary.flatMap(({ element, rating, factor }, i) => {
		const id = element
			.trim()
			.toLowerCase()
			.replace(/[^a-z0-9]+/g, "-");
		const rated = rating ?? ratingOf(well, stimulation, element, casing);
		if (rated === undefined) {
			gaps.missing(`stimulation.boundary.${id}`, `No rating is known for ${element}.`, [
				["stimulation", "pressure_boundary", i, "rating"],
			]);
			return [];
		}
		return [{ id, element, rating: rated, allowed: allowedPressure.of({ P: rated, f: factor }) }];
	});

const ratingOf = (
	well: Well,
	{ treatedThrough }: Stimulation,
	element: string,
	casing: Readonly<Record<string, CasingResults>>,
): Known<"pressure"> | undefined => {
	const name = element.trim().toLowerCase();
	if (name === "casing") {
		const ratings = pathStrings(well.strings, treatedThrough).map((s) => casing[s.id]?.least_internal_yield);
		const known = ratings.filter((r) => r !== undefined);
		return known.length < ratings.length || known.length === 0 ? undefined : leastPressure.of({ P_i: known });
	}
	if (name !== "casing test") return undefined;
	const test = well.strings.find((s) => s.id === treatedThrough)?.pressureTest;
	return test?.actual?.pressure ?? test?.pressure;
};

/** The weakest element. */
export const limitingElement = (boundary: Boundary): StimulationResults["limiting"] => {
	const weakest = boundary.reduce<Boundary[number] | undefined>(
		(least, b) => (least === undefined || b.allowed.value < least.allowed.value ? b : least),
		undefined,
	);
	return (
		weakest && {
			element: weakest.element,
			allowed: leastPressure.of({ P_i: boundary.map((b) => b.allowed) }),
		}
	);
};
