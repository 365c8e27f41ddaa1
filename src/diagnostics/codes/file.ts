import type { CodeEntry } from "../codes.ts";

/** Faults of the files a definition names. */
export const FILE_CODES = {
	"file/link": {
		severity: "error",
		title: "A file named by the definition leads elsewhere",
		explain:
			"The name is a link to a place outside the definition's folder. The fingerprint in every paper's footer covers the " +
			"files beside the definition; a link could change without it. Put a copy of the file beside the definition.",
	},
	"file/not-beside": {
		severity: "error",
		title: "A file is named outside the definition's folder",
		explain:
			"Files that a definition draws on lie beside it or in a folder below it, so that the well can be handed on whole " +
			"and a definition from elsewhere cannot reach into other folders. Copy the file there and name it without a path " +
			"that leads up or starts at the root.",
	},
	"file/not-found": {
		severity: "error",
		title: "A file named by the definition cannot be read",
		explain:
			"There is no such file beside the definition, or it may not be opened. Upper and lower case count. Check the name, " +
			"or put the file there.",
	},
} as const satisfies Record<string, CodeEntry>;
