import type { Known, KnownTable } from "../../cite/known.ts";
import type { CasingString, CementJob, Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import { DATUM_DEPTH } from "../pressure/hydrostatic.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { annulusIntervals } from "./annulus.ts";
import { DATUM } from "./bore.ts";
import { type FluidColumn, filledTo } from "./column.ts";

type Depth = Known<"measured-depth">;

/** What stands outside a string when the plug lands, or which fluid's density is wanting. */
interface StandingFluids {
	readonly columns: readonly FluidColumn[];
	readonly spacerTop?: Depth;
	readonly unknown?: "mud" | "spacer";
}

/**
 * The fluids outside the string, from the depth datum to the shoe: mud, spacer, slurries.
 *
 * The spacer stands on the cement as high as its volume fills the annulus, up to the datum. A hole drilled with air has
 * no mud to stand above it. A spacer flows as the mud does, for want of a figure of its own. Slurries stand where the plan puts them, the uppermost from the column's top.
 */
export const fluidsOutside = (
	well: Well,
	path: KnownTable,
	string: CasingString,
	job: CementJob,
	top: Depth,
): StandingFluids => {
	const tvd = (md: Depth) => (md === DATUM ? DATUM_DEPTH : tvdAt(path, md));
	const above = fluidsAbove(well, string, job, top);
	if ("unknown" in above) return { columns: [], unknown: above.unknown };
	const cement = slurriesOutside(job, top);
	const columns = [...above.stretches, ...cement].map((stretch) => ({
		...stretch,
		top: tvd(stretch.from),
		bottom: tvd(stretch.to),
	}));
	return { columns, ...(above.spacerTop === undefined ? {} : { spacerTop: above.spacerTop }) };
};

type Stretch = Omit<FluidColumn, "top" | "bottom">;

const fluidsAbove = (
	well: Well,
	string: CasingString,
	job: CementJob,
	top: Depth,
):
	| { readonly stretches: readonly Stretch[]; readonly spacerTop?: Depth }
	| { readonly unknown: "mud" | "spacer" } => {
	if (top.value <= 0) return { stretches: [] };
	const { spacer } = job;
	const spacerTop = spacer && spacerReaches(well, string, job, spacer.volume, top);
	if (spacer !== undefined && spacer.density === undefined) return { unknown: "spacer" };
	const mudTo = spacerTop ?? top;
	const mud = string.hole.fluid;
	const stretches: Stretch[] = [];
	if (mudTo.value > 0) {
		if (mud?.density !== undefined)
			stretches.push({ fluid: "mud", from: DATUM, to: mudTo, density: mud.density, ...rheology(mud) });
		else if (mud?.kind !== "air") return { unknown: "mud" };
	}
	if (spacerTop !== undefined && spacer?.density !== undefined)
		stretches.push({
			fluid: "spacer",
			from: spacerTop,
			to: top,
			density: spacer.density,
			...(mud === undefined ? {} : rheology(mud)),
		});
	return { stretches, ...(spacerTop === undefined ? {} : { spacerTop }) };
};

/** Filled from the cement upward; what the annulus does not hold has gone over the flowline. */
const spacerReaches = (
	well: Well,
	string: CasingString,
	job: CementJob,
	volume: Known<"volume">,
	top: Depth,
): Depth => {
	const up = [...annulusIntervals(well, string, job.volumeBasis, DATUM, top)].reverse();
	const reached = filledTo.of({
		V: volume,
		MD_bottom: top,
		C_i: up.map((i) => i.capacity),
		L_i: up.map((i) => i.length),
	});
	return reached.value <= 1e-6 ? DATUM : reached;
};

/** Deepest slurries first to last in depth; where a recorded top differs from the plan's, it is the column's. */
const slurriesOutside = (job: CementJob, top: Depth): readonly Stretch[] =>
	[...job.slurries]
		.sort((a, b) => a.top.value - b.top.value)
		.flatMap((slurry, i) => {
			const from = i === 0 || slurry.top.value < top.value ? top : slurry.top;
			return slurry.bottom.value <= from.value
				? []
				: [{ fluid: slurry.id, from, to: slurry.bottom, density: slurry.density, ...rheology(slurry) }];
		});

const rheology = ({
	plasticViscosity,
	yieldPoint,
}: {
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
}) => ({ ...maybe("plasticViscosity", plasticViscosity), ...maybe("yieldPoint", yieldPoint) });
