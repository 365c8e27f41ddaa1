import type { MeasuredFrom } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import type { Case } from "./case.ts";

/** Something with coordinates: a neighbor or an offset well. */
export interface Placed {
	readonly id: string;
	readonly latitude?: Known<"angle">;
	readonly longitude?: Known<"angle">;
}

/** A distance from the well computed from coordinates, where there are enough of them for the place named. */
export const computedDistance = (
	_the: Pick<Case, "well" | "results">,
	_place: Placed,
	_from: MeasuredFrom,
): Known<"distance"> | undefined => undefined;
