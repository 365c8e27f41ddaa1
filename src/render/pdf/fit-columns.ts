/** What a column asks for: its share of the width, and the width [pt] that its longest unbreakable piece needs. */
export interface ColumnWish {
	readonly share: number;
	readonly least: number;
}

/**
 * Divides `total` [pt] by shares, but gives no column less than it needs: what one is given beyond its share the others
 * lose in proportion. Where the needs alone exceed the total, columns are as wide as they need and the sum is more.
 */
export const fitColumns = (wishes: readonly ColumnWish[], total: number): readonly number[] => {
	const needed = wishes.reduce((sum, wish) => sum + wish.least, 0);
	if (needed >= total) return wishes.map((wish) => wish.least);
	const fixed = new Set<number>();
	for (;;) {
		const taken = wishes.reduce((sum, wish, i) => sum + (fixed.has(i) ? wish.least : 0), 0);
		const shares = wishes.reduce((sum, wish, i) => sum + (fixed.has(i) ? 0 : wish.share), 0);
		const width = (wish: ColumnWish): number => (shares === 0 ? 0 : ((total - taken) * wish.share) / shares);
		const short = wishes.findIndex((wish, i) => !fixed.has(i) && width(wish) < wish.least);
		if (short === -1) return wishes.map((wish, i) => (fixed.has(i) ? wish.least : width(wish)));
		fixed.add(short);
	}
};
