import { type Checked, type Diagnostic, hasErrors, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Definition, definitionSchema } from "./definition.ts";
import { faultAt, isBlock, shown, valueAt } from "./fault.ts";
import { issueDiagnostics } from "./issue-diagnostics.ts";
import { locate } from "./locate.ts";
import type { Reading } from "./messages.ts";
import { type Partial, readPartly } from "./partial.ts";
import { keysAt } from "./schema-walk.ts";
import { STAND_IN_NAME } from "./stand-ins.ts";
import { withinTopics } from "./within-topics.ts";

/** What came of a tree; `partial` where it is no definition as it stands and still tells something. */
interface Validated extends Checked<Definition> {
	readonly partial?: Partial;
}

/**
 * Reads a tree as a well definition: every quantity with its unit, no name unknown, every fault told once in one run.
 *
 * Gives no value where anything is an error, but what could be read besides, so that the parts can be compared and
 * their faults told in the same run. Never throws, whatever the tree.
 */
export const validate = (tree: unknown): Validated => {
	if (isSomethingElse(tree)) return { diagnostics: [noDefinition(Object.keys(tree))] };
	const parsed = definitionSchema.safeParse(tree);
	const reading = { schema: definitionSchema, tree };
	const found: Diagnostic[] = [];
	for (const issue of parsed.error?.issues ?? []) {
		if (found.length >= MOST_FAULTS) break;
		found.push(...issueDiagnostics(issue, reading));
	}
	const diagnostics = withoutEchoes([...found, ...withinTopics(tree)], reading);
	if (parsed.success && !hasErrors(diagnostics)) return { value: locate(parsed.data, tree), diagnostics };
	const partial = isBlock(tree) ? readPartly(apart(tree, diagnostics)) : undefined;
	if (partial === undefined) return { diagnostics };
	const told = diagnostics.map(({ at }) => at.path);
	return { diagnostics, partial: { ...partial, suspects: [...partial.suspects, ...told] } };
};

/** A block of entries, none of which is a topic of a definition: another file was named. */
const isSomethingElse = (tree: unknown): tree is Readonly<Record<string, unknown>> =>
	isBlock(tree) && !Object.keys(definitionSchema.shape).some((topic) => Object.hasOwn(tree, topic));

const noDefinition = (names: readonly string[]): Diagnostic =>
	faultAt({
		code: "definition/missing",
		at: [],
		what: message("definition/none.what"),
		expected: message("definition/none.expected", {
			keys: Object.keys(definitionSchema.shape).slice(1, 7).join(", "),
		}),
		found: names.length === 0 ? message("source/nothing") : shown(names.join(", ")),
		mend: message("definition/none.mend"),
	});

/** The tree with a name of its own for each entry: one that repeats another's stands for nothing. */
const apart = (tree: unknown, diagnostics: readonly Diagnostic[]): unknown =>
	diagnostics
		.filter(({ code }) => code === "definition/duplicate-id")
		.reduce<unknown>((mended, { at }) => withValue(mended, at.path, STAND_IN_NAME), tree);

const withValue = (node: unknown, [step, ...rest]: Path, value: unknown): unknown => {
	if (step === undefined) return value;
	if (Array.isArray(node)) return node.map((item, i) => (i === step ? withValue(item, rest, value) : item));
	return isBlock(node) ? { ...node, [step]: withValue(node[step], rest, value) } : node;
};

/** A misspelled name makes two findings, the strange one and the one that is then missing; the first tells it all. */
export const withoutEchoes = (
	found: readonly Diagnostic[],
	{ schema, tree }: Reading,
): readonly Diagnostic[] => {
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
		const names = keysAt(schema, block);
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
