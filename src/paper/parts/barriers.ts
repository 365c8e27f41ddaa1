import type { BarrierElementResults, BarrierPhaseResults, SingleFailureResults } from "../../calc/results.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { named, namedInWords, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const text = (words: string): Inline => ({ kind: "text", text: words });

/** Primary and secondary barrier of each phase, element by element: whose, how deep, tested to what, when and by whom. */
export const barriersByPhase: Part = (context) =>
	table(
		context,
		"barriers_by_phase",
		[
			textColumn(context, "barrier_phase", { width: 1.4, rowHead: true }),
			textColumn(context, "primary_barrier", { width: 2.8 }),
			textColumn(context, "secondary_barrier", { width: 3.6 }),
			textColumn(context, "barriers_counted", { width: 0.8 }),
		],
		folded(context.results.barriers.phases).map(({ phases, first }) =>
			row({
				barrier_phase: textCell(
					phases.map((phase, i) => (i === 0 ? phaseWords : laterWords)(context, phase)).join("; "),
				),
				primary_barrier: elementsCell(context, first.primary),
				secondary_barrier: elementsCell(context, first.secondary),
				barriers_counted: {
					kind: "rich",
					children: [
						shown(context, first.standing),
						text(` ${context.words.label("phrases.of")} `),
						shown(context, first.required),
					],
				},
			}),
		),
		{ dense: true, note: "barriers_by_phase" },
	);

/**
 * Phases that follow each other share a row where the later has all elements of the earlier: a hole drilled and its job,
 * producing and shut in. The row has the elements of the later.
 */
const folded = (phases: readonly BarrierPhaseResults[]) => {
	const elements = ({ primary, secondary }: BarrierPhaseResults): readonly string[] =>
		[...primary.map((each) => ["1", each]), ...secondary.map((each) => ["2", each])].map((each) =>
			JSON.stringify(each),
		);
	const rows: { phases: BarrierPhaseResults[]; first: BarrierPhaseResults }[] = [];
	for (const phase of phases) {
		const last = rows.at(-1);
		const all = new Set(elements(phase));
		if (last !== undefined && elements(last.first).every((each) => all.has(each))) {
			last.phases.push(phase);
			last.first = phase;
		} else rows.push({ phases: [phase], first: phase });
	}
	return rows;
};

export const phaseWords = (context: PaperContext, { phase, of }: BarrierPhaseResults): string =>
	context.words
		.label(`barrier_phases.${phase}`)
		.replace(
			"{of}",
			of === undefined
				? ""
				: phase === "drilling"
					? named(context, of).toLowerCase()
					: namedInWords(context, of),
		);

/** Behind another phase, in the middle of a line. */
const laterWords = (context: PaperContext, phase: BarrierPhaseResults): string => {
	const words = phaseWords(context, phase);
	return words.charAt(0).toLowerCase() + words.slice(1);
};

const elementsCell = (context: PaperContext, elements: readonly BarrierElementResults[]): Cell =>
	elements.length === 0
		? textCell(context.words.label("phrases.none_described"))
		: {
				kind: "rich",
				children: elements.flatMap((element, i) => [
					...(i === 0 ? [] : [text("; ")]),
					...elementInlines(context, element),
				]),
			};

const elementInlines = (context: PaperContext, element: BarrierElementResults): readonly Inline[] => {
	const { label } = context.words;
	const { depth, density, test, rating, tested, date, verified_by, state } = element;
	const name = label(`barrier_elements.${element.element}`).replace(
		"{string}",
		element.string === undefined ? "" : namedInWords(context, element.string),
	);
	const known: Inline[] = [
		...(density !== undefined ? [text(", "), shown(context, density)] : []),
		...(depth !== undefined && element.element !== "fluid column"
			? [text(` ${label(`barrier_depths.${depthWord(element)}`)} `), shown(context, depth)]
			: []),
		...(test !== undefined
			? [text(`, ${label(tested ? "phrases.tested_to" : "phrases.to_be_tested_to")} `), shown(context, test)]
			: element.element === "wellhead" && rating !== undefined
				? [text(`, ${label("phrases.rated")} `), shown(context, rating)]
				: tested
					? [text(`, ${label("phrases.verified")}`)]
					: []),
	];
	const record = [date, verified_by].filter((part) => part !== undefined).join(", ");
	return [
		text(name),
		...known,
		...(record === "" ? [] : [text(` (${record})`)]),
		...(state === "holds" ? [] : [text(` (${label(`barrier_states.${state}`)})`)]),
	];
};

const depthWord = ({ element }: BarrierElementResults): "from" | "at" | "to" =>
	element === "casing cement" ? "from" : element === "casing" || element === "floats" ? "to" : "at";

/** One element gives way: the pressure that it brings onto what holds next, and the factor that is left. */
export const singleFailuresTable: Part = (context) => {
	const notEvaluated: Cell = textCell(context.words.label("phrases.not_evaluated"));
	return table(
		context,
		"single_failures",
		[
			textColumn(context, "failure", { width: 3.6, rowHead: true }),
			textColumn(context, "held_by", { width: 1.3 }),
			quantityColumn(context, "pressure_brought", "pressure", { style: { nearest: 10 } }),
			quantityColumn(context, "rating", "pressure", { style: { nearest: 10 } }),
			quantityColumn(context, "factor_left", "ratio", { width: 0.8, style: { decimals: 2 } }),
			quantityColumn(context, "annulus_relief", "pressure", { style: { nearest: 10 } }),
			quantityColumn(context, "factor_relieved", "ratio", { width: 0.9, style: { decimals: 2 } }),
		],
		worstOfEach(context.results.barriers.failures).map((each) =>
			row({
				failure: textCell(failureWords(context, each)),
				held_by: textCell(context.words.findLabel(`held_by.${each.held_by}`) ?? named(context, each.held_by)),
				pressure_brought: cell(context, each.load),
				rating: cell(context, each.rating),
				factor_left: each.factor === undefined ? notEvaluated : cell(context, each.factor),
				annulus_relief: cell(context, each.relief),
				factor_relieved: cell(context, each.factor_relieved),
			}),
		),
		{ dense: true, note: "single_failures" },
	);
};

/** Floats are in every job: the one that leaves least, or cannot be evaluated, stands for all. */
const worstOfEach = (failures: readonly SingleFailureResults[]): readonly SingleFailureResults[] =>
	failures.filter(
		(each) =>
			!failures.some(
				(other) => other.failure === each.failure && other !== each && leaves(other) < leaves(each),
			),
	);

const leaves = ({ factor }: SingleFailureResults): number => factor?.value ?? 0;

const failureWords = (context: PaperContext, { failure, string }: SingleFailureResults): string =>
	context.words.label(`failures.${failure}`).replace("{string}", namedInWords(context, string));
