import { describe, expect, it } from "vitest";
import { readJurisdictionText } from "../../src/catalog/jurisdictions.ts";
import { told } from "../told.ts";

/*
 * Slips of the pen in a rules file: each is told at its place, with what belongs there and how to mend it, and nothing else is
 * told beside it. The good row is the same throughout; each slip changes one thing in it.
 */
const ROW = `  - id: us-zz.one
    check: shoe-depth
    applies_to: { string: surface }
    limit: { measure: shoe below ground, at_least: 200 ft }
    requirement: A sentence.
    citation: Rule 1
    standing: not compared
    how_known: { way: memory }
    text_as_of: unknown
    in_force: { from: unknown }
`;
const FILE = `jurisdiction: us-zz\nname: Zed\nkind: state\nagency: Zed Board\nrules:\n${ROW}`;
const LIMIT = "{ measure: shoe below ground, at_least: 200 ft }";
const changed = (from: string, to: string): string => {
	if (!FILE.includes(from)) throw new Error(`the good file has no "${from}"`);
	return FILE.replace(from, to);
};
const limited = (limit: string): string => changed(LIMIT, limit);
/** A row on the whole well, of another check. */
const ofWell = (check: string, limit: string): string =>
	limited(limit).replace("shoe-depth", check).replace("    applies_to: { string: surface }\n", "");

const faults = (text: string) =>
	readJurisdictionText(text, "mine.yaml").diagnostics.map(({ at, what, expected, found, mend }) => ({
		at: at.path.join("."),
		told: [what, found, expected, mend].map((each) => told(each ?? "")).join(" | "),
		mend: told(mend ?? ""),
		expected: told(expected ?? ""),
	}));

describe("a good row", () => {
	it("has no fault", () => {
		expect(faults(FILE)).toEqual([]);
		expect(faults(limited("{ measure: shoe below ground, at_least: 200ft }"))).toEqual([]);
		expect(faults(limited("{ measure: shoe below ground, at_least: 200 feet }"))).toEqual([]);
	});
});

describe.each([
	// What was slipped, the file, where it is told, and words of what is expected or how it is mended.
	["a check misspelt", changed("shoe-depth", "shoe-dept"), "rules.0.check", 'did you mean "shoe-depth"'],
	[
		"a measure misspelt",
		limited("{ measure: shoe below grond, at_least: 200 ft }"),
		"rules.0.limit.measure",
		'did you mean "shoe below ground"',
	],
	[
		"a measure of another check",
		limited("{ measure: test pressure, at_least: 2 psi }"),
		"rules.0.limit.measure",
		"shoe along the hole",
	],
	[
		"a boundary run together",
		limited("{ measure: shoe below ground, atleast: 200 ft }"),
		"rules.0.limit.atleast",
		'did you mean "at_least"',
	],
	[
		"a boundary with a hyphen",
		limited("{ measure: shoe below ground, at-least: 200 ft }"),
		"rules.0.limit.at-least",
		'did you mean "at_least"',
	],
	[
		"two boundaries",
		limited("{ measure: shoe below ground, at_least: 200 ft, at_most: 300 ft }"),
		"rules.0.limit",
		"all_of",
	],
	[
		"a number without its unit",
		limited("{ measure: shoe below ground, at_least: 200 }"),
		"rules.0.limit.at_least",
		"unit",
	],
	[
		"a unit of another kind",
		limited("{ measure: shoe below ground, at_least: 200 psi }"),
		"rules.0.limit.at_least",
		"such as 984 ft",
	],
	[
		"a number in words",
		limited("{ measure: shoe below ground, at_least: two hundred ft }"),
		"rules.0.limit.at_least",
		"unit",
	],
	[
		"a number with a comma",
		limited("{ measure: shoe below ground, at_least: 1,200 ft }"),
		"rules.0.limit.at_least",
		"1200 ft",
	],
	[
		"a percentage without its sign",
		ofWell("hydrogen-sulfide", "{ measure: hydrogen sulfide, less_than: 100 }"),
		"rules.0.limit.less_than",
		"unit",
	],
	[
		"no string",
		changed("    applies_to: { string: surface }\n", ""),
		"rules.0.applies_to",
		"{ string: surface }",
	],
	[
		"a string misspelt",
		changed("string: surface", "string: surfce"),
		"rules.0.applies_to.string",
		'did you mean "surface"',
	],
	[
		"strings for string",
		changed("{ string: surface }", "{ strings: surface }"),
		"rules.0.applies_to.strings",
		'did you mean "string"',
	],
	[
		"a fact misspelt",
		changed("{ string: surface }", "{ string: surface, when: explortory well }"),
		"rules.0.applies_to.when",
		'did you mean "exploratory well"',
	],
	[
		"a county left empty",
		changed("{ string: surface }", "{ string: surface, when: { county: } }"),
		"rules.0.applies_to.when.county",
		"{ county: [first name, second name] }",
	],
	[
		"a day left out",
		changed("{ string: surface }", "{ string: surface, when: { event: spud } }"),
		"rules.0.applies_to.when",
		"before: year-month-day",
	],
	[
		"one condition in a list of any",
		changed("{ string: surface }", "{ string: surface, when: { any: [horizontal well] } }"),
		"rules.0.applies_to.when.any",
		"{ any: [exploratory well, horizontal well] }",
	],
	["no requirement", changed("    requirement: A sentence.\n", ""), "rules.0.requirement", "add requirement"],
	[
		"a standing of one's own",
		changed("not compared", "uncompared"),
		"rules.0.standing",
		"compared with a public copy",
	],
	["a kind with a capital", changed("kind: state", "kind: State"), "kind", 'did you mean "state"'],
	["a way of one's own", changed("way: memory", "way: remembered"), "rules.0.how_known.way", "second-hand"],
	[
		"a day in the American order",
		changed("from: unknown", "from: 01/01/2020"),
		"rules.0.in_force.from",
		"year-month-day",
	],
	["a month for a day", changed("from: unknown", "from: 2020-01"), "rules.0.in_force.from", "year-month-day"],
	[
		"a day for a block",
		changed("in_force: { from: unknown }", "in_force: 2020-01-01"),
		"rules.0.in_force",
		"{ from: year-month-day or unknown }",
	],
	["an id of another file", changed("us-zz.one", "us-zy.one"), "rules.0.id", "us-zz."],
	["an id twice", FILE + ROW, "rules.1.id", "id of its own"],
	["rows that are no list", changed("  - id", "    id"), "rules", "a list of rows"],
	["a limit that is a number", limited("200 ft"), "rules.0.limit", "block"],
	["no limit", limited(""), "rules.0.limit", "block"],
	["one limit under any_of", limited(`{ any_of: [${LIMIT}] }`), "rules.0.limit.any_of", "without this word"],
	["then for require", limited(`{ if: horizontal well, then: ${LIMIT} }`), "rules.0.limit.then", "require"],
	[
		"one amount under greatest_of",
		limited("{ measure: shoe below ground, at_least: { greatest_of: [200 ft] } }"),
		"rules.0.limit.at_least.greatest_of",
		"{ greatest_of }",
	],
	[
		"a measure cut short",
		limited("{ measure: shoe below ground, at_least: { times: 10 %, of: well depth } }"),
		"rules.0.limit.at_least.of",
		'did you mean "well depth below ground"',
	],
	[
		"a table that goes by nothing",
		limited(
			"{ measure: shoe below ground, at_least: { steps: [{ up_to: 9 ft, is: 1 ft }, { beyond: 2 ft }] } }",
		),
		"rules.0.limit.at_least.by",
		"well depth below ground",
	],
	[
		"a step without its end",
		limited(
			"{ measure: shoe below ground, at_least: { by: string length, steps: [{ is: 1 ft }, { beyond: 2 ft }] } }",
		),
		"rules.0.limit.at_least.steps.0",
		"{ up_to: 8000 ft, is: … }",
	],
	[
		"an event of one's own",
		ofWell("notice", "{ deadline: { before: { spudding: 30 days } } }"),
		"rules.0.limit.deadline.before.spudding",
		"drilling ends",
	],
	[
		"days without their word",
		ofWell("notice", "{ deadline: { before: { spud: 30 } } }"),
		"rules.0.limit.deadline.before.spud",
		"such as 30 days",
	],
	[
		"a distance from nowhere",
		ofWell("setback", "{ measure: distance, at_least: 200 ft }").replace(
			"    limit:",
			"    applies_to: { neighbor: dwelling }\n    limit:",
		),
		"rules.0.limit",
		"from: …",
	],
	[
		"a slurry for a zone",
		limited("{ measure: strength, zone: tail, after: 24 hr, at_least: 500 psi }").replace(
			"shoe-depth",
			"cement-strength",
		),
		"rules.0.limit.zone",
		"shoe, filler, whole",
	],
	["no agency", changed("agency: Zed Board\n", ""), "agency", "add agency"],
	["a code with a space", changed("us-zz\n", "US ZZ\n"), "jurisdiction", "lower-case"],
	["an empty file", "", "", "jurisdiction:"],
] as const)("%s", (_, text, at, words) => {
	it(`is told at "${at}", with "${words}"`, () => {
		const found = faults(text);
		expect(found.map((each) => each.at)).toEqual([at]);
		const [only] = found;
		expect(`${only?.expected} | ${only?.mend}`).toContain(words);
		expect(only?.told).not.toMatch(/nonoptional|undefined|\[object|Invalid|"' \}|\]'/);
	});
});

describe("a key misspelt", () => {
	it("is told beside the one that is missing, with every key and the near one", () => {
		const found = faults(changed("    citation:", "    citaton:"));
		expect(found.map(({ at }) => at)).toEqual(["rules.0.citation", "rules.0.citaton"]);
		expect(found[1]?.mend).toBe('did you mean "citation"?');
		expect(found[1]?.expected).toContain("text_as_of");
	});
	it("inside a block names the block's own keys", () => {
		const [first] = faults(changed("{ from: unknown }", "{ form: unknown }")).slice(-1);
		expect(first?.expected).toBe("one of: from, to, by");
		expect(first?.mend).toContain('"from"');
	});
});

describe("a file torn apart", () => {
	it.each([
		["a word alone", "juris", "mine.yaml", "this is not in the form that a rules file has"],
		["a block for a name", FILE.replace("id: us-zz.one", "id: { a: 1 }"), "mine.yaml", "id"],
		[
			"a block for a citation",
			FILE.replace("citation: Rule 1", "citation: { a: 1 }"),
			"mine.yaml",
			"citation",
		],
		[
			"a block for a formation",
			limited("{ measure: shoe below ground, at_least: 200 ft, formation: { a: 1 } }"),
			"mine.yaml",
			"",
		],
		[
			"a block for a span",
			ofWell("notice", "{ event: spud, within: { a: 1 }, direction: before }"),
			"mine.yaml",
			"",
		],
	])("is told of, and nothing breaks: %s", (_, text, file, says) => {
		const { diagnostics } = readJurisdictionText(text, file);
		expect(diagnostics.length).toBeGreaterThan(0);
		expect(diagnostics.map(({ what }) => told(what)).join("; ")).toContain(says);
	});
});
