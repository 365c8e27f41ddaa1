import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Desk, fault } from "./desk.ts";

/** Tells of a name that refers to nothing. */
export const unknownReference = (
	desk: Desk,
	at: Path,
	thing: string,
	written: string,
	names: readonly string[],
): undefined => {
	const near = nearestName(written, names);
	return fault(desk, "well/unknown-reference", at, {
		what: `there is no ${thing} called "${written}"`,
		expected: names.length === 0 ? `a ${thing} that is defined` : `one of: ${names.join(", ")}`,
		found: written,
		mend:
			near === undefined
				? `define the ${thing}, or name one that is defined`
				: `write "${near}" if that is the one meant`,
	});
};
