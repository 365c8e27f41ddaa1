import { piecesOf } from "../pieces.ts";
import type { Line, Run } from "./laid.ts";
import { type Part, partOf, type Word } from "./words.ts";

/** Rounding of sums of widths [pt]: a line that fits exactly is not broken. */
const EASE = 0.01;

/** A line of several words may be set narrower by so much to hold one word more: no eye sees it, and a page is saved. */
const NARROWER = 0.015;

/** Words of one style run on, with the spaces between them: the typeface kerns no letter with a space. */
const lineOf = (words: readonly Word[], room: number, broken: boolean): Line => {
	const runs: Run[] = [];
	let x = 0;
	let between = { gap: "", space: 0 };
	for (const word of words) {
		for (const { text, style, width } of word.parts) {
			const last = runs.at(-1);
			if (last !== undefined && between.space > 0) {
				const spaced = { ...last, text: last.text + between.gap, width: last.width + between.space };
				x += between.space;
				if (last.style === style)
					runs[runs.length - 1] = { ...spaced, text: spaced.text + text, width: spaced.width + width };
				else {
					runs[runs.length - 1] = spaced;
					runs.push({ text, style, x, width, narrowed: 1 });
				}
			} else runs.push({ text, style, x, width, narrowed: 1 });
			x += width;
			between = { gap: "", space: 0 };
		}
		between = word;
	}
	const last = words.at(-1);
	const end = runs.at(-1);
	// The space between this line and the next is there to be copied and read aloud; it takes no room.
	if (broken && last !== undefined && end !== undefined && last.space > 0)
		runs[runs.length - 1] = { ...end, text: `${end.text} ` };
	const narrowed = x > room + EASE && words.length > 1 ? room / x : 1;
	if (narrowed === 1 || narrowed < 1 - NARROWER - EASE) return { runs, x: 0, width: x };
	return {
		runs: runs.map((run) => ({ ...run, x: run.x * narrowed, width: run.width * narrowed, narrowed })),
		x: 0,
		width: room,
	};
};

/** A word that has no room on a line of its own, in pieces that end behind its joints. */
const pieces = (word: Word): readonly Word[] => {
	const parts = word.parts.flatMap((part): readonly Part[] =>
		piecesOf(part.text).map((text) => partOf(text, part.style)),
	);
	const [first] = parts;
	if (first === undefined || parts.length === 1) return [word];
	return parts.map((part, i): Word => {
		const last = i === parts.length - 1;
		return {
			parts: [part],
			width: part.width,
			gap: last ? word.gap : "",
			space: last ? word.space : 0,
			ends: last && word.ends,
		};
	});
};

/** A last word narrower than this share of the room does not stand on a line by itself. */
const ALONE = 1 / 4;

/** Gives a short last word company from the line before, where that has words to spare. */
const withCompany = (lines: (readonly Word[])[], room: number): void => {
	const [before, last] = lines.slice(-2);
	const [word, ...more] = last ?? [];
	if (before === undefined || word === undefined || more.length > 0) return;
	const spared = before.at(-1);
	if (spared === undefined || spared.ends || spared.space === 0 || before.length < 3) return;
	if (word.width >= room * ALONE || spared.width + spared.space + word.width > room) return;
	lines.splice(-2, 2, before.slice(0, -1), [spared, word]);
};

/**
 * Words in lines no wider than `room` [pt], each as full as it can be, and none hyphenated. A word alone wider than the
 * room is broken behind its joints (see `piecesOf`), or overhangs.
 */
export const breakLines = (words: readonly Word[], room: number): readonly Line[] => {
	const lines: (readonly Word[])[] = [];
	let line: Word[] = [];
	let width = 0;
	const end = (): void => {
		lines.push(line);
		line = [];
		width = 0;
	};
	const add = (word: Word): void => {
		const space = line.at(-1)?.space ?? 0;
		if (line.length > 0 && (width + space + word.width) * (1 - NARROWER) > room) end();
		width += (line.at(-1)?.space ?? 0) + word.width;
		line.push(word);
		if (word.ends) end();
	};
	for (const word of words) {
		if (word.width > room + EASE) pieces(word).forEach(add);
		else add(word);
	}
	if (line.length > 0) end();
	withCompany(lines, room);
	return lines.map((set, i) => lineOf(set, room, i < lines.length - 1 && set.at(-1)?.ends !== true));
};
