import { describe, expect, it } from "vitest";
import { inherit } from "../../src/source/inherit.ts";

describe("a tree laid over one that it shares", () => {
	const shared = { site: { county: "Marl", pad: { area: "8 acre" } }, holes: [{ id: "a" }, { id: "b" }] };
	const own = { site: { pad: { area: "9 acre" }, land: "state" }, well: { name: "1" } };

	it("joins blocks entry by entry, and its own value stands before the shared one", () => {
		expect(inherit(shared, own).value).toEqual({
			site: { pad: { area: "9 acre" }, land: "state", county: "Marl" },
			well: { name: "1" },
			holes: [{ id: "a" }, { id: "b" }],
		});
	});

	it("takes a list whole: its own is not added to", () => {
		const { value, isShared } = inherit(shared, { holes: [{ id: "c" }] });
		expect(value).toMatchObject({ holes: [{ id: "c" }] });
		expect(isShared(["holes", 0, "id"])).toBe(false);
	});

	it("knows of each place which of the two it is of, and its own where both lack it alike", () => {
		const { isShared } = inherit(shared, own);
		const places = [
			["site", "county"],
			["holes", 1, "id"],
			["holes", 1, "diameter"],
			["site", "pad", "area"],
			["site", "land"],
			["site", "depth_datum"],
			["geology"],
			[],
		];
		expect(places.map(isShared)).toEqual([true, true, true, false, false, false, false, false]);
	});
});
