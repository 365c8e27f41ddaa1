import type { Operator } from "../catalog/limits/limit.ts";
import { practicallyEqual } from "../units/practically-equal.ts";

/** Whether a value lies on the right side of a boundary, the boundary itself taken as the rule words it. */
export const holds = (value: number, operator: Operator, limit: number): boolean => {
	const equal = practicallyEqual(value, limit);
	switch (operator) {
		case "at least":
			return equal || value > limit;
		case "more than":
			return !equal && value > limit;
		case "at most":
			return equal || value < limit;
		case "less than":
			return !equal && value < limit;
	}
};
