import { type Diagnostic, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { valueAt } from "./fault.ts";
import type { FieldMeta } from "./field.ts";
import {
	custom,
	empty,
	type Issue,
	missing,
	notOneOf,
	type Reading,
	unknownKey,
	wrongForm,
	wrongKind,
	wrongSize,
} from "./messages.ts";
import { fieldAt } from "./schema-walk.ts";

const pathOf = (issue: Issue, base: Path): Path => [
	...base,
	...issue.path.map((step) => (typeof step === "symbol" ? String(step) : step)),
];

/** Every message that one finding of the schema comes to. The schema's own words are never used. */
export const issueDiagnostics = (issue: Issue, reading: Reading, base: Path = []): readonly Diagnostic[] => {
	const at = pathOf(issue, base);
	const found = valueAt(reading.tree, at);
	const meta = fieldAt(reading.schema, at);
	if (issue.code === "unrecognized_keys")
		return issue.keys.slice(0, MOST_FAULTS).map((key) => unknownKey(key, at, reading));
	if (found === undefined) return [missing(at, reading)];
	if (found === null) return [empty(at, meta)];
	switch (issue.code) {
		case "invalid_union":
			return issue.errors.length === 0
				? [notOneOf(at, found, optionsOf(issue), meta)]
				: unionDiagnostics(issue.errors, at, found, reading, meta);
		case "invalid_value":
			return [notOneOf(at, found, issue.values.map(String), meta)];
		case "invalid_format":
			return [wrongForm(at, found, meta, issue.format)];
		case "too_small":
		case "too_big":
			return [wrongSize(issue, at, found, meta)];
		case "custom":
			return [custom(issue, at, found, meta)];
		default:
			return [wrongKind(at, found, meta)];
	}
};

const optionsOf = (issue: Issue): readonly string[] =>
	"options" in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];

/** The branch of a choice that was most likely meant: of the right kind, with the fewest strange names and faults. */
const unionDiagnostics = (
	branches: readonly (readonly Issue[])[],
	at: Path,
	found: unknown,
	reading: Reading,
	meta: FieldMeta | undefined,
): readonly Diagnostic[] => {
	const atRoot = (issue: Issue): boolean => issue.path.length === 0 && issue.code !== "unrecognized_keys";
	const strange = (issues: readonly Issue[]): number =>
		issues.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 0), 0);
	const entered = branches.filter((issues) => !issues.some(atRoot));
	const words = branches.flatMap((issues) =>
		issues.flatMap((issue) =>
			atRoot(issue) && issue.code === "invalid_value" ? issue.values.map(String) : [],
		),
	);
	if (entered.length === 0 && words.length > 0)
		return [
			typeof found === "string" ? notOneOf(at, found, [...new Set(words)], meta) : wrongKind(at, found, meta),
		];
	const fitting = branches.filter(
		(issues) => !issues.some((issue) => atRoot(issue) && issue.code === "invalid_type"),
	);
	const [best] = [...(entered.length > 0 ? entered : fitting)].sort(
		(a, b) => strange(a) - strange(b) || a.length - b.length,
	);
	if (best === undefined) return [wrongKind(at, found, meta)];
	return best.flatMap((issue) => issueDiagnostics(issue, reading, at));
};
