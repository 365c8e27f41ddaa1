import type { Shape } from "../document/shapes.ts";
import { textWidth } from "../measure/text-width.ts";
import { INK } from "./palette.ts";

export type Weight = "regular" | "semibold" | "bold";

/** A stretch of a line in one style; one that prints a value carries its key and is never broken. */
export interface Run {
	readonly text: string;
	readonly key?: string;
	readonly weight?: Weight;
	readonly italic?: boolean;
	readonly color?: string;
	/** Never broken at its spaces. */
	readonly whole?: boolean;
}

export type Line = readonly Run[];

export const run = (text: string, style: Omit<Run, "text"> = {}): Run => ({
	text,
	...style,
});

export const runWidth = (part: Run, size: number): number =>
	textWidth(part.text, {
		size,
		...(part.weight === undefined ? {} : { weight: part.weight }),
		...(part.italic === undefined ? {} : { italic: part.italic }),
	});

export const lineWidth = (line: Line, size: number): number =>
	line.reduce((sum, part) => sum + runWidth(part, size), 0);

export const lineText = (line: Line): string => line.map((part) => part.text).join("");

/** Puts runs and text in the `{name}` places of a phrase. A place without a value stays empty. */
export const compose = (
	phrase: string,
	values: Readonly<Record<string, Run | Line | string>> = {},
	style: Omit<Run, "text"> = {},
): Line =>
	phrase
		.split(/(\{[a-z_A-Z]+\})/u)
		.filter((part) => part !== "")
		.flatMap((part): Line => {
			if (!/^\{.+\}$/u.test(part)) return [run(part, style)];
			const value = values[part.slice(1, -1)];
			if (value === undefined) return [];
			if (typeof value === "string") return [run(value, style)];
			const parts: Line = "text" in value ? [value] : value;
			return parts.map((each) => ({ ...style, ...each }));
		});

/** As `compose`, to plain text. */
export const sentence = (
	phrase: string,
	values: Readonly<Record<string, Run | Line | string>> = {},
): string => lineText(compose(phrase, values));

/** Cuts a text until it and an ellipsis fit. */
const shortened = (part: Run, size: number, width: number): Run => {
	const characters = [...part.text];
	while (
		characters.length > 0 &&
		runWidth({ ...part, text: `${characters.join("").trimEnd()}…` }, size) > width
	)
		characters.pop();
	return { ...part, text: `${characters.join("").trimEnd()}…` };
};

/** Words of a run, each with the spaces that follow it; a run with a key stays whole. */
const pieces = (part: Run): Run[] =>
	part.key !== undefined || part.whole === true
		? [part]
		: (part.text.match(/\S+\s*|\s+/gu) ?? []).map((text) => ({
				...part,
				text,
			}));

const trimmed = (line: Run[]): Run[] => {
	const last = line.at(-1);
	if (last === undefined) return line;
	const text = last.text.trimEnd();
	return text === "" ? trimmed(line.slice(0, -1)) : [...line.slice(0, -1), { ...last, text }];
};

const merged = (line: readonly Run[]): Run[] => {
	const out: Run[] = [];
	for (const part of line) {
		const last = out.at(-1);
		const joins =
			last !== undefined &&
			last.key === undefined &&
			part.key === undefined &&
			last.weight === part.weight &&
			last.italic === part.italic &&
			last.color === part.color;
		if (joins) out[out.length - 1] = { ...last, text: last.text + part.text };
		else out.push(part);
	}
	return out;
};

/** Breaks a line at spaces so that it fits a width; what does not fit in `most` lines ends in an ellipsis. */
export const wrap = (line: Line, size: number, width: number, most = 3): Line[] => {
	const lines: Run[][] = [[]];
	let used = 0;
	for (const piece of line.flatMap(pieces)) {
		const wide = runWidth({ ...piece, text: piece.text.trimEnd() }, size);
		const current = lines.at(-1) ?? [];
		if (used > 0 && used + wide > width) {
			lines.push([]);
			used = 0;
		}
		const fits = wide <= width ? piece : shortened(piece, size, width);
		(lines.at(-1) ?? current).push(fits);
		used += runWidth(fits, size);
	}
	const kept = lines.slice(0, most).map((each) => merged(trimmed(each)));
	if (lines.length > most) {
		const last = kept.at(-1) ?? [];
		const tail = last.at(-1);
		if (tail !== undefined) {
			const before = lineWidth(last.slice(0, -1), size);
			const cut = shortened(tail, size, width - before);
			kept[kept.length - 1] = [...last.slice(0, -1), tail.key === undefined ? cut : tail];
		}
	}
	return kept.filter((each) => each.length > 0);
};

/** Sets a line: one text shape for each run, so that each value keeps its own key. */
export const setLine = (
	line: Line,
	at: {
		readonly x: number;
		readonly y: number;
		readonly size: number;
		readonly anchor?: "start" | "middle" | "end";
	},
): Shape[] => {
	const wide = lineWidth(line, at.size);
	let x = at.anchor === "end" ? at.x - wide : at.anchor === "middle" ? at.x - wide / 2 : at.x;
	return merged(line).flatMap((part): Shape[] => {
		const here = x;
		x += runWidth(part, at.size);
		if (part.text.trim() === "") return [];
		const lead = part.text.length - part.text.trimStart().length;
		const shift = lead === 0 ? 0 : runWidth({ ...part, text: part.text.slice(0, lead) }, at.size);
		return [
			{
				kind: "text",
				x: here + shift,
				y: at.y,
				text: part.text.trim(),
				size: at.size,
				color: part.color ?? INK,
				...(part.weight === undefined ? {} : { weight: part.weight }),
				...(part.italic === true ? { italic: true } : {}),
				...(part.key === undefined ? {} : { key: part.key }),
			},
		];
	});
};
