import type { Known } from "../../cite/known.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline, QuantityStyle } from "../../document/inline.ts";
import type { Finding } from "../../rules/finding.ts";
import { printedUnit } from "../../units/format.ts";
import { matchUnit } from "../../units/units-of.ts";
import { writtenSystem } from "../../units/written-system.ts";
import { type PaperContext, shown } from "../context.ts";

/*
 * A limit beside what the well has: the limit in the unit that its text is written in, and where the paper is set in
 * other units, in those too: `1,000 ft (304.8 m)`.
 */

/** The unit that a rule's own number is written in, with the decimals it has there. */
const asWritten = ({ dimension, from }: Known): QuantityStyle | undefined => {
	const written = from.kind === "catalogue" ? /^([\d.]+)\s*(\D.*)$/u.exec(from.text ?? "") : null;
	const [, number = "", unit = ""] = written ?? [];
	const match = matchUnit(unit, dimension);
	if (match === undefined || !("unit" in match)) return undefined;
	return { unit: match.unit.symbol, decimals: number.split(".")[1]?.length ?? 0 };
};

/** How the rule writes the limit: its own number as it is written, one that was worked in the units of the rule's others. */
const legalStyle = (finding: Finding, required: Known): QuantityStyle | undefined => {
	if (finding.cite.kind === "permit" || finding.cite.kind === "practice") return undefined;
	const written = asWritten(required);
	if (written !== undefined) return written;
	const unit = printedUnit(required.dimension, writtenSystem(finding.limit));
	return unit === "" ? undefined : { unit };
};

const text = (words: string): Inline => ({ kind: "text", text: words });

const SIGNS = {
	"at least": "≥\u00a0",
	"more than": ">\u00a0",
	"at most": "≤\u00a0",
	"less than": "<\u00a0",
} as const;

/** Zero is the same in every unit of a kind, temperatures excepted. */
const isNothing = ({ dimension, value }: Known): boolean => value === 0 && dimension !== "temperature";

/** What the rule comes to here, with its sign; nothing where it is no number. */
export const limitInlines = (context: PaperContext, finding: Finding): readonly Inline[] => {
	const { required, comparison } = finding;
	if (required === undefined || comparison === undefined || !(comparison in SIGNS)) return [];
	const sign = SIGNS[comparison as keyof typeof SIGNS];
	const style = inHours(required);
	const here = shown(context, required, style);
	const legal = legalStyle(finding, required);
	const unitHere = printedUnit(required.dimension, context.units, style);
	if (legal?.unit === undefined || isNothing(required)) return [text(sign), here];
	if (printedUnit(required.dimension, context.units, legal) === unitHere) return [text(sign), here];
	return [text(sign), shown(context, required, legal), text(" ("), here, text(")")];
};

export const limitCell = (context: PaperContext, finding: Finding): Cell => {
	const children = limitInlines(context, finding);
	return children.length === 0 ? { kind: "none" } : { kind: "rich", children };
};

export const measuredInlines = (context: PaperContext, { measured, required }: Finding): readonly Inline[] =>
	measured === undefined ? [] : [shown(context, measured, inHours(required ?? measured))];

/** Room to the limit, with its sign. */
export const marginCell = (context: PaperContext, finding: Finding, style?: QuantityStyle): Cell => {
	const { margin, measured, required } = finding;
	if (margin === undefined) return { kind: "none" };
	return shown(
		context,
		margin,
		style ?? { ...asMeasured(context, margin, measured), ...inHours(required ?? margin) },
	);
};

/** As closely as the value that it is the margin of: a reader takes the one from the other. */
const asMeasured = (context: PaperContext, margin: Known, measured: Known | undefined): QuantityStyle => {
	if (measured === undefined) return {};
	const style = shown(context, measured).style ?? {};
	return measured.dimension === margin.dimension
		? style
		: style.nearest === undefined
			? {}
			: { nearest: style.nearest };
};

const HOUR = 60;

/** Waits are counted in hours wherever they are told. */
const inHours = ({ dimension, value }: Known): QuantityStyle =>
	dimension === "duration" && value >= HOUR && value % HOUR === 0 ? { unit: "hr", decimals: 0 } : {};

/** How little room there is, as a share of the limit: what findings are sorted by; what has no number comes last. */
export const tightness = ({ margin, required, measured }: Finding): number => {
	if (margin === undefined) return Number.POSITIVE_INFINITY;
	const scale = Math.max(Math.abs(required?.value ?? 0), Math.abs(measured?.value ?? 0), Number.EPSILON);
	return margin.value / scale;
};

/** Whether two values are one. */
export const isSame = (a: Known | undefined, b: Known | undefined): boolean =>
	a !== undefined && b !== undefined && a.value === b.value && a.dimension === b.dimension;
