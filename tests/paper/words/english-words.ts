/** English words that no Spanish sentence has. `a`, `he`, `me`, `no`, `son`, `once` and `sea` are words of both languages. */
export const ENGLISH = new RegExp(
	`(?<![\\p{L}\\p{N}/_.-]|\\d\\s)(?:${[
		..."the of and is are was were be been with for from that this these those by not at to or as on in into onto".split(
			" ",
		),
		..."it its an if than then which who whose has have had can may must shall will would could should does do did".split(
			" ",
		),
		..."below above between before after under within without each every any all none only also there where when while".split(
			" ",
		),
		..."their them they we our your what how why more most less least".split(" "),
	].join("|")})(?![\\p{L}\\p{N}/_-]|\\.\\p{L})`,
	"giu",
);
