import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import type { Stimulation, TreatingString, Well } from "../../well/well.ts";
import { sectionRatings } from "../casing/section-ratings.ts";
import { pathStrings } from "../cement/bore.ts";
import { type Gaps, openGaps } from "../gaps.ts";
import type { CasingResults, StimulationResults } from "../results.ts";
import { allowedPressure, leastPressure } from "./treating-pressure.ts";

type Boundary = StimulationResults["boundary"];

/** Names by which a boundary lists pipe pumped down inside the casing, and the packer at its end. */
const TREATING_ELEMENT = "treating string";
const PACKER_ELEMENT = "packer";

/**
 * Every element that sees treating pressure, each with what it may see.
 *
 * The casing's rating is the least internal yield of pipe and coupling, worn as the design reckons, over every string pumped through; the casing
 * test's is the pressure it was tested to, else the pressure it is to be tested to. A treating string is rated as its
 * pipe is, and its packer by the pressure across it, as if the columns inside and outside were alike.
 */
export const boundaryResults = (
	well: Well,
	stimulation: Stimulation,
	casing: Readonly<Record<string, CasingResults>>,
	gaps: Gaps,
): Boundary => {
	tellUnlisted(stimulation, gaps);
	return stimulation.boundary.flatMap(({ element, rating, factor }, i) => {
		const id = nameOf(element).replace(/[^a-z0-9]+/g, "-");
		const rated = rating ?? ratingOf(well, stimulation, element, casing);
		if (rated === undefined) {
			gaps.missing(`stimulation.boundary.${id}`, message("calc/no-rating-is-known-for", { element }), [
				["stimulation", "pressure_boundary", i, "rating"],
			]);
			return [];
		}
		return [{ id, element, rating: rated, allowed: allowedPressure.of({ P: rated, f: factor }) }];
	});
};

/** Pipe pumped down inside the casing sees all of the pressure; a boundary without it names the wrong weakest element. */
const tellUnlisted = ({ boundary, treatingString }: Stimulation, gaps: Gaps): void => {
	if (treatingString === undefined) return;
	const listed = boundary.map(({ element }) => nameOf(element));
	const due = [TREATING_ELEMENT, ...(treatingString.packer === undefined ? [] : [PACKER_ELEMENT])];
	for (const element of due.filter((name) => !listed.includes(name)))
		gaps.missing(
			`stimulation.boundary.${element.replace(" ", "-")}`,
			message("calc/sees-treating-pressure-and-is-not", { element }),
			[["stimulation", "pressure_boundary"]],
		);
};

const nameOf = (element: string): string => element.trim().toLowerCase();

const ratingOf = (
	well: Well,
	{ treatedThrough, treatingString }: Stimulation,
	element: string,
	casing: Readonly<Record<string, CasingResults>>,
): Known<"pressure"> | undefined => {
	const test = well.strings.find((s) => s.id === treatedThrough)?.pressureTest;
	switch (nameOf(element)) {
		case "casing":
			return casingRating(well, treatedThrough, treatingString, casing);
		case "casing test":
			return test?.actual?.pressure ?? test?.pressure;
		case TREATING_ELEMENT:
			return treatingString && treatingRating(treatingString);
		case PACKER_ELEMENT:
			return treatingString?.packer?.rating;
		default:
			return undefined;
	}
};

/** Every string pumped through; below a packer, of the string treated through only the runs that reach below it. */
const casingRating = (
	well: Well,
	treatedThrough: string,
	treatingString: TreatingString | undefined,
	casing: Readonly<Record<string, CasingResults>>,
): Known<"pressure"> | undefined => {
	const packer = treatingString?.packer?.depth.value;
	if (packer === undefined) {
		const ratings = pathStrings(well.strings, treatedThrough).map(
			(s) => casing[s.id]?.worn_internal_yield ?? casing[s.id]?.least_internal_yield,
		);
		const known = ratings.filter((r) => r !== undefined);
		return known.length < ratings.length || known.length === 0 ? undefined : leastPressure.of({ P_i: known });
	}
	const below = (casing[treatedThrough]?.sections ?? []).filter(({ bottom }) => bottom.md.value > packer);
	const P_i = below.flatMap(({ internal_yield, coupling_internal_yield }) => [
		internal_yield,
		...(coupling_internal_yield === undefined ? [] : [coupling_internal_yield]),
	]);
	return P_i.length === 0 ? undefined : leastPressure.of({ P_i });
};

/** Pipe and coupling over every section; nothing where a connection is rated by nobody. */
const treatingRating = ({ sections }: TreatingString): Known<"pressure"> | undefined => {
	const ratings = sections.map((section) => {
		const unrated = openGaps();
		const { internalYield, couplingInternalYield } = sectionRatings(section, "", unrated).ratings;
		const known =
			Number.isFinite(internalYield.value) &&
			!unrated.undetermined.some(({ key }) => key.endsWith("coupling_internal_yield"));
		return known
			? [internalYield, ...(couplingInternalYield === undefined ? [] : [couplingInternalYield])]
			: [];
	});
	return ratings.some((of) => of.length === 0) ? undefined : leastPressure.of({ P_i: ratings.flat() });
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
