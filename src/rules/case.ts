import type { Results } from "../calc/results.ts";
import type { Jurisdiction, Rule } from "../catalog/limits/limit.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import type { CasingString, Well } from "../well/well.ts";
import type { MissingInput } from "./finding.ts";
import type { Subject } from "./subject.ts";

/** Everything one rule is judged on: the well, what was computed of it, the rule, and the one thing it is asked of. */
export interface Case<S extends Subject = Subject> {
	readonly well: Well;
	readonly results: Results;
	readonly rule: Rule;
	readonly jurisdiction: { readonly name: Said } & Pick<Jurisdiction, "holidays">;
	readonly subject: S;
}

/** Where a string's topic is written in the definition. */
export const stringPath = (well: Well, string: CasingString, ...rest: Path): Path => [
	"casing",
	Math.max(
		0,
		well.strings.findIndex(({ id }) => id === string.id),
	),
	...rest,
];

/** An input of a string, missing. */
export const missingOf = (
	{ well }: Pick<Case, "well">,
	string: CasingString,
	what: Said,
	...at: Path
): MissingInput => ({
	what: message("rules/missing-of-string", { what, string: string.id }),
	at: stringPath(well, string, ...at),
});

/** What a result lacks, each input by its name; `otherwise` where nothing is noted of it. */
export const missingFor = (
	{ results }: Pick<Case, "results">,
	key: string,
	...otherwise: readonly MissingInput[]
): readonly MissingInput[] => {
	const { needs = [], wanting = [] } = results.undetermined.find((gap) => gap.key === key) ?? {};
	const named = wanting.flatMap((what, i): readonly MissingInput[] => [{ what, at: needs[i] ?? [] }]);
	return named.length > 0 ? named : otherwise;
};

/** An input of the well, missing. */
export const missingAt = (what: Said, ...at: Path): MissingInput => ({
	what: message("rules/missing", { what }),
	at,
});
