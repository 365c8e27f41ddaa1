import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault } from "./desk.ts";
import { choiceOf } from "./said.ts";

/** Tells of a name that refers to nothing. */
export const unknownReference = (
	desk: Desk,
	at: Path,
	thing: Said,
	written: string,
	names: readonly string[],
): undefined => {
	const near = nearestName(written, names);
	return fault(desk, "well/unknown-reference", at, {
		what: message("well/unknown-reference.what", { thing, written }),
		expected:
			names.length === 0
				? message("well/unknown-reference.expected", { thing })
				: message("well/unknown-reference.one", { names: choiceOf(names) }),
		found: written,
		mend:
			near === undefined
				? message("well/unknown-reference.mend", { thing })
				: message("well/unknown-reference.write-if-that-is-one", { near }),
	});
};
