import process from "node:process";
import { visible } from "../diagnostics/visible.ts";
import { wrap } from "../diagnostics/wrap.ts";
import { EXIT } from "./exit-codes.ts";

/** Where a command speaks: results to stdout, faults and progress to stderr. */
interface Terminal {
	readonly out: (text: string) => void;
	/** As `out`, for people: no line runs over the edge of a terminal. In a pipe each stays whole. */
	readonly tell: (text: string) => void;
	/** Text in pieces, as they come; the next one is asked for when there is room for it, and none once nobody reads. */
	readonly stream: (pieces: Iterable<string>) => Promise<void>;
	readonly err: (text: string) => void;
	/** A line for the moment, in the place of the one before; an empty text takes it away. For whoever watches. */
	readonly status: (text: string) => void;
	/** Empties the screen, where somebody watches it. */
	readonly clear: () => void;
	readonly color: boolean;
	readonly width: number;
	/** A person is watching stderr. */
	readonly watched: boolean;
}

const WIDEST = 100;

/** What kept stdout from taking more. */
let outFault: string | undefined;

const faultOf = (cause: unknown): string =>
	cause instanceof Error && "code" in cause ? String(cause.code) : String(cause);

// Without these a stream that breaks ends the process with a stack trace, at whatever moment it breaks.
process.stdout.on("error", (cause) => {
	outFault ??= faultOf(cause);
});
process.stderr.on("error", () => undefined);

/** Waits until all that was said has left, or can not. */
const said = (text: string): Promise<void> =>
	new Promise((resolve) => {
		if (outFault !== undefined) resolve();
		else process.stdout.write(text, () => resolve());
	});

/** The colors that a printed fault has; any other command to the terminal comes from somebody's text. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const COLOR = /(\u001b\[[0-9;]*m)/u;

/** Names of files may hold characters that would move the cursor: what is said holds none of them. */
const safe = (text: string, colored: boolean): string =>
	text
		.split(colored ? COLOR : /(?!)/u)
		.map((part, i) => (colored && i % 2 === 1 ? part : part.split("\n").map(visible).join("\n")))
		.join("");

const PIECE = 1 << 16;

const color = process.stderr.isTTY === true && !process.env["NO_COLOR"] && process.env["TERM"] !== "dumb";

/** Begins the last line anew and empties it. */
const LINE_ANEW = "\r\u001b[K";
const SCREEN_ANEW = "\u001b[2J\u001b[H";

let statusShown = "";

/** What is said to stay does not stand behind what was said for the moment. */
const withoutStatus = (): void => {
	if (statusShown !== "") process.stderr.write(LINE_ANEW);
	statusShown = "";
};

/** Lines that a terminal of so many columns holds; what a line goes on with stands under its second column, or its indent and two more. */
export const withinColumns = (text: string, columns: number): string =>
	text
		.split("\n")
		.flatMap((line) => {
			if (line.length <= columns) return [line];
			const own = /^\s*/u.exec(line)?.[0].length ?? 0;
			const second = /^\S[^\n]*?\S? {2,}/u.exec(line)?.[0].length ?? 0;
			const indent = second > 0 && second <= columns / 2 ? second : own + 2;
			const head = line.slice(0, Math.max(own, second > 0 && indent === second ? second : own));
			return wrap(line.slice(head.length), columns - indent).map((part, i) =>
				i === 0 ? `${head}${part}` : `${" ".repeat(indent)}${part}`,
			);
		})
		.join("\n");

export const terminal: Terminal = {
	out: (text) => {
		withoutStatus();
		if (outFault === undefined) process.stdout.write(`${safe(text, false)}\n`);
	},
	tell: (text) => {
		const { isTTY, columns } = process.stdout;
		terminal.out(isTTY === true && columns > 0 ? withinColumns(text, columns) : text);
	},
	stream: async (pieces) => {
		let text = "";
		for (const piece of pieces) {
			text += piece;
			if (text.length < PIECE) continue;
			await said(text);
			if (outFault !== undefined) return;
			text = "";
		}
		await said(text);
	},
	err: (text) => {
		withoutStatus();
		const { isTTY, columns } = process.stderr;
		const fitted = isTTY === true && columns > 0 && !color ? withinColumns(text, columns) : text;
		process.stderr.write(`${safe(fitted, color)}\n`);
	},
	status: (text) => {
		const line = safe(text, false).slice(0, (process.stderr.columns ?? WIDEST) - 1);
		if (process.stderr.isTTY !== true || line === statusShown) return;
		withoutStatus();
		process.stderr.write(line);
		statusShown = line;
	},
	clear: () => {
		if (process.stdout.isTTY === true) process.stdout.write(SCREEN_ANEW);
	},
	color,
	width: Math.min(WIDEST, process.stderr.columns ?? 80),
	watched: process.stderr.isTTY === true,
};

/**
 * The exit code for what became of stdout, once all has been said. A reader that has seen enough and closes the pipe is
 * no fault and is not spoken of; the code is the one that a program ended by the signal for it would have.
 */
export const outcomeOfOutput = async (): Promise<number> => {
	await said("");
	if (outFault === undefined) return EXIT.done;
	if (outFault === "EPIPE") return EXIT.notRead;
	const why = outFault === "ENOSPC" ? "the disk is full" : outFault;
	terminal.err(`casebound: cannot write to standard output: ${why}`);
	return EXIT.cannotWrite;
};
