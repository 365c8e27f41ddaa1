import type { Telling } from "../diagnostics/diagnose.ts";
import { message } from "../messages/message.ts";

export const hashInValue = (whole: string): Telling => ({
	what: message("syntax/hash-in-value.what"),
	expected: message("syntax/hash-in-value.expected"),
	found: whole,
	mend: whole.includes("#/gal")
		? message("syntax/hash-in-value.unit", { whole: whole.replace("#/gal", "lb/gal") })
		: whole.includes("#/ft")
			? message("syntax/hash-in-value.unit", { whole: whole.replace("#/ft", "lb/ft") })
			: message("syntax/hash-in-value.mend", { whole }),
});

export const unknownAlias = (name: string): Telling => ({
	what: message("syntax/alias.unknown", { name }),
	expected: message("syntax/alias.unknown-expected", { name }),
	found: `*${name}`,
	mend: message("syntax/alias.unknown-mend"),
});

export const ownAlias = (name: string): Telling => ({
	what: message("syntax/alias.own", { name }),
	expected: message("syntax/alias.own-expected"),
	found: `*${name}`,
	mend: message("syntax/alias.own-mend"),
});

export const tooManyAliases = (most: number): Telling => ({
	what: message("syntax/alias.too-many"),
	expected: message("syntax/alias.too-many-expected", { most: most }),
	mend: message("syntax/alias.too-many-mend"),
});

export const reservedKey = (name: string): Telling => ({
	what: message("syntax/reserved-key.what", { name }),
	expected: message("syntax/reserved-key.expected"),
	found: name,
	mend: message("syntax/reserved-key.mend"),
});

export const badKey: Telling = {
	what: message("syntax/key.what"),
	expected: message("syntax/key.expected"),
	mend: message("syntax/key.mend"),
};

export const mergeKey: Telling = {
	what: message("syntax/merge-key.what"),
	expected: message("syntax/merge-key.expected"),
	found: "<<",
	why: message("syntax/merge-key.why"),
	mend: message("syntax/merge-key.mend"),
};

export const duplicateKey = (name: string): Telling => ({
	what: message("syntax/duplicate-key.what", { name }),
	expected: message("syntax/duplicate-key.expected"),
	mend: message("syntax/duplicate-key.mend"),
});

export const tag = (name: string): Telling => ({
	what: message("syntax/tag.what"),
	expected: message("syntax/tag.expected"),
	found: name.replace("tag:yaml.org,2002:", "!!"),
	mend: message("syntax/tag.mend"),
});
