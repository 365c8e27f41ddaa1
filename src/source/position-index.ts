import type { Path } from "../diagnostics/path.ts";
import {
	type LineColumn,
	lineColumn,
	lineStarts,
	type Positions,
	type Range,
} from "../diagnostics/source-text.ts";
import { message, type Said } from "../messages/message.ts";

interface Spot {
	readonly key?: Range;
	readonly value: Range;
}

/** Where everything in a read file stands. */
export interface PositionIndex extends Positions {
	/** The value as the file has it, quotes and all: `4.2e6 psi`, `"911"`. Undefined where nothing stands at the path. */
	readonly written: (path: Path) => string | undefined;
	readonly lineColumn: (offset: number) => LineColumn;
}

interface PositionRecorder {
	readonly record: (path: Path, value: Range, key?: Range) => void;
	readonly recorded: (path: Path) => { readonly key?: Range; readonly value: Range } | undefined;
	readonly finish: (tree: unknown) => PositionIndex;
}

const keyOf = (path: Path): string => JSON.stringify(path);

const member = (node: unknown, step: string | number): unknown =>
	typeof node === "object" && node !== null ? (node as Record<string | number, unknown>)[step] : undefined;

const LONGEST_NAME = 40;

/** A path in words: an item of a list by its id or name, or by its number from 1. */
export const trailOf = (tree: unknown, path: Path): Said[] => {
	let node = tree;
	return path.map((step) => {
		node = member(node, step);
		if (typeof step === "string") return step;
		const name = member(node, "id") ?? member(node, "name");
		return typeof name === "string" && name.length <= LONGEST_NAME
			? name
			: message("diagnostics/item", { number: String(step + 1) });
	});
};

/** Collects positions while a tree is built. */
export const positionRecorder = (text: string): PositionRecorder => {
	const spots = new Map<string, Spot>();
	const nearest = (path: Path): { spot: Spot; exact: boolean } => {
		for (let length = path.length; length >= 0; length -= 1) {
			const spot = spots.get(keyOf(path.slice(0, length)));
			if (spot !== undefined) return { spot, exact: length === path.length };
		}
		return { spot: { value: [0, 0] }, exact: path.length === 0 };
	};
	const index = (tree: unknown): PositionIndex => {
		const starts = lineStarts(text);
		return {
			valueRange: (path) => {
				const { spot, exact } = nearest(path);
				return { range: exact ? spot.value : (spot.key ?? spot.value), exact };
			},
			keyRange: (path) => {
				const { spot, exact } = nearest(path);
				return { range: spot.key ?? spot.value, exact };
			},
			trail: (path) => trailOf(tree, path),
			written: (path) => {
				const spot = spots.get(keyOf(path));
				return spot === undefined ? undefined : text.slice(...spot.value);
			},
			lineColumn: (offset) => lineColumn(starts, offset),
		};
	};
	return {
		record: (path, value, key) => {
			spots.set(keyOf(path), key === undefined ? { value } : { key, value });
		},
		recorded: (path) => spots.get(keyOf(path)),
		finish: index,
	};
};
