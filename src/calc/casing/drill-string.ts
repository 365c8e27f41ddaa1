import { formula } from "../../cite/formula.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Hole, Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { DrillStringResults } from "../results.ts";
import { jointsInSection, sectionMass, stringMass } from "./tally.ts";

/** What the derrick and the rack carry of one joint. */
export const jointMass = formula({
	id: "casing/joint-mass",
	name: "Mass of one joint",
	expression: "m = w L_joint",
	source: cite(
		"definition",
		"nominal weight along the pipe; upsets and tool joints as the nominal weight has them",
	),
	inputs: { w: "linear-weight", joint: "length" },
	gives: "mass",
	compute: ({ w, joint }) => w * joint,
});

/** Pipe that reaches a depth on top of the collars. */
export const drillPipeLength = formula({
	id: "casing/drill-pipe-length",
	name: "Length of drill pipe to a depth",
	expression: "L = MD − L_collars, no less than zero",
	source: cite("definition"),
	inputs: { MD: "measured-depth", L_collars: "length" },
	gives: "length",
	compute: ({ MD, L_collars }) => Math.max(0, MD - L_collars),
});

/** Where the collars begin with the bit at a depth [ft]. */
export const drillPipeFoot = formula({
	id: "casing/drill-pipe-foot",
	name: "Foot of the drill pipe with the bit at a depth",
	expression: "MD_foot = MD − L_collars, no less than zero",
	source: cite("definition"),
	inputs: { MD: "measured-depth", L_collars: "length" },
	gives: "measured-depth",
	compute: ({ MD, L_collars }) => Math.max(0, MD - L_collars),
});

const NO_COLLARS = constant("length", 0, "no collars are given", cite("definition"));

/** The string that drills each hole, at its bottom: joints to pick up, and what they weigh. */
export const drillStringResults = ({ drillString, holes }: Well): DrillStringResults | undefined => {
	if (drillString === undefined) return undefined;
	const { pipe } = drillString;
	return {
		...maybe("joint_mass", pipe.joint && jointMass.of({ w: pipe.weight, joint: pipe.joint })),
		holes: holes.map((hole) => atBottomOf(hole, drillString)),
	};
};

const atBottomOf = (
	hole: Hole,
	{ pipe, collars }: NonNullable<Well["drillString"]>,
): DrillStringResults["holes"][number] => {
	const length = drillPipeLength.of({ MD: hole.bottom, L_collars: collars?.length ?? NO_COLLARS });
	const pipeMass = sectionMass.of({ w: pipe.weight, L: length });
	const collarMass: Known<"mass"> | undefined =
		collars?.weight && sectionMass.of({ w: collars.weight, L: collars.length });
	return {
		id: hole.id,
		pipe_length: length,
		...maybe("joints", pipe.joint && jointsInSection.of({ L: length, joint: pipe.joint })),
		pipe_mass: pipeMass,
		...maybe("mass", collarMass && stringMass.of({ m: [pipeMass, collarMass] })),
	};
};
