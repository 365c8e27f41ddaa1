import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
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
	noun: Said,
	size: (section: PipeSection) => Known<"diameter"> | undefined,
	missing: Said,
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
			message("rules/is-hole", {
				noun,
				part,
				diameter: stringOf(the).hole.diameter,
				detail: {
					parts:
						pipe === undefined
							? []
							: [
									size === bodyOf
										? message("rules/pipe-of", { pipe })
										: message("rules/coupling-of", { pipe }),
								],
				},
			}),
		];
	},
});

export const sizeMeasures = {
	"clearance each side of coupling": clearance(
		message("rules/clearance-on-each-side-coupling"),
		couplingOf,
		message("rules/coupling-diameter"),
		clearanceEachSide,
	),
	"clearance each side of pipe": clearance(
		message("rules/clearance-on-each-side-pipe"),
		bodyOf,
		message("rules/pipe-diameter"),
		clearanceEachSide,
	),
	"coupling clearance on diameter": clearance(
		message("rules/clearance-on-diameter-over-coupling"),
		couplingOf,
		message("rules/coupling-diameter"),
		clearanceOnDiameter,
	),
	"pipe clearance on diameter": clearance(
		message("rules/clearance-on-diameter-over-pipe"),
		bodyOf,
		message("rules/pipe-diameter"),
		clearanceOnDiameter,
	),
	"pipe diameter": {
		noun: message("rules/outside-diameter-of-pipe"),
		read: (the) => {
			const string = stringOf(the);
			return known(widest(the, bodyOf), missingOf(the, string, message("rules/pipe-diameter"), "pipe"));
		},
		say: ({ part }) => [message("rules/outside-diameter-is", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
