import process from "node:process";

/** Where a command speaks: results to stdout, faults and progress to stderr. */
export interface Terminal {
	readonly out: (text: string) => void;
	readonly err: (text: string) => void;
	readonly color: boolean;
	readonly width: number;
	/** A person is watching stderr. */
	readonly watched: boolean;
}

const WIDEST = 100;

export const terminal: Terminal = {
	out: (text) => void process.stdout.write(`${text}\n`),
	err: (text) => void process.stderr.write(`${text}\n`),
	color: process.stderr.isTTY === true && !process.env["NO_COLOR"] && process.env["TERM"] !== "dumb",
	width: Math.min(WIDEST, process.stderr.columns ?? 80),
	watched: process.stderr.isTTY === true,
};
