import { readdirSync, readFileSync } from "node:fs";
import { afterEach, describe, expect, it, vi } from "vitest";
import {
	JURISDICTION_CODES,
	loadJurisdictions,
	loadPractice,
	readJurisdictionText,
} from "../../src/catalog/jurisdictions.ts";
import type {
	Amount,
	Deadline,
	Jurisdiction,
	Limit,
	LimitLeaf,
	Operator,
	Rule,
	Threshold,
} from "../../src/catalog/limits/limit.ts";
import { MEASURES, type MeasureName } from "../../src/catalog/limits/measures.ts";
import {
	BY_WHAT_IT_HAS,
	CONTINGENT_EVENTS,
	type EventName,
	type LimitForm,
	type TopMethod,
} from "../../src/catalog/limits/vocabulary.ts";
import type { Neighbor } from "../../src/definition/definition.ts";
import type { Verdict } from "../../src/document/verdict.ts";
import type { Case } from "../../src/rules/case.ts";
import { dueDate } from "../../src/rules/deadline.ts";
import { evaluate } from "../../src/rules/evaluate.ts";
import { FIELD_CODE } from "../../src/rules/fields.ts";
import { MEASURE_CODE } from "../../src/rules/measures/index.ts";
import { selectStrings } from "../../src/rules/subject.ts";
import { subjectsOfRule } from "../../src/rules/subjects-of-rule.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import type { Well } from "../../src/well/well.ts";
import { given } from "../calc/given.ts";
import { told } from "../told.ts";
import { set, wellWith } from "./builders.ts";

/*
 * Every limit of every shipped row, at its own boundary, just under and just over it, and without its input. The boundary
 * is taken from the row's data by arithmetic of this file's own; what each measure reads from a definition, and which
 * input it names when it is missing, is in `thresholds.test.ts`. Verdicts at a boundary are what the words *at least*,
 * *more than*, *at most* and *less than* mean (common practice, no source).
 */

interface Asked {
	readonly name: string;
	readonly jurisdiction: Jurisdiction;
	readonly rule: Rule;
	readonly leaf: LimitLeaf;
}

const leavesOf = (limit: Limit): readonly LimitLeaf[] => {
	switch (limit.form) {
		case "all of":
		case "any of":
			return limit.parts.flatMap(leavesOf);
		case "if":
			return leavesOf(limit.limit);
		default:
			return [limit];
	}
};
/** Rules files of the tests: what an author of their own may write, swept like the shipped ones. */
const OWN = new URL("../../fixtures/jurisdictions/", import.meta.url);
const own = readdirSync(OWN).flatMap((file) => {
	const { value } = readJurisdictionText(readFileSync(new URL(file, OWN), "utf8"), file);
	// Records and holes nearby have tests of their own, with wells that hold them.
	const elsewhere = ["float-record", "returns-record", "fracture-reach"];
	return value === undefined
		? []
		: [{ ...value, rules: value.rules.filter(({ check }) => !elsewhere.includes(check)) }];
});
const shipped = [...(loadJurisdictions(JURISDICTION_CODES).value ?? []), ...own];
const ASKED: readonly Asked[] = shipped.flatMap((jurisdiction) =>
	jurisdiction.rules.flatMap((rule) =>
		leavesOf(rule.limit).map((leaf, i) => ({ name: `${rule.id}, limit ${i + 1}`, jurisdiction, rule, leaf })),
	),
);
type Of<F extends LimitForm> = Asked & { readonly leaf: Extract<LimitLeaf, { readonly form: F }> };
const isOf =
	<F extends LimitForm>(form: F) =>
	(asked: Asked): asked is Of<F> =>
		asked.leaf.form === form;
const ofForm = <F extends LimitForm>(form: F): readonly Of<F>[] => ASKED.filter(isOf(form));
/** Limits of practice, and the bands in which a person decides, are put on measures in the same words. */
const PRACTICE: readonly Of<"threshold">[] = (loadPractice().value ?? []).flatMap((jurisdiction) =>
	jurisdiction.rules.flatMap((rule) =>
		[...leavesOf(rule.limit), ...(rule.confirm === undefined ? [] : leavesOf(rule.confirm))]
			.map((leaf, i) => ({ name: `${rule.id}, limit ${i + 1}`, jurisdiction, rule, leaf }))
			.filter(isOf("threshold")),
	),
);
const THRESHOLDS = [...ofForm("threshold"), ...PRACTICE].filter(
	({ rule }) => rule.check !== "water-definition",
);

/** A change of the well as it is understood, or of what was computed of it. */
type Stage = (found: Pick<Case, "well" | "results">) => Pick<Case, "well" | "results">;
const asIs: Stage = (found) => found;

/** The round-numbered well, with a neighbor or a string of the kind that the rule is about where it has none. */
const staged = (rule: Rule, more: Stage): Case => {
	const base = wellWith(set("site.neighbors_complete", true));
	const [home, ...others] = base.well.neighbors;
	const [kind] = rule.appliesTo.neighbors;
	const neighbors =
		home === undefined || kind === undefined ? base.well.neighbors : [{ ...home, kind }, ...others];
	const peopled = { ...base.well, neighbors };
	const { strings: asked } = rule.appliesTo;
	const lacks = asked.length > 0 && selectStrings(peopled, asked).length === 0;
	const last = peopled.strings.at(-1);
	const surface = peopled.strings.find(({ id }) => id === "surface");
	const second = asked.includes("second surface") && surface ? [{ ...surface, id: "surface-2" }] : [];
	const strings =
		second.length > 0
			? peopled.strings.flatMap((each) => (each === surface ? [each, ...second] : [each]))
			: lacks && last !== undefined
				? [...peopled.strings.slice(0, -1), { ...last, kind: "liner" as const }]
				: peopled.strings;
	const { well, results } = more(dated({ well: { ...peopled, strings }, results: base.results }));
	// A rule on strings with a record is asked of the production string: what the record holds is put in the measure's place.
	const recorded = asked.some((each) => BY_WHAT_IT_HAS.includes(each));
	const among = recorded ? { ...rule.appliesTo, strings: ["production" as const] } : rule.appliesTo;
	const subjects = subjectsOfRule({ ...rule, appliesTo: among }, well);
	if ("verdict" in subjects) throw new Error(`${rule.id} is asked of nothing in this well`);
	const [subject] = subjects;
	if (subject === undefined) throw new Error(`${rule.id} is asked of nothing in this well`);
	return { well, results, rule, jurisdiction: { name: "" }, subject };
};

const caseOf = ({ rule, jurisdiction }: Asked, more: Stage = asIs): Case => ({
	...staged(rule, more),
	jurisdiction,
});
const verdict = (asked: Asked, more: Stage = asIs): Verdict =>
	evaluate(caseOf(asked, more), asked.leaf).verdict;
const missing = (asked: Asked, more: Stage = asIs): string => {
	const found = evaluate(caseOf(asked, more), asked.leaf);
	expect(found.verdict, asked.name).toBe("cannot tell");
	return found.missing.map(({ what, at }) => `${told(what)} @ ${at.join(".")}`).join("; ");
};

afterEach(() => {
	vi.restoreAllMocks();
});

/** What the words of the rule make of a value at, under and over the boundary. */
const MEANS: Readonly<Record<Operator, readonly [at: Verdict, under: Verdict, over: Verdict]>> = {
	"at least": ["met", "not met", "met"],
	"more than": ["not met", "not met", "met"],
	"at most": ["met", "met", "not met"],
	"less than": ["not met", "met", "not met"],
};

const measuresIn = (amount: Amount): readonly MeasureName[] => {
	switch (amount.kind) {
		case "constant":
			return [];
		case "measure":
		case "times":
			return [amount.of];
		case "greatest of":
		case "least of":
		case "sum of":
			return amount.among.flatMap(measuresIn);
		case "clamp":
			return [amount.amount, amount.from, amount.to].flatMap(measuresIn);
		case "steps":
			return [amount.by, ...[...amount.steps.map((step) => step.amount), amount.beyond].flatMap(measuresIn)];
		case "by method":
			return Object.values(amount.cases).flatMap(measuresIn);
	}
};

/** The measures that a boundary rests on with every measure at one value: of a table, only its step. */
const reachedIn = (amount: Amount, x: number): readonly MeasureName[] => {
	if (amount.kind !== "steps") return measuresIn(amount);
	const step = amount.steps.find(({ end, including }) => x < end.value || (including && x === end.value));
	return [amount.by, ...measuresIn(step?.amount ?? amount.beyond)];
};

/** The boundary by this file's own arithmetic, with every measure in it at one value. */
const boundaryOf = (amount: Amount, x: number, method: TopMethod): number => {
	const of = (each: Amount) => boundaryOf(each, x, method);
	switch (amount.kind) {
		case "constant":
			return amount.value.value;
		case "measure":
			return x;
		case "times":
			return amount.factor.value * x;
		case "greatest of":
			return Math.max(...amount.among.map(of));
		case "least of":
			return Math.min(...amount.among.map(of));
		case "sum of":
			return amount.among.map(of).reduce((total, each) => total + each, 0);
		case "clamp":
			return Math.min(of(amount.to), Math.max(of(amount.from), of(amount.amount)));
		case "steps":
			return of(
				amount.steps.find(({ end, including }) => x < end.value || (including && x === end.value))?.amount ??
					amount.beyond,
			);
		case "by method": {
			const chosen = amount.cases[method];
			return chosen === undefined ? Number.NaN : of(chosen);
		}
	}
};

const reads = (measure: MeasureName, value: number): void => {
	const dimension: Dimension = MEASURES[measure].dimension;
	vi.spyOn(MEASURE_CODE[measure], "read").mockReturnValue({ state: "known", value: given(dimension, value) });
};
const lacks = (measure: MeasureName, what: string): void => {
	vi.spyOn(MEASURE_CODE[measure], "read").mockReturnValue({
		state: "missing",
		missing: [{ what, at: ["well", "name"] }],
	});
};

/** How the top of the string's cement is to be known. */
const byMethod =
	(method: TopMethod): Stage =>
	({ well, results }) => ({
		results,
		well: {
			...well,
			strings: well.strings.map((string) =>
				string.cement === undefined ? string : { ...string, cement: { ...string.cement, topMethod: method } },
			),
		},
	});

const methodsOf = ({ amount }: Threshold): readonly TopMethod[] =>
	amount.kind === "by method" ? (Object.keys(amount.cases) as TopMethod[]) : ["calculated"];

describe.each(THRESHOLDS.map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const { leaf } = asked;
	const others = measuresIn(leaf.amount);
	// From small to large, so that every part of a held or compared expression decides once.
	const sizes = others.length === 0 ? [0] : [1, 1e3, 1e4, 1e6];

	it("at, under and over its boundary", () => {
		expect(others).not.toContain(leaf.measure);
		for (const method of methodsOf(leaf))
			for (const x of sizes) {
				const boundary = boundaryOf(leaf.amount, x, method);
				const hair = Math.max(1e-6, Math.abs(boundary) * 1e-6);
				const found = [boundary, boundary - hair, boundary + hair].map((value) => {
					for (const other of others) reads(other, x);
					reads(leaf.measure, value);
					const outcome = evaluate(caseOf(asked, byMethod(method)), leaf);
					vi.restoreAllMocks();
					expect(outcome.required?.value).toBeCloseTo(boundary, 6);
					expect(outcome.measured?.value).toBe(value);
					return outcome.verdict;
				});
				// Where the rule says "about", a person decides until the band that the row states is used up.
				const fails: Verdict = leaf.about === undefined ? "not met" : "needs judgement";
				expect(found, `${leaf.operator} ${boundary}`).toEqual(
					MEANS[leaf.operator].map((each) => (each === "not met" ? fails : each)),
				);
				if (leaf.about === undefined) continue;
				const side = leaf.operator === "at least" || leaf.operator === "more than" ? -1 : 1;
				const beyond = [leaf.about.value, leaf.about.value + hair].map((short) => {
					for (const other of others) reads(other, x);
					reads(leaf.measure, boundary + side * short);
					const { verdict: told } = evaluate(caseOf(asked, byMethod(method)), leaf);
					vi.restoreAllMocks();
					return told;
				});
				expect(beyond, `about ${boundary}`).toEqual(["needs judgement", "not met"]);
			}
	});

	it("without what it measures, and without each part of its boundary", () => {
		for (const absent of [leaf.measure, ...reachedIn(leaf.amount, 1000)]) {
			for (const other of [leaf.measure, ...others]) reads(other, 1000);
			lacks(absent, "the value taken out");
			expect(missing(asked, byMethod(methodsOf(leaf)[0] ?? "calculated"))).toContain("the value taken out");
			vi.restoreAllMocks();
		}
		if (leaf.amount.kind === "by method") {
			const unnamed = (["returns seen", "tagged", "calculated"] as const).find(
				(method) => !methodsOf(leaf).includes(method),
			);
			reads(leaf.measure, 1e6);
			expect(unnamed).toBeDefined();
			expect(missing(asked, byMethod(unnamed ?? "tagged"))).toContain("cement.top_method");
		}
	});
});

describe.each(
	ofForm("threshold")
		.filter(({ rule }) => rule.check === "water-definition")
		.map((each) => [each.name, each] as const),
)("%s", (_, asked) => {
	const { leaf } = asked;
	const limit = boundaryOf(leaf.amount, 0, "calculated");
	const deep =
		(solids: number | undefined): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				geology: {
					...well.geology,
					water: [
						{
							id: "deep",
							name: "Deep aquifer",
							top: given("true-vertical-depth", 900),
							base: given("true-vertical-depth", 1000),
							...(solids === undefined ? {} : { dissolvedSolids: given("dissolved-solids", solids) }),
						},
					],
				},
			},
		});

	it("protects a deeper zone by its solids: at, under and over", () => {
		const [at, under, over] = MEANS[leaf.operator];
		// A zone that the rule protects lies below what the well protects: not met.
		const broken = (protectedBy: Verdict | undefined): Verdict => (protectedBy === "met" ? "not met" : "met");
		expect([limit, limit - 1, limit + 1].map((solids) => verdict(asked, deep(solids)))).toEqual(
			[at, under, over].map(broken),
		);
	});

	it("without the solids of the zone", () => {
		expect(missing(asked, deep(undefined))).toContain("dissolved solids of the Deep aquifer");
	});
});

/** Dates of the round-numbered well, by its schedule: 20 days of drilling, 5 of treatment, 10 of flowback. */
const DATES = {
	"location work": "2026-06-01",
	spud: "2026-07-01",
	"drilling ends": "2026-07-21",
	"stimulation starts": "2026-07-21",
	"stimulation ends": "2026-07-26",
	completion: "2026-08-05",
	"permit issued": "2026-05-01",
	"water withdrawal": "2026-07-10",
	"pad rig release": "2026-08-20",
	"drilling suspended": "2026-07-10",
	"physical change": "2026-09-01",
	"pressure test failed": "2026-07-15",
	"well plugged": "2026-09-02",
	"fresh-water flow": "2026-07-03",
	"adverse communication": "2026-07-22",
	"information requested": "2026-09-03",
	"long rotation in casing": "2026-07-12",
	"well idle": "2026-09-04",
	"string set": "2026-07-05",
	"string cemented": "2026-07-06",
	"casing test": "2026-07-08",
} as const satisfies Readonly<Record<EventName, string>>;

/** Those of them that no phase of the schedule has, as dated events; string by string where they are of a string. */
const dated: Stage = ({ well, results }) => ({
	results,
	well: {
		...well,
		site: {
			...well.site,
			events: (
				[
					"permit issued",
					"water withdrawal",
					"pad rig release",
					"drilling suspended",
					"physical change",
					"pressure test failed",
					"well plugged",
					"fresh-water flow",
					"adverse communication",
					"information requested",
					"long rotation in casing",
					"well idle",
				] as const
			)
				.map((event) => ({ event, on: DATES[event] }))
				.concat(
					(["string set", "string cemented", "casing test"] as const).flatMap((event) =>
						well.strings.map(({ id }) => ({ event, on: DATES[event], string: id }) as never),
					),
				),
		},
	} as Well,
});
const dayAfter = (date: string, days: number): string => {
	const day = new Date(`${date}T12:00:00Z`);
	day.setUTCDate(day.getUTCDate() + days);
	return day.toISOString().slice(0, 10);
};
const businessDay = (date: string, holidays: readonly string[]): boolean =>
	![0, 6].includes(new Date(`${date}T12:00:00Z`).getUTCDay()) && !holidays.includes(date);

const dueBy = (leaf: Deadline, holidays: readonly string[]): string => {
	const sign = leaf.side === "before" ? -1 : 1;
	const dues = leaf.of.map(({ event, count, unit }) => {
		const months = unit === "months" ? count.value : unit === "years" ? 12 * count.value : 0;
		if (months > 0) {
			// Every event of the well falls on a day that each month has.
			const day = new Date(`${DATES[event]}T12:00:00Z`);
			day.setUTCMonth(day.getUTCMonth() + sign * months);
			return day.toISOString().slice(0, 10);
		}
		const days =
			unit === "hours" ? Math.ceil(count.value / 24) : unit === "weeks" ? 7 * count.value : count.value;
		if (leaf.days === "calendar") return dayAfter(DATES[event], sign * days);
		let date: string = DATES[event];
		for (let left = days; left > 0; ) {
			date = dayAfter(date, sign);
			if (businessDay(date, holidays)) left -= 1;
		}
		return date;
	});
	return dues.sort()[0] ?? "";
};

describe.each(ofForm("deadline").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const due = dueBy(asked.leaf, asked.jurisdiction.holidays?.dates ?? []);
	const on =
		(issued: string, sent: string | undefined): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				identity: { ...well.identity, issued },
				site: {
					...well.site,
					...(sent === undefined ? {} : { notices: [{ to: "the agency", rule: asked.rule.id, sent }] }),
				},
			},
		});

	it("is due on its day: sent that day, the day before, and the day after", () => {
		const the = caseOf(asked);
		const string = the.subject.kind === "string" ? the.subject.string.id : undefined;
		expect(dueDate(the, asked.leaf, string)).toMatchObject({ due });
		const sent = [due, dayAfter(due, -1), dayAfter(due, 1)];
		expect(sent.map((date) => verdict(asked, on("2028-12-31", date)))).toEqual(["met", "met", "not met"]);
	});

	it("is asked from the day after", () => {
		expect(verdict(asked, on(due, undefined))).toBe("does not apply");
		expect(missing(asked, on(dayAfter(due, 1), undefined))).toContain(asked.rule.id);
	});

	it("cannot be told without the date of its event", () => {
		const timeless: Stage = ({ well, results }) => {
			const { spud: _spud, ...identity } = well.identity;
			const { events: _events, ...site } = well.site;
			return { results, well: { ...well, identity, site, schedule: [] } };
		};
		if (asked.leaf.of.every(({ event }) => CONTINGENT_EVENTS.includes(event)))
			return expect(verdict(asked, timeless)).toBe("does not apply");
		expect(missing(asked, timeless)).toMatch(/(date of|the day|the date) .+ @ (schedule|site\.events)/);
	});
});

/** The offset well, and the water well, that far from whatever the rule measures from. */
const apart =
	(distance: number, more: { readonly evidence?: string; readonly sampled?: string } = {}): Stage =>
	({ well, results }) => ({
		results: {
			...results,
			site: {
				...results.site,
				offset_wells: results.site.offset_wells.map((each) => ({
					...each,
					from_wellhead: given("distance", distance),
					from_path: given("distance", distance),
				})),
			},
		},
		well: {
			...well,
			offsetWells: well.offsetWells.map(({ evidence: _evidence, ...each }) => ({
				...each,
				...(more.evidence === undefined ? {} : { evidence: more.evidence }),
			})),
			neighbors: well.neighbors.map(({ sampled: _sampled, ...each }) => ({
				...each,
				surveyed: (["wellhead", "pad edge", "nearest equipment", "wellbore"] as const).map((from) => ({
					from,
					distance: given("distance", distance),
				})),
				...(more.sampled === undefined ? {} : { sampled: more.sampled }),
			})),
		} as Well,
	});

describe.each(ofForm("evidence within").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const { radius } = asked.leaf;
	it("asks for evidence at and under its radius, and not over it", () => {
		for (const inside of [radius.value, radius.value - 0.1]) {
			expect(missing(asked, apart(inside))).toContain("evidence of the condition of Old 1");
			expect(verdict(asked, apart(inside, { evidence: "plugging record" }))).toBe("met");
		}
		expect(verdict(asked, apart(radius.value + 0.1))).toBe("does not apply");
	});
	it("without the place of the well", () => {
		const placeless: Stage = ({ well, results }) => ({
			well,
			results: { ...results, site: { ...results.site, offset_wells: [] } },
		});
		expect(missing(asked, placeless)).toContain("position of Old 1");
	});
});

describe.each(ofForm("samples within").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const { radius, before, months, days } = asked.leaf;
	it("asks for a sample at and under its radius, and not over it", () => {
		for (const inside of [radius.value, radius.value - 0.1])
			expect(missing(asked, apart(inside))).toContain("date on which The water well was sampled");
		expect(verdict(asked, apart(radius.value + 0.1))).toBe("does not apply");
	});
	it("takes a sample of the last day, none after it, and none too old", () => {
		const sampled = (date: string) => verdict(asked, apart(radius.value, { sampled: date }));
		const event = DATES[before];
		expect([event, dayAfter(event, -1), dayAfter(event, 1)].map(sampled)).toEqual(["met", "met", "not met"]);
		if (months === undefined && days === undefined) return;
		const oldest = new Date(`${event}T12:00:00Z`);
		if (months !== undefined) oldest.setUTCMonth(oldest.getUTCMonth() - months.value);
		else oldest.setUTCDate(oldest.getUTCDate() - (days?.value ?? 0));
		const day = oldest.toISOString().slice(0, 10);
		expect([day, dayAfter(day, 1), dayAfter(day, -1)].map(sampled)).toEqual(["met", "met", "not met"]);
	});
	it("without the distance of the water well", () => {
		const placeless: Stage = ({ well, results }) => ({
			well: {
				...well,
				neighbors: well.neighbors.map(({ surveyed: _surveyed, ...each }) => each),
			} as Well,
			results: { ...results, site: { ...results.site, neighbors: [] } },
		});
		expect(missing(asked, placeless)).toContain("to The water well");
	});
});

describe.each(ofForm("consent").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const agreed =
		(consent: Neighbor["consent"]): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				neighbors: well.neighbors.map((each) => (consent === undefined ? each : { ...each, consent })),
			},
		});
	it("is met by a consent that is recorded, and not met where none is", () => {
		expect(verdict(asked, agreed({ given: "2026-03-01", cite: "county record 7" }))).toBe("met");
		expect(verdict(asked, agreed(undefined))).toBe("not met");
	});
});

/** Centralizer runs on every string, on joints of one length, counted up from each shoe. */
const centralized =
	(
		joint: number,
		runs: readonly { readonly from: number; readonly to: number; readonly every: number }[] | undefined,
	): Stage =>
	({ well, results }) => ({
		results,
		well: {
			...well,
			strings: well.strings.map(({ centralizers: _centralizers, ...string }) => ({
				...string,
				sections: string.sections.map((section) => ({ ...section, joint: given("length", joint) })),
				centralizers: (runs ?? []).map(({ from, to, every }) => ({
					kind: "bow spring" as const,
					top: given("measured-depth", Math.max(string.top.value, string.shoe.value - from)),
					bottom: given("measured-depth", string.shoe.value - to),
					everyJoints: given("count", every),
				})),
			})),
		},
	});
const ALL_UP = Number.POSITIVE_INFINITY;

describe.each(ofForm("pattern").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const { pattern } = asked.leaf;
	const told = (joint: number, from: number, to: number, every: number) =>
		verdict(asked, centralized(joint, [{ from, to, every }]));

	it("at, under and over its numbers", () => {
		switch (pattern.kind) {
			case "bottom joints": {
				const n = pattern.joints.value;
				expect([n, n - 1, n + 1].map((joints) => told(40, 40 * joints, 0, 1))).toEqual([
					"met",
					"not met",
					"met",
				]);
				break;
			}
			case "every joints": {
				const n = pattern.joints.value;
				expect([n, n - 1, n + 1].map((every) => told(40, ALL_UP, 0, every))).toEqual([
					"met",
					"met",
					"not met",
				]);
				break;
			}
			case "first and then": {
				const [first, then] = [pattern.firstWithin.value, pattern.thenEvery.value];
				expect([first, first - 0.1, first + 0.1].map((to) => told(40, ALL_UP, to, 1))).toEqual([
					"met",
					"met",
					"not met",
				]);
				expect([then, then - 0.1, then + 0.1].map((joint) => told(joint, ALL_UP, 0, 1))).toEqual([
					"met",
					"met",
					"not met",
				]);
				break;
			}
			case "through protected water":
				// The aquifer lies from 100 to 800 ft, the surface shoe at 1,000 ft.
				expect(told(40, ALL_UP, 0, 1)).toBe("met");
				expect(told(40, 900, 200, 1)).toBe("met");
				expect(told(40, 100, 0, 1)).toBe("not met");
		}
	});

	it("without centralizers, or the length of a joint", () => {
		expect(missing(asked, centralized(40, undefined))).toContain("centralizers");
	});
});

describe.each(ofForm("one of").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const { words } = asked.leaf;
	const written =
		(word: string | undefined): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				assumptions:
					word === undefined
						? well.strings.map((_string, i) => ({
								id: "condition",
								at: ["casing", i, "pipe", 0, "condition"],
								what: "New pipe.",
								why: "Not stated.",
							}))
						: well.assumptions,
				holes: well.holes.map(({ fluid, ...hole }) => ({
					...hole,
					...(word === undefined ? {} : { fluid: { ...fluid, kind: word } }),
				})),
				strings: well.strings.map((string) => ({
					...string,
					sections: string.sections.map((section) => ({ ...section, condition: word })),
					...(string.cement === undefined
						? {}
						: {
								cement: {
									...string.cement,
									slurries: string.cement.slurries.map(({ cementClass: _class, ...slurry }) => ({
										...slurry,
										...(word === undefined ? {} : { cementClass: word }),
									})),
								},
							}),
				})),
			} as Well,
		});
	it("takes each of its words, no other, and cannot tell without", () => {
		for (const word of words) expect(verdict(asked, written(word)), word).toBe("met");
		expect(verdict(asked, written("something else"))).toBe("not met");
		expect(missing(asked, written(undefined))).not.toBe("");
	});
});

describe.each(ofForm("includes").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const plugged =
		(plugs: readonly string[]): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				strings: well.strings.map((string) =>
					string.cement === undefined ? string : { ...string, cement: { ...string.cement, plugs } },
				),
			},
		});
	it("takes all of its words, fails without any one, and cannot tell without plugs", () => {
		const { words } = asked.leaf;
		expect(verdict(asked, plugged(words))).toBe("met");
		for (const word of words)
			expect(verdict(asked, plugged(["another", ...words.filter((each) => each !== word)]))).toBe("not met");
		expect(missing(asked, plugged([]))).toContain("plugs");
	});
});

describe.each(ofForm("none of").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const pumped =
		(cas: string | undefined): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				...(well.stimulation === undefined
					? {}
					: {
							stimulation: {
								...well.stimulation,
								additives: well.stimulation.additives.map((additive) => ({
									...additive,
									ingredients: [{ name: "Something", ...(cas === undefined ? {} : { cas }) }],
								})),
							},
						}),
			},
		});
	it("finds each of its numbers, lets another pass, and cannot tell without a number", () => {
		for (const cas of asked.leaf.words) expect(verdict(asked, pumped(cas)), cas).toBe("not met");
		expect(verdict(asked, pumped("7732-18-5"))).toBe("met");
		expect(missing(asked, pumped(undefined))).toContain("CAS number of Something");
	});
});

const ofAnnulus = ({ rule }: Asked): boolean => rule.check === "annulus-limit";
describe.each(
	ofForm("present")
		.filter(ofAnnulus)
		.map((each) => [each.name, each] as const),
)("%s", (_, asked) => {
	const KEYS = { "predicted annulus rise": "predictedRise", "annulus stop pressure": "stopAbove" } as const;
	const annuli =
		(without?: string): Stage =>
		({ well, results }) => ({
			results,
			well: {
				...well,
				...(well.stimulation === undefined
					? {}
					: {
							stimulation: {
								...well.stimulation,
								annuli: well.stimulation.annuli.map(
									(annulus) =>
										Object.fromEntries(
											Object.entries(annulus).filter(([key]) => key !== without),
										) as unknown as typeof annulus,
								),
							},
						}),
			},
		});
	it("asks each annulus for every value it names, each by itself", () => {
		expect(verdict(asked, annuli())).toBe("met");
		for (const field of asked.leaf.fields) {
			const key = Object.entries(KEYS).find(([name]) => name === field)?.[1];
			expect(key).toBeDefined();
			expect(missing(asked, annuli(key))).toContain(field.replace("annulus ", ""));
		}
	});
});

describe.each(
	ofForm("present")
		.filter((each) => !ofAnnulus(each))
		.map((each) => [each.name, each] as const),
)("%s", (_, asked) => {
	it("asks for every field it names, each by itself", () => {
		const give = (without?: string) => {
			for (const field of asked.leaf.fields)
				vi.spyOn(FIELD_CODE[field], "given").mockReturnValue(field !== without);
		};
		give();
		expect(verdict(asked)).toBe("met");
		for (const field of asked.leaf.fields) {
			give(field);
			expect(missing(asked)).toBe(`the ${field} @ ${FIELD_CODE[field].at.join(".")}`);
		}
	});
});

describe.each(ofForm("at surface").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	const cemented =
		(to_surface: boolean | undefined): Stage =>
		({ well, results }) => ({
			well,
			results: {
				...results,
				cement:
					to_surface === undefined
						? {}
						: Object.fromEntries(
								Object.entries(results.cement).map(([id, job]) => [id, { ...job, to_surface }]),
							),
			},
		});
	it("is met at the surface, not below it, and cannot be told without cement", () => {
		expect(verdict(asked, cemented(true))).toBe("met");
		expect(verdict(asked, cemented(false))).toBe("not met");
		expect(missing(asked, cemented(undefined))).toContain("cement");
	});
});

describe.each(ofForm("covers").map((each) => [each.name, each] as const))("%s", (_, asked) => {
	/** One column from the ground to so many feet of vertical depth, over a zone of the name asked for. */
	const column =
		(bottom: number): Stage =>
		({ well, results }) => {
			const [formation] = well.geology.formations;
			const surface = results.cement["surface"];
			const [only] = surface?.columns ?? [];
			if (formation === undefined || surface === undefined || only === undefined)
				throw new Error("the well has rock and cement");
			return {
				well: {
					...well,
					geology: {
						...well.geology,
						formations: asked.leaf.formations
							.map((name) => ({
								...formation,
								name,
								top: given("true-vertical-depth", 600),
								base: given("true-vertical-depth", 800),
							}))
							.concat([
								{
									...formation,
									name: "A flowing target",
									top: given("true-vertical-depth", 600),
									base: given("true-vertical-depth", 800),
									flowZone: "gas",
									target: asked.leaf.what.includes("target"),
								},
							]),
					},
				},
				results: {
					...results,
					cement: {
						surface: {
							...surface,
							columns: [
								{
									...only,
									bottom: { ...only.bottom, tvd: given("true-vertical-depth", bottom) },
								},
							],
						},
					},
				},
			};
		};
	it("is met by cement to the base of what it names, not a hair above", () => {
		// Everything named ends at 800 ft, the base of protected water.
		expect([800, 799.9, 800.1].map((bottom) => verdict(asked, column(bottom)))).toEqual([
			"met",
			"not met",
			"met",
		]);
	});
	it("without what it names", () => {
		const bare: Stage = ({ well, results }) => {
			const { protectedWater: _water, ...geology } = well.geology;
			return { results, well: { ...well, geology: { ...geology, formations: [] } } };
		};
		const { what, formations } = asked.leaf;
		if (what.includes("protected water") || formations.length > 0) expect(missing(asked, bare)).not.toBe("");
		else expect(verdict(asked, bare)).toBe("does not apply");
	});
});

describe("the sweep", () => {
	const SWEPT: readonly LimitForm[] = [
		"threshold",
		"deadline",
		"evidence within",
		"samples within",
		"pattern",
		"one of",
		"includes",
		"none of",
		"present",
		"at surface",
		"covers",
		"consent",
	];
	it("leaves out nothing but what a person judges", () => {
		const left = ASKED.filter(({ leaf }) => !SWEPT.includes(leaf.form));
		expect([...new Set(left.map(({ leaf }) => leaf.form))]).toEqual(["judgement"]);
		expect(left.map((each) => verdict(each)).every((each) => each === "needs judgement")).toBe(true);
		expect(new Set(ASKED.map(({ rule }) => rule.id)).size).toBe(shipped.flatMap(({ rules }) => rules).length);
	});
	it("has every form that a limit may take", () => {
		for (const form of SWEPT) expect(ofForm(form).length, form).toBeGreaterThan(0);
	});
});
