import {
	isAlias,
	isMap,
	isScalar,
	isSeq,
	type Node,
	type Pair,
	type Scalar,
	type YAMLMap,
	type YAMLSeq,
} from "yaml";
import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import { type Diagnostic, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { message } from "../messages/message.ts";
import { escapedFault } from "./characters.ts";
import { type CutValue, cutInList, cutInMap } from "./flow-comma.ts";
import { plainScalar } from "./plain-scalar.ts";
import { type PositionIndex, positionRecorder } from "./position-index.ts";
import * as words from "./tree-words.ts";

/** Deepest nesting taken. A well definition needs about ten. */
export const DEEPEST = 64;

/** Entries that aliases may repeat in one file, so that a few lines cannot grow to billions. */
const MOST_REPEATED = 10_000;

/** Names that JavaScript gives a meaning of its own. */
const RESERVED = new Set(["__proto__", "constructor", "prototype"]);

interface Tree {
	readonly value: unknown;
	readonly positions: PositionIndex;
	readonly diagnostics: readonly Diagnostic[];
}

const rangeOf = (node: { range?: readonly number[] | null | undefined } | null | undefined): Range => {
	const [start = 0, end = start] = node?.range ?? [];
	return [start, end];
};

/** Text up to the end of the value, where the line goes on with entries and brackets around it. */
const withoutClosers = (line: string): string => {
	const opened = (line.match(/[[{]/g) ?? []).length;
	const closed = (line.match(/[\]}]/g) ?? []).length;
	return closed > opened ? line.replace(/\s*(?:, |[\]}]).*$/, "") : line;
};

/**
 * The plain tree of a parsed document: null-prototype maps, lists, text, numbers, true and false, null. Every fault of
 * a node is reported once and mended in the tree, so that the stages behind do not stumble over it again.
 *
 * @param hashes offsets of `#` that cut a value (see `hashTraps`)
 */
export const yamlTree = (
	root: Node | null,
	text: string,
	file: string,
	hashes: ReadonlySet<number>,
): Tree => {
	const diagnostics: Diagnostic[] = [];
	const recorder = positionRecorder(text);
	const anchors = new Map<string, Node>();
	const open = new Set<Node>();
	let repeated = 0;
	let exhausted = false;

	const report = (code: Code, path: Path, range: Range, telling: Telling): void => {
		if (diagnostics.length < MOST_FAULTS) diagnostics.push(diagnose(code, { file, path, range }, telling));
	};

	const withTag = ([start, end]: Range): Range => [
		Math.max(0, text.lastIndexOf("!", start)),
		Math.max(start, end),
	];

	/** A plain value together with the `#…` that YAML took for a comment. */
	const withHash = (node: Scalar, path: Path): string | undefined => {
		const [start, end] = rangeOf(node);
		let next = end;
		while (text.charAt(next) === " " || text.charAt(next) === "\t") next += 1;
		if (!hashes.has(next)) return undefined;
		const whole = withoutClosers(/^[^\r\n]*/.exec(text.slice(start))?.[0].trim() ?? "");
		report("syntax/hash-in-value", path, [start, start + whole.length], words.hashInValue(whole));
		return whole;
	};

	const scalar = (node: Scalar, path: Path): unknown => {
		const value = String(node.value ?? "");
		if (node.type === "QUOTE_DOUBLE") {
			const fault = escapedFault(value);
			if (fault !== undefined) report("syntax/hidden-character", path, rangeOf(node), fault);
		}
		if (node.type !== "PLAIN") return value;
		return withHash(node, path) ?? plainScalar(value);
	};

	const alias = (node: Node & { source: string }, path: Path, depth: number, key?: Range): unknown => {
		const target = anchors.get(node.source);
		if (target === undefined || open.has(target)) {
			const telling = target === undefined ? words.unknownAlias(node.source) : words.ownAlias(node.source);
			report("syntax/alias", path, rangeOf(node), telling);
			return null;
		}
		repeated += 1;
		const value = convert(target, path, depth, true, key);
		if (repeated > MOST_REPEATED && !exhausted) {
			exhausted = true;
			report("syntax/alias", path, rangeOf(node), words.tooManyAliases(MOST_REPEATED));
		}
		return value;
	};

	const keyName = (pair: Pair, path: Path): string | undefined => {
		const { key } = pair;
		if (isScalar(key) && String(key.value ?? "") !== "") {
			const name = String(key.value);
			const fault = escapedFault(name);
			if (fault !== undefined) {
				report("syntax/hidden-character", path, rangeOf(key), fault);
				return undefined;
			}
			if (!RESERVED.has(name)) return name;
			report("syntax/reserved-key", path, rangeOf(key), words.reservedKey(name));
			return undefined;
		}
		const range = rangeOf(key as Node | null);
		report("syntax/key", path, range[1] > range[0] ? range : [range[0], range[0] + 1], words.badKey);
		return undefined;
	};

	const cut = ({ code, range, telling }: CutValue, path: Path): void => report(code, path, range, telling);

	const list = (node: YAMLSeq, path: Path, depth: number, again: boolean): unknown[] => {
		const cuts = new Map((node.flow ? cutInList(node, text) : []).map((each) => [each.first, each]));
		const values: unknown[] = [];
		for (let index = 0; index < node.items.length; index += 1) {
			const here = [...path, values.length];
			const broken = cuts.get(index);
			if (broken !== undefined) {
				cut(broken, here);
				recorder.record(here, broken.range);
				values.push(plainScalar(broken.text ?? ""));
				index = broken.last;
				continue;
			}
			values.push(convert(node.items[index] as Node | null, here, depth + 1, again));
		}
		return values;
	};

	const merge = (map: Record<string, unknown>, pair: Pair, path: Path, depth: number): void => {
		report("syntax/merge-key", path, rangeOf(pair.key as Node), words.mergeKey);
		const own = recorder.recorded(path);
		const merged = convert(pair.value as Node | null, path, depth + 1, true);
		// The block stands where it is written, not where it copies from.
		if (own !== undefined) recorder.record(path, own.value, own.key);
		for (const part of Array.isArray(merged) ? merged : [merged])
			for (const [name, value] of Object.entries(part ?? {})) if (!(name in map)) map[name] = value;
	};

	const entries = (node: YAMLMap, path: Path, depth: number, again: boolean): Record<string, unknown> => {
		const cuts = node.flow ? cutInMap(node, text) : [];
		const lone = new Map(cuts.filter(({ first }) => first === undefined).map((each) => [each.last, each]));
		const cutFrom = new Map(cuts.map((each) => [each.first, each]));
		const map: Record<string, unknown> = Object.create(null);
		const merges: Pair[] = [];
		const keys = new Map<string, Range>();
		for (let index = 0; index < node.items.length; index += 1) {
			const pair = node.items[index] as Pair;
			const alone = lone.get(index);
			if (alone !== undefined) {
				cut(alone, path);
				continue;
			}
			if (isScalar(pair.key) && pair.key.value === "<<" && pair.key.type === "PLAIN") {
				merges.push(pair);
				continue;
			}
			const broken = cutFrom.get(index);
			const name = keyName(pair, path);
			if (name === undefined) {
				index = broken?.last ?? index;
				continue;
			}
			const here = [...path, name];
			const keyRange = rangeOf(pair.key as Node);
			const earlier = keys.get(name);
			if (earlier !== undefined) {
				const related = [
					{ at: { file, path: here, range: earlier }, label: message("syntax/duplicate-key.label") },
				];
				report("syntax/duplicate-key", here, keyRange, { ...words.duplicateKey(name), related });
				index = broken?.last ?? index;
				continue;
			}
			keys.set(name, keyRange);
			if (broken !== undefined) {
				cut(broken, here);
				recorder.record(here, broken.range, keyRange);
				map[name] = plainScalar(broken.text ?? "");
				index = broken.last;
				continue;
			}
			map[name] = convert(pair.value as Node | null, here, depth + 1, again, keyRange);
		}
		for (const pair of merges) merge(map, pair, path, depth);
		return map;
	};

	const convert = (node: Node | null, path: Path, depth: number, again: boolean, key?: Range): unknown => {
		const range: Range = node === null ? [key?.[1] ?? 0, key?.[1] ?? 0] : rangeOf(node);
		recorder.record(path, range, key);
		if (again) repeated += 1;
		if (again && repeated > MOST_REPEATED) return null;
		if (depth > DEEPEST) return null;
		if (isAlias(node)) return alias(node, path, depth, key);
		if (node === null) return null;
		if (node.tag !== undefined && !again) report("syntax/tag", path, withTag(range), words.tag(node.tag));
		const { anchor } = node as { anchor?: string };
		if (anchor !== undefined && !again) anchors.set(anchor, node);
		open.add(node);
		const value = isMap(node)
			? entries(node as YAMLMap, path, depth, again)
			: isSeq(node)
				? list(node as YAMLSeq, path, depth, again)
				: scalar(node as Scalar, path);
		open.delete(node);
		return value;
	};

	const value = convert(root, [], 0, false);
	return { value, positions: recorder.finish(value), diagnostics };
};
