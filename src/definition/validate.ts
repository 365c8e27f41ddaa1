import { type Checked, type Diagnostic, hasErrors, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import { type Definition, definitionSchema } from "./definition.ts";
import { isBlock, valueAt } from "./fault.ts";
import { issueDiagnostics } from "./issue-diagnostics.ts";
import { locate } from "./locate.ts";
import { keysAt } from "./schema-walk.ts";
import { withinTopics } from "./within-topics.ts";

/**
 * Reads a tree as a well definition: every quantity with its unit, no name unknown, every fault told once in one run.
 *
 * Gives no value where anything is an error. Never throws, whatever the tree.
 */
export const validate = (tree: unknown): Checked<Definition> => {
	const parsed = definitionSchema.safeParse(tree);
	const reading = { schema: definitionSchema, tree };
	const found: Diagnostic[] = [];
	for (const issue of parsed.error?.issues ?? []) {
		if (found.length >= MOST_FAULTS) break;
		found.push(...issueDiagnostics(issue, reading));
	}
	const diagnostics = withoutEchoes([...found, ...withinTopics(tree)], tree);
	if (!parsed.success || hasErrors(diagnostics)) return { diagnostics };
	return { value: locate(parsed.data, tree), diagnostics };
};

/** A misspelled name makes two findings, the strange one and the one that is then missing; the first tells it all. */
const withoutEchoes = (found: readonly Diagnostic[], tree: unknown): readonly Diagnostic[] => {
	const strangers = new Map<string, string[]>();
	for (const { code, at } of found) {
		if (code !== "definition/unknown-key") continue;
		const block = pathKey(at.path.slice(0, -1));
		const there = strangers.get(block);
		if (there === undefined) strangers.set(block, [String(at.path.at(-1))]);
		else there.push(String(at.path.at(-1)));
	}
	const misspelled = (path: Path): boolean => {
		const block = path.slice(0, -1);
		const name = String(path.at(-1));
		const names = keysAt(definitionSchema, block);
		const present = valueAt(tree, block);
		const free = names.filter((each) => !(isBlock(present) && Object.hasOwn(present, each)));
		return (strangers.get(pathKey(block)) ?? []).some((stranger) => nearestName(stranger, free) === name);
	};
	const choiceMissed = ({ code, at, found: given }: Diagnostic): boolean =>
		code === "definition/one-of-keys" && given === undefined && strangers.has(pathKey(at.path));
	return found.filter(
		(each) => !choiceMissed(each) && (each.code !== "definition/missing" || !misspelled(each.at.path)),
	);
};
