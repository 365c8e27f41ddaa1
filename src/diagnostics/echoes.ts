import type { Code } from "./codes.ts";
import type { Diagnostic } from "./diagnostic.ts";
import type { Path } from "./path.ts";

/** Faults of form that leave the entry they name half understood; the later stages may stumble over it again. */
const OF_ONE_ENTRY: ReadonlySet<Code> = new Set<Code>([
	"syntax/alias",
	"syntax/comma-in-number",
	"syntax/comma-in-text",
	"syntax/duplicate-key",
	"syntax/hash-in-value",
	"syntax/tag",
]);

const within = (path: Path, entry: Path): boolean =>
	entry.length > 0 && entry.length <= path.length && entry.every((step, index) => step === path[index]);

/** What a later stage found, without what it found in an entry that the reading of the file has complained of already. */
export const withoutEchoes = (
	later: readonly Diagnostic[],
	reading: readonly Diagnostic[],
): readonly Diagnostic[] => {
	const entries = reading.filter(({ code }) => OF_ONE_ENTRY.has(code)).map(({ at }) => at.path);
	return later.filter(({ at }) => !entries.some((entry) => within(at.path, entry)));
};
