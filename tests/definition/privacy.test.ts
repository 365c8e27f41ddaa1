import { describe, expect, it } from "vitest";
import { definitionSchema } from "../../src/definition/definition.ts";
import { mayAppear, papersOf } from "../../src/definition/privacy.ts";
import { everyField } from "../../src/definition/schema-walk.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { READER_PAPERS } from "../../src/document/document.ts";
import { starterTree } from "./starter-trees.ts";

const shownTo = (path: Path, tree: unknown = starterTree("horizontal")): readonly string[] =>
	READER_PAPERS.filter((paper) => mayAppear(paper, path, tree));

describe("what may appear where", () => {
	it("keeps persons, licenses and private records in the regulator's copy", () => {
		for (const path of [
			["well", "prepared_by", "name"],
			["well", "prepared_by", "license"],
			["well", "technical_contact", "phone"],
			["well", "revisions", 0, "by"],
			["site", "neighbors", 0, "owner"],
			["site", "notices", 0, "proof"],
		] as const)
			expect([path, shownTo(path)]).toEqual([path, ["regulator"]]);
	});

	it("keeps the site's safety arrangements off public papers", () => {
		for (const path of [
			["safety", "person_in_charge"],
			["safety", "radio_channel"],
			["safety", "radio_silence", "distance"],
			["safety", "muster_points", 0, "at"],
			["safety", "emergency", "site_address"],
		] as const)
			for (const paper of ["landowner", "handout", "regulator"])
				expect([path, shownTo(path)]).not.toContain(paper);
	});

	it("keeps the height of the rig floor off public papers, which count from the ground", () => {
		for (const paper of ["landowner", "handout"])
			expect(shownTo(["site", "depth_datum", "above_ground"])).not.toContain(paper);
	});

	it("keeps a neighbor's place and water record off the handout", () => {
		expect(shownTo(["site", "neighbors", 0, "latitude"])).toEqual(["regulator", "answers"]);
		expect(shownTo(["site", "neighbors", 0, "sampled"])).toEqual(["regulator", "answers"]);
	});

	it("narrows by the definition's own `papers`, for everything in the entry", () => {
		expect(shownTo(["safety", "contacts", 0, "phone"])).toEqual(["crew"]);
		expect(shownTo(["safety", "contacts", 1, "phone"])).toEqual(["landowner", "handout", "crew"]);
		const kept = { safety: { contacts: [{ name: "A", papers: [] }] } };
		expect(shownTo(["safety", "contacts", 0, "name"], kept)).toEqual([]);
	});

	it("never widens: a paper that the field is kept out of cannot be asked for", () => {
		const asked = { well: { prepared_by: { name: "A", papers: ["handout", "regulator"] } } };
		expect(shownTo(["well", "prepared_by", "name"], asked)).toEqual(["regulator"]);
	});

	it("shows nothing of a place that the definition does not have", () => {
		expect(papersOf(["well", "shoe_size"])).toEqual([]);
		expect(papersOf(["elsewhere"])).toEqual([]);
		expect(shownTo(["well", "shoe_size"])).toEqual([]);
		expect(papersOf(["site", "conditions", 0, "limit", "of", "above"])).toEqual(["regulator", "answers"]);
		expect(papersOf(["schedule", 0, "days", 1])).toEqual([...READER_PAPERS]);
	});

	it("lets no person's name or number default to a public paper", () => {
		const personal = everyField(definitionSchema).filter(({ pattern }) =>
			/\.(license|email|owner|proof|by|witnessed_by)$/.test(pattern),
		);
		expect(personal.length).toBeGreaterThan(5);
		for (const { pattern, meta } of personal) {
			// How a distance was measured, a top picked, or which office watches afterwards, is no person.
			if (/surveyed|formations|after_care/.test(pattern)) continue;
			expect([pattern, meta?.papers]).toEqual([
				pattern,
				expect.not.arrayContaining(["landowner", "handout"]),
			]);
			expect([pattern, meta?.papers.includes("landowner")]).toEqual([pattern, false]);
			expect([pattern, meta?.papers.includes("handout")]).toEqual([pattern, false]);
		}
	});
});
