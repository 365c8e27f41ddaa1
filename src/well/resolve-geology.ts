import type { GeologyDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { straightDown } from "./datum.ts";
import { type Desk, fault, maybe, placeOf, SAME_DEPTH } from "./desk.ts";
import { distinctIds } from "./names.ts";
import { asWritten } from "./said.ts";
import type { Datum, Formation, Geology, WaterZone } from "./well.ts";

type FormationDefinition = GeologyDefinition["formations"][number];

const AT: Path = ["geology", "formations"];

/**
 * Rock and water, on the depth datum, each formation down to the next.
 *
 * @param bottom depth along the deepest hole [ft]: of two tops out of order, one below it is the likelier slip
 */
export const resolveGeology = (
	geology: GeologyDefinition,
	datum: Datum,
	bottom: number,
	desk: Desk,
): Geology => {
	const { temperature, overburden, protected_water: protectedWater } = geology;
	return {
		...(temperature === undefined
			? {}
			: {
					surfaceTemperature: temperature.surface,
					temperatureGradient: temperature.gradient,
				}),
		...(overburden === undefined ? {} : { overburden }),
		formations: resolveFormations(geology.formations, datum, bottom, desk),
		water: resolveWater(geology.water ?? [], datum, desk),
		...(protectedWater === undefined
			? {}
			: {
					protectedWater: {
						base: straightDown(protectedWater.base, datum),
						...(protectedWater.determined_by === undefined
							? {}
							: { determinedBy: protectedWater.determined_by }),
						...(protectedWater.reference === undefined ? {} : { reference: protectedWater.reference }),
						...(protectedWater.dated === undefined ? {} : { dated: protectedWater.dated }),
					},
				}),
	};
};

const resolveFormations = (
	written: readonly FormationDefinition[],
	datum: Datum,
	bottom: number,
	desk: Desk,
): readonly Formation[] => {
	const ids = distinctIds(written.map(({ name }) => name));
	const tops = written.map(({ top, actual }) => straightDown(actual?.top ?? top, datum));
	return written.flatMap((each, i): Formation[] => {
		const top = tops[i];
		if (top === undefined) return [];
		checkOrder(written, tops, i, bottom, desk);
		const next = tops[i + 1];
		const stated = each.base === undefined ? undefined : straightDown(each.base, datum);
		if (each.base !== undefined && stated !== undefined)
			checkBase(each, i, top.value, stated.value, next?.value, desk);
		const base = stated ?? next;
		const { mechanical } = each;
		return [
			{
				id: ids[i] ?? each.name,
				name: each.name,
				top,
				...(each.actual === undefined ? {} : { plannedTop: straightDown(each.top, datum) }),
				...(base === undefined ? {} : { base }),
				lithology: each.lithology,
				...(each.pore_pressure === undefined ? {} : { porePressure: each.pore_pressure }),
				...(each.fracture_gradient === undefined ? {} : { fractureGradient: each.fracture_gradient }),
				...(each.fracture_from === undefined || each.fracture_gradient !== undefined
					? {}
					: {
							fractureFrom: {
								method: each.fracture_from.method,
								...maybe("poissonsRatio", each.fracture_from.poissons_ratio),
								...maybe("matrixStressCoefficient", each.fracture_from.matrix_stress_coefficient),
							},
						}),
				...(each.flow_zone === undefined ? {} : { flowZone: each.flow_zone }),
				...(each.competent === undefined ? {} : { competent: each.competent }),
				...(each.mobile === undefined ? {} : { mobile: each.mobile }),
				confining: each.confining ?? false,
				target: each.target ?? false,
				...(mechanical === undefined
					? {}
					: {
							mechanical: {
								...(mechanical.youngs_modulus === undefined
									? {}
									: { youngsModulus: mechanical.youngs_modulus }),
								...(mechanical.poissons_ratio === undefined
									? {}
									: { poissonsRatio: mechanical.poissons_ratio }),
								...(mechanical.closure === undefined ? {} : { closure: mechanical.closure }),
								...(mechanical.stress_contrast === undefined
									? {}
									: { stressContrast: mechanical.stress_contrast }),
								...(mechanical.leakoff === undefined ? {} : { leakoff: mechanical.leakoff }),
							},
						}),
			},
		];
	});
};

/**
 * A formation listed above its predecessor. Where the list is in order without the predecessor and not without this one,
 * the predecessor's top is what has slipped.
 */
const checkOrder = (
	written: readonly FormationDefinition[],
	tops: readonly { readonly value: number }[],
	i: number,
	bottom: number,
	desk: Desk,
): void => {
	const depth = (n: number): number | undefined => tops[n]?.value;
	const [own, above] = [depth(i), depth(i - 1)];
	if (own === undefined || above === undefined || own >= above) return;
	const withoutAbove = own >= (depth(i - 2) ?? Number.NEGATIVE_INFINITY);
	const withoutOwn = (depth(i + 1) ?? bottom) >= above;
	const slipped = withoutAbove && !withoutOwn ? i - 1 : i;
	const other = slipped === i ? i - 1 : i;
	const each = written[slipped];
	if (each === undefined) return;
	const top = (each.actual?.top ?? each.top).depth;

	fault(desk, "well/formation-order", placeOf(top, [...AT, slipped, "top"]), {
		what:
			slipped === i
				? message("well/formation-order.what", { each: each.name, written: written[other]?.name ?? "" })
				: message("well/formation-order.top-lies-below-top-which", {
						each: each.name,
						written: written[other]?.name ?? "",
					}),
		expected: message("well/formation-order.expected"),
		found: asWritten(top),
		mend: message("well/formation-order.mend"),
		related: [
			{
				at: { path: [...AT, other, "top"] },
				label:
					slipped === i
						? message("well/formation-order.label")
						: message("well/formation-order.listed-after-it"),
			},
		],
	});
};

const checkBase = (
	each: FormationDefinition,
	i: number,
	top: number,
	base: number,
	next: number | undefined,
	desk: Desk,
): void => {
	// Where the tops themselves are out of order, the bases say nothing more.
	if (each.base === undefined || (next !== undefined && next < top)) return;
	const at = placeOf(each.base.depth, [...AT, i, "base"]);
	const found = asWritten(each.base.depth);
	if (base <= top)
		fault(desk, "well/top-below-bottom", at, {
			what: message("well/top-below-bottom.base-is-not-below-its", { each: each.name }),
			expected: message("well/top-below-bottom.base-deeper-than-top"),
			found,
			mend: message("well/top-below-bottom.mend"),
			related: [{ at: { path: [...AT, i, "top"] }, label: message("well/top-below-bottom.its-top") }],
		});
	else if (next !== undefined && base > next + SAME_DEPTH)
		fault(desk, "well/formation-base", at, {
			what: message("well/formation-base.what", { each: each.name }),
			expected: message("well/formation-base.expected"),
			found,
			mend: message("well/formation-base.mend"),
			related: [
				{
					at: { path: [...AT, i + 1, "top"] },
					label: message("well/formation-base.label"),
				},
			],
		});
};

const resolveWater = (
	written: NonNullable<GeologyDefinition["water"]>,
	datum: Datum,
	desk: Desk,
): readonly WaterZone[] => {
	const ids = distinctIds(written.map(({ name }) => name));
	const zones = written.map((each, i): WaterZone => {
		const top = straightDown(each.top, datum);
		const base = straightDown(each.base, datum);
		if (base.value <= top.value)
			fault(desk, "well/top-below-bottom", placeOf(each.base.depth, ["geology", "water", i, "base"]), {
				what: message("well/top-below-bottom.base-is-not-below-its", { each: each.name }),
				expected: message("well/top-below-bottom.base-deeper-than-top"),
				found: asWritten(each.base.depth),
				mend: message("well/top-below-bottom.mend"),
				related: [
					{ at: { path: ["geology", "water", i, "top"] }, label: message("well/top-below-bottom.its-top") },
				],
			});
		return {
			id: ids[i] ?? each.name,
			name: each.name,
			top,
			base,
			...(each.dissolved_solids === undefined ? {} : { dissolvedSolids: each.dissolved_solids }),
			...(each.use === undefined ? {} : { use: each.use }),
		};
	});
	return zones.sort((a, b) => a.top.value - b.top.value);
};
