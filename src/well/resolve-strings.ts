import type { Known } from "../cite/known.ts";
import type { CasingDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { pipeDepth } from "./datum.ts";
import { type Desk, maybe } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { unknownReference } from "./references.ts";
import { resolveCement } from "./resolve-cement.ts";
import { stringDesignFactors } from "./resolve-design-basis.ts";
import { type FoundSection, resolvePipe } from "./resolve-pipe.ts";
import { resolveAnnulusReadings } from "./seal-evidence.ts";
import type {
	CasingString,
	CentralizerRun,
	Datum,
	DesignBasis,
	Hole,
	PipeSection,
	PressureTest,
	ShoeTest,
} from "./well.ts";

/** A string with what later checks need beside it. */
export interface FoundString {
	readonly string: CasingString;
	readonly sections: readonly FoundSection[];
	/** Path of the string in the definition. */
	readonly at: Path;
}

interface Around {
	readonly holes: readonly Hole[];
	readonly datum: Datum;
	readonly basis: DesignBasis;
	readonly files: ReadFile;
}

interface FoundStrings {
	readonly strings: readonly FoundString[];
	/** Those left out, by their depths alone: what is attached to them can be told of all the same. */
	readonly leftOut: readonly FoundString[];
}

/** Strings from the outermost inward; one whose pipe or hole cannot be known is left out, and its fault told. */
export const resolveStrings = (
	written: readonly CasingDefinition[],
	around: Around,
	desk: Desk,
): FoundStrings => {
	const found: FoundString[] = [];
	const leftOut: FoundString[] = [];
	for (const [i, each] of written.entries()) {
		const at: Path = ["casing", i];
		const hole = around.holes.find(({ id }) => id === each.hole);
		if (hole === undefined)
			unknownReference(
				desk,
				[...at, "hole"],
				message("well/thing.hole"),
				each.hole,
				around.holes.map(({ id }) => id),
			);
		const sections = each.pipe.map((pipe, j) =>
			resolvePipe(pipe, [...at, "pipe", j], j + 1, around.datum, desk),
		);
		const complete = sections.filter((section) => section !== undefined);
		if (hole === undefined || complete.length < sections.length) {
			const depths = each.pipe.map((pipe, j) => byDepths(pipe, [...at, "pipe", j], j + 1, around.datum));
			const parts = { at, hole: hole ?? unknownHole(each.hole), sections: depths, before: found };
			const string = joinString(each, parts, around, desk);
			if (string !== undefined) leftOut.push({ string, sections: depths, at });
			continue;
		}
		const string = joinString(each, { at, hole, sections: complete, before: found }, around, desk);
		if (string !== undefined) found.push({ string, sections: complete, at });
	}
	return { strings: found, leftOut };
};

/** A run of pipe of which the depths are known, and no more: enough for what is attached to it. */
const byDepths = (
	{ from, to, od }: CasingDefinition["pipe"][number],
	at: Path,
	number: number,
	datum: Datum,
): FoundSection => ({
	section: { number, top: pipeDepth(from, datum), bottom: to, outsideDiameter: od } as PipeSection,
	at,
});

/** Stands in for a hole that is not known: its depths compare with nothing. */
const unknownHole = (id: string): Hole => {
	const unknown = { value: Number.NaN, from: { kind: "assumed", id } } as const;
	return {
		id,
		diameter: { dimension: "diameter", ...unknown },
		top: { dimension: "measured-depth", ...unknown },
		bottom: { dimension: "measured-depth", ...unknown },
	} as Hole;
};

interface Parts {
	readonly at: Path;
	readonly hole: Hole;
	readonly sections: readonly FoundSection[];
	readonly before: readonly FoundString[];
}

const joinString = (
	written: CasingDefinition,
	{ at, hole, sections, before }: Parts,
	{ datum, basis, files }: Around,
	desk: Desk,
): CasingString | undefined => {
	const first = sections[0]?.section;
	const last = sections.at(-1)?.section;
	if (first === undefined || last === undefined) return undefined;
	const { actual } = written;
	const reachesSurface =
		"surface" in (written.pipe[0]?.from ?? {}) || first.top.value <= datum.casingHanger.value;
	const kind = written.kind ?? (reachesSurface ? "casing" : "liner");
	const top = actual?.top === undefined ? first.top : pipeDepth(actual.top, datum);
	const shoe = actual?.shoe ?? last.bottom;
	const within = outside(kind, before);
	return {
		id: written.id,
		kind,
		hole,
		...maybe("within", within),
		top,
		shoe,
		...(actual === undefined ? {} : { plannedShoe: last.bottom }),
		...maybe("jointsRun", actual?.joints),
		...maybe("landed", actual?.date),
		sections: asLanded(sections, top, shoe),
		...maybe("shoeTrack", written.shoe_track),
		...(written.running_string === undefined
			? {}
			: {
					runningString: {
						outsideDiameter: written.running_string.od,
						insideDiameter: written.running_string.id,
					},
				}),
		...(written.running === undefined
			? {}
			: {
					running: {
						...maybe("speed", written.running.speed),
						...maybe("maximumPull", written.running.maximum_pull),
						...maybe("flotationCollar", written.running.flotation_collar),
						...maybe("torque", written.running.torque),
					},
				}),
		floats: written.floats ?? [],
		centralizers: centralizers(written, last.outsideDiameter, datum, desk),
		...(written.cement === undefined
			? {}
			: {
					cement: resolveCement(
						written.cement,
						{
							at: [...at, "cement"],
							string: written.id,
							hole,
							datum,
							shoe,
							plannedShoe: last.bottom,
							files,
						},
						desk,
					),
				}),
		...(written.pressure_test === undefined ? {} : { pressureTest: pressureTest(written.pressure_test) }),
		...(written.shoe_test === undefined ? {} : { shoeTest: shoeTest(written.shoe_test) }),
		...maybe("annulusReadings", resolveAnnulusReadings(written.annulus_readings)),
		designFactors: stringDesignFactors(written.design_factors, basis),
		...evacuation(written.loads?.evacuation),
		...maybe("burstBackup", written.loads?.burst_backup),
		...maybe("wear", written.loads?.wear),
		...production(written.loads?.production),
	};
};

/** The next string outside: of a tieback, what is outside the liner it joins. */
const outside = (kind: CasingString["kind"], before: readonly FoundString[]): string | undefined => {
	const previous = before.at(-1)?.string;
	return kind === "tieback" && previous?.kind === "liner" ? previous.within : previous?.id;
};

/** The runs of pipe, the ends moved to where the string was landed. */
const asLanded = (
	sections: readonly FoundSection[],
	top: Known<"measured-depth">,
	shoe: Known<"measured-depth">,
): CasingString["sections"] =>
	sections.map(({ section }, i) => ({
		...section,
		...(i === 0 ? { top } : {}),
		...(i === sections.length - 1 ? { bottom: shoe } : {}),
	}));

const centralizers = (
	written: CasingDefinition,
	pipe: Known<"diameter">,
	datum: Datum,
	desk: Desk,
): readonly CentralizerRun[] => {
	const runs = (kind: CentralizerRun["kind"], key: "bow_spring" | "rigid") =>
		(written.centralizers?.[key] ?? []).map(
			({ from, to, every, restoring_force: force, od }): CentralizerRun => ({
				kind,
				top: pipeDepth(from, datum),
				bottom: to,
				everyJoints: every,
				...maybe(
					"restoringForce",
					force ?? (kind === "bow spring" ? desk.catalog.restoringForce(pipe.value) : undefined),
				),
				...maybe("outsideDiameter", od),
			}),
		);
	return [...runs("bow spring", "bow_spring"), ...runs("rigid", "rigid")];
};

const pressureTest = (written: NonNullable<CasingDefinition["pressure_test"]>): PressureTest => ({
	pressure: written.pressure,
	hold: written.hold,
	...maybe("allowedFall", written.allowed_fall),
	...maybe("head", written.head),
	...(written.actual === undefined
		? {}
		: {
				actual: {
					...maybe("date", written.actual.date),
					pressure: written.actual.pressure,
					...maybe("hold", written.actual.hold),
					...maybe("fall", written.actual.fall),
					...maybe("witnessedBy", written.actual.witnessed_by),
				},
			}),
});

const shoeTest = (written: NonNullable<CasingDefinition["shoe_test"]>): ShoeTest => ({
	kind: written.kind,
	equivalent: written.equivalent,
	...maybe("newHole", written.new_hole),
	...(written.actual === undefined
		? {}
		: {
				actual: {
					...maybe("date", written.actual.date),
					equivalent: written.actual.equivalent,
					...maybe("outcome", written.actual.outcome),
				},
			}),
});

const evacuation = (
	written: NonNullable<CasingDefinition["loads"]>["evacuation"],
): Pick<CasingString, "evacuation"> => {
	if (written === undefined) return {};
	if (written === "full") return { evacuation: { kind: "full" } };
	return {
		evacuation: {
			kind: "level",
			level: written.fluid_level,
			fluid: written.fluid,
		},
	};
};

const production = (
	written: NonNullable<CasingDefinition["loads"]>["production"],
): Pick<CasingString, "production"> =>
	written === undefined
		? {}
		: {
				production: {
					packer: written.packer,
					packerFluid: written.packer_fluid,
					...maybe("tubingPressure", written.tubing_pressure),
					...maybe("drawnDownTo", written.drawn_down_to),
					...maybe("producingTemperature", written.producing_temperature),
				},
			};
