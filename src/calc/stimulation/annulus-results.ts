import type { Known } from "../../cite/known.ts";
import { TREATING_STRING } from "../../well/names.ts";
import type { AnnulusLimit, PipeSection, Well } from "../../well/well.ts";
import { pathStrings } from "../cement/bore.ts";
import { maybe } from "../gaps.ts";
import type { AnnulusResults } from "../results.ts";
import {
	riseFromHeat,
	riseFromHeatHeld,
	riseFromSwelling,
	riseFromSwellingHeld,
	totalRise,
} from "./annulus-rise.ts";
import type { StageContext } from "./stage-results.ts";
import { leastPressure } from "./treating-pressure.ts";

type Context = Pick<StageContext, "well" | "stimulation">;

/** Pressure on the pipe from inside: with the outer walls free, and with them held. */
interface Inside {
	readonly free: Known<"pressure">;
	readonly held: Known<"pressure">;
}

/**
 * What the pressure in each watched annulus may do, worked beside what the engineer states.
 *
 * Treating pressure stands in the strings pumped through; in a string that a packer keeps it from, and in those farther
 * out, stands what the annulus inside them rises to, where that is watched too.
 */
export const annulusResults = (
	context: Context,
	pressure: Known<"pressure"> | undefined,
): readonly AnnulusResults[] => {
	const { annuli } = context.stimulation;
	const worked = new Map<string, AnnulusResults>();
	const at = (annulus: AnnulusLimit): AnnulusResults => {
		const id = annulus.between.join("-");
		const known = worked.get(id);
		if (known !== undefined) return known;
		// Taken as without a rise while its own is worked, so that strings named in a ring end.
		worked.set(id, { id });
		const found = riseOf(context, annulus, insideOf(annulus));
		worked.set(id, found);
		return found;
	};
	const insideOf = ({ between: [inner] }: AnnulusLimit): Inside | undefined => {
		if (pressured(context, inner)) return pressure && { free: pressure, held: pressure };
		const within = annuli.find(({ between: [, outer] }) => outer === inner);
		const { rise, highest } = within === undefined ? {} : at(within);
		return rise && highest && { free: leastPressure.of({ P_i: [rise.free, highest] }), held: highest };
	};
	return annuli.map(at);
};

/** Whether treating pressure itself stands in a string: not in casing above a packer, nor in pipe that it stands around too. */
const pressured = ({ well, stimulation }: Context, id: string): boolean => {
	const { treatedThrough, treatingString } = stimulation;
	const packed = treatingString?.packer !== undefined;
	if (id === TREATING_STRING) return packed;
	return !packed && pathStrings(well.strings, treatedThrough).some((string) => string.id === id);
};

const riseOf = ({ well }: Context, annulus: AnnulusLimit, inside: Inside | undefined): AnnulusResults => {
	const id = annulus.between.join("-");
	const [inner, outer] = annulus.between.map((name) => uppermostSection(well, name));
	if (inner === undefined || outer === undefined || cementedToTop(well, annulus.between[0])) return { id };
	const pipes = {
		d: inner.insideDiameter,
		D: inner.outsideDiameter,
		d_o: outer.insideDiameter,
		D_o: outer.outsideDiameter,
	};
	const swelling =
		inside &&
		range(
			riseFromSwelling.of({ P: inside.free, ...pipes }),
			riseFromSwellingHeld.of({ P: inside.held, ...pipes }),
		);
	const warmed = annulus.warming && { T_1: annulus.warming.from, T_2: annulus.warming.to, ...pipes };
	const heat = warmed && range(riseFromHeat.of(warmed), riseFromHeatHeld.of(warmed));
	const parts = [swelling, heat].filter((part) => part !== undefined);
	const rise =
		parts.length === 0
			? undefined
			: {
					free: totalRise.of({ Δp_i: parts.map(({ free }) => free) }),
					held: totalRise.of({ Δp_i: parts.map(({ held }) => held) }),
				};
	const { relief } = annulus;
	return {
		id,
		...maybe("rise_from_pressure", swelling),
		...maybe("rise_from_heat", heat),
		...maybe("rise", rise),
		...maybe(
			"highest",
			rise && (relief === undefined ? rise.held : leastPressure.of({ P_i: [rise.held, relief] })),
		),
	};
};

/** Cement that reaches the top of a string leaves no column of fluid outside it to be pressed. */
const cementedToTop = (well: Well, id: string): boolean => {
	const string = well.strings.find((each) => each.id === id);
	const { actual, slurries, further = [] } = string?.cement ?? { slurries: [] };
	const tops = [
		...(actual?.top === undefined ? slurries.map(({ top }) => top) : [actual.top.depth]),
		...further.map(({ top }) => top),
	];
	return string !== undefined && tops.some(({ value }) => value <= string.top.value + AT_TOP);
};

/** The annulus inside a cellar [ft]. */
const AT_TOP = 10;

const range = (free: Known<"pressure">, held: Known<"pressure">): AnnulusResults["rise"] =>
	Number.isFinite(free.value) && Number.isFinite(held.value) ? { free, held } : undefined;

const uppermostSection = (well: Well, id: string): PipeSection | undefined =>
	id === TREATING_STRING
		? well.stimulation?.treatingString?.sections[0]
		: well.strings.find((string) => string.id === id)?.sections[0];
