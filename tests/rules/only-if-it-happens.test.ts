import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { CONTINGENT_EVENTS } from "../../src/catalog/limits/vocabulary.ts";
import { ENGLISH_READER } from "../../src/messages/print.ts";
import { limitsOfCheck } from "../../src/rules/explain-check.ts";
import { judge } from "../../src/rules/judge.ts";
import { type Edit, read, row, set, wellWith, without } from "./builders.ts";
import { judged } from "./told.ts";

/*
 * Rules that bind only after something has happened: not applicable until the definition says that it has, and asked then.
 * The well of `fixtures/wells/limits.yaml` has its spud on 2026-07-01 and records of nothing.
 */

const happened = (event: string): Edit => set("site.events", [{ event, on: "2026-07-15", recorded: true }]);
const shipped = loadJurisdictions(JURISDICTION_CODES).value ?? [];

const verdicts = (id: string, ...edits: readonly Edit[]) => {
	const { well, results } = wellWith(...edits);
	const sets = shipped.flatMap((each) => {
		const rules = each.rules.filter((rule) => rule.id === id);
		return rules.length === 0 ? [] : [{ ...each, rules }];
	});
	expect(sets, id).toHaveLength(1);
	return judged(well, results, sets).findings.map(({ verdict, because }) => ({ verdict, because }));
};

describe("a shipped rule that binds only if something happens", () => {
	it.each([
		["us-tx.hf.fail", "pressure test failed", "cannot tell"],
		["us-tx.hf.fail.remedy", "pressure test failed", "needs judgement"],
		["us-co.chem.request", "information requested", "needs judgement"],
		["us-oh.adverse", "adverse communication", "needs judgement"],
		["us-wy.fresh-flow", "fresh-water flow", "needs judgement"],
		["us-tx.mit.360h", "long rotation in casing", "needs judgement"],
		["us-ca.test.idle", "well idle", "needs judgement"],
	])("%s is not applicable until it happens, and is asked then", (id, event, then) => {
		const late = set("well.issued", "2026-07-31");
		for (const { verdict, because } of verdicts(id, late)) {
			expect(verdict).toBe("does not apply");
			expect(because).toMatch(/applies only after .+; none is on record or planned/i);
		}
		for (const { verdict } of verdicts(id, late, happened(event))) expect(verdict).toBe(then);
	});

	it("long rotation in one string is asked of that string alone", () => {
		const rotated = (string?: string): Edit =>
			set("site.events", [
				{ event: "long rotation in casing", on: "2026-07-15", recorded: true, ...(string && { string }) },
			]);
		const asked = (edit: Edit) => verdicts("us-tx.mit.360h", edit).map(({ verdict }) => verdict);
		expect(asked(rotated())).toEqual(["needs judgement", "needs judgement"]);
		expect(asked(rotated("surface"))).toEqual(["needs judgement", "does not apply"]);
	});

	it("the plugging report of a dry hole is due 30 days after the plugging", () => {
		expect(verdicts("us-tx.report.plugging")[0]?.verdict).toBe("does not apply");
		const [dated] = verdicts("us-tx.report.plugging", happened("well plugged"));
		expect(dated?.because).toMatch(/due by 2026-08-14, 30 days after the plugging of the well/i);
	});

	it("logs on request are due 90 days after completion once they are asked for", () => {
		const [before] = verdicts("us-pa.logs");
		const [after] = verdicts("us-pa.logs", happened("information requested"));
		expect(before?.verdict).toBe("does not apply");
		expect(after?.because).toMatch(/90 days after completion/);
	});

	it("pressure on the cement head is asked where the record says that the floats did not hold", () => {
		const held = (yes: boolean) =>
			verdicts("us-pa.woc.head", set("casing.1.cement.actual", { floats_held: yes }));
		expect(verdicts("us-pa.woc.head").map(({ verdict }) => verdict)).not.toContain("needs judgement");
		expect(held(true).map(({ verdict }) => verdict)).not.toContain("needs judgement");
		expect(held(false)[0]?.verdict).toBe("needs judgement");
	});

	it("and cannot be told where nobody says whether floats are run", () => {
		const [surface] = verdicts("us-pa.woc.head", without("casing.1.floats"));
		expect(surface?.verdict).toBe("cannot tell");
	});

	it("welded pipe is asked about where a section has plain ends", () => {
		const surface = (connection: string) =>
			verdicts("us-pa.casing.welded", set("casing.1.pipe.0.connection", connection))[0]?.verdict;
		expect([surface("BTC"), surface("plain end")]).toEqual(["does not apply", "needs judgement"]);
	});
});

describe("an own rule that binds only if something happens", () => {
	it.each(["notice", "string-judgement"] as const)("finds its events beneath the check: %s", (id) => {
		const line = limitsOfCheck(id, ENGLISH_READER).find((each) => each.startsWith("events"));
		for (const event of CONTINGENT_EVENTS) expect(line).toContain(event);
		expect(line?.includes("string cemented")).toBe(id === "string-judgement");
	});
	const own = (when: unknown) =>
		read([row({ check: "judgement", applies_to: { when }, limit: { question: "State it." } })]);

	it("names the event alone", () => {
		const { value, diagnostics } = own({ event: "fresh-water flow" });
		expect(diagnostics).toEqual([]);
		const { well, results } = wellWith();
		expect(value && judge(well, results, [value]).findings[0]?.verdict).toBe("does not apply");
	});

	it("binds on a string where the event is the whole well's, and names no string", () => {
		const ofString = { check: "string-judgement", limit: { question: "State it." } };
		const { value } = read([
			row({ ...ofString, applies_to: { string: "surface", when: { event: "pressure test failed" } } }),
		]);
		const verdictOf = (...edits: readonly Edit[]) => {
			const { well, results } = wellWith(...edits);
			return value && judge(well, results, [value]).findings.map(({ verdict }) => verdict);
		};
		expect(verdictOf()).toEqual(["does not apply"]);
		expect(verdictOf(happened("pressure test failed"))).toEqual(["needs judgement"]);
	});

	it("needs a day with an event that every well has", () => {
		expect(own({ event: "spud" }).diagnostics[0]?.code).toBe("rules/limit-form");
	});
});
