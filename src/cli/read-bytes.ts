import { closeSync, constants, fstatSync, openSync, readSync, type Stats } from "node:fs";
import { LARGEST_TEXT } from "../source/decode-text.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault, reasonOf } from "./file-fault.ts";

/** What stands for standard input in the place of a file. */
export const STANDARD_INPUT = "-";

/** Standard input and its like under the names that a shell gives them: reading them to the end is what is meant. */
const SHELL_INPUT = /^\/(?:dev\/stdin|(?:dev|proc\/self)\/fd\/\d+)$/u;

/**
 * A file's bytes, but never more than one beyond `most`: whoever takes them finds them too many, and a file without an
 * end is not waited for. Only plain files are read, and what a shell puts in a file's place.
 *
 * @throws Error whose message says why not, continuing "cannot read it:"
 */
export const bytesOf = (file: string, most: number): Uint8Array => {
	const isInput = file === STANDARD_INPUT || SHELL_INPUT.test(file);
	// A pipe without a writer would be waited for before there is anything to ask it.
	const handle =
		file === STANDARD_INPUT
			? 0
			: openSync(file, isInput ? constants.O_RDONLY : constants.O_RDONLY | constants.O_NONBLOCK);
	try {
		const refused = isInput ? undefined : notPlain(fstatSync(handle));
		if (refused !== undefined) throw new Error(refused);
		return upTo(handle, most + 1);
	} finally {
		if (handle !== 0) closeSync(handle);
	}
};

const notPlain = (stats: Stats): string | undefined => {
	if (stats.isFile()) return undefined;
	if (stats.isDirectory()) return "it is a folder";
	if (stats.isFIFO())
		return `it is a pipe; write ${STANDARD_INPUT} in its place, and give the definition to standard input`;
	return "it is a device or a socket, not a file";
};

const PIECE = 1 << 16;

const upTo = (handle: number, most: number): Uint8Array => {
	const pieces: Uint8Array[] = [];
	let length = 0;
	while (length < most) {
		const piece = new Uint8Array(Math.min(PIECE, most - length));
		const count = readPiece(handle, piece);
		if (count === 0) break;
		pieces.push(piece.subarray(0, count));
		length += count;
	}
	return Buffer.concat(pieces, length);
};

/** A terminal that has nothing yet, and one that was closed, are told by errors of their own. */
const readPiece = (handle: number, piece: Uint8Array): number => {
	for (;;)
		try {
			return readSync(handle, piece);
		} catch (cause) {
			const code = cause instanceof Error && "code" in cause ? cause.code : undefined;
			if (code === "EOF") return 0;
			if (code !== "EAGAIN") throw cause;
			Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT);
		}
};

const WAIT = 10;

/**
 * The bytes of a file that the user named.
 *
 * @throws FileFault
 */
export const readBytes = (file: string, most: number = LARGEST_TEXT): Uint8Array => {
	try {
		return bytesOf(file, most);
	} catch (cause) {
		throw new FileFault(`cannot read ${nameOf(file)}: ${reasonOf(cause)}`, EXIT.cannotRead);
	}
};

/** How a file is named to the user. */
export const nameOf = (file: string): string => (file === STANDARD_INPUT ? "<standard input>" : file);
