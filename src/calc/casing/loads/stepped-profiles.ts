import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { profileAt } from "./profiles.ts";

const GIVES = { tvd: "true-vertical-depth", pressure: "pressure" } as const;

/** A step is taken over this much depth, so that every depth has one pressure [ft]. */
const STEP = 0.01;

interface ProfileRow {
	readonly tvd: number;
	readonly pressure: number;
}

const rowsOf = (profile: KnownTable): readonly ProfileRow[] =>
	profile.rows as unknown as readonly ProfileRow[];

const at = (profile: KnownTable, tvd: number): ProfileRow => ({
	tvd,
	pressure: profileAt(profile, "pressure", tvd),
});

/** One profile down to a depth, another below it. */
const joined = (above: KnownTable, D: number, below: KnownTable): readonly ProfileRow[] => [
	...rowsOf(above).filter(({ tvd }) => tvd < D),
	at(above, D),
	at(below, D + STEP),
	...rowsOf(below).filter(({ tvd }) => tvd > D + STEP),
	at(below, (rowsOf(below).at(-1)?.tvd ?? D) + D + 1),
];

/** Pressure of one profile above a packer, of another below it. */
export const packedProfile = tableFormula({
	id: "casing/packed-profile",
	name: "Pressure inside, parted by a packer",
	expression: "p_above(D) down to the packer, p_below(D) under it",
	source: cite("hydrostatics"),
	inputs: {
		above: { table: "pressure" },
		below: { table: "pressure" },
		D_packer: "true-vertical-depth",
	},
	gives: GIVES,
	compute: ({ above, below, D_packer }) => joined(above, D_packer, below),
});

/** Rock that creeps presses with its overburden where it lies; fluid above and below it. */
export const creepingProfile = tableFormula({
	id: "casing/creeping-rock-profile",
	name: "Pressure outside, rock that creeps",
	expression:
		"greater of p_fluid and g (D − h) across the rock, p_fluid elsewhere; g the overburden gradient",
	source: cite("devereux", "Table 1-4, collapse: plastic salt, 1 psi/ft"),
	inputs: {
		fluid: { table: "pressure" },
		top: { many: "true-vertical-depth" },
		base: { many: "true-vertical-depth" },
		g: "pressure-gradient",
		h: "length",
	},
	gives: GIVES,
	validity: "a base for each top; the same pressure from every side",
	compute: ({ fluid, top, base, g, h }) => {
		if (top.length !== base.length) return [];
		const rock = (tvd: number): ProfileRow => ({
			tvd,
			pressure: Math.max(profileAt(fluid, "pressure", tvd), g * Math.max(0, tvd - h)),
		});
		const beds = top.map((each, i) => ({ top: each as number, base: (base[i] ?? Number.NaN) as number }));
		const outside = rowsOf(fluid).filter(({ tvd }) =>
			beds.every((bed) => tvd < bed.top || tvd > bed.base + STEP),
		);
		const deepest = Math.max(...beds.map((bed) => bed.base), ...rowsOf(fluid).map(({ tvd }) => tvd));
		return [
			...outside,
			...beds.flatMap((bed) => [
				at(fluid, bed.top),
				rock(bed.top + STEP),
				rock(bed.base),
				at(fluid, bed.base + STEP),
			]),
			at(fluid, deepest + 1),
		].sort((a, b) => a.tvd - b.tvd);
	},
});

/** A profile's pressure at one depth. */
export const pressureAtDepth = formula({
	id: "casing/pressure-at-depth",
	name: "Pressure at a depth",
	expression: "p(D), straight between the profile's rows",
	source: cite("hydrostatics"),
	inputs: { profile: { table: "pressure" }, D: "true-vertical-depth" },
	gives: "pressure",
	compute: ({ profile, D }) => profileAt(profile, "pressure", D),
});

export const bumpPressure = formula({
	id: "casing/bump-pressure",
	name: "Surface pressure when the plug is bumped",
	expression: "P = max(0, p_o − p_i) at the shoe + what is held over it",
	source: cite(
		"common-practice",
		"500 to 1,000 psi over the final circulating pressure, friction at the last slow rate left out",
	),
	inputs: { p_o: "pressure", p_i: "pressure", over: "pressure" },
	gives: "pressure",
	compute: ({ p_o, p_i, over }) => Math.max(0, p_o - p_i) + over,
});
