import type { CasingString, Hole, Well } from "../well/well.ts";

/** Half-widths of a string as drawn [pt]; widths say which is inside which, and nothing else. */
export interface StringWidth {
	/** Outside and inside of the steel. */
	readonly outer: number;
	readonly inner: number;
}

export interface Nesting {
	readonly string: (string: CasingString) => StringWidth;
	/** Half-width of a hole's wall. */
	readonly hole: (hole: Hole) => number;
	/** The widest thing drawn. */
	readonly widest: number;
	readonly steel: number;
}

/** How widely strings are drawn. */
interface NestingStyle {
	/** Half-width of the innermost bore. */
	readonly bore: number;
	/** Thickness of a string's wall. */
	readonly steel: number;
	/** Clearance between a hole and the string it was drilled through. */
	readonly clearance: number;
	/** From one string to the next, outside to outside; shrunk where the whole would pass `most`. */
	readonly step: number;
	readonly most: number;
}

/**
 * Gives each string a slot one step inside the string around it. A tieback and the liner below it hang in the same
 * string and share a slot.
 */
export const nesting = (well: Well, style: NestingStyle): Nesting => {
	const slots = new Map<string, number>();
	for (const string of well.strings) {
		const outside = string.within === undefined ? undefined : slots.get(string.within);
		slots.set(string.id, outside === undefined ? Math.max(-1, ...slots.values()) + 1 : outside + 1);
	}
	const count = Math.max(0, ...slots.values()) + 1;
	const gap = style.step - style.steel - style.clearance;
	const room = style.most - style.bore - style.steel - gap;
	const step = count === 1 ? style.step : Math.min(style.step, room / (count - 1));
	const annulus = step - style.steel - style.clearance;
	const outerAt = (slot: number) => style.bore + style.steel + (count - 1 - slot) * step;
	const slotOf = (string: CasingString) => slots.get(string.id) ?? count - 1;
	const holeSlots = new Map<string, number>();
	for (const hole of well.holes) {
		const held = well.strings.filter((string) => string.hole.id === hole.id).map(slotOf);
		holeSlots.set(hole.id, held.length > 0 ? Math.min(...held) : Math.max(-1, ...holeSlots.values()) + 1);
	}
	return {
		string: (string) => {
			const outer = outerAt(slotOf(string));
			return { outer, inner: outer - style.steel };
		},
		hole: (hole) => {
			const slot = holeSlots.get(hole.id) ?? count;
			return slot >= count ? style.bore - style.clearance : outerAt(slot) + annulus;
		},
		widest: outerAt(0) + annulus,
		steel: style.steel,
	};
};
