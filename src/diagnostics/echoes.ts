import type { Code } from "./codes.ts";
import type { Diagnostic } from "./diagnostic.ts";
import { type Path, pathKey } from "./path.ts";

/** Faults of form that leave the entry they name half understood; the later stages may stumble over it again. */
const OF_ONE_ENTRY: ReadonlySet<Code> = new Set<Code>([
	"syntax/alias",
	"syntax/comma-in-number",
	"syntax/comma-in-text",
	"syntax/duplicate-key",
	"syntax/hash-in-value",
	"syntax/tag",
]);

/** Faults that leave open what else their block was to hold: a part of it may have been swallowed. */
const SWALLOWS: ReadonlySet<Code> = new Set<Code>(["syntax/comma-in-text", "syntax/no-value"]);

const blockOf = ({ code, at }: Diagnostic): Path =>
	code === "syntax/no-value" ? at.path : at.path.slice(0, -1);

const within = (path: Path, entry: Path): boolean =>
	entry.length > 0 && entry.length <= path.length && entry.every((step, index) => step === path[index]);

/** What a later stage found, without what it found in an entry that the reading of the file has complained of already. */
export const withoutEchoes = (
	later: readonly Diagnostic[],
	reading: readonly Diagnostic[],
): readonly Diagnostic[] => {
	const entries = reading.filter(({ code }) => OF_ONE_ENTRY.has(code)).map(({ at }) => at.path);
	const blocks = new Set(
		reading.filter(({ code }) => SWALLOWS.has(code)).map((each) => pathKey(blockOf(each))),
	);
	return later.filter(
		({ code, at }) =>
			!entries.some((entry) => within(at.path, entry)) &&
			!(code === "definition/missing" && blocks.has(pathKey(at.path.slice(0, -1)))),
	);
};

/** Without the doubt about a figure that an error has been told of: its own reader would mend one thing and be told two. */
export const withoutDoubts = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] => {
	const keyOf = ({ at }: Diagnostic): string => `${at.file ?? ""} ${pathKey(at.path)}`;
	const wrong = new Set(diagnostics.filter(({ severity }) => severity === "error").map(keyOf));
	return diagnostics.filter((each) => each.code !== "well/improbable-value" || !wrong.has(keyOf(each)));
};
