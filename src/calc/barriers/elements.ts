import type { CasingString, Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import { cementEvidence, isVerified, steelEvidence } from "../isolation/evidence.ts";
import type { BarrierElementResults, Results } from "../results.ts";

export type Before = Pick<Results, "casing" | "cement" | "stimulation" | "pressure">;
type Element = BarrierElementResults;

const casingPath = (well: Well, string: CasingString, ...rest: readonly string[]) => [
	"casing",
	well.strings.indexOf(string),
	...rest,
];

export const casingElement = (well: Well, string: CasingString, before: Before): Element => {
	const { pressureTest, shoe, id } = string;
	return {
		element: "casing",
		string: id,
		depth: shoe,
		...maybe("rating", before.casing[id]?.least_internal_yield),
		...maybe("test", pressureTest?.actual?.pressure ?? pressureTest?.pressure),
		tested: steelEvidence(string) === "tested",
		...maybe("date", pressureTest?.actual?.date),
		...maybe("verified_by", pressureTest?.actual?.witnessedBy),
		state: "holds",
		at: casingPath(well, string),
	};
};

/** Known by its top and by what shows it; a string without a job has none. */
export const cementElement = (well: Well, string: CasingString, before: Before): Element => {
	const { cement, id } = string;
	const evidence = cementEvidence(cement?.actual);
	return {
		element: "casing cement",
		string: id,
		...maybe("depth", before.cement[id]?.top.md),
		tested: cement !== undefined && isVerified(evidence),
		...maybe("date", cement?.actual?.date),
		state: cement === undefined ? "no cement" : "holds",
		at: casingPath(well, string, "cement"),
	};
};

export const floatElement = (well: Well, string: CasingString): Element => ({
	element: "floats",
	string: string.id,
	depth: string.shoe,
	tested: false,
	state: string.floats.length > 0 ? "holds" : "not stated",
	at: casingPath(well, string, "floats"),
});

export const wellheadElement = ({ wellhead }: Well, at: "drilling" | "stimulation"): Element => ({
	element: "wellhead",
	...maybe("rating", wellhead?.[at]),
	tested: false,
	state: wellhead?.[at] === undefined ? "not stated" : "holds",
	at: ["wellhead", at],
});

export const preventerElement = ({ wellControl }: Well, string: CasingString): Element => {
	const stack = wellControl?.preventers?.find(({ over }) => over === string.id);
	return {
		element: "preventers",
		string: string.id,
		...maybe("rating", stack?.working_pressure),
		...maybe("test", stack?.actual?.high ?? stack?.test?.high),
		tested: stack?.actual !== undefined && stack.actual.held !== false,
		...maybe("date", stack?.actual?.date),
		state: stack === undefined ? "not stated" : "holds",
		at: ["well_control", "preventers"],
	};
};

/** The mud of a hole, weighed against the highest pore pressure open to it. */
export const fluidElement = (well: Well, hole: Well["holes"][number], before: Before): Element => {
	const found = before.pressure.holes.find(({ id }) => id === hole.id);
	const over = found?.mud_over_pore;
	const density = hole.fluid?.density;
	return {
		element: "fluid column",
		depth: hole.bottom,
		...maybe("density", density),
		tested: false,
		state:
			density === undefined
				? "not stated"
				: over !== undefined && over.value < 0
					? "lighter than pore pressure"
					: "holds",
		at: ["holes", well.holes.indexOf(hole), "fluid", "density"],
	};
};

/** What only `well_barriers` states. */
export const unstated = (element: Element["element"], string?: string): Element => ({
	element,
	...maybe("string", string),
	tested: false,
	state: "not stated",
	at: ["well_barriers"],
});
