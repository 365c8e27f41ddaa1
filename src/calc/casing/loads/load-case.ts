import type { Known } from "../../../cite/known.ts";
import { message } from "../../../messages/message.ts";
import { holeMark } from "../../depths/marks.ts";
import { maybe } from "../../gaps.ts";
import type { LoadCaseResults, LoadKind, LoadSituation } from "../../results.ts";
import {
	forceLoadAtLeast,
	forceRatingAtLeast,
	leastFactor,
	leastFactorDepth,
	leastFactorOfConnection,
	leastFactorOfPipe,
	pressureLoadAtLeast,
	pressureRatingAtLeast,
} from "./least-factor.ts";
import { phaseOf } from "./phases.ts";
import type { StringContext } from "./string-frame.ts";

interface Case {
	readonly kind: LoadKind;
	readonly situation: LoadSituation;
	readonly line: LoadCaseResults["line"];
	readonly required?: Known<"ratio">;
	/** Load and rating where the factor is least, where they tell more than the line does. */
	readonly load?: Known<"pressure">;
	readonly rating?: Known<"pressure">;
}

/** A line with its least factor: where, against what, and beside what is required. A line without rows is a gap. */
export const loadCase = (
	{ well, path, string, gaps }: StringContext,
	{ kind, situation, line, required = string.designFactors[kind], load, rating }: Case,
): readonly LoadCaseResults[] => {
	const id = `${kind}-${situation}`;
	if (line.rows.length === 0) {
		gaps.missing(`casing.${string.id}.loads.${id}`, message("calc/rating-under-this-load-lies-outside"), [
			["casing", well.strings.indexOf(string), "pipe"],
		]);
		return [];
	}
	const factor = leastFactor.of({ line });
	const named = { id, kind, situation, phase: phaseOf(situation, well, string), line, required };
	if (!Number.isFinite(factor.value)) return [named];
	const both = "pipe" in line.columns;
	return [
		{
			...named,
			least_factor: factor,
			at: holeMark(path, leastFactorDepth.of({ line }), well.datum),
			load: load ?? (kind === "tension" ? forceLoadAtLeast : pressureLoadAtLeast).of({ line }),
			rating: rating ?? (kind === "tension" ? forceRatingAtLeast : pressureRatingAtLeast).of({ line }),
			...maybe("governed_by", branchOf(factor) ?? (rating && branchOf(rating)) ?? (load && branchOf(load))),
			...maybe("pipe_factor", both ? leastFactorOfPipe.of({ line }) : undefined),
			...maybe("connection_factor", both ? leastFactorOfConnection.of({ line }) : undefined),
			reached: factor.value >= required.value,
		},
	];
};

const branchOf = ({ from }: Known): string | undefined => (from.kind === "worked" ? from.branch : undefined);
