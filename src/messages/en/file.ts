import type { Entries } from "../entries.ts";

/** Why a file that a definition names cannot be had. */
export const FILE = {
	"file/link.refused": [
		"it is a link, or is reached through one",
		"Said: A file named by the definition leads elsewhere.",
	],
	"file/name.empty": ["the name is empty", "Part of a message, for file/name."],
	"file/name.control": ["the name contains a control character", "Part of a message, for file/name."],
	"file/name.network": ["an address on the network is never fetched", "Part of a message, for file/name."],
	"file/name.root": [
		"the name starts at the root of a disk or at a home folder",
		"Part of a message, for file/name.",
	],
	"file/name.backslash": ["folders are separated by `/`, not by `\\`", "Part of a message, for file/name."],
	"file/name.upward": [
		"the name leads up out of the definition's folder",
		"Part of a message, for file/name.",
	],
	"file/name.empty-step": ["the name has an empty step in it", "Part of a message, for file/name."],
	"file/not-found.refused": ["there is no such file", "Said: A file named by the definition cannot be read."],
	"file/not-found.unreadable": [
		"it cannot be read: {reason}",
		"Said: A file named by the definition cannot be read. reason: what the operating system says.",
	],
	"file/refused": [
		"the file cannot be read: {why}",
		"What is wrong with a file that the definition names. why: one clause.",
	],
} as const satisfies Entries;
