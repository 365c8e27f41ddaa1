/** Far below anything that is measured on a rig, far above the noise of double arithmetic. */
const RELATIVE = 1e-9;

/** Whether two numbers differ by no more than the noise of the arithmetic, so that a boundary is a boundary. */
export const practicallyEqual = (a: number, b: number): boolean =>
	Math.abs(a - b) <= RELATIVE * Math.max(1, Math.abs(a), Math.abs(b));
