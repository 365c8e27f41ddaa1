import type { Entries } from "../entries.ts";

/** What `list` prints around names and numbers. */
export const LIST = {
	"list/belongs-to-limits": [
		"--for and --rules belong to “list limits”",
		"Clause after the name of the tool: options that the other lists do not take.",
	],
	"list/rules": ["{count, plural, one {# rule} other {# rules}}", "How many rules a jurisdiction has."],
	"list/compared-with-copy": [
		"{count, plural, one {# compared with a public copy} other {# compared with a public copy}}",
		"How many of a jurisdiction's rules.",
	],
	"list/wall": ["wall {wall}", "Of pipe. wall: a length."],
	"list/drift": ["drift {drift}", "Of pipe: the diameter that is sure to pass. drift: a length."],
	"list/yield": [
		"yield {least} to {greatest}",
		"Of a grade of pipe. least, greatest: strengths with their unit.",
	],
	"list/tensile": ["tensile {least}", "Of a grade of pipe: least tensile strength."],
	"list/fictional": ["fictional", "What a starter is."],
	"list/fictional-pad": ["a pad and its wells, fictional", "What a starter is."],
	"list/paper-regulator": ["attachment to the agency's own forms", "What a paper is."],
	"list/paper-regulator-appendix": [
		"what the attachment is proved by; bound with it",
		"What a paper is: the second part of the regulator's.",
	],
	"list/paper-transmittal": ["one page on top of what is sent to the agency", "What a paper is."],
	"list/paper-landowner": [
		"packet for the neighbors; --neighbor makes one neighbor's own edition",
		"What a paper is. --neighbor: an option of bind.",
	],
	"list/paper-handout": ["one sheet for a meeting or a notice board", "What a paper is."],
	"list/paper-answers": ["the presenter's sheet for a meeting", "What a paper is."],
	"list/paper-crew": [
		"pre-job safety sheet; --job says of which job",
		"What a paper is. --job: an option of bind.",
	],
	"list/paper-slides": ["slides for a public meeting, 16:9, a claim and a picture each", "What a paper is."],
	"list/paper-notes": [
		"the speaker's: of each slide the exact numbers, where they come from, and the likely question",
		"What a paper is.",
	],
	"list/paper-changes": [
		"what a revision changed, for an amendment; made by compare --out and bind --since",
		"What a paper is. compare, bind: commands.",
	],
	"list/job-of-string": ["once a casing string", "How often a job is done."],
	"list/job-of-well": ["once for the well", "How often a job is done."],
	"list/set": ["set", "Column head: the rule set."],
	"list/limits": ["limits", "Column head: how many limits a rule set has."],
	"list/compared": ["compared", "Column head: how many were compared with a text."],
	"list/share": ["share", "Column head: the same in percent."],
	"list/draft": ["draft", "Column head: how many were compared with a draft."],
	"list/mended": ["mended", "Column head: how many were corrected after comparing."],
	"list/not-compared": ["not compared", "Column head."],
	"list/numbers-compared": ["with numbers, compared", "Column head: of the limits that arithmetic decides."],
	"list/of": ["{some} of {all}", "A share as two counts."],
	"list/all": ["all", "Row head: all rule sets together."],
	"list/sheet-title": [
		"Limits that apply to {well}, to be laid beside the text in force",
		"First line of the sheet that a person fills. well: its name.",
	],
	"list/sheet-count": [
		"{count, plural, one {# limit} other {# limits}}; {compared} compared by a person named in the definition",
		"Second line of the sheet. compared: a count.",
	],
	"list/sheet-words": [
		"  our words   {requirement}",
		"Sheet: the limit as our rules file has it; begins at column 14.",
	],
	"list/sheet-number": [
		"  our number  {numbers}",
		"Sheet: the numbers of our row, as it writes them; begins at column 14.",
	],
	"list/sheet-no-number": [
		"  our number  none; compare the words",
		"Sheet: our row has no number; begins at column 14.",
	],
	"list/sheet-well": ["  this well   {reason}", "Sheet: how the limit comes out; begins at column 14."],
	"list/sheet-standing": [
		"  standing    {standing}",
		"Sheet: with what it was compared; begins at column 14.",
	],
	"list/sheet-copy": [
		"{standing}: {at} ({kind}, {dated}); read: {read}",
		"After the standing: the public copy. kind: a word of the rules file; read: what of it was read.",
	],
	"list/sheet-forms": ["  forms       {forms}", "Sheet: forms of the agency; begins at column 14."],
	"list/sheet-agrees": [
		"  number in the text {blank}  agrees ____  differs ____",
		"Sheet: a line to fill by hand. blank: a line to write on.",
	],
	"list/sheet-by": [
		"  by {blank}  license {blank}  on ____-__-__  against {blank}  dated ____-__-__",
		"Sheet: a line to fill by hand: who compared, when, with which text.",
	],
	"list/sheet-compared": [
		"  compared    by {by} on {on} against {against} of {dated}",
		"Sheet: who compared the limit. on, dated: dates.",
	],
	"list/sheet-end": [
		"Write what agrees under site › compared: '{ rule, by, license, on, against, dated }'; mend what differs in a rules file of your own (replaces: <id>).",
		"Last line of the sheet; what stands in braces is written so in the definition.",
	],
} as const satisfies Entries;
