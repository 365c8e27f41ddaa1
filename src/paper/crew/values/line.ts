import type { Known } from "../../../cite/known.ts";
import type { Cell } from "../../../document/blocks.ts";
import type { QuantityStyle, QuantityText } from "../../../document/inline.ts";
import type { CasingString } from "../../../well/well.ts";
import { type PaperContext, shown, textCell } from "../../context.ts";
import { titled } from "../../parts/part.ts";

/** One line of a numbers sheet: what it is of, where there are several, and the value. */
export interface SheetLine {
	readonly of?: string;
	readonly cell: Cell;
	/** Behind a small figure: where a distance is measured from, and who says so. */
	readonly note?: string;
	/** Under a large figure, where its label and note would not read on from the number. */
	readonly under?: string;
	/** What of it is set large, each with the words under it; the whole line where absent. */
	readonly large?: readonly { readonly cell: Cell; readonly label: string }[];
	/** It says more than is set large of it, and so stands among the other numbers too. */
	readonly more?: boolean;
}

/** Finds a sheet's value; no lines means that the definition does not have it. */
export type SheetValue = (context: PaperContext, string: CasingString | undefined) => readonly SheetLine[];

/** What a job has no use for (a plug's figures where none is landed): left off the sheet, which is not silent about it. */
export const NOT_APPLICABLE: readonly SheetLine[] = Object.freeze([]);

export type SheetValues = Readonly<Record<string, SheetValue>>;

export const WHOLE = { decimals: 0 } as const;
export const TENTH = { decimals: 1 } as const;
export const HOURS = { unit: "hr", decimals: 0 } as const;

export const one = (
	context: PaperContext,
	known: Known | undefined,
	style?: QuantityStyle,
): readonly SheetLine[] => (known === undefined ? [] : [{ cell: shown(context, known, style) }]);

export const words = (value: string | undefined): readonly SheetLine[] => {
	const cell = textCell(value);
	return cell.kind === "none" ? [] : [{ cell }];
};

export const rich = (...parts: readonly (string | QuantityText)[]): Cell => ({
	kind: "rich",
	children: parts.map((part) => (typeof part === "string" ? { kind: "text" as const, text: part } : part)),
});

/** A force as the driller reads it off the weight indicator. */
export const PULL = { nearest: 1000 } as const;

const MILE_IN_FEET = 5280;

/** A distance in the unit that a person says it in: `150 ft`, `10 mi`. */
export const spokenDistance = (context: PaperContext, distance: Known): QuantityText => {
	if (distance.value < MILE_IN_FEET) return shown(context, distance);
	const unit = context.units === "metric" ? "km" : "mi";
	const whole = Number.isInteger(Math.round((distance.value / MILE_IN_FEET) * 1e6) / 1e6);
	return shown(context, distance, { unit, decimals: whole || unit === "km" ? 0 : 1 });
};

/** Lines of one stage of a job, named by it. */
export const stage = (
	context: PaperContext,
	which: "first_stage" | "second_stage",
	lines: readonly SheetLine[],
): readonly SheetLine[] =>
	lines.map((line) => ({ ...line, of: titled(context.words.label(`phrases.${which}`)) }));

/** A value with what stands behind it. */
export const withNote = ({ cell, note }: SheetLine): Cell => {
	if (note === undefined) return cell;
	const tail = { kind: "text", text: note } as const;
	if (cell.kind === "rich") return { kind: "rich", children: [...cell.children, tail] };
	return cell.kind === "quantity" ? { kind: "rich", children: [cell, tail] } : cell;
};
