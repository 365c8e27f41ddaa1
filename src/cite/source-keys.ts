/**
 * Every key of `seeds/sources.yaml`, as a type, so that a citation of nothing does not compile.
 * A conventions test holds this list and that file equal.
 */
export const SOURCE_KEYS = [
	"common-practice",
	"geometry",
	"hydrostatics",
	"conservation",
	"definition",
	"nist-sp-811",
	"api-5c3",
	"api-5ct",
	"api-5b",
	"api-10a",
	"api-10b-2",
	"api-10d",
	"api-d20",
	"taylor-mason-1972",
	"sawaryn-thorogood-2005",
	"lapeyrouse",
	"bourgoyne-1986",
	"devereux",
	"economides-1992",
	"rahman-chilingarian",
	"bell-sukup-tariq-1995",
] as const;

export type SourceKey = (typeof SOURCE_KEYS)[number];
