/** A box that wants its point `lead` past its start to lie at `anchor`, along one axis. */
interface Wanting {
	readonly anchor: number;
	readonly size: number;
	/** Half the size where absent: the box wants to be centered. */
	readonly lead?: number;
	/** How dearly a displacement of this box is counted; 1 where absent. */
	readonly weight?: number;
}

/**
 * Places boxes along one axis so that none overlap, their order is kept, all lie within `[low, high]`, and the
 * weighted sum of squared displacements is least. Boxes must come sorted by anchor. Answers with where each starts.
 *
 * With the sizes of the boxes above subtracted, *no overlap in order* becomes *monotone*, and the best monotone fit is
 * found by pooling adjacent violators; bounds are then a clamp of that fit.
 *
 * The boxes must fit: the sum of sizes may not exceed `high - low` (else the last ones pass `high`).
 *
 * @source Barlow, Bartholomew, Bremner & Brunk 1972, *Statistical Inference under Order Restrictions*, ch. 1 (from memory)
 */
export const placeInOrder = (boxes: readonly Wanting[], low: number, high: number): number[] => {
	const total = boxes.reduce((sum, box) => sum + box.size, 0);
	let above = 0;
	const wishes = boxes.map((box) => {
		const start = box.anchor - (box.lead ?? box.size / 2) - above;
		above += box.size;
		return { start, weight: box.weight ?? 1 };
	});
	const pools: { sum: number; weight: number; count: number }[] = [];
	for (const { start, weight } of wishes) {
		let pool = { sum: start * weight, weight, count: 1 };
		for (;;) {
			const last = pools.at(-1);
			if (last === undefined || last.sum / last.weight <= pool.sum / pool.weight) break;
			pools.pop();
			pool = {
				sum: last.sum + pool.sum,
				weight: last.weight + pool.weight,
				count: last.count + pool.count,
			};
		}
		pools.push(pool);
	}
	const fitted = pools.flatMap(({ sum, weight, count }) => {
		const start = Math.max(low, Math.min(sum / weight, high - total));
		return Array.from({ length: count }, () => start);
	});
	above = 0;
	return boxes.map((box, i) => {
		const start = (fitted[i] ?? low) + above;
		above += box.size;
		return start;
	});
};
