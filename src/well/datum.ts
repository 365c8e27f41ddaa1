import { formula } from "../cite/formula.ts";
import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { AtSurface, Depth, Site } from "../definition/definition.ts";
import { message } from "../messages/message.ts";
import { assume, type Desk } from "./desk.ts";
import type { Datum } from "./well.ts";

/** Ground level, as a depth along the hole from the datum; the hole is vertical there. */
export const groundLevel = formula({
	id: "depths/ground-level",
	name: "Ground level below the depth datum",
	expression: "MD_ground = h",
	source: cite("definition"),
	inputs: { h: "length" },
	gives: "measured-depth",
	validity: "h ≥ 0",
	compute: ({ h }) => (h >= 0 ? h : Number.NaN),
});

/** Shifts a depth below ground to the depth datum. */
export const tvdOfDepthBelowGround = formula({
	id: "depths/tvd-of-depth-below-ground",
	name: "True vertical depth of a depth below ground",
	expression: "TVD = z_ground + h",
	source: cite("definition"),
	inputs: { z_ground: "depth-below-ground", h: "length" },
	gives: "true-vertical-depth",
	validity: "h ≥ 0",
	compute: ({ z_ground, h }) => (h >= 0 ? z_ground + h : Number.NaN),
});

/** The datum every depth is counted from, with the two levels that `surface` may mean. */
export const resolveDatum = (site: Site, desk: Desk): Datum => {
	const { name, above_ground, to_casing_hanger } = site.depth_datum;
	return {
		name,
		aboveGround: above_ground,
		groundElevation: site.ground_elevation,
		groundLevel: groundLevel.of({ h: above_ground }),
		casingHanger:
			to_casing_hanger ??
			assume(desk, {
				id: "casing-hanger",
				at: ["site", "depth_datum", "to_casing_hanger"],
				what: message("well/casing-hanger.what"),
				why: message("well/casing-hanger.why"),
				dimension: "measured-depth",
				value: above_ground.value,
				source: cite("common-practice"),
			}),
	};
};

const isSurface = (depth: Known<"measured-depth"> | AtSurface): depth is AtSurface => "surface" in depth;

/** `surface`, of pipe: the casing hanger. */
export const pipeDepth = (
	depth: Known<"measured-depth"> | AtSurface,
	datum: Datum,
): Known<"measured-depth"> => (isSurface(depth) ? datum.casingHanger : depth);

/** `surface`, of cement: ground level. */
export const cementDepth = (
	depth: Known<"measured-depth"> | AtSurface,
	datum: Datum,
): Known<"measured-depth"> => (isSurface(depth) ? datum.groundLevel : depth);

/** A depth straight down, from the datum. */
export const straightDown = (
	given: Depth<"vertical" | "ground">,
	datum: Datum,
): Known<"true-vertical-depth"> =>
	given.reference === "vertical"
		? given.depth
		: tvdOfDepthBelowGround.of({ z_ground: given.depth, h: datum.aboveGround });
