import type { Known } from "../../cite/known.ts";
import type { AnnulusLimit, CasingString, PipeSection } from "../../well/well.ts";
import { pathStrings } from "../cement/bore.ts";
import { maybe } from "../gaps.ts";
import type { AnnulusResults } from "../results.ts";
import { riseFromHeat, riseFromSwelling, totalRise } from "./annulus-rise.ts";
import type { StageContext } from "./stage-results.ts";

/** What the pressure in each watched annulus may do, worked beside what the engineer states. */
export const annulusResults = (
	{ well, stimulation }: Pick<StageContext, "well" | "stimulation">,
	pressure: Known<"pressure"> | undefined,
): readonly AnnulusResults[] => {
	const treated = pathStrings(well.strings, stimulation.treatedThrough).map(({ id }) => id);
	return stimulation.annuli.map((annulus): AnnulusResults => {
		const [inner, outer] = annulus.between;
		const pipes = geometryOf(firstSection(well.strings, inner), firstSection(well.strings, outer));
		const swelling =
			pipes !== undefined && pressure !== undefined && treated.includes(inner)
				? finite(riseFromSwelling.of({ P: pressure, ...pipes }))
				: undefined;
		const heat = pipes && heatOf(annulus, pipes);
		const parts = [swelling, heat].filter((part) => part !== undefined);
		return {
			id: `${inner}-${outer}`,
			...maybe("rise_from_pressure", swelling),
			...maybe("rise_from_heat", heat),
			...maybe("rise", parts.length === 0 ? undefined : totalRise.of({ Δp_i: parts })),
		};
	});
};

const heatOf = ({ warming }: AnnulusLimit, pipes: Pipes): Known<"pressure"> | undefined =>
	warming && finite(riseFromHeat.of({ T_1: warming.from, T_2: warming.to, ...pipes }));

const finite = (rise: Known<"pressure">) => (Number.isFinite(rise.value) ? rise : undefined);

const firstSection = (strings: readonly CasingString[], id: string): PipeSection | undefined =>
	strings.find((string) => string.id === id)?.sections[0];

type Pipes = ReturnType<typeof geometryOf> & object;

const geometryOf = (inner: PipeSection | undefined, outer: PipeSection | undefined) =>
	inner && outer
		? {
				d: inner.insideDiameter,
				D: inner.outsideDiameter,
				d_o: outer.insideDiameter,
				D_o: outer.outsideDiameter,
			}
		: undefined;
