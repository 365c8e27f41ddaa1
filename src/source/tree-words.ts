import type { Telling } from "../diagnostics/diagnose.ts";

export const hashInValue = (whole: string): Telling => ({
	what: "the `#` starts a remark, so the value ends before it",
	expected: "values with a `#` in double quotes; remarks with a space after the `#`",
	found: whole,
	mend: whole.includes("#/gal")
		? `write \`${whole.replace("#/gal", "lb/gal")}\`, or put the value in double quotes`
		: whole.includes("#/ft")
			? `write \`${whole.replace("#/ft", "lb/ft")}\`, or put the value in double quotes`
			: `write \`"${whole}"\` with double quotes, or put a space after the \`#\` if a remark is meant`,
});

export const unknownAlias = (name: string): Telling => ({
	what: `\`*${name}\` repeats an entry marked \`&${name}\`, and there is none above it`,
	expected: `\`&${name}\` before an entry further up`,
	found: `*${name}`,
	mend: "write the value out; put it in double quotes if it starts with an asterisk",
});

export const ownAlias = (name: string): Telling => ({
	what: `\`*${name}\` stands inside the very entry it repeats`,
	expected: "a repeated entry that ends before it is repeated",
	found: `*${name}`,
	mend: "write the value out",
});

export const tooManyAliases = (most: number): Telling => ({
	what: "entries repeated by `*` multiply without end",
	expected: `${most} repeated entries in one file at most`,
	mend: "write the values out instead of repeating them",
});

export const reservedKey = (name: string): Telling => ({
	what: `\`${name}\` cannot be used as a name`,
	expected: "a word of the definition",
	found: name,
	mend: "choose another name",
});

export const badKey: Telling = {
	what: "the name of this entry is missing, or is not one plain word",
	expected: "`name: value`",
	mend: "write a name before the colon",
};

export const mergeKey: Telling = {
	what: "`<<` copies entries from elsewhere, so that a value no longer stands where it is used",
	expected: "every value written where it applies",
	found: "<<",
	why: "each number in the papers is traced to the line it was written on",
	mend: "write the copied entries out",
};

export const duplicateKey = (name: string): Telling => ({
	what: `\`${name}\` is given twice`,
	expected: "each name once in a block",
	mend: "keep the one that is right and take the other away",
});

export const tag = (name: string): Telling => ({
	what: "a tag with `!` changes how the value is read",
	expected: "plain values, in quotes where they are text",
	found: name.replace("tag:yaml.org,2002:", "!!"),
	mend: "take the tag away; quote the value if it starts with an exclamation mark",
});
