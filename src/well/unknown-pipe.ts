import type { PipeDefinition } from "../definition/definition.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import { asWritten, choiceOf, listOf, measured } from "./said.ts";

/** How many of the nearest sizes or weights a message names. */
const NAMED = 4;

/** The values nearest to one, in ascending order. */
const nearest = (value: number, values: readonly number[]): number[] =>
	[...new Set(values)]
		.sort((a, b) => Math.abs(a - value) - Math.abs(b - value))
		.slice(0, NAMED)
		.sort((a, b) => a - b);

/** Tells of pipe that is not in the catalogue, naming the nearest that is. */
export const unknownPipe = (written: PipeDefinition, at: Path, desk: Desk): undefined => {
	const { od, weight, wall } = written;
	const ofSize = desk.catalog.casingOfSize(od.value);
	const outside: Said = message("well/unknown-pipe.outside-catalogue");
	if (ofSize.length === 0) {
		const sizes = nearest(
			od.value,
			desk.catalog.casing.map(({ outsideDiameter }) => outsideDiameter.value),
		);
		const names = sizes.map((size) => desk.catalog.casingOfSize(size)[0]?.size ?? measured("diameter", size));
		return fault(desk, "well/unknown-pipe", placeOf(od, [...at, "od"]), {
			what: message("well/unknown-pipe.what"),
			expected: message("well/unknown-pipe.expected", { names: listOf(names) }),
			found: asWritten(od),
			mend: message("well/unknown-pipe.mend", { outside }),
		});
	}
	const size = ofSize[0]?.size ?? "";
	if (weight !== undefined) {
		const weights = nearest(
			weight.value,
			ofSize.map(({ nominalWeight }) => nominalWeight.value),
		);
		return fault(desk, "well/unknown-pipe", placeOf(weight, [...at, "weight"]), {
			what: message("well/unknown-pipe.catalogue-has-no-casing-this", { size }),
			expected: message("well/unknown-pipe.listed-weight-nearest-are", {
				weights: listOf(weights.map((each) => measured("linear-weight", each))),
			}),
			found: asWritten(weight),
			mend: message("well/unknown-pipe.correct-weight", { outside }),
		});
	}
	const walls = nearest(
		wall?.value ?? 0,
		ofSize.map((row) => row.wall.value),
	);
	return fault(desk, "well/unknown-pipe", placeOf(wall, [...at, "wall"]), {
		what: message("well/unknown-pipe.catalogue-has-no-casing-this-2", { size }),
		expected: message("well/unknown-pipe.listed-wall-nearest-are", {
			walls: listOf(walls.map((each) => measured("diameter", each))),
		}),
		...(wall === undefined ? {} : { found: asWritten(wall) }),
		mend: message("well/unknown-pipe.correct-wall", { outside }),
	});
};

/** Tells of a grade that is not in the catalogue. */
export const unknownGrade = (written: string, at: Path, desk: Desk): undefined => {
	const grades = desk.catalog.grades.map(({ id }) => id);
	const near = nearestName(written, grades);
	return fault(desk, "well/unknown-grade", at, {
		what: message("well/unknown-grade.what"),
		expected: message("well/unknown-grade.expected", { grades: choiceOf(grades) }),
		found: written,
		mend:
			near === undefined
				? message("well/unknown-grade.mend")
				: message("well/unknown-grade.write-if-that-is-one", { near }),
	});
};
