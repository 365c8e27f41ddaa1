import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { message } from "../../../messages/message.ts";
import type { CasingString, Well } from "../../../well/well.ts";
import { fluidsOutside } from "../../cement/standing-fluids.ts";
import { DATUM_DEPTH, mudGradient } from "../../pressure/hydrostatic.ts";
import type { LoadSituation } from "../../results.ts";
import { tvdAt } from "../../trajectory/at-depth.ts";
import { maximumTvd } from "../../trajectory/path-summary.ts";
import { saltOn } from "./mobile-salt.ts";
import { pressureProfile } from "./profiles.ts";
import { bumpPressure, creepingProfile, packedProfile, pressureAtDepth } from "./stepped-profiles.ts";
import type { StringContext } from "./string-frame.ts";
import { gasGradient, gasPressureBelow } from "./surface-pressure-of-string.ts";
import { treatingPressure } from "./treating-pressure.ts";

const NO_PRESSURE = constant("pressure", 0, "open to the air", cite("definition"));
const EMPTY = constant("pressure-gradient", 0, "empty pipe", cite("definition"));
const OVERBURDEN = constant(
	"pressure-gradient",
	1,
	"overburden, where none is stated",
	cite("devereux", "Table 1-4, collapse: plastic salt"),
);
const OVER_LIFT = constant(
	"pressure",
	1000,
	"held over the lift when the plug is bumped, where none is stated: the upper end of 500 to 1,000 psi",
	cite("common-practice"),
);
const DRAWN_EMPTY = constant(
	"pressure",
	0,
	"rock drawn down to nothing, where no pressure is stated",
	cite("definition"),
);

/** Pressures inside and outside a string when something happens to it. */
export interface Situation {
	readonly name: LoadSituation;
	readonly kind: "burst" | "collapse";
	readonly inside: KnownTable;
	readonly outside: KnownTable;
	/** At surface, inside. */
	readonly surfacePressure?: Known<"pressure">;
	/** Open pipe on the hook until the cement has set, held at both ends from then on. */
	readonly axial: "open" | "held";
	/** Cold fluid has been pumped through. */
	readonly cooled?: true;
	/** What flows has warmed it, and it has not cooled since. */
	readonly hot?: true;
}

export interface Situations {
	/** Hanging in mud, inside and out. */
	readonly mud: KnownTable;
	/** When the cement has set around it: what its length was fixed with. */
	readonly set: { readonly inside: KnownTable; readonly outside: KnownTable };
	readonly all: readonly Situation[];
}

interface Fluids {
	readonly bottom: Known<"true-vertical-depth">;
	readonly mud: KnownTable;
	readonly inPipe: Known<"density">;
	readonly displaced: KnownTable;
	/** Mud, spacer and slurries outside when the plug lands; absent where one's density is not known. */
	readonly wet: KnownTable | undefined;
	readonly column: (p_0: Known<"pressure">, density: Known<"density">) => KnownTable;
	readonly gas: (p_0: Known<"pressure">) => KnownTable;
}

/** The situations whose inputs are known, and the fluids that the string was landed and set in. */
export const situationsOf = (context: StringContext, mud: Known<"density">): Situations => {
	const fluids = fluidsOf(context, mud);
	return {
		mud: fluids.mud,
		set: { inside: fluids.displaced, outside: fluids.wet ?? fluids.mud },
		all: [
			...whileCementing(context, fluids),
			...whileDrilling(context, fluids),
			...whileTreating(context, fluids),
			...whileProducing(context, fluids),
		],
	};
};

const fluidsOf = (context: StringContext, mud: Known<"density">): Fluids => {
	const { string, path, well } = context;
	const bottom = maximumTvd.of({ path, MD: string.shoe });
	const one = (p_0: Known<"pressure">, g: Known<"pressure-gradient">) =>
		pressureProfile.of({ p_0, D_0: DATUM_DEPTH, g: [g], D_bottom: [bottom] });
	const column = (p_0: Known<"pressure">, density: Known<"density">) =>
		one(p_0, mudGradient.of({ ρ: density }));
	const inPipe = string.cement?.displacement?.density ?? mud;
	return {
		bottom,
		mud: column(NO_PRESSURE, mud),
		inPipe,
		displaced: column(NO_PRESSURE, inPipe),
		wet: wetFluids(context),
		column,
		gas: (p_0) => one(p_0, gasGradient(well)),
	};
};

/** What stands outside when the plug lands. */
const wetFluids = ({ well, path, string }: StringContext): KnownTable | undefined => {
	const job = string.cement;
	const [first, ...rest] = job?.slurries ?? [];
	if (job === undefined || first === undefined) return undefined;
	const top = rest.reduce((least, { top: t }) => (t.value < least.value ? t : least), first.top);
	const { columns } = fluidsOutside(well, path, string, job, top);
	const [uppermost] = columns;
	return uppermost === undefined
		? undefined
		: pressureProfile.of({
				p_0: NO_PRESSURE,
				D_0: uppermost.top,
				g: columns.map(({ density }) => mudGradient.of({ ρ: density })),
				D_bottom: columns.map(({ bottom }) => bottom),
			});
};

/** Outside in burst: the stated backup, from ground level down. */
const backup = ({ well, path, string }: StringContext, { bottom }: Fluids): KnownTable =>
	pressureProfile.of({
		p_0: NO_PRESSURE,
		D_0: DATUM_DEPTH,
		g: [EMPTY, string.burstBackup ?? well.designBasis.burstBackup],
		D_bottom: [tvdAt(path, well.datum.groundLevel), bottom],
	});

const burst = (
	context: StringContext,
	fluids: Fluids,
	name: LoadSituation,
	surfacePressure: Known<"pressure"> | undefined,
	inside: (surfacePressure: Known<"pressure">) => KnownTable,
): readonly Situation[] =>
	surfacePressure === undefined
		? []
		: [
				{
					name,
					kind: "burst",
					inside: inside(surfacePressure),
					outside: backup(context, fluids),
					surfacePressure,
					axial: "held",
				},
			];

const whileCementing = (context: StringContext, fluids: Fluids): readonly Situation[] => {
	const { wet, displaced, inPipe, bottom } = fluids;
	const job = context.string.cement;
	if (wet === undefined || job === undefined) return [];
	const cementing: Situation = {
		name: "cementing",
		kind: "collapse",
		inside: displaced,
		outside: wet,
		axial: "open",
	};
	const pressure =
		job.actual?.bump ??
		bumpPressure.of({
			p_o: pressureAtDepth.of({ profile: wet, D: bottom }),
			p_i: pressureAtDepth.of({ profile: displaced, D: bottom }),
			over: job.bump ?? OVER_LIFT,
		});
	if (job.plugs.length === 0) return [cementing];
	return [
		cementing,
		{
			name: "bumped-plug",
			kind: "burst",
			inside: fluids.column(pressure, inPipe),
			outside: wet,
			surfacePressure: pressure,
			axial: "open",
		},
	];
};

const whileDrilling = (context: StringContext, fluids: Fluids): readonly Situation[] => {
	const { string, results } = context;
	return [
		...burst(context, fluids, "pressure-test", string.pressureTest?.pressure, (p) =>
			fluids.column(p, fluids.inPipe),
		),
		...burst(context, fluids, "gas-kick", results.maximum_surface_pressure, fluids.gas),
		{
			name: "evacuation",
			kind: "collapse",
			inside: evacuated(context.string, fluids),
			outside: fluids.mud,
			axial: "held",
		},
	];
};

const evacuated = ({ evacuation }: CasingString, { bottom }: Fluids): KnownTable => {
	const [g, D_bottom] =
		evacuation?.kind === "level"
			? [
					[EMPTY, mudGradient.of({ ρ: evacuation.fluid })],
					[evacuation.level, bottom],
				]
			: [[EMPTY], [bottom]];
	return pressureProfile.of({ p_0: NO_PRESSURE, D_0: DATUM_DEPTH, g, D_bottom });
};

const whileTreating = (context: StringContext, fluids: Fluids): readonly Situation[] => {
	const treating = treatingPressure(context);
	return burst(context, fluids, "stimulation", treating?.pressure, (p) =>
		treating === undefined ? fluids.displaced : fluids.column(p, treating.density),
	).map((each) => ({ ...each, cooled: true as const }));
};

/** The innermost string that reaches surface is the one produced through. */
const isProduced = ({ strings }: Well, { id }: CasingString): boolean =>
	strings.findLast((s) => s.kind !== "liner")?.id === id;

const shutInPressure = ({ well, path, string }: StringContext): Known<"pressure"> | undefined => {
	const hole = well.holes.at(-1);
	if (!isProduced(well, string) || hole === undefined) return undefined;
	const above = string.within === undefined ? undefined : well.strings.find((s) => s.id === string.within);
	return gasPressureBelow(well, path, tvdAt(path, above?.shoe ?? string.top), hole);
};

const whileProducing = (context: StringContext, fluids: Fluids): readonly Situation[] => {
	const { well, string, gaps } = context;
	const shutIn = shutInPressure(context);
	const { production } = string;
	if (isProduced(well, string) && production === undefined)
		gaps.missing(`casing.${string.id}.loads.tubing-leak`, message("calc/no-packer-is-given-so-leak"), [
			["casing", well.strings.indexOf(string), "loads", "production"],
		]);
	return [
		...burst(context, fluids, "shut-in-gas", shutIn, fluids.gas),
		...(production === undefined
			? []
			: [
					...throughTubing(context, fluids, production, shutIn),
					...whileHot(context, fluids, production, shutIn),
				]),
		...creepingSalt(context, fluids),
	];
};

/** Tubing pressure comes out on top of the packer fluid; below the packer the string sees the rock. */
const throughTubing = (
	context: StringContext,
	fluids: Fluids,
	production: NonNullable<CasingString["production"]>,
	shutIn: Known<"pressure"> | undefined,
): readonly Situation[] => {
	const D_packer = tvdAt(context.path, production.packer);
	const packed = (p_0: Known<"pressure">, below: KnownTable) =>
		packedProfile.of({ above: fluids.column(p_0, production.packerFluid), below, D_packer });
	const tubing = production.tubingPressure ?? shutIn;
	const drawn = pressureProfile.of({
		p_0: production.drawnDownTo ?? DRAWN_EMPTY,
		D_0: DATUM_DEPTH,
		g: [EMPTY],
		D_bottom: [fluids.bottom],
	});
	return [
		...burst(context, fluids, "tubing-leak", tubing, (p) => packed(p, fluids.gas(p))),
		{
			name: "drawdown",
			kind: "collapse",
			inside: packed(NO_PRESSURE, drawn),
			outside: fluids.mud,
			axial: "held",
		},
	];
};

/** The same pressures in steel that production has warmed: hot pipe wants to be longer, and is weaker. */
const whileHot = (
	context: StringContext,
	fluids: Fluids,
	production: NonNullable<CasingString["production"]>,
	shutIn: Known<"pressure"> | undefined,
): readonly Situation[] => {
	const { string, gaps, well } = context;
	const at = ["casing", well.strings.indexOf(string), "loads", "production"] as const;
	const asked = (
		input: string,
		code: "calc/no-producing-temperature-is-given" | "calc/no-shut-in-pressure-is-known-so-hot",
		situations: readonly LoadSituation[],
	) => {
		for (const each of situations)
			gaps.missing(`casing.${string.id}.loads.${each}`, message(code), [[...at, input]]);
	};
	if (production.producingTemperature === undefined) {
		asked("producing_temperature", "calc/no-producing-temperature-is-given", HOT);
		return [];
	}
	const { surfaceTemperature, temperatureGradient } = well.geology;
	if (surfaceTemperature === undefined || temperatureGradient === undefined) {
		for (const each of HOT)
			gaps.missing(`casing.${string.id}.loads.${each}`, message("calc/no-rock-temperature-is-given-so-hot"), [
				["geology", "temperature"],
			]);
		return [];
	}
	const tubing = production.tubingPressure ?? shutIn;
	if (tubing === undefined)
		asked("tubing_pressure", "calc/no-shut-in-pressure-is-known-so-hot", ["shut-in-hot", "tubing-leak-hot"]);
	return [
		...throughTubing(context, fluids, production, shutIn).map((each) => ({
			...each,
			name: each.name === "drawdown" ? ("producing-hot" as const) : ("tubing-leak-hot" as const),
		})),
		...burst(context, fluids, "shut-in-hot", tubing, fluids.gas),
	].map((each) => ({ ...each, hot: true as const }));
};

const HOT: readonly LoadSituation[] = ["producing-hot", "shut-in-hot", "tubing-leak-hot"];

const creepingSalt = (context: StringContext, fluids: Fluids): readonly Situation[] => {
	const { well, string } = context;
	const beds = saltOn(context, fluids.bottom);
	if (beds.length === 0) return [];
	return [
		{
			name: "mobile-salt",
			kind: "collapse",
			inside: evacuated(string, fluids),
			outside: creepingProfile.of({
				fluid: fluids.mud,
				top: beds.map(({ top }) => top),
				base: beds.map(({ base }) => base ?? fluids.bottom),
				g: well.geology.overburden ?? OVERBURDEN,
				h: well.datum.aboveGround,
			}),
			axial: "held",
		},
	];
};
