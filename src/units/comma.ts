/**
 * What a quantity written with commas was probably meant to be: `1,250,000 psi` without them, `8,5 in` with a point.
 * `9,625 in` may be either: then the second reading is given too.
 */
export const withoutComma = (written: string): readonly [cure: string, alternative?: string] => {
	const joined = written.replace(/(\d) ?, ?(?=\d)/g, "$1");
	const decimal = written.replace(/ ?, ?/, ".");
	if (!/^\D*\d{1,3}(,\d{3})+(\.\d|(?!\d))/.test(written)) return [decimal];
	return /,.*[,.]/.test(written) ? [joined] : [joined, decimal];
};
