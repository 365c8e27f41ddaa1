import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("definition");

export const jointsInSection = formula({
	id: "casing/joints-in-section",
	name: "Joints in a section",
	expression: "n = L / length of a joint, rounded up",
	source,
	inputs: { L: "length", joint: "length" },
	gives: "count",
	validity: "joint > 0",
	// A last joint of less than a thousandth is the arithmetic's, not the pipe's.
	compute: ({ L, joint }) => (joint > 0 ? Math.ceil(L / joint - 1e-3) : Number.NaN),
});

export const jointsInString = formula({
	id: "casing/joints",
	name: "Joints in the string",
	expression: "Σ n",
	source,
	inputs: { n: { many: "count" } },
	gives: "count",
	compute: ({ n }) => n.reduce<number>((sum, joints) => sum + joints, 0),
});

/** What the trucks carry: along the hole, unlike the weight that hangs. */
export const sectionMass = formula({
	id: "casing/section-mass",
	name: "Mass of a section of pipe",
	expression: "m = w L",
	source,
	inputs: { w: "linear-weight", L: "length" },
	gives: "mass",
	compute: ({ w, L }) => w * L,
});

export const stringMass = formula({
	id: "casing/pipe-mass",
	name: "Mass of the string's pipe",
	expression: "Σ m",
	source,
	inputs: { m: { many: "mass" } },
	gives: "mass",
	compute: ({ m }) => m.reduce<number>((sum, mass) => sum + mass, 0),
});

/** Half of what a hole is wider than the largest part of the pipe; negative where it does not go in. */
export const clearance = formula({
	id: "casing/clearance",
	name: "Clearance on each side",
	expression: "(hole − pipe) / 2",
	source,
	inputs: { hole: "diameter", pipe: "diameter" },
	gives: "diameter",
	compute: ({ hole, pipe }) => (hole - pipe) / 2,
});

/** The narrowest of several bores. */
export const leastDrift = formula({
	id: "casing/least-drift",
	name: "Least drift of the string",
	expression: "min over the sections",
	source,
	inputs: { drifts: { many: "diameter" } },
	gives: "diameter",
	validity: "at least one section",
	compute: ({ drifts }) => (drifts.length === 0 ? Number.NaN : Math.min(...drifts)),
});
