/**
 * What a quantity written with commas was probably meant to be: `1,250,000 psi` without them, `8,5 in` with a point.
 * `9,625 in` may be either: then the second reading is given too.
 */
export const withoutComma = (written: string): readonly [cure: string, alternative?: string] => {
	// `4.300,5 psi`: points between thousands, a comma before the decimals.
	const continental = /^([^\d.,]*)(\d{1,3}(?:\.\d{3})+) ?, ?(\d+)(?!\d*[,.]\d)/.exec(written);
	if (continental !== null) {
		const [all, head = "", whole = "", decimals = ""] = continental;
		return [`${head}${whole.replaceAll(".", "")}.${decimals}${written.slice(all.length)}`];
	}
	const joined = written.replace(/(\d) ?, ?(?=\d)/g, "$1");
	const decimal = written.replace(/ ?, ?/, ".");
	if (!/^\D*\d{1,3}(,\d{3})+(\.\d|(?!\d))/.test(written)) return [decimal];
	return /,.*[,.]/.test(written) ? [joined] : [joined, decimal];
};
