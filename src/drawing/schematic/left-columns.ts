import { numberString } from "../../units/format.ts";
import { BREAK_GAP } from "../depth-scale.ts";
import { labelColumn, type Placed } from "../label.ts";
import { type Line, run, sentence, setLine, wrap } from "../line-of-text.ts";
import { keeping } from "../never-dropped.ts";
import type { Print } from "../print.ts";
import { groundLabels } from "./ground-labels.ts";
import type { View } from "./view.ts";

/** The ground's labels, each in the depth piece it belongs to; under each break, what it does to the scale. */
export const leftColumns = (view: View): Placed => {
	const { frame, scale, print } = view;
	const { size } = frame;
	const labels = keeping(view.detail, groundLabels(view));
	const columns = scale.pieces.map((piece, i): Placed => {
		const change = scale.breaks[i - 1];
		const words =
			change === undefined ? [] : breakWords(print, change.ratio, size, frame.column.x - frame.ruler - 16);
		const low = piece.top + (words.length === 0 ? -4 : words.length * size * 1.15 + 2);
		const own = labels.filter(
			(label) => label.anchor[1] >= piece.top - 1e-6 && label.anchor[1] <= piece.bottom + 1e-6,
		);
		const column = labelColumn(own, {
			side: "left",
			x: frame.left.x,
			width: frame.left.width,
			edge: frame.column.x - 9,
			low,
			high: piece.bottom + (i === scale.pieces.length - 1 ? 4 : 0),
			size,
		});
		const middle = (frame.ruler + 6 + frame.column.x - 10) / 2;
		const set = words.flatMap((line, row) =>
			setLine(line, {
				x: middle,
				y: piece.top - BREAK_GAP / 2 + size * 0.6 + row * size * 1.15,
				size: size * 0.95,
				anchor: "middle",
			}),
		);
		return {
			shapes: [
				...(set.length === 0
					? []
					: [{ kind: "group", dx: 0, dy: 0, name: `label break ${i}`, children: set } as const]),
				...column.shapes,
			],
			dropped: column.dropped,
			lost: column.lost,
		};
	});
	return {
		shapes: columns.flatMap((each) => each.shapes),
		dropped: columns.flatMap((each) => each.dropped),
		lost: columns.flatMap((each) => each.lost),
	};
};

const breakWords = ({ words }: Print, ratio: number, size: number, width: number): Line[] => {
	const times = ratio >= 1 ? ratio : 1 / ratio;
	const phrase = ratio >= 1 ? words.scaleBreak : words.scaleBreakLarger;
	const text = sentence(phrase, {
		ratio: numberString(times, times >= 10 ? 0 : 1),
	});
	return wrap([run(text, { italic: true })], size * 0.95, width);
};
