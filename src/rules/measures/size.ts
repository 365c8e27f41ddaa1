import type { Known } from "../../cite/known.ts";
import type { PipeSection } from "../../well/well.ts";
import { type Case, missingOf } from "../case.ts";
import { clearanceEachSide, clearanceOnDiameter } from "../formulas.ts";
import { known, lacking, type Measure } from "./reading.ts";
import { stringOf } from "./shoe.ts";

/** The widest the string is anywhere, by pipe or by coupling; nothing where a run does not say. */
const widest = (
	the: Case,
	size: (section: PipeSection) => Known<"diameter"> | undefined,
): Known<"diameter"> | undefined => {
	const sizes = stringOf(the).sections.map(size);
	if (!sizes.every((each) => each !== undefined)) return undefined;
	const [first, ...rest] = sizes;
	return first && rest.reduce((most, each) => (each.value > most.value ? each : most), first);
};

/** A plain-end or flush pipe has no coupling wider than itself. */
const couplingOf = ({ couplingDiameter, outsideDiameter, connection }: PipeSection) =>
	couplingDiameter ?? (/^(plain end|welded|flush)/i.test(connection) ? outsideDiameter : undefined);

const bodyOf = ({ outsideDiameter }: PipeSection) => outsideDiameter;

const clearance = (
	noun: string,
	size: (section: PipeSection) => Known<"diameter"> | undefined,
	missing: string,
	arithmetic: typeof clearanceEachSide | typeof clearanceOnDiameter,
): Measure => ({
	noun,
	read: (the) => {
		const string = stringOf(the);
		const pipe = widest(the, size);
		if (pipe === undefined) return lacking(missingOf(the, string, missing, "pipe"));
		return known(arithmetic.of({ hole: string.hole.diameter, pipe }), missingOf(the, string, "hole", "hole"));
	},
	say: ({ part }, the) => {
		const pipe = widest(the, size);
		return [
			`the ${noun} is `,
			part,
			" (hole ",
			stringOf(the).hole.diameter,
			...(pipe === undefined ? [] : [`, ${size === bodyOf ? "pipe" : "coupling"} `, pipe]),
			")",
		];
	},
});

export const sizeMeasures = {
	"clearance each side of coupling": clearance(
		"clearance on each side of the coupling",
		couplingOf,
		"coupling diameter",
		clearanceEachSide,
	),
	"clearance each side of pipe": clearance(
		"clearance on each side of the pipe",
		bodyOf,
		"pipe diameter",
		clearanceEachSide,
	),
	"coupling clearance on diameter": clearance(
		"clearance on diameter over the coupling",
		couplingOf,
		"coupling diameter",
		clearanceOnDiameter,
	),
	"pipe clearance on diameter": clearance(
		"clearance on diameter over the pipe",
		bodyOf,
		"pipe diameter",
		clearanceOnDiameter,
	),
} as const satisfies Readonly<Record<string, Measure>>;
