import { diagnose } from "../diagnostics/diagnose.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Message, message } from "../messages/message.ts";

/** What a definition says of rules by their ids. */
interface RuleReferences {
	readonly variances?: readonly { readonly of: string }[];
	readonly notices?: readonly { readonly rule?: string }[];
	readonly compared?: readonly { readonly rule: string }[];
}

const MOST_NAMED = 8;

/** Variances and notices that name a rule which is in none of the sets that apply: they would have no effect, unseen. */
export const ruleReferenceFaults = (
	{ variances = [], notices = [], compared = [] }: RuleReferences,
	ids: readonly string[],
): readonly Diagnostic[] => [
	...variances.flatMap(({ of }, i) =>
		unknown(of, ["site", "variances", i, "of"], message("rules/reference.variance"), ids),
	),
	...notices.flatMap(({ rule }, i) =>
		rule === undefined
			? []
			: unknown(rule, ["site", "notices", i, "rule"], message("rules/reference.notice"), ids),
	),
	...compared.flatMap(({ rule }, i) =>
		unknown(rule, ["site", "compared", i, "rule"], message("rules/reference.comparison"), ids),
	),
];

const unknown = (
	written: string,
	path: Path,
	what: Message,
	ids: readonly string[],
): readonly Diagnostic[] => {
	if (ids.includes(written)) return [];
	const near = nearestName(written, ids);
	const alike = ids.filter((id) => id.split(".")[0] === written.split(".")[0]);
	const named = (alike.length > 0 ? alike : ids).slice(0, MOST_NAMED);
	return [
		diagnose(
			"rules/unknown-rule",
			{ path },
			{
				what,
				expected:
					named.length === 0
						? message("rules/reference.none-expected")
						: message("rules/reference.expected", { named: named.join(", ") }),
				found: written,
				mend:
					near === undefined ? message("rules/reference.mend") : message("definition/near.mend", { near }),
			},
		),
	];
};
