import type { Entries } from "../entries.ts";

/** What is said of names and values of a YAML text, and of a file as a whole. */
export const YAML_VALUES = {
	"source/bytes": ["{size, number} bytes", "A size. size: a count."],
	"source/nothing": ["nothing", "What was found in a cell, or at a place, that is empty."],
	"source/one-of": [
		"one of: {names}",
		"What is expected instead. names: words, units or names that may be written, separated by commas.",
	],
	"syntax/alias.unknown": [
		"`*{name}` repeats an entry marked `&{name}`, and there is none above it",
		"What is wrong: A repeated entry cannot be followed. name: as typed.",
	],
	"syntax/alias.unknown-expected": [
		"`&{name}` before an entry further up",
		"What is expected instead: A repeated entry cannot be followed. name: as typed.",
	],
	"syntax/alias.unknown-mend": [
		"write the value out; put it in double quotes if it starts with an asterisk",
		"What to do about it: A repeated entry cannot be followed.",
	],
	"syntax/alias.own": [
		"`*{name}` stands inside the very entry it repeats",
		"What is wrong: A repeated entry cannot be followed. name: as typed.",
	],
	"syntax/alias.own-expected": [
		"a repeated entry that ends before it is repeated",
		"What is expected instead: A repeated entry cannot be followed.",
	],
	"syntax/alias.own-mend": [
		"write the value out",
		"What to do about it: A repeated entry cannot be followed.",
	],
	"syntax/alias.too-many": [
		"entries repeated by `*` multiply without end",
		"What is wrong: A repeated entry cannot be followed.",
	],
	"syntax/alias.too-many-expected": [
		"{most, number} repeated entries in one file at most",
		"What is expected instead: A repeated entry cannot be followed. most: a count.",
	],
	"syntax/alias.too-many-mend": [
		"write the values out instead of repeating them",
		"What to do about it: A repeated entry cannot be followed.",
	],
	"syntax/comma-in-number.what": [
		"the number has a comma in it, and inside `'{' '}'` or `[ ]` a comma ends the value",
		"What is wrong: A number is cut in two by a comma.",
	],
	"syntax/comma-in-number.expected": [
		"digits without commas",
		"What is expected instead: A number is cut in two by a comma.",
	],
	"syntax/comma-in-number.mend": [
		"write `{first}`{unit}",
		"What to do about it: A number is cut in two by a comma. first: the number without its comma; unit: reminder of a unit, or nothing.",
	],
	"syntax/comma-in-number.or-thousands": [
		"write `{first}`, or `{second}` if the comma marks thousands{unit}",
		"What to do about it: A number is cut in two by a comma. first and second: the two readings of the number; unit: reminder of a unit, or nothing.",
	],
	"syntax/comma-in-number.or-decimals": [
		"write `{first}`, or `{second}` if the comma marks decimals{unit}",
		"What to do about it: A number is cut in two by a comma. first and second: the two readings of the number; unit: reminder of a unit, or nothing.",
	],
	"syntax/comma-in-number.with-unit": [
		"; with its unit, if it has one",
		"End of what to do, after the number as it should be written.",
	],
	"syntax/comma-in-text.what": [
		"the text has a comma in it, and inside `'{' '}'` or `[ ]` a comma ends the value",
		"What is wrong: A text is cut in two by a comma.",
	],
	"syntax/comma-in-text.expected": [
		"text in double quotes where it contains a comma",
		"What is expected instead: A text is cut in two by a comma.",
	],
	"syntax/comma-in-text.text-or-list": [
		'write `"{written}"` if it is one text, or `[{written}]` if it is a list',
		"What to do about it: A text is cut in two by a comma. written: the text as typed.",
	],
	"syntax/comma-in-text.mend": [
		'write `"{written}"` with double quotes',
		"What to do about it: A text is cut in two by a comma. written: the text as typed.",
	],
	"syntax/directive.what": [
		"a line starting with `%` at the head of a file is an instruction to the reader",
		"What is wrong: the file tells how it wants to be read.",
	],
	"syntax/directive.expected": [
		"a definition without such instructions; it is read as YAML 1.2",
		"What is expected instead: the file tells how it wants to be read.",
	],
	"syntax/directive.mend": [
		"take the line away",
		"What to do about it: the file tells how it wants to be read.",
	],
	"syntax/duplicate-key.what": [
		"`{name}` is given twice",
		"What is wrong: an entry is given twice. name: as typed.",
	],
	"syntax/duplicate-key.expected": [
		"each name once in a block",
		"What is expected instead: an entry is given twice.",
	],
	"syntax/duplicate-key.mend": [
		"keep the one that is right and take the other away",
		"What to do about it: an entry is given twice.",
	],
	"syntax/duplicate-key.label": [
		"the first one is here",
		"What a related place is: the first entry of two with the same name.",
	],
	"syntax/empty.what": ["the file is empty, or holds only remarks", "What is wrong: the file is empty."],
	"syntax/empty.expected": [
		"a definition, starting with `definition: 1`",
		"What is expected instead: the file is empty.",
	],
	"syntax/empty.mend": [
		"write one, or start from one of the starters (`casebound new`)",
		"What to do about it: the file is empty.",
	],
	"syntax/hash-in-value.what": [
		"the `#` starts a remark, so the value ends before it",
		"What is wrong: A value is cut off by a # sign.",
	],
	"syntax/hash-in-value.expected": [
		"values with a `#` in double quotes; remarks with a space after the `#`",
		"What is expected instead: A value is cut off by a # sign.",
	],
	"syntax/hash-in-value.unit": [
		"write `{whole}`, or put the value in double quotes",
		"What to do about it: A value is cut off by a # sign. whole: the value with lb for #.",
	],
	"syntax/hash-in-value.mend": [
		'write `"{whole}"` with double quotes, or put a space after the `#` if a remark is meant',
		"What to do about it: A value is cut off by a # sign. whole: the value as typed.",
	],
	"syntax/hidden-character.what": [
		"a character that cannot be seen changes how the text reads",
		"What is wrong: A character that cannot be seen.",
	],
	"syntax/hidden-character.expected": [
		"letters that read as they are written",
		"What is expected instead: A character that cannot be seen.",
	],
	"syntax/hidden-character.mend": [
		"delete it, or type the line anew",
		"What to do about it: A character that cannot be seen.",
	],
	"syntax/invisible-character.what": [
		"a character that takes no room was left out",
		"What is wrong: A character that takes no room was left out.",
	],
	"syntax/invisible-character.expected": [
		"letters, figures and signs that can be seen",
		"What is expected instead: A character that takes no room was left out.",
	],
	"syntax/invisible-character.mend": [
		"delete it; word processors and web pages leave such characters behind",
		"What to do about it: A character that takes no room was left out.",
	],
	"syntax/key.what": [
		"the name of this entry is missing, or is not one plain word",
		"What is wrong: an entry has no usable name.",
	],
	"syntax/key.expected": ["`name: value`", "What is expected instead: an entry has no usable name."],
	"syntax/key.mend": ["write a name before the colon", "What to do about it: an entry has no usable name."],
	"syntax/merge-key.what": [
		"`<<` copies entries from elsewhere, so that a value no longer stands where it is used",
		"What is wrong: entries are copied in with <<.",
	],
	"syntax/merge-key.expected": [
		"every value written where it applies",
		"What is expected instead: entries are copied in with <<.",
	],
	"syntax/merge-key.why": [
		"each number in the papers is traced to the line it was written on",
		"Why it matters: entries are copied in with <<.",
	],
	"syntax/merge-key.mend": [
		"write the copied entries out",
		"What to do about it: entries are copied in with <<.",
	],
	"syntax/nesting.what": [
		"entries stand inside entries more than {deepest} deep",
		"What is wrong: brackets or blocks stand too deep inside each other. deepest: a count.",
	],
	"syntax/nesting.expected": [
		"the structure of a definition, about ten deep",
		"What is expected instead: brackets or blocks stand too deep inside each other.",
	],
	"syntax/nesting.mend": [
		"look for brackets that were opened and never closed",
		"What to do about it: brackets or blocks stand too deep inside each other.",
	],
	"syntax/no-such-letter.what": [
		"the typeface of the papers has no such letter",
		"What is wrong: A letter that the papers cannot show.",
	],
	"syntax/no-such-letter.expected": [
		"letters of the Latin, Greek or Cyrillic alphabets, figures, and common signs",
		"What is expected instead: A letter that the papers cannot show.",
	],
	"syntax/no-such-letter.mend": [
		"write the word in one of those alphabets",
		"What to do about it: A letter that the papers cannot show.",
	],
	"syntax/no-value.expected": [
		"`name: value` between commas",
		"What is expected instead: A name stands alone inside { }.",
	],
	"syntax/no-value.spaced": [
		"write `{name}: {value}`",
		"What to do about it: A name stands alone inside { }. name and value: name and value as typed.",
	],
	"syntax/no-value.what": [
		"`{name}` has no value",
		"What is wrong: A name stands alone inside { }. name: as typed.",
	],
	"syntax/no-value.rest-of-text": [
		'write `"{before}, {name}"` in double quotes if it belongs to the text before the comma; else give `{name}: ` its value',
		"What to do about it: A name stands alone inside { }. before: the text before the comma; name: what follows it.",
	],
	"syntax/no-value.give": [
		"write `{name}: …` with its value, or take it away",
		"What to do about it: A name stands alone inside { }. name: as typed.",
	],
	"syntax/no-value.mend": [
		"put a colon and a space after the name",
		"What to do about it: A name stands alone inside { }.",
	],
	"syntax/not-text.what": ["the file is not plain text", "What is wrong: the file is not plain text."],
	"syntax/not-text.expected": ["text in UTF-8", "What is expected instead: the file is not plain text."],
	"syntax/not-text.mend": [
		"save it as plain text with the encoding UTF-8",
		"What to do about it: the file is not plain text.",
	],
	"syntax/not-text.utf-16": ["text in UTF-16", "Part of a message: the file is not plain text."],
	"syntax/not-text.not-utf-8": ["bytes that are not UTF-8", "Part of a message: the file is not plain text."],
	"syntax/not-text.control": [
		"the control character {character}",
		"Part of a message: the file is not plain text. character: its number, and its name in the Unicode standard.",
	],
	"syntax/not-text.control-number": [
		"{number}, a control character",
		"Which character was found. number: in the Unicode standard, such as U+0081.",
	],
	"syntax/reserved-key.what": [
		"`{name}` cannot be used as a name",
		"What is wrong: A name is reserved. name: as typed.",
	],
	"syntax/reserved-key.expected": [
		"a word of the definition",
		"What is expected instead: A name is reserved.",
	],
	"syntax/reserved-key.mend": ["choose another name", "What to do about it: A name is reserved."],
	"syntax/several-documents.what": [
		"`---` starts a second document in the file",
		"What is wrong: the file holds more than one document.",
	],
	"syntax/several-documents.expected": [
		"one definition in a file",
		"What is expected instead: the file holds more than one document.",
	],
	"syntax/several-documents.mend": [
		"put the second one in a file of its own, or take the `---` away",
		"What to do about it: the file holds more than one document.",
	],
	"syntax/tab.what": ["the line is indented with a tab", "What is wrong: A line is indented with a tab."],
	"syntax/tab.expected": [
		"spaces; YAML does not count tabs as indentation",
		"What is expected instead: A line is indented with a tab.",
	],
	"syntax/tab.mend": ["replace the tab by spaces", "What to do about it: A line is indented with a tab."],
	"syntax/tag.what": [
		"a tag with `!` changes how the value is read",
		"What is wrong: A value carries a tag.",
	],
	"syntax/tag.expected": [
		"plain values, in quotes where they are text",
		"What is expected instead: A value carries a tag.",
	],
	"syntax/tag.mend": [
		"take the tag away; quote the value if it starts with an exclamation mark",
		"What to do about it: A value carries a tag.",
	],
	"syntax/too-large.what": [
		"the file is larger than any well needs",
		"What is wrong: the file is too large.",
	],
	"syntax/too-large.more": ["more than that", "What was found: the file is too large."],
	"syntax/too-large.mend": [
		"check that this is the file you meant",
		"What to do about it: the file is too large.",
	],
	"syntax/too-large.expected": ["{most} at most", "What is expected instead. most: a size in bytes."],
	"seed/unreadable.what": [
		"the shipped table is not readable: {why}",
		"What is wrong with a table that ships with the tool. why: the first fault of its text.",
	],
	"seed/unreadable.nothing": [
		"nothing could be read",
		"Why a shipped table is not readable, where no fault says it.",
	],
} as const satisfies Entries;
