/** Root of a monotonic function between two ends of opposite sign, to the last digits of the number. */
export const bisect = (from: number, to: number, of: (x: number) => number): number => {
	let [low, high] = [from, to];
	const rising = of(low) < 0;
	for (let i = 0; i < 80; i += 1) {
		const middle = (low + high) / 2;
		if (of(middle) < 0 === rising) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
};
