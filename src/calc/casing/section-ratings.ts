import type { Known } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { message, type Said } from "../../messages/message.ts";
import { asWritten, measured } from "../../well/said.ts";
import type { PipeSection } from "../../well/well.ts";
import type { Gaps } from "../gaps.ts";
import { collapsePressure } from "./collapse.ts";
import {
	buttressCouplingYield,
	buttressInternalPressure,
	buttressLeak,
	internalYield,
	roundCouplingYield,
} from "./internal-yield.ts";
import { buttressJointStrength, roundJointStrength } from "./joint-strength.ts";
import { bodyYield } from "./pipe-body.ts";

/** Ratings of one section as new pipe at room temperature, the engineer's own where stated. */
interface SectionRatings {
	/** Of the pipe body; of the weaker of body and connection where stated. */
	readonly internalYield: Known<"pressure">;
	/** Absent for plain ends, for connections nobody has rated, and where a stated rating covers both. */
	readonly couplingInternalYield?: Known<"pressure">;
	readonly collapse: Known<"pressure">;
	readonly bodyYield: Known<"force">;
	readonly jointStrength?: Known<"force">;
}

/** Place of a section in the definition, for messages. */
const sectionPath = (section: PipeSection): Path => {
	const { from } = section.outsideDiameter;
	return from.kind === "definition" ? from.at.slice(0, -1) : ["casing"];
};

/**
 * @param key   result key of the section, for what could not be had
 * @returns     ratings, and an error for each that no published formula gives for this pipe
 */
export const sectionRatings = (
	section: PipeSection,
	key: string,
	gaps: Gaps,
): { readonly ratings: SectionRatings; readonly diagnostics: readonly Diagnostic[] } => {
	const { outsideDiameter: D, wall: t, minimumYield: Y_p, stated } = section;
	const pipe = stated?.internalYield ?? internalYield.of({ D, t, Y_p });
	const collapse = stated?.collapse ?? collapsePressure.of({ D, t, Y_p });
	const body = bodyYield.of({ D, t, Y_p });
	const coupling = stated?.internalYield === undefined ? couplingRating(section, key, gaps) : undefined;
	const joint = stated?.tension ?? jointRating(section, key, gaps);
	return {
		ratings: {
			internalYield: pipe,
			collapse,
			bodyYield: body,
			...(coupling === undefined ? {} : { couplingInternalYield: coupling }),
			...(joint === undefined ? {} : { jointStrength: joint }),
		},
		diagnostics: [
			[message("calc/rating.internal-yield"), pipe] as const,
			[message("calc/rating.collapse"), collapse] as const,
			[message("calc/rating.body-yield"), body] as const,
		].flatMap(([what, rating]) => (Number.isFinite(rating.value) ? [] : [outside(what, section)])),
	};
};

const outside = (what: Said, section: PipeSection): Diagnostic =>
	diagnose(
		"calc/outside-validity",
		{ path: sectionPath(section) },
		{
			what: message("calc/outside-validity.what", { what }),
			expected: message("calc/outside-validity.expected", {
				value: measured("pressure", 24_000),
				value2: measured("pressure", 180_000),
			}),
			found: message("calc/outside-validity.found", {
				outsideDiameter: asWritten(section.outsideDiameter),
				wall: asWritten(section.wall),
				minimumYield: asWritten(section.minimumYield),
			}),
			mend: message("calc/outside-validity.mend"),
		},
	);

const couplingRating = (section: PipeSection, key: string, gaps: Gaps): Known<"pressure"> | undefined => {
	const { threads, couplingDiameter: W, minimumYield: Y_c } = section;
	const missing = (because: Said) =>
		gaps.missing(`${key}.coupling_internal_yield`, because, [[...sectionPath(section), "ratings"]]);
	if (threads === undefined || W === undefined) {
		if (isPlainEnd(section)) return undefined;
		return missing(message("calc/connections-are-not-in-catalogue-and", { connection: section.connection }));
	}
	if (threads.kind === "round") {
		const rating = roundCouplingYield.of({ Y_c, W, E_1: threads.E1, L_1: threads.L1, A: threads.A });
		return gaps.finite(
			`${key}.coupling_internal_yield`,
			rating,
			message("calc/coupling-is-no-larger-than-its"),
		);
	}
	const { E7: E_7, L7: L_7, I, taper: T, leakTurns: N } = threads;
	const rating = buttressInternalPressure.of({
		coupling_yield: buttressCouplingYield.of({ Y_c, W, E_7, L_7, I, T }),
		leak: buttressLeak.of({ T, N, W, E_7 }),
	});
	return gaps.finite(
		`${key}.coupling_internal_yield`,
		rating,
		message("calc/coupling-is-no-larger-than-its"),
	);
};

const jointRating = (section: PipeSection, key: string, gaps: Gaps): Known<"force"> | undefined => {
	const {
		threads,
		outsideDiameter: D,
		wall: t,
		couplingDiameter: W,
		minimumYield: Y_p,
		minimumTensile: U_p,
	} = section;
	const needs: readonly Path[] = [[...sectionPath(section), "ratings", "tension"]];
	if (threads === undefined || W === undefined)
		return gaps.missing(
			`${key}.joint_strength`,
			isPlainEnd(section)
				? message("calc/plain-end-pipe-is-as-strong")
				: message("calc/connections-are-not-in-catalogue-and.connections-are-not-in-catalogue", {
						connection: section.connection,
					}),
			needs,
		);
	const rating =
		threads.kind === "round"
			? roundJointStrength.of({ D, t, L_4: threads.L4, M: threads.M, Y_p, U_p })
			: buttressJointStrength.of({
					D,
					t,
					W,
					E_7: threads.E7,
					L_7: threads.L7,
					I: threads.I,
					T: threads.taper,
					Y_p,
					U_p,
				});
	return gaps.finite(
		`${key}.joint_strength`,
		rating,
		message("calc/joints-dimensions-leave-no-strength"),
		needs,
	);
};

const isPlainEnd = ({ connection }: PipeSection): boolean => connection === "plain end";
