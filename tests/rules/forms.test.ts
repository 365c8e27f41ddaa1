import { describe, expect, it } from "vitest";
import { type Edit, finding, findings, set, without } from "./builders.ts";

/** Forms of limit that are not plain comparisons: each met, not met, and without its input. */

const surface = { string: "surface" };
const intermediate = { string: "intermediate" };
const production = { string: "production" };
const said = (parts: Readonly<Record<string, unknown>>, ...edits: readonly Edit[]) => {
	const { verdict, because, missing } = finding(parts, ...edits);
	return { verdict, because, missing: missing?.map(({ at }) => at.join(".")) };
};

describe("cement to surface", () => {
	const row = { check: "cement-to-surface", applies_to: surface, limit: { at: "surface" } };
	const record = (actual: object) => set("casing.1.cement.actual", actual);
	it("judges a plan as a plan", () => {
		expect(said(row)).toMatchObject({
			verdict: "met",
			because: "The planned cement column reaches ground level.",
		});
	});
	it("is not met by a column that ends below the surface", () => {
		const found = said({ ...row, applies_to: intermediate });
		expect(found.verdict).toBe("not met");
		expect(found.because).toContain("planned cement top is at 3,400");
	});
	it("judges the record once there is one", () => {
		const fell = record({ date: "2026-05-01", top: { depth: "150 ft", method: "tagged" } });
		expect(said(row, fell).verdict).toBe("not met");
		expect(said(row, fell).because).toContain("recorded");
		const back = record({ date: "2026-05-01", returns: { to_surface: "20 bbl" } });
		expect(said(row, back)).toMatchObject({ verdict: "met" });
		expect(said(row, back).because).toContain("20.0");
		const none = record({ date: "2026-05-01", returns: { to_surface: "0 bbl" } });
		expect(said(row, none)).toMatchObject({
			verdict: "not met",
			because: "The record shows no cement returns at surface.",
		});
	});
	it("cannot tell without cement", () => {
		expect(said(row, without("casing.1.cement"))).toMatchObject({
			verdict: "cannot tell",
			missing: ["casing.1.cement"],
		});
	});
	it("weighs the slurry for the annulus against the annulus", () => {
		const volume = {
			check: "cement-to-surface",
			applies_to: surface,
			limit: { measure: "cement pumped over calculated", at_least: 1.2 },
		};
		expect(said(volume).verdict).toBe("met");
		const lean = [
			set("casing.1.cement.slurries.0.excess", "0 %"),
			set("casing.1.cement.slurries.1.excess", "0 %"),
		];
		expect(said(volume, ...lean).verdict).toBe("not met");
		// Without excess the slurry is the annulus itself.
		const exact = { ...volume, limit: { ...volume.limit, at_least: 1 } };
		expect(said(exact, ...lean).verdict).toBe("met");
	});
});

describe("a test once it is made", () => {
	const row = {
		check: "casing-pressure-test",
		applies_to: surface,
		limit: {
			all_of: [
				{ measure: "test pressure", at_least: "1500 psi" },
				{ measure: "test hold", at_least: "30 min" },
				{ measure: "test fall", at_most: "10 %" },
			],
		},
	};
	const made = (actual: object) => set("casing.1.pressure_test.actual", actual);
	it("is judged by its record alone", () => {
		expect(said(row, made({ pressure: "1510 psi", hold: "30 min", fall: "2 %" })).verdict).toBe("met");
		expect(said(row, made({ pressure: "1490 psi", hold: "30 min", fall: "2 %" })).verdict).toBe("not met");
	});
	it("a plan does not fill a gap of the record", () => {
		expect(said(row, made({ pressure: "1510 psi" }))).toMatchObject({
			verdict: "cannot tell",
			missing: ["casing.1.pressure_test.actual.hold", "casing.1.pressure_test.actual.fall"],
		});
	});
});

describe("one of a list", () => {
	it("drilling fluid of every hole down to the string's", () => {
		const row = {
			check: "drilling-fluid",
			applies_to: surface,
			limit: { one_of: ["air", "fresh-water mud"] },
		};
		expect(said(row).verdict).toBe("met");
		expect(said({ ...row, limit: { one_of: ["fresh-water mud"] } }).verdict).toBe("not met");
		expect(said({ ...row, applies_to: intermediate }).verdict).toBe("not met");
		expect(said(row, without("holes.1.fluid"))).toMatchObject({
			verdict: "cannot tell",
			missing: ["holes.1.fluid.kind"],
		});
	});
	it("condition of the pipe, which has to be stated", () => {
		const row = { check: "casing-condition", applies_to: surface, limit: { one_of: ["new"] } };
		expect(said(row).verdict).toBe("met");
		expect(said(row, set("casing.1.pipe.0.condition", "used")).verdict).toBe("not met");
		expect(said(row, without("casing.1.pipe.0.condition"))).toMatchObject({
			verdict: "cannot tell",
			missing: ["casing.1.pipe.0.condition"],
		});
	});
	it("class of each slurry, however it is written", () => {
		const row = { check: "cement-class", applies_to: surface, limit: { one_of: ["A", "Class C"] } };
		expect(said(row).verdict).toBe("met");
		expect(said(row, set("casing.1.cement.slurries.1.class", "H"))).toMatchObject({
			verdict: "not met",
			because: "The tail slurry is of class H; the rule names A or Class C.",
		});
		expect(said(row, without("casing.1.cement.slurries.0.class")).missing).toEqual([
			"casing.1.cement.slurries.0.class",
		]);
	});
});

describe("none of a list", () => {
	const row = { check: "listed-ingredients", limit: { none_of: ["68476-34-6"] } };
	const cas = "stimulation.additives.0.ingredients.0.cas";
	it("finds a listed number, clears the others, and cannot clear one without a number", () => {
		expect(said(row).verdict).toBe("met");
		expect(said(row, set(cas, "68476-34-6"))).toMatchObject({ verdict: "not met" });
		expect(said(row, without(cas))).toMatchObject({ verdict: "cannot tell", missing: [cas] });
		expect(said(row, without("stimulation.additives"))).toMatchObject({ verdict: "cannot tell" });
	});
	it("is not asked of a well without stimulation", () => {
		expect(said(row, without("stimulation")).verdict).toBe("does not apply");
	});
});

describe("includes", () => {
	const row = { check: "cementing-plugs", applies_to: surface, limit: { includes: ["top"] } };
	it("plugs", () => {
		expect(said(row).verdict).toBe("met");
		expect(said(row, set("casing.1.cement.plugs", ["bottom"])).verdict).toBe("not met");
		expect(said(row, without("casing.1.cement.plugs"))).toMatchObject({ verdict: "cannot tell" });
	});
});

describe("covers", () => {
	const row = { check: "cement-coverage", limit: { covers: ["protected water", "flow zones", "target"] } };
	it("needs one column from top to bottom of each zone", () => {
		expect(said(row).verdict).toBe("met");
		// The intermediate column then ends inside the gas sand.
		expect(said(row, set("casing.2.cement.slurries.0.from", "4050 ft"))).toMatchObject({
			verdict: "not met",
		});
		expect(said(row, without("geology.protected_water")).verdict).toBe("cannot tell");
	});
	it("a named formation that is not given cannot be told", () => {
		const named = { ...row, limit: { covers: ["formation Far Sand"] } };
		expect(said(named)).toMatchObject({ verdict: "cannot tell", missing: ["geology.formations"] });
		expect(said({ ...row, limit: { covers: ["formation Gas Sand"] } }).verdict).toBe("met");
	});
});

describe("centralizers", () => {
	const asked = (pattern: object, ...edits: readonly Edit[]) =>
		said({ check: "centralizers", applies_to: surface, limit: { pattern } }, ...edits);
	const runs = "casing.1.centralizers.bow_spring";
	it("on the bottom joints", () => {
		// 880 to 1000 ft is three joints of 40 ft.
		expect(asked({ bottom_joints: 3 }).verdict).toBe("met");
		expect(asked({ bottom_joints: 4 }).verdict).toBe("not met");
		expect(asked({ bottom_joints: 5 }).verdict).toBe("not met");
	});
	it("on every so many joints", () => {
		expect(asked({ every_joints: 4 }).verdict).toBe("met");
		expect(asked({ every_joints: 3 }).verdict).toBe("not met");
		expect(asked({ every_joints: 4 }, set(`${runs}.0.to`, "700 ft")).verdict).toBe("not met");
	});
	it("the first within a distance, the others at a spacing", () => {
		// Four joints of 40 ft are 160 ft.
		expect(asked({ first_within: "50 ft", then_every: "160 ft" }).verdict).toBe("met");
		expect(asked({ first_within: "50 ft", then_every: "159 ft" }).verdict).toBe("not met");
		const high = set(`${runs}.1.to`, "950 ft");
		expect(asked({ first_within: "50 ft", then_every: "160 ft" }, high).verdict).toBe("met");
		expect(asked({ first_within: "49 ft", then_every: "160 ft" }, high).verdict).toBe("not met");
	});
	it("through the water", () => {
		expect(asked({ through: "protected water" }).verdict).toBe("met");
		const bare = set(runs, [{ from: "880 ft", to: "1000 ft", every: "1 joint" }]);
		expect(asked({ through: "protected water" }, bare).verdict).toBe("not met");
		expect(asked({ through: "protected water" }, without("geology.water")).verdict).toBe("cannot tell");
	});
	it("cannot be told without runs or the length of a joint", () => {
		expect(asked({ every_joints: 4 }, without("casing.1.centralizers")).missing).toEqual([
			"casing.1.centralizers",
		]);
		expect(asked({ every_joints: 4 }, without("casing.1.pipe.0.joint")).missing).toEqual([
			"casing.1.pipe.0.joint",
		]);
	});
});

describe("present", () => {
	it("fields of a filing, each missing one with its place", () => {
		const row = {
			check: "filing-fields",
			limit: { present: ["API number", "confining zone", "ingredient CAS numbers"] },
		};
		expect(said(row).verdict).toBe("met");
		expect(said(row, without("well.api_number"), without("geology.formations.3.confining"))).toMatchObject({
			verdict: "cannot tell",
			missing: ["well.api_number", "geology.formations"],
		});
	});
	it("an assumed value is not a given one", () => {
		const row = { check: "filing-fields", limit: { present: ["design factors", "pipe condition"] } };
		expect(said(row).verdict).toBe("met");
		expect(said(row, without("design_basis")).missing).toEqual(["design_basis.design_factors"]);
		expect(said(row, without("casing.3.pipe.0.condition")).missing).toEqual(["casing"]);
	});
	it("fields of a part that the well does not have are not asked", () => {
		const row = { check: "filing-fields", limit: { present: ["stage table"] } };
		expect(said(row, without("stimulation")).verdict).toBe("does not apply");
	});
	it("a prediction and a stop for every annulus, a listed one or not", () => {
		const row = {
			check: "annulus-limit",
			limit: { present: ["predicted annulus rise", "annulus stop pressure"] },
		};
		expect(findings(row).map(({ verdict }) => verdict)).toEqual(["met", "met"]);
		expect(
			findings(row, without("stimulation.annuli.1")).map(({ verdict, subject }) => [subject, verdict]),
		).toEqual([
			["intermediate × surface annulus", "cannot tell"],
			["production × intermediate annulus", "met"],
		]);
	});
});

describe("evidence within, and samples within", () => {
	const wells = { check: "offset-wells", limit: { evidence_within: { radius: "1000 ft", of: "wellhead" } } };
	it("offset wells", () => {
		// 0.001 degrees of latitude are about 364 ft (a degree of latitude is about 69 miles; common practice, no source).
		expect(said(wells)).toMatchObject({ verdict: "met" });
		expect(said(wells, without("site.offset_wells.0.evidence")).missing).toEqual([
			"site.offset_wells.0.evidence",
		]);
		const small = { ...wells, limit: { evidence_within: { radius: "300 ft", of: "wellhead" } } };
		expect(said(small, without("site.offset_wells.0.evidence")).verdict).toBe("does not apply");
	});
	it("an empty list is not a pass unless it is stated to be complete", () => {
		expect(said(wells, without("site.offset_wells")).verdict).toBe("cannot tell");
		expect(said(wells, without("site.offset_wells"), set("site.neighbors_complete", true)).verdict).toBe(
			"does not apply",
		);
	});
	const sampled = (within: object) => ({
		check: "water-samples",
		limit: { samples_within: { of: "wellhead", before: "spud", ...within } },
	});
	const date = "site.neighbors.1.sampled";
	it("samples, in their window before spud on 2026-07-01", () => {
		expect(said(sampled({ radius: "900 ft" })).verdict).toBe("met");
		expect(said(sampled({ radius: "900 ft" }), without(date)).missing).toEqual([date]);
		expect(said(sampled({ radius: "900 ft", months: 4 })).verdict).toBe("met");
		expect(said(sampled({ radius: "900 ft", months: 4 }), set(date, "2026-02-28")).verdict).toBe("not met");
		expect(said(sampled({ radius: "900 ft" }), set(date, "2026-07-02")).verdict).toBe("not met");
		expect(said(sampled({ radius: "900 ft" }), without("site.neighbors.1.surveyed")).verdict).toBe(
			"cannot tell",
		);
	});
	it("nothing within the radius is not a pass either", () => {
		expect(said(sampled({ radius: "899 ft" })).verdict).toBe("cannot tell");
		expect(said(sampled({ radius: "899 ft" }), set("site.neighbors_complete", true)).verdict).toBe(
			"does not apply",
		);
	});
});

describe("setbacks", () => {
	const row = (from: string) => ({
		check: "setback",
		applies_to: { neighbor: "dwelling" },
		limit: { measure: "distance", from, at_least: "450 ft" },
	});
	const placed = [set("site.neighbors.0.latitude", 31.51), set("site.neighbors.0.longitude", -98.8)];
	it("use the distance surveyed from the place the rule names, and no other", () => {
		expect(said(row("wellhead"))).toMatchObject({ verdict: "met" });
		expect(said(row("wellhead")).because).toContain("by plat");
		expect(said(row("pad edge"))).toMatchObject({ verdict: "not met" });
		expect(said(row("nearest equipment")).verdict).toBe("cannot tell");
	});
	it("a surveyed distance stands before one from coordinates", () => {
		expect(said(row("wellhead"), ...placed).because).toContain("The house is 500");
		const computed = said(row("wellhead"), ...placed, without("site.neighbors.0.surveyed"));
		expect(computed.because).toContain("computed from coordinates");
		expect(computed.verdict).toBe("met");
	});
	it("no neighbor of the kind is no pass", () => {
		const school = { ...row("wellhead"), applies_to: { neighbor: "school" } };
		expect(said(school).verdict).toBe("cannot tell");
		expect(said(school, set("site.neighbors_complete", true)).verdict).toBe("does not apply");
	});
});

describe("water that the rule protects", () => {
	const row = { check: "water-definition", limit: { measure: "dissolved solids", at_most: "3000 mg/L" } };
	const deep = (solids?: string) =>
		set("geology.water.1", {
			name: "Deep water",
			top: "2000 ft TVD",
			base: "2100 ft TVD",
			...(solids === undefined ? {} : { dissolved_solids: solids }),
		});
	it("zones below the base, at, under and over the limit", () => {
		expect(said(row).verdict).toBe("met");
		expect(said(row, deep("3000 mg/L")).verdict).toBe("not met");
		expect(said(row, deep("2999 mg/L")).verdict).toBe("not met");
		expect(said(row, deep("3001 mg/L")).verdict).toBe("met");
		expect(
			said({ ...row, limit: { measure: "dissolved solids", less_than: "3000 mg/L" } }, deep("3000 mg/L"))
				.verdict,
		).toBe("met");
	});
	it("cannot be told without the solids, the zones or the base", () => {
		expect(said(row, deep()).missing).toEqual(["geology.water.1.dissolved_solids"]);
		expect(said(row, without("geology.water")).missing).toEqual(["geology.water"]);
		expect(said(row, without("geology.protected_water")).missing).toEqual(["geology.protected_water.base"]);
	});
});

describe("for a person", () => {
	it("the rock at a shoe is shown with its numbers and never passed", () => {
		const row = { check: "shoe-seat", applies_to: surface, limit: { question: "Is it good?" } };
		const found = said(row);
		expect(found.verdict).toBe("needs judgement");
		expect(found.because).toContain("Anvil Shale (shale); it is stated to be competent");
		expect(said({ ...row, applies_to: production }).because).toContain(
			"it is not stated whether it is competent",
		);
	});
	it("documents and judgements", () => {
		expect(said({ check: "document", limit: { question: "Attach it." } })).toMatchObject({
			verdict: "needs judgement",
			because: "Attach it.",
		});
		expect(
			said({ check: "string-judgement", applies_to: surface, limit: { question: "Is it?" } }).verdict,
		).toBe("needs judgement");
	});
});
