import { type Diagnostic, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";

/*
 * Faults of one entry must not hide those of another. So where an entry cannot be read, something stands in for it that
 * no text file can hold, and the parts are compared all the same; whatever is then said of a stand-in is not told.
 */

/** Stands in for a text or a quantity; its value is not a number, so that it compares with nothing. */
export const STAND_IN = "\u0000";

/** Stands in for a short name, which has a form. */
export const STAND_IN_NAME = "x0-stands-in-0x";

/** Stands in for a date: nothing is after it. */
export const STAND_IN_DATE = "9999-12-31";

/** As JSON writes it among the facts of a message. */
const STAND_IN_IN_JSON = JSON.stringify(STAND_IN).slice(1, -1);

const MARKS = [STAND_IN, STAND_IN_IN_JSON, STAND_IN_NAME, STAND_IN_DATE, "NaN"];

const speaksOfStandIn = ({ what, expected, found = "", mend, why = "", related = [] }: Diagnostic): boolean =>
	[what, expected, found, mend, why, ...related.map(({ label }) => label)].some((said) => {
		const text = typeof said === "string" ? said : JSON.stringify(said.facts, nanAsText);
		return MARKS.some((mark) => text.includes(mark));
	});

/** JSON has no word for a value that is not a number. */
const nanAsText = (_key: string, value: unknown): unknown => (Number.isNaN(value) ? "NaN" : value);

/** Whether one path lies at, above or below the other. */
const inLine = (a: Path, b: Path): boolean => {
	const shared = Math.min(a.length, b.length);
	for (let i = 0; i < shared; i += 1) if (a[i] !== b[i]) return false;
	return true;
};

/**
 * What was found in a definition of which some entries could not be read, without what was found in those.
 *
 * @param suspects where the entries stand
 */
export const withoutStandIns = (
	found: readonly Diagnostic[],
	suspects: readonly Path[],
): readonly Diagnostic[] => {
	const few = suspects.filter(({ length }) => length > 0).slice(0, MOST_FAULTS);
	const suspect = ({ path }: Diagnostic["at"]): boolean => few.some((each) => inLine(path, each));
	return found.filter(
		(each) =>
			!suspect(each.at) && !speaksOfStandIn(each) && !(each.related ?? []).some(({ at }) => suspect(at)),
	);
};
