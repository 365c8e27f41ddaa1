/** A double's value to 15 significant digits: all that it holds for certain, and no arithmetic noise. */
const digitsOf = (magnitude: number): { digits: bigint; exponent: number } => {
	const [mantissa = "0", exponent = "0"] = magnitude.toExponential(14).split("e");
	return { digits: BigInt(mantissa.replace(".", "")), exponent: Number(exponent) - 14 };
};

/**
 * The magnitude of `value` in plain digits with so many decimals (negative: rounded to tens, hundreds …). A half is
 * rounded up in magnitude, judged on the decimal figure a reader would see, so 1.005 gives 1.01 though its double lies
 * a hair below.
 */
export const roundedDigits = (value: number, decimals: number): string => {
	const { digits, exponent } = digitsOf(Math.abs(value));
	const drop = -exponent - decimals;
	const step = 10n ** BigInt(Math.abs(drop));
	const scaled = drop > 0 ? (digits + step / 2n) / step : digits * step;
	if (decimals <= 0) return (scaled * 10n ** BigInt(-decimals)).toString();
	const text = scaled.toString().padStart(decimals + 1, "0");
	return `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
};

/** Decimals that show `value` with so many significant figures; negative where tens or hundreds are rounded away. */
export const decimalsForSignificant = (value: number, figures: number): number => {
	if (value === 0) return 0;
	const exponent = digitsOf(Math.abs(value)).exponent + 14;
	const decimals = figures - 1 - exponent;
	const carried = Number(roundedDigits(value, decimals)) >= Number(`1e${exponent + 1}`);
	return carried ? decimals - 1 : decimals;
};

/** `value` rounded to a multiple of `step`, halves up in magnitude. */
export const nearestMultiple = (value: number, step: number): number => {
	const steps = Number(roundedDigits(value / step, 0));
	return Math.sign(value) * steps * step;
};
