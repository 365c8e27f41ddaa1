import type { Entries } from "../entries.ts";

/** What is said of lines, brackets, quotes and commas of a YAML text. */
export const YAML_LINES = {
	"syntax/after-quote.what": [
		"text follows the closing quote of a value",
		"What is wrong, for syntax/after-quote.",
	],
	"syntax/after-quote.expected": [
		"the quotes around the whole value, or none",
		"What is expected instead, for syntax/after-quote.",
	],
	"syntax/after-quote.mend": [
		"leave the quotes out, or put the whole value inside them; for inches write `in` instead of a quote",
		"What to do about it, for syntax/after-quote.",
	],
	"syntax/backslash.what": [
		"a backslash in double quotes starts an escape, and this one is none",
		"What is wrong, for syntax/backslash.",
	],
	"syntax/backslash.expected": [
		"text without backslashes, or in single quotes",
		"What is expected instead, for syntax/backslash.",
	],
	"syntax/backslash.mend": [
		"put the value in single quotes instead",
		"What to do about it, for syntax/backslash.",
	],
	"syntax/closer.what": [
		"`{mark}` closes nothing",
		"What is wrong, for syntax/closer. mark: a closing bracket.",
	],
	"syntax/closer.expected": [
		"one closing bracket for every opening one",
		"What is expected instead, for syntax/closer.",
	],
	"syntax/closer.mend": [
		"take the `{mark}` away",
		"What to do about it, for syntax/closer. mark: a closing bracket.",
	],
	"syntax/closer-in-remark.what": [
		"the `#` starts a remark, and the `{closer}` is inside it",
		"What is wrong, for syntax/closer-in-remark. closer: a closing bracket.",
	],
	"syntax/closer-in-remark.expected": [
		"the `{closer}` before the remark",
		"What is expected instead, for syntax/closer-in-remark. closer: a closing bracket.",
	],
	"syntax/closer-in-remark.mend": [
		"move the remark behind the `{closer}`, or take it out",
		"What to do about it, for syntax/closer-in-remark. closer: a closing bracket.",
	],
	"syntax/colon.what": [
		"the colon has no space after it, so it separates nothing",
		"What is wrong, for syntax/colon.",
	],
	"syntax/colon-in-value.what": [
		"a value contains a colon followed by a space, which starts another entry",
		"What is wrong, for syntax/colon-in-value.",
	],
	"syntax/colon-in-value.mend": [
		"put the whole value in double quotes",
		"What to do about it, for syntax/colon-in-value.",
	],
	"syntax/column.mend": [
		"move the line to the column of the entries it belongs with",
		"What to do about it, for syntax/column.",
	],
	"syntax/column.what": [
		"the entries of one block do not start in the same column",
		"What is wrong, for syntax/column.",
	],
	"syntax/comma.what": ["a comma stands where a value is due", "What is wrong, for syntax/comma."],
	"syntax/comma.expected": ["one comma between two values", "What is expected instead, for syntax/comma."],
	"syntax/comma.mend": [
		"take the comma away, or write the missing value before it",
		"What to do about it, for syntax/comma.",
	],
	"syntax/dash.what": [
		"the dash has no space after it, so it starts no item",
		"What is wrong, for syntax/dash.",
	],
	"syntax/dash.expected": ["`- ` before each item of a list", "What is expected instead, for syntax/dash."],
	"syntax/dash.mend": [
		"write `{line}`",
		"What to do about it, for syntax/dash. line: the line as it should be written.",
	],
	"syntax/first-character.what": [
		"a value cannot start with `{character}` unless it is quoted",
		"What is wrong, for syntax/first-character. character: the character.",
	],
	"syntax/first-character.expected": [
		"a letter, a digit or a quote first",
		"What is expected instead, for syntax/first-character.",
	],
	"syntax/first-character.percent": [
		"write the number before the `%`, as in `30 %`",
		"What to do about it, for syntax/first-character.",
	],
	"syntax/first-character.mend": [
		"put the value in double quotes",
		"What to do about it, for syntax/first-character.",
	],
	"syntax/further-in.what": [
		"this line stands further in than the entry above it, which already has a value",
		"What is wrong, for syntax/further-in.",
	],
	"syntax/list-on-line.what": [
		"a list starts on the line of its name",
		"What is wrong, for syntax/list-on-line.",
	],
	"syntax/list-on-line.expected": [
		"each item of a list on a line of its own, starting with `- `",
		"What is expected instead, for syntax/list-on-line.",
	],
	"syntax/list-on-line.mend": [
		"move the `-` to the next line, or quote the value if it is only a dash",
		"What to do about it, for syntax/list-on-line.",
	],
	"syntax/no-comma.semicolon": [
		"a `;` stands between two entries, where a comma is due",
		"What is wrong, for syntax/no-comma.",
	],
	"syntax/no-comma.what": [
		"two entries stand side by side without a comma",
		"What is wrong, for syntax/no-comma.",
	],
	"syntax/no-comma.expected": [
		"one comma between two entries",
		"What is expected instead, for syntax/no-comma.",
	],
	"syntax/no-comma.instead": ["write a comma instead", "What to do about it, for syntax/no-comma."],
	"syntax/no-comma.mend": [
		"put a comma before {where}",
		"What to do about it, for syntax/no-comma. where: a name in backticks, or the words for it.",
	],
	"syntax/no-comma.second-name": ["the second name", "What to do about it, for syntax/no-comma."],
	"syntax/no-comma.values": [
		"two values stand side by side without a comma",
		"What is wrong, for syntax/no-comma.",
	],
	"syntax/no-comma.values-mend": [
		"put a comma between them, or quotes around them if they are one value",
		"What to do about it, for syntax/no-comma.",
	],
	"syntax/no-entry.what": ["this line is not an entry", "What is wrong, for syntax/no-entry."],
	"syntax/no-entry.mend": [
		"write it as `name: value`, or start it with `#` if it is a remark",
		"What to do about it, for syntax/no-entry.",
	],
	"syntax/open-quote.what": ["the quote is not closed", "What is wrong, for syntax/open-quote."],
	"syntax/open-quote.expected": [
		"a matching `{mark}` at the end of the value",
		"What is expected instead, for syntax/open-quote. mark: the quotation mark that opens the value.",
	],
	"syntax/open-quote.mend": [
		"add the missing `{mark}`; for inches write `in` instead of a quote",
		"What to do about it, for syntax/open-quote. mark: the quotation mark that opens the value.",
	],
	"syntax/question-mark.what": ["a `?` alone cannot be a value", "What is wrong, for syntax/question-mark."],
	"syntax/question-mark.expected": [
		"a value, or no entry where it is not known yet",
		"What is expected instead, for syntax/question-mark.",
	],
	"syntax/question-mark.mend": [
		"give it a value, or take the entry out until it is known",
		"What to do about it, for syntax/question-mark.",
	],
	"syntax/several-on-line.what": [
		"several entries stand on one line without `'{' '}'` around them",
		"What is wrong, for syntax/several-on-line.",
	],
	"syntax/several-on-line.mend": [
		"put them in `'{' '}'`{how}",
		"What to do about it, for syntax/several-on-line. how: how, beginning with its own punctuation.",
	],
	"syntax/several-on-line.opening": [
		": the opening `'{'` is missing",
		"What to do about it, for syntax/several-on-line.",
	],
	"syntax/several-on-line.or-lines": [
		", or each on a line of its own",
		"What to do about it, for syntax/several-on-line.",
	],
	"syntax/stray-text.what": ["text stands where no value can be", "What is wrong, for syntax/stray-text."],
	"syntax/stray-text.mend": [
		"move it into a `name: value` entry, or start it with `#` if it is a remark",
		"What to do about it, for syntax/stray-text.",
	],
	"syntax/unclosed.what": [
		"{what} is not closed",
		"What is wrong, for syntax/unclosed. what: the opening bracket in backticks.",
	],
	"syntax/unclosed.expected": [
		"a matching `{closer}` before the next entry",
		"What is expected instead, for syntax/unclosed. closer: a closing bracket.",
	],
	"syntax/unclosed.mend": [
		"add the missing `{closer}`, and keep the lines between further in than the entry they belong to",
		"What to do about it, for syntax/unclosed. closer: a closing bracket.",
	],
	"syntax/write.mend": [
		"write `{joined}`",
		"What to do about it, for syntax/write. joined: the entry as it should be written.",
	],
	"syntax/yaml.what": ["the text cannot be read here", "What is wrong: the file is not well-formed YAML."],
	"syntax/yaml.mend": ["rewrite this entry", "What to do about it: the file is not well-formed YAML."],
	"syntax/yaml.entries": [
		"entries of the form `name: value`, one to a line, those of one block starting in the same column",
		"What is expected instead, for a line that cannot be read.",
	],
	"syntax/yaml.read-so-far": [
		"read as far as here",
		"What a related place is: where the reader saw that a bracket or quote is not closed.",
	],
} as const satisfies Entries;
