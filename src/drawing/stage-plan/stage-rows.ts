import type { StageResults } from "../../calc/results.ts";

/** A stretch of hole that is drawn as one row, with the stages in it, from the heel to the toe. */
export interface StageRow {
	readonly from: number;
	readonly to: number;
	readonly stages: readonly StageResults[];
}

/** Stages in a row at most where there is room for more rows, and rows at most. */
const IN_A_ROW = 13;
const MOST_ROWS = 8;
/** Least of hole that a row shows around a stage [ft]. */
const AROUND = 60;

const deepestOf = (stage: StageResults): number => Math.max(stage.bottom.md.value, stage.plug?.md.value ?? 0);

/**
 * Cuts the treated hole into rows of like numbers of stages, heel first, all at one scale. Rows meet between two stages.
 *
 * @param end  where the hole ends [ft MD]
 */
export const stageRows = (stages: readonly StageResults[], end: number): StageRow[] => {
	const inward = [...stages].sort((a, b) => a.top.md.value - b.top.md.value);
	const count = Math.min(MOST_ROWS, Math.max(1, Math.ceil(inward.length / IN_A_ROW)));
	const each = Math.ceil(inward.length / count);
	const groups = Array.from({ length: Math.ceil(inward.length / each) }, (_, i) =>
		inward.slice(i * each, (i + 1) * each),
	);
	const edges = groups.map((group, i) => {
		const [first, before] = [group[0], groups[i - 1]?.at(-1)];
		if (first === undefined) return 0;
		return before === undefined
			? Math.max(0, first.top.md.value - AROUND)
			: (first.top.md.value + before.bottom.md.value) / 2;
	});
	const deepest = Math.max(...inward.map(deepestOf));
	const last = Math.max(deepest + AROUND / 2, Math.min(end, deepest + 4 * AROUND));
	return groups.map((group, i) => ({ from: edges[i] ?? 0, to: edges[i + 1] ?? last, stages: group }));
};
