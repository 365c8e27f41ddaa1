import type { CodeEntry } from "../codes.ts";

/** Faults of form: what stands in the file cannot be read as entries and values. */
export const SYNTAX_CODES = {
	"syntax/alias": {
		severity: "error",
		title: "A repeated entry cannot be followed",
		explain:
			"YAML lets `*name` repeat an entry marked `&name` further up. Here there is no such mark, or the entry would " +
			"repeat itself, or the repetitions multiply beyond any real definition. Write the values out where they apply.",
	},
	"syntax/comma-in-number": {
		severity: "error",
		title: "A number is cut in two by a comma",
		explain:
			"Inside `{ }` and `[ ]` YAML ends a value at each comma, so `{ to: 3,250 ft }` says `to: 3` and an entry named " +
			"`250 ft`. A shoe at 3 ft instead of 3250 ft is the kind of slip nobody sees in print. Numbers are written " +
			"without commas everywhere: `3250 ft`. Papers print the comma by themselves.",
	},
	"syntax/comma-in-text": {
		severity: "error",
		title: "A text is cut in two by a comma",
		explain:
			"Inside `{ }` and `[ ]` YAML ends a value at each comma, so only the part before it would be read. Put the whole " +
			"text in double quotes, or move the entry to a line of its own outside the brackets.",
	},
	"syntax/directive": {
		severity: "error",
		title: "The file tells how it wants to be read",
		explain:
			"A line such as `%YAML 1.1` at the head changes what plain words mean: `yes` would become true, `12:30` a number. " +
			"A definition is always read in the same way, as YAML 1.2. Take the line away.",
	},
	"syntax/duplicate-key": {
		severity: "error",
		title: "An entry is given twice",
		explain:
			"The same name stands twice in one block, so it is not known which value holds; many readers would silently take " +
			"the last. This happens when a line is copied to try another weight or depth. Keep the right one.",
	},
	"syntax/empty": {
		severity: "error",
		title: "The file is empty",
		explain:
			"There is nothing in the file but remarks or blank lines. If work was expected in it, look whether it was saved " +
			"under another name. `casebound new` writes a starter to begin from.",
	},
	"syntax/hash-in-value": {
		severity: "error",
		title: "A value is cut off by a # sign",
		explain:
			"A `#` after a space starts a remark, so in `8.8 #/gal` only 8.8 is left, and `Pad #3` becomes `Pad`. Use `lb/gal` " +
			"and `lb/ft`, or put the value in double quotes. A real remark has a space after its `#`.",
	},
	"syntax/hidden-character": {
		severity: "error",
		title: "A character that cannot be seen",
		explain:
			"Marks that turn the direction of reading, control characters and rare line ends are not seen in an editor, and " +
			"make a line read as something else than it says. Nothing in a definition needs them; they come with text that " +
			"was copied. Delete the character, or type the line anew.",
	},
	"syntax/invisible-character": {
		severity: "warning",
		title: "A character that takes no room was left out",
		explain:
			"Soft hyphens, zero-width spaces and joiners are left behind by word processors and web pages. They would part " +
			"words in search and in names of files, so they are left out of every paper. Delete them in the definition too.",
	},
	"syntax/key": {
		severity: "error",
		title: "An entry has no usable name",
		explain:
			"Before each colon stands one plain word that names the entry. Here it is missing, or it is a list or a block. " +
			"Write the name, or quote the value if the colon belongs to a text.",
	},
	"syntax/merge-key": {
		severity: "error",
		title: "Entries are copied in with <<",
		explain:
			"The merge key `<<` takes over entries from elsewhere in the file. Then a value is in force where nobody can read " +
			"it, and the papers could not say which line it came from. It is no part of YAML 1.2. Write the entries out.",
	},
	"syntax/nesting": {
		severity: "error",
		title: "Brackets or blocks stand too deep inside each other",
		explain:
			"A definition needs about ten levels. Far more means that brackets were opened and never closed, or that this is " +
			"not a definition. Count the brackets near the place named.",
	},
	"syntax/no-such-letter": {
		severity: "error",
		title: "A letter that the papers cannot show",
		explain:
			"Papers and drawings are set in one typeface, which has the Latin, Greek and Cyrillic alphabets and the signs of " +
			"the trade. A letter of another script, or a picture sign, would leave a gap or a box on paper. Write the word in " +
			"one of those alphabets.",
	},
	"syntax/no-value": {
		severity: "error",
		title: "A name stands alone inside { }",
		explain:
			"Inside `{ }` each part between commas is `name: value`. This one has no colon, or no space after it " +
			"(`to:3250 ft`). Write the colon and a space, or the missing value.",
	},
	"syntax/not-text": {
		severity: "error",
		title: "The file is not plain text",
		explain:
			"It holds control characters, or is not encoded in UTF-8: a spreadsheet or word-processor file, text saved as " +
			"UTF-16, or a damaged copy. Save it as plain text in UTF-8.",
	},
	"syntax/reserved-key": {
		severity: "error",
		title: "A name is reserved",
		explain:
			"`__proto__`, `constructor` and `prototype` mean something to the language the tool is written in and are never " +
			"taken as names. No entry of a definition is called so; choose another name.",
	},
	"syntax/several-documents": {
		severity: "error",
		title: "The file holds more than one document",
		explain:
			"A line `---` ends one YAML document and starts the next. One file holds one well, so that a paper can name the " +
			"file it came from. Put the others in files of their own.",
	},
	"syntax/tab": {
		severity: "error",
		title: "A line is indented with a tab",
		explain:
			"YAML shows by spaces what belongs to what and does not count tabs, so a tab would leave it open which casing a " +
			"line belongs to. Replace tabs by spaces; most editors can do so as you type.",
	},
	"syntax/tag": {
		severity: "error",
		title: "A value carries a tag",
		explain:
			"A word with an exclamation mark before a value (`!!str`, `!ref`) tells a YAML reader to turn it into something " +
			"else. A definition holds plain values only. Take the tag away, or quote the value if the mark belongs to it.",
	},
	"syntax/too-large": {
		severity: "error",
		title: "The file is too large",
		explain:
			"A definition is some tens of kilobytes and may have half a megabyte; a dense survey is less than one megabyte and may " +
			"have five. A larger file is most likely a log or the wrong file. Thin the data, or name the right file.",
	},
	"syntax/yaml": {
		severity: "error",
		title: "The file is not well-formed YAML",
		explain:
			"The text could not be read as YAML 1.2. Nothing after the fault can be trusted, so nothing is calculated. " +
			"Mend the place named, then run again.",
	},
} as const satisfies Record<string, CodeEntry>;
