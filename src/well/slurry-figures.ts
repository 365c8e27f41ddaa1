import type { CementClassRow } from "../catalog/cement-table.ts";
import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { CementDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Message, message } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import { quantity } from "../units/quantity.ts";
import { type Desk, fault, maybe } from "./desk.ts";
import { choiceOf, listOf } from "./said.ts";
import type { Slurry, SlurryComponent, SlurryDesign } from "./well.ts";

type Written = CementDefinition["slurries"][number];
/** Names of the figures of a slurry. */
export const figureName = (figure: "density" | "yield" | "water"): Message => message(FIGURE_NAMES[figure]);

const FIGURE_NAMES = {
	density: "well/figure.density",
	yield: "well/figure.yield",
	water: "well/figure.water",
} as const;

type Component = NonNullable<Written["components"]>[number];

/** Specific gravity of portland cement of every class. */
const CEMENT_GRAVITY: Known<"ratio"> = {
	dimension: "ratio",
	value: quantity("ratio", 3.14),
	from: {
		kind: "constant",
		name: "specific gravity of cement",
		source: cite("common-practice"),
	},
};

/** Stands where a figure is still to be worked from the components; the calculation replaces it first of all. */
const toBeWorked = <D extends Dimension>(dimension: D): Known<D> => ({
	dimension,
	value: quantity(dimension, Number.NaN),
	from: {
		kind: "constant",
		name: "to be worked from the components",
		source: cite("definition"),
	},
});

/**
 * A slurry's density, yield and water: as stated, else to be worked from its components. Given neither, or too little of
 * either, is a fault.
 */
export const figures = (
	written: Written,
	known: CementClassRow | undefined,
	at: Path,
	desk: Desk,
): Pick<Slurry, "density" | "yield" | "water" | "design"> => {
	const { density, yield: slurryYield, water, water_by_weight: byWeight } = written;
	const missing = [
		...(density === undefined ? (["density"] as const) : []),
		...(slurryYield === undefined ? (["yield"] as const) : []),
		...(water === undefined ? (["water"] as const) : []),
	];
	const designed = written.components !== undefined || byWeight !== undefined || missing.length > 0;
	const workable = water !== undefined || byWeight !== undefined || density !== undefined;
	const bare = written.components === undefined && byWeight === undefined;
	if (missing.length > 0 && (bare || !workable))
		fault(desk, "well/slurry-figures", at, {
			what: message("well/slurry-figures.what", {
				role: written.role,
				missing: listOf(missing.map(figureName)),
			}),
			expected: message("well/slurry-figures.expected"),
			mend: message("well/slurry-figures.mend"),
		});
	return {
		density: density ?? toBeWorked("density"),
		yield: slurryYield ?? toBeWorked("slurry-yield"),
		water: water ?? toBeWorked("water-requirement"),
		...(designed
			? {
					design: {
						cementGravity: known?.specificGravity ?? CEMENT_GRAVITY,
						...maybe("water", water),
						...maybe("waterByWeight", byWeight),
						components: (written.components ?? []).flatMap(
							(each, i) => component(each, [...at, "components", i], desk) ?? [],
						),
						open: missing,
					} satisfies SlurryDesign,
				}
			: {}),
	};
};

const component = (written: Component, at: Path, desk: Desk): SlurryComponent | undefined => {
	const listed = desk.catalog.cementAdditive(written.material);
	const gravity = written.specific_gravity ?? listed?.specificGravity;
	const amounts = [written.share, written.share_of_water, written.volume].filter(
		(each) => each !== undefined,
	);
	if (gravity === undefined || amounts.length !== 1)
		return fault(desk, "well/slurry-material", at, {
			what:
				gravity === undefined
					? message("well/slurry-material.what", { material: written.material })
					: amounts.length === 0
						? message("well/slurry-material.has-no-amount", { material: written.material })
						: message("well/slurry-material.has-more-than-one-amount", { material: written.material }),
			expected:
				gravity === undefined
					? message("well/slurry-material.expected", {
							cementAdditives: choiceOf(desk.catalog.cementAdditives.map(({ id }) => id)),
						})
					: message("well/slurry-material.one-share-share-water-and"),
			found: written.material,
			mend:
				gravity === undefined
					? message("well/slurry-material.mend")
					: message("well/slurry-material.leave-one-amount"),
		});
	return {
		material: written.material,
		specificGravity: gravity,
		...(listed?.absoluteVolume === undefined || written.specific_gravity !== undefined
			? {}
			: {
					absoluteVolume: {
						dimension: "specific-volume",
						value: quantity("specific-volume", listed.absoluteVolume),
						from: {
							kind: "catalogue",
							table: "cement additives",
							row: listed.id,
							column: "absolute_volume",
							source: listed.source,
						},
					},
				}),
		...maybe("share", written.share),
		...maybe("shareOfWater", written.share_of_water),
		...maybe("volume", written.volume),
	};
};
