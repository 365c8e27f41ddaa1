import { describe, expect, it } from "vitest";
import { loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { addBusinessDays, addDays, daysBetween, monthsBefore } from "../../src/rules/calendar.ts";
import { dueDates } from "../../src/rules/due-dates.ts";
import { told } from "../told.ts";
import { type Edit, read, row, set, wellWith, without } from "./builders.ts";
import { judged as judge } from "./told.ts";

const asked = (deadline: object, check: string, more: object, ...edits: readonly Edit[]) => {
	const { value, diagnostics } = read([row({ check, limit: { deadline } })], { ...more });
	if (value === undefined || diagnostics.length > 0) throw new Error(told(diagnostics[0]?.what));
	const { well, results } = wellWith(...edits);
	const [only] = judge(well, results, [value]).findings;
	return { ...only, due: dueDates(well, [value])[0]?.due };
};
const HOLIDAYS = { holidays: { covers: [2026], dates: ["2026-06-29"], how_known: { way: "memory" } } };

describe("the calendar", () => {
	it("counts across months, leap days and years (Gregorian rules; common practice, no source)", () => {
		expect(addDays("2026-02-27", 2)).toBe("2026-03-01");
		expect(addDays("2028-02-27", 2)).toBe("2028-02-29");
		expect(addDays("2026-12-31", 1)).toBe("2027-01-01");
		expect(addDays("2026-01-01", -1)).toBe("2025-12-31");
		expect(daysBetween("2026-01-01", "2027-01-01")).toBe(365);
		expect(daysBetween("2028-01-01", "2029-01-01")).toBe(366);
		expect(monthsBefore("2026-05-31", 3)).toBe("2026-02-28");
		expect(monthsBefore("2026-05-31", 12)).toBe("2025-05-31");
	});
	it("business days leave out weekends and holidays; 4 July 2026 is a Saturday", () => {
		expect(addBusinessDays("2026-07-06", -1, [])).toBe("2026-07-03");
		expect(addBusinessDays("2026-07-06", -1, ["2026-07-03"])).toBe("2026-07-02");
		expect(addBusinessDays("2026-07-02", 2, ["2026-07-03"])).toBe("2026-07-07");
	});
});

describe("due dates", () => {
	it("calendar days before an event", () => {
		// Spud is stated for 2026-07-01, the paper is issued on 2026-05-04.
		const found = asked({ before: { spud: "30 days" } }, "notice", {});
		expect(found.due).toBe("2026-06-01");
		expect(found.verdict).toBe("does not apply");
		expect(found.because).toContain("not yet due when this was issued, on 2026-05-04");
	});
	it("on the day of issue it is not yet late; the day before it is", () => {
		expect(asked({ before: { spud: "58 days" } }, "notice", {})).toMatchObject({
			due: "2026-05-04",
			verdict: "does not apply",
		});
		expect(asked({ before: { spud: "59 days" } }, "notice", {})).toMatchObject({
			due: "2026-05-03",
			verdict: "cannot tell",
		});
	});
	it("business days before, with a holiday and a weekend between", () => {
		// Wednesday 1 July, back over Tuesday 30 June and the holiday on Monday 29 June to Friday 26 June.
		expect(asked({ before: { spud: "2 days" }, days: "business" }, "notice", HOLIDAYS).due).toBe(
			"2026-06-26",
		);
	});
	it("business days cannot be told without a list of holidays that covers the year", () => {
		const found = asked({ before: { spud: "2 days" }, days: "business" }, "notice", {});
		expect(found.verdict).toBe("cannot tell");
		expect(found.because).toContain("list of holidays");
		const other = { holidays: { ...HOLIDAYS.holidays, covers: [2025] } };
		expect(asked({ before: { spud: "2 days" }, days: "business" }, "notice", other).verdict).toBe(
			"cannot tell",
		);
	});
	it("hours are dated by the whole day on the safe side", () => {
		// Drilling 20 days from 1 July, then the stimulation: 21 July; 49 hours before is the third day before.
		expect(asked({ before: { "stimulation starts": "48 hours" } }, "notice", {}).due).toBe("2026-07-19");
		expect(asked({ before: { "stimulation starts": "49 hours" } }, "notice", {}).due).toBe("2026-07-18");
	});
	it("of several, the earliest", () => {
		// Drilling ends on 21 July, flowback on 5 August.
		expect(asked({ after: { completion: "30 days", "drilling ends": "90 days" } }, "report", {}).due).toBe(
			"2026-09-04",
		);
		expect(asked({ after: { completion: "90 days", "drilling ends": "90 days" } }, "report", {}).due).toBe(
			"2026-10-19",
		);
	});
	it("recorded dates stand before planned ones", () => {
		const ended = set("schedule.1.actual", { started: "2026-07-03", ended: "2026-07-20" });
		const spud = set("well.spud", "2026-07-03");
		expect(asked({ after: { "drilling ends": "30 days" } }, "report", {}, ended, spud)).toMatchObject({
			due: "2026-08-19",
		});
		expect(asked({ before: { spud: "30 days" } }, "notice", {}, ended, spud).due).toBe("2026-06-03");
	});
	it("sent in time, sent late, and not recorded", () => {
		const late = { before: { spud: "60 days" } };
		const sent = (on: string) => set("site.notices", [{ to: "the agency", rule: "xx-one.rule", sent: on }]);
		expect(asked(late, "notice", {}, sent("2026-05-02"))).toMatchObject({
			due: "2026-05-02",
			verdict: "met",
		});
		expect(asked(late, "notice", {}, sent("2026-05-03")).verdict).toBe("not met");
		const open = asked(
			late,
			"notice",
			{},
			set("site.notices", [{ to: "somebody else", sent: "2026-01-01" }]),
		);
		expect(open).toMatchObject({ verdict: "cannot tell", missing: [{ at: ["site", "notices"] }] });
	});
	it("no date of the event, no due date", () => {
		const found = asked({ after: { "stimulation ends": "15 days" } }, "report", {}, without("schedule"));
		expect(found).toMatchObject({ verdict: "cannot tell", due: undefined, missing: [{ at: ["schedule"] }] });
	});
	it("a calendar's list is in order", () => {
		const { well } = wellWith();
		const shipped = loadJurisdictions(["us-tx", "us-co"]).value ?? [];
		const dates = dueDates(well, shipped).map(({ due }) => due);
		expect(dates.length).toBeGreaterThan(4);
		expect(dates).toEqual([...dates].sort());
	});
});

describe("the shipped holidays", () => {
	const [colorado] = loadJurisdictions(["us-co"]).value ?? [];
	const dates = colorado?.holidays?.dates ?? [];
	const nth = (year: number, month: number, weekday: number, n: number) => {
		const first = new Date(Date.UTC(year, month - 1, 1)).getUTCDay();
		return new Date(Date.UTC(year, month - 1, 1 + ((weekday - first + 7) % 7) + (n - 1) * 7))
			.toISOString()
			.slice(0, 10);
	};
	/** The day itself, the Friday before a Saturday, the Monday after a Sunday (5 U.S.C. 6103 and custom, memory). */
	const observed = (date: string) => {
		const day = new Date(`${date}T00:00:00Z`).getUTCDay();
		return day === 6 ? addDays(date, -1) : day === 0 ? addDays(date, 1) : date;
	};
	it.each(colorado?.holidays?.covers ?? [])(
		"of %i follow the statutes' weekdays (5 U.S.C. 6103; C.R.S. 24-11-101, memory)",
		(year) => {
			const lastMondayOfMay = nth(year, 5, 1, 5).startsWith(`${year}-05`)
				? nth(year, 5, 1, 5)
				: nth(year, 5, 1, 4);
			const expected = [
				`${year}-01-01`,
				nth(year, 1, 1, 3),
				nth(year, 2, 1, 3),
				lastMondayOfMay,
				`${year}-06-19`,
				`${year}-07-04`,
				nth(year, 9, 1, 1),
				nth(year, 10, 1, 1),
				`${year}-11-11`,
				nth(year, 11, 4, 4),
				`${year}-12-25`,
			].map(observed);
			expect(dates).toEqual(expect.arrayContaining(expected));
		},
	);
	it("holds only years it covers, in order", () => {
		expect(dates).toEqual([...dates].sort());
		expect([...new Set(dates.map((date) => Number(date.slice(0, 4))))]).toEqual(colorado?.holidays?.covers);
	});
});
