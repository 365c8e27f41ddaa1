import type { Known, KnownTable } from "../../cite/known.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { gasGradient } from "../casing/loads/surface-pressure-of-string.ts";
import { maybe } from "../gaps.ts";
import type { SingleFailure, SingleFailureResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { factorAfterFailure, pressureAfterPackerLeak, pressureAtHead } from "./barrier-formulas.ts";
import type { Before } from "./elements.ts";

interface Failed {
	readonly failure: SingleFailure;
	readonly string: string;
	readonly held_by: string;
	readonly load: Known<"pressure"> | Known<"pressure-difference">;
	readonly rating: Known<"pressure"> | undefined;
	readonly relief?: Known<"pressure">;
}

/** The factor that is left, and the one with the annulus relieved; a load of nothing is no failure to walk through. */
const failed = ({
	failure,
	string,
	held_by,
	load,
	rating,
	relief,
}: Failed): readonly SingleFailureResults[] => {
	if (!(load.value > 0)) return [];
	const against = (p: Known): Known<"ratio"> | undefined =>
		rating && factorAfterFailure.of({ rating, p: p as Known<"pressure-difference"> });
	return [
		{
			id: `${failure}-${string}`,
			failure,
			string,
			held_by,
			load: load as SingleFailureResults["load"],
			...maybe("rating", rating),
			...maybe("factor", against(load)),
			...(relief === undefined ? {} : { relief, ...maybe("factor_relieved", against(relief)) }),
		},
	];
};

/**
 * One element gives way at a time: the treated string leaks, its hanger's seal leaks, floats do not hold after a job, the
 * packer or the tubing leaks when the well is shut in. At surface, where what holds next is weakest against its load.
 */
export const singleFailures = (
	well: Well,
	path: KnownTable,
	before: Before,
): readonly SingleFailureResults[] => [
	...whileTreated(well, before),
	...floats(well, before),
	...throughTubing(well, path, before),
];

const whileTreated = (well: Well, { casing }: Before): readonly SingleFailureResults[] => {
	const { stimulation, wellhead } = well;
	const load = stimulation?.limits?.maximumTreatingPressure ?? stimulation?.limits?.reliefValve;
	const treated = well.strings.find(({ id }) => id === stimulation?.treatedThrough);
	const outer = well.strings.find(({ id }) => id === treated?.within);
	if (load === undefined || treated === undefined || treated.kind === "liner" || outer === undefined)
		return [];
	const relief = stimulation?.annuli.find(
		({ between: [inner, around] }) => inner === treated.id && around === outer.id,
	)?.relief;
	const shared = { string: treated.id, load, ...maybe("relief", relief) };
	return [
		...failed({
			...shared,
			failure: "treated-string",
			held_by: outer.id,
			rating: casing[outer.id]?.least_internal_yield,
		}),
		...failed({ ...shared, failure: "hanger-seal", held_by: "wellhead", rating: wellhead?.drilling }),
	];
};

/** Of all jobs the one with the greatest lift over what its lines are tested to. */
const floats = (well: Well, { cement }: Before): readonly SingleFailureResults[] =>
	well.strings.flatMap((string) => {
		const lift = cement[string.id]?.final_lift;
		return lift === undefined || string.floats.length === 0
			? []
			: failed({
					failure: "floats",
					string: string.id,
					held_by: "cementing head",
					load: pressureAtHead.of({ Δp: lift }),
					rating: string.cement?.lineTest,
				});
	});

const throughTubing = (well: Well, path: KnownTable, { casing }: Before): readonly SingleFailureResults[] =>
	well.strings.flatMap((string: CasingString) => {
		const { production, id } = string;
		const found = casing[id];
		const p_t = found?.situations.find((each) => each.id === "tubing-leak")?.surface_pressure;
		if (production === undefined || found === undefined || p_t === undefined) return [];
		const shared = { string: id, held_by: id, rating: found.least_internal_yield };
		return [
			...failed({
				...shared,
				failure: "packer",
				load: pressureAfterPackerLeak.of({
					p_t,
					g: gasGradient(well),
					ρ: production.packerFluid,
					D: tvdAt(path, production.packer),
				}),
			}),
			...failed({ ...shared, failure: "tubing", load: p_t }),
		];
	});
