/**
 * A line of many readings in few points: of each of so many equal stretches of time the first, the last, the lowest and
 * the highest reading stay, in order. No extreme is lost, whatever the number of readings.
 */
export const thinned = <P extends readonly [number, number]>(
	points: readonly P[],
	stretches: number,
): P[] => {
	const [first, last] = [points[0], points.at(-1)];
	if (first === undefined || last === undefined || points.length <= 4 * stretches) return [...points];
	const span = (last[0] - first[0]) / stretches;
	const buckets = new Map<number, P[]>();
	for (const point of points) {
		const at = Math.min(stretches - 1, Math.floor((point[0] - first[0]) / span));
		buckets.set(at, [...(buckets.get(at) ?? []), point]);
	}
	return [...buckets.values()].flatMap((bucket) => {
		const kept = new Set([bucket[0], bucket.at(-1), extreme(bucket, 1), extreme(bucket, -1)]);
		return bucket.filter((point) => kept.has(point));
	});
};

const extreme = <P extends readonly [number, number]>(bucket: readonly P[], sign: 1 | -1): P | undefined =>
	bucket.reduce<P | undefined>(
		(best, point) => (best === undefined || sign * point[1] > sign * best[1] ? point : best),
		undefined,
	);
