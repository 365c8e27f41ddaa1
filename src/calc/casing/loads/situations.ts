import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { Stimulation } from "../../../well/well.ts";
import { fluidsOutside } from "../../cement/standing-fluids.ts";
import { DATUM_DEPTH, mudGradient } from "../../pressure/hydrostatic.ts";
import type { LoadSituation } from "../../results.ts";
import { slurryDensity } from "../../stimulation/slurry.ts";
import { tvdAt } from "../../trajectory/at-depth.ts";
import { maximumTvd } from "../../trajectory/path-summary.ts";
import { pressureProfile } from "./profiles.ts";
import type { StringContext } from "./string-loads.ts";
import { gasGradient, gasPressureBelow } from "./surface-pressure-of-string.ts";

const NO_PRESSURE = constant("pressure", 0, "open to the air", cite("definition"));
const EMPTY = constant("pressure-gradient", 0, "empty pipe", cite("definition"));

/** Pressures inside and outside a string when something happens to it. */
export interface Situation {
	readonly name: LoadSituation;
	readonly kind: "burst" | "collapse";
	readonly inside: KnownTable;
	readonly outside: KnownTable;
}

/** The situations whose inputs are known, and the mud that the string hangs in. */
export const situationsOf = (
	context: StringContext,
	mud: Known<"density">,
): { readonly mud: KnownTable; readonly all: readonly Situation[] } => {
	const bottom = maximumTvd.of({ path: context.path, MD: context.string.shoe });
	const column = (p_0: Known<"pressure">, density: Known<"density">) =>
		pressureProfile.of({ p_0, D_0: DATUM_DEPTH, g: [mudGradient.of({ ρ: density })], D_bottom: [bottom] });
	const gas = (p_0: Known<"pressure">) =>
		pressureProfile.of({ p_0, D_0: DATUM_DEPTH, g: [gasGradient(context.well)], D_bottom: [bottom] });
	const inMud = column(NO_PRESSURE, mud);
	const burst = (name: LoadSituation, inside: KnownTable | undefined): readonly Situation[] =>
		inside === undefined ? [] : [{ name, kind: "burst", inside, outside: backup(context, bottom) }];
	const { string, results } = context;
	const kick = results.maximum_surface_pressure;
	const shutIn = shutInPressure(context);
	const test = string.pressureTest?.pressure;
	const treating = treatingPressure(context);
	const inPipe = string.cement?.displacement?.density ?? mud;
	return {
		mud: inMud,
		all: [
			{ name: "evacuation", kind: "collapse", inside: evacuated(context, bottom), outside: inMud },
			...cementing(context, column(NO_PRESSURE, inPipe)),
			...burst("gas-kick", kick && gas(kick)),
			...burst("pressure-test", test && column(test, inPipe)),
			...burst("stimulation", treating && column(treating.pressure, treating.density)),
			...burst("shut-in-gas", shutIn && gas(shutIn)),
		],
	};
};

/** Outside in burst: the design basis's water, from ground level down. */
const backup = ({ well, path }: StringContext, bottom: Known<"true-vertical-depth">): KnownTable =>
	pressureProfile.of({
		p_0: NO_PRESSURE,
		D_0: DATUM_DEPTH,
		g: [EMPTY, well.designBasis.burstBackup],
		D_bottom: [tvdAt(path, well.datum.groundLevel), bottom],
	});

const evacuated = ({ string }: StringContext, bottom: Known<"true-vertical-depth">): KnownTable => {
	const { evacuation } = string;
	const [g, D_bottom] =
		evacuation?.kind === "level"
			? [
					[EMPTY, mudGradient.of({ ρ: evacuation.fluid })],
					[evacuation.level, bottom],
				]
			: [[EMPTY], [bottom]];
	return pressureProfile.of({ p_0: NO_PRESSURE, D_0: DATUM_DEPTH, g, D_bottom });
};

/** The fluids that stand outside when the plug lands, and the displacement inside with no pressure held on it. */
const cementing = ({ well, path, string }: StringContext, inside: KnownTable): readonly Situation[] => {
	const job = string.cement;
	const [first, ...rest] = job?.slurries ?? [];
	if (job === undefined || first === undefined) return [];
	const top = rest.reduce((least, { top: t }) => (t.value < least.value ? t : least), first.top);
	const { columns } = fluidsOutside(well, path, string, job, top);
	const [uppermost] = columns;
	if (uppermost === undefined) return [];
	const outside = pressureProfile.of({
		p_0: NO_PRESSURE,
		D_0: uppermost.top,
		g: columns.map(({ density }) => mudGradient.of({ ρ: density })),
		D_bottom: columns.map(({ bottom }) => bottom),
	});
	return [{ name: "cementing", kind: "collapse", inside, outside }];
};

/** The innermost string that reaches surface may be shut in on the deepest hole's gas. */
const shutInPressure = ({ well, path, string }: StringContext): Known<"pressure"> | undefined => {
	const innermost = well.strings.findLast((s) => s.kind !== "liner");
	const hole = well.holes.at(-1);
	if (innermost?.id !== string.id || hole === undefined) return undefined;
	const above = string.within === undefined ? undefined : well.strings.find((s) => s.id === string.within);
	return gasPressureBelow(well, path, tvdAt(path, above?.shoe ?? string.top), hole);
};

interface Treating {
	readonly pressure: Known<"pressure">;
	readonly density: Known<"density">;
}

/** The greatest pressure the pumps may reach, on a column of the heaviest slurry: a screen-out has no friction. */
const treatingPressure = ({ well, string }: StringContext): Treating | undefined => {
	const { stimulation } = well;
	if (stimulation === undefined || stimulation.treatedThrough !== string.id) return undefined;
	const pressure = stimulation.limits?.maximumTreatingPressure ?? stimulation.limits?.reliefValve;
	return pressure && { pressure, density: heaviestSlurry(stimulation) };
};

const heaviestSlurry = (stimulation: Stimulation): Known<"density"> => {
	const base = stimulation.baseFluid.density;
	return stimulation.stages
		.flatMap(({ steps }) => steps)
		.flatMap(({ concentration, proppant }) => {
			const sand = stimulation.proppants.find(({ id }) => id === proppant);
			return concentration === undefined || sand === undefined
				? []
				: [slurryDensity.of({ ρ_f: base, c: concentration, SG: sand.specificGravity })];
		})
		.reduce<Known<"density">>(
			(heaviest, slurry) => (slurry.value > heaviest.value ? slurry : heaviest),
			base,
		);
};
