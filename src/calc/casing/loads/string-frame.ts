import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { CasingString, Well } from "../../../well/well.ts";
import { type Gaps, maybe } from "../../gaps.ts";
import type { CasingResults } from "../../results.ts";
import { tvdAt } from "../../trajectory/at-depth.ts";
import { pathEnd } from "../../trajectory/path-summary.ts";
import { loadSections } from "./load-sections.ts";
import { producingTemperatureProfile, temperatureProfile, uniformTemperature } from "./profiles.ts";

/** Where no temperature is known, ratings are those at room temperature. */
const ROOM = constant(
	"temperature",
	70,
	"temperature not given: no derating, no cooling",
	cite("definition"),
);

export interface StringContext {
	readonly well: Well;
	readonly path: KnownTable;
	readonly gaps: Gaps;
	readonly string: CasingString;
	/** The string's other results. */
	readonly results: Omit<
		CasingResults,
		"loads" | "situations" | "hook_loads" | "hook_load" | "slack_off_compression"
	>;
}

/** What every line of a string shares. */
export interface Frame {
	readonly sections: KnownTable;
	readonly temperature: KnownTable;
	/** Steel cooled through by what is pumped. */
	readonly cooled: KnownTable;
	/** Warmed through by what flows; absent where the wellhead's temperature or the rock's is not given. */
	readonly producing?: KnownTable;
	readonly derating: Known<"share-per-temperature">;
	/** Whether every joint's tension rating, and every coupling's pressure rating, is known. */
	readonly jointsRated: boolean;
	readonly couplingsRated: boolean;
}

export const frameOf = ({ well, path, string, results }: StringContext): Frame => {
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	const { sections } = results;
	const known = T_s !== undefined && G !== undefined;
	const unrated = string.sections.filter(
		(s) => s.connection !== "plain end" && s.stated?.internalYield === undefined,
	);
	const temperature = known
		? temperatureProfile.of({
				T_s,
				G,
				h: well.datum.aboveGround,
				D: tvdAt(path, pathEnd.of({ path })),
			})
		: uniformTemperature.of({ T: ROOM });
	const T_wh = string.production?.producingTemperature;
	return {
		sections: loadSections.of({
			top: string.sections.map((s) => s.top),
			bottom: string.sections.map((s) => s.bottom),
			D: string.sections.map((s) => s.outsideDiameter),
			t: string.sections.map((s) => s.wall),
			Y_p: string.sections.map((s) => s.minimumYield),
			w: string.sections.map((s) => s.nominalWeight),
			P_pipe: sections.map((s) => s.internal_yield),
			P_connection: sections.map((s) => s.coupling_internal_yield ?? s.internal_yield),
			P_c: sections.map((s) => s.collapse),
			F_pipe: sections.map((s) => s.body_yield),
			F_connection: sections.map((s) => s.joint_strength ?? s.body_yield),
			wear: string.wear ?? well.designBasis.wear,
		}),
		temperature,
		...maybe(
			"producing",
			known && T_wh !== undefined ? producingTemperatureProfile.of({ T_wh, static: temperature }) : undefined,
		),
		cooled: uniformTemperature.of({ T: known ? T_s : ROOM }),
		derating: well.designBasis.temperatureDerating,
		jointsRated: sections.every((s) => s.joint_strength !== undefined),
		couplingsRated: unrated.every((s) => sections[s.number - 1]?.coupling_internal_yield !== undefined),
	};
};
