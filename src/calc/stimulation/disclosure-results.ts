import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Additive, Stimulation } from "../../well/well.ts";
import { totalVolume } from "../cement/capacity.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { DisclosureResults } from "../results.ts";
import { additiveVolume, fluidMass, ingredientMass, massShare } from "./disclosure.ts";
import { totalMass } from "./slurry.ts";

interface Pumped {
	readonly water: Known<"volume">;
	readonly neat: readonly { readonly id: string; readonly volume: Known<"volume"> }[];
	readonly proppants: readonly { readonly id: string; readonly mass: Known<"mass"> }[];
}

const WATER_CAS = "7732-18-5";

/**
 * What is pumped, by mass, each ingredient at the greatest share its safety data sheet allows.
 *
 * Nothing where an additive's density or amount is not known: every share has the whole mass under it, so that one
 * unknown mass makes all of them wrong.
 */
export const disclosureResults = (
	stimulation: Stimulation,
	pumped: Pumped,
	gaps: Gaps,
): DisclosureResults | undefined => {
	const base = fluidMass.of({ V: pumped.water, ρ: stimulation.baseFluid.density });
	const additives = stimulation.additives.map((additive) => amountOf(additive, pumped, gaps));
	const known = additives.filter((a) => a !== undefined);
	if (known.length < additives.length) return undefined;
	const total = totalMass.of({
		m_i: [base, ...pumped.proppants.map((p) => p.mass), ...known.map((a) => a.mass)],
	});
	const share = (...m_i: readonly Known<"mass">[]) => massShare.of({ m_i, m_t: total });
	const parts = known.flatMap((a) => a.ingredients);
	return {
		total_mass: total,
		base_fluid: { mass: base, share: share(base) },
		proppant_share: share(...pumped.proppants.map((p) => p.mass)),
		additive_share: share(...known.map((a) => a.mass)),
		proppants: pumped.proppants.map(({ id, mass }) => ({ id, mass, share: share(mass) })),
		additives: known.map(({ additive, volume, mass, ingredients }) => ({
			id: additive.id,
			name: additive.name,
			volume,
			mass,
			share: share(mass),
			ingredients: ingredients.map(({ mass: part, ...ingredient }) => ({
				...ingredient,
				...maybe("share", part && share(part)),
			})),
		})),
		chemicals: chemicalsOf(stimulation, pumped, base, parts).map(({ masses, ...chemical }) => ({
			...chemical,
			share: share(...masses),
		})),
	};
};

interface Part {
	readonly id: string;
	readonly name: string;
	readonly cas?: string;
	readonly trade_secret?: string;
	readonly share_of_additive?: Known<"share">;
	readonly mass?: Known<"mass">;
}

const amountOf = (additive: Additive, { water, neat }: Pumped, gaps: Gaps) => {
	const key = `stimulation.disclosure.additives.${additive.id}`;
	const metered = additive.rate && additiveVolume.of({ r: additive.rate, V: water });
	const volumes = [metered, ...neat.filter((n) => n.id === additive.id).map((n) => n.volume)].filter(
		(v) => v !== undefined,
	);
	const wants = (because: Said) => gaps.missing(key, because, [["stimulation", "additives"]]);
	if (volumes.length === 0)
		return wants(message("calc/has-no-rate-and-is-pumped", { additive: additive.name }));
	if (additive.density === undefined)
		return wants(message("calc/has-no-density-so-no-share", { additive: additive.name }));
	const volume = totalVolume.of({ V_i: volumes });
	const mass = fluidMass.of({ V: volume, ρ: additive.density });
	const ingredients = additive.ingredients.map((ingredient): Part => {
		const { name, cas, maxShare, tradeSecret } = ingredient;
		return {
			id: cas ?? name,
			name,
			...maybe("cas", cas),
			...maybe("trade_secret", tradeSecret),
			...maybe("share_of_additive", maxShare),
			...maybe("mass", maxShare && ingredientMass.of({ m_a: mass, s: maxShare })),
		};
	});
	return { additive, volume, mass, ingredients };
};

/** Each chemical once, in the order first met: the base fluid, counted as water, then proppants and additives. */
const chemicalsOf = (
	{ proppants }: Stimulation,
	pumped: Pumped,
	base: Known<"mass">,
	parts: readonly Part[],
) => {
	const all: Part[] = [
		{ id: WATER_CAS, name: "Water", cas: WATER_CAS, mass: base },
		...pumped.proppants.map(({ id, mass }): Part => {
			const kind = proppants.find((p) => p.id === id);
			return { id: kind?.cas ?? id, name: kind?.material ?? id, ...maybe("cas", kind?.cas), mass };
		}),
		...parts,
	];
	const chemicals = new Map<string, { id: string; name: string; cas?: string; masses: Known<"mass">[] }>();
	for (const { id, name, cas, mass } of all) {
		if (mass === undefined) continue;
		const chemical = chemicals.get(id) ?? { id, name, ...maybe("cas", cas), masses: [] };
		chemical.masses.push(mass);
		chemicals.set(id, chemical);
	}
	return [...chemicals.values()];
};
