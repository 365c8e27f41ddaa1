import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Checked } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { message, type Said } from "../../messages/message.ts";
import { listOf, measured } from "../../well/said.ts";
import type { Slurry, SlurryComponent, SlurryDesign } from "../../well/well.ts";
import {
	absoluteVolume,
	additiveMass,
	liquidMass,
	SACK_POUNDS,
	saltMass,
	slurryDensity,
	slurryYield,
	waterForDensity,
	waterFromShare,
} from "./slurry-design.ts";

type Water = Known<"water-requirement">;

/** A slurry worked from its components for one sack. */
interface DesignedSlurry {
	readonly density: Known<"density">;
	readonly yield: Known<"slurry-yield">;
	readonly water: Water;
	/** Of each component, in the order given. */
	readonly masses: readonly Known<"mass">[];
}

const SACK = constant("mass", SACK_POUNDS, "a sack of cement", cite("api-10a"));

/** By absolute volume, from the water stated or from the density wanted; undefined where there is neither. */
export const workedSlurry = (
	design: SlurryDesign,
	wanted: Known<"density"> | undefined,
): DesignedSlurry | undefined => {
	const stated = design.water ?? (design.waterByWeight && waterFromShare.of({ s: design.waterByWeight }));
	const volumes = [
		absoluteVolume.of({ SG: design.cementGravity }),
		...design.components.map(
			({ specificGravity, absoluteVolume: V }) => V ?? absoluteVolume.of({ SG: specificGravity }),
		),
	];
	const masses = (water: Water | undefined) =>
		design.components.map((component, i) => massOf(component, water, volumes[i + 1]));
	const dry = masses(stated);
	const known = dry.filter((mass) => mass !== undefined);
	const water =
		stated ??
		(wanted === undefined || known.length < dry.length
			? undefined
			: waterForDensity.of({ m_i: [SACK, ...known], V_i: volumes, ρ: wanted }));
	if (water === undefined || known.length < dry.length) return undefined;
	const inputs = { m_i: [SACK, ...known], V_i: volumes, w: water };
	return {
		density: slurryDensity.of(inputs),
		yield: slurryYield.of(inputs),
		water,
		masses: known,
	};
};

const massOf = (
	{ share, shareOfWater, volume }: SlurryComponent,
	water: Water | undefined,
	V: Known<"specific-volume"> | undefined,
): Known<"mass"> | undefined => {
	if (share !== undefined) return additiveMass.of({ s: share });
	if (volume !== undefined && V !== undefined) return liquidMass.of({ q: volume, V });
	return shareOfWater === undefined || water === undefined
		? undefined
		: saltMass.of({ s: shareOfWater, w: water });
};

/** Density and yield agree within what laboratories round to. */
const DENSITY_ROUNDING = 0.1;
const YIELD_ROUNDING = 0.02;
/** Water in gal/sk and by weight of cement agree within this share. */
const WATER_ROUNDING = 0.01;

/** Fills in what the slurry leaves open, and tells where what it states differs from what its components give. */
export const designSlurry = (slurry: Slurry, string: string, at: Path): Checked<Slurry> => {
	const { design } = slurry;
	if (design === undefined) return { diagnostics: [], value: slurry };
	const open = new Set(design.open);
	const stated = open.has("density") ? undefined : slurry.density;
	const worked = workedSlurry(design, stated);
	const usable =
		worked !== undefined &&
		Object.values([worked.density, worked.yield, worked.water]).every(({ value }) => Number.isFinite(value));
	if (!usable)
		return open.size === 0
			? { diagnostics: [], value: slurry }
			: {
					diagnostics: [
						diagnose(
							"calc/slurry-not-designed",
							{ path: at },
							{
								what: message("calc/slurry-not-designed.what", { slurry: slurry.id, string }),
								expected: message("calc/slurry-not-designed.expected"),
								mend: message("calc/slurry-not-designed.mend"),
							},
						),
					],
				};
	const differs = differences(slurry, worked, open);
	return {
		value: {
			...slurry,
			density: stated ?? worked.density,
			yield: open.has("yield") ? worked.yield : slurry.yield,
			water: open.has("water") ? worked.water : slurry.water,
		},
		diagnostics:
			differs.length === 0
				? []
				: [
						diagnose(
							"calc/slurry-design",
							{ path: at },
							{
								what: message("calc/slurry-design.what", {
									slurry: slurry.id,
									string,
									differs: listOf(differs.map(({ worked: gives }) => gives)),
								}),
								expected: message("calc/slurry-design.expected"),
								found: message("well/any-of", { choices: listOf(differs.map(({ stated: says }) => says)) }),
								mend: message("calc/slurry-design.mend"),
							},
						),
					],
	};
};

interface Difference {
	readonly worked: Said;
	readonly stated: Said;
}

const differences = (
	slurry: Slurry,
	worked: DesignedSlurry,
	open: ReadonlySet<string>,
): readonly Difference[] => {
	const found: Difference[] = [];
	const compare = (name: string, says: Known, gives: Known, within: number) => {
		if (open.has(name) || Math.abs(says.value - gives.value) <= within) return;
		found.push({
			worked: measured(gives.dimension, gives.value, says.value),
			stated: measured(says.dimension, says.value, gives.value),
		});
	};
	compare("density", slurry.density, worked.density, DENSITY_ROUNDING);
	compare("yield", slurry.yield, worked.yield, YIELD_ROUNDING);
	const { design } = slurry;
	const byWeight = design?.waterByWeight && waterFromShare.of({ s: design.waterByWeight });
	if (byWeight !== undefined && design?.water !== undefined)
		compare("water", slurry.water, byWeight, WATER_ROUNDING * byWeight.value);
	return found;
};
