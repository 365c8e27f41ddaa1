import type { Known } from "../../cite/known.ts";
import type { CementJob } from "../../well/well.ts";

type Depth = Known<"measured-depth">;

/** Depths within this of each other are one place of the tally [ft]. */
export const SAME_PLACE = 0.5;

/** What is pumped through the shoe: of a job with a stage tool the slurries below it, of any other the whole job. */
export const throughShoe = (job: CementJob): CementJob => {
	const { stageTool: tool, ...rest } = job;
	return tool === undefined
		? job
		: { ...rest, slurries: job.slurries.filter(({ bottom }) => bottom.value > tool.value + SAME_PLACE) };
};

/** What is pumped through the stage tool, with a spacer and a displacement like those of the first stage. */
export const throughTool = (job: CementJob): CementJob | undefined => {
	const { stageTool: tool, ...rest } = job;
	return tool === undefined
		? undefined
		: { ...rest, slurries: job.slurries.filter(({ bottom }) => bottom.value <= tool.value + SAME_PLACE) };
};

/** A stretch of annulus filled with cement. */
export interface Stretch {
	readonly top: Depth;
	readonly bottom: Depth;
}

/**
 * The stretches that the slurries fill without a gap, from the surface down; the uppermost from the column's own top,
 * which may be a recorded one, and nothing above that.
 */
export const columnsOf = ({ slurries }: CementJob, top: Depth, bottom: Depth): readonly Stretch[] => {
	const joined: Stretch[] = [];
	for (const slurry of [...slurries].sort((a, b) => a.top.value - b.top.value)) {
		const last = joined.at(-1);
		if (last === undefined || slurry.top.value > last.bottom.value + SAME_PLACE)
			joined.push({ top: slurry.top, bottom: slurry.bottom });
		else joined.splice(-1, 1, { top: last.top, bottom: slurry.bottom });
	}
	return joined
		.map((column, i) => (i === joined.length - 1 ? { ...column, bottom } : column))
		.filter((column) => column.bottom.value > top.value)
		.map((column, i) => (i === 0 ? { ...column, top } : column));
};
