import type { Known, KnownTable } from "../../cite/known.ts";
import type { LoggedInterval } from "../../well/seal-evidence.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { holeMark, verticalMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { AnnulusSeal, BondLogResults, Results, ZoneSeal } from "../results.ts";
import { BONDED, bondedAmplitude, bondIndex, lengthWithin, longestWithin, pressureRebuilt } from "./bond.ts";

type Md = Known<"measured-depth">;
type Tvd = Known<"true-vertical-depth">;
type Built = Pick<Results, "casing" | "cement">;

/** Index as stated, else worked from the amplitudes. */
const indexOf = (
	{ index, amplitude: A }: LoggedInterval,
	log: { readonly freePipe?: Known<"sonic-amplitude">; readonly fullBond?: Known<"sonic-amplitude"> },
): Known<"share"> | undefined => {
	if (index !== undefined) return index;
	const { freePipe: A_0, fullBond: A_100 } = log;
	if (A === undefined || A_0 === undefined || A_100 === undefined) return undefined;
	const worked = bondIndex.of({ A, A_0, A_100 });
	return Number.isFinite(worked.value) ? worked : undefined;
};

/** Of index and grade the worse holds: neither a good grade over a low index counts as bonded, nor the other way round. */
const isBonded = (index: Known<"share"> | undefined, quality: LoggedInterval["quality"]): boolean =>
	(quality === undefined || quality === "good") &&
	(index === undefined ? quality === "good" : index.value >= BONDED);

const ends = (
	list: readonly { readonly top: { readonly md: Md }; readonly bottom: { readonly md: Md } }[],
) => ({
	MD_top: list.map(({ top }) => top.md),
	MD_bottom: list.map(({ bottom }) => bottom.md),
});

/** Where a string first lies against rock: the deepest shoe outside it. */
const openFrom = (well: Well, { casing }: Built, string: CasingString): Md | undefined => {
	const outer = well.strings.slice(0, well.strings.indexOf(string));
	return outer
		.flatMap(({ id }) => casing[id]?.shoe.md ?? [])
		.filter(({ value }) => value < string.shoe.value)
		.sort((a, b) => b.value - a.value)[0];
};

/** The bond logs on record, each interval with its index and whether it counts as bonded. */
export const bondLogs = (well: Well, path: KnownTable, built: Built): readonly BondLogResults[] =>
	well.strings.flatMap((string): BondLogResults[] => {
		const log = string.cement?.actual?.seal?.bondLog;
		const pipe = built.casing[string.id];
		if (log === undefined || pipe === undefined) return [];
		const intervals = log.intervals.map((interval) => {
			const index = indexOf(interval, log);
			return {
				top: holeMark(path, interval.top, well.datum),
				bottom: holeMark(path, interval.bottom, well.datum),
				...maybe("amplitude", interval.amplitude),
				...maybe("index", index),
				...maybe("quality", interval.quality),
				bonded: isBonded(index, interval.quality),
			};
		});
		const against = openFrom(well, built, string) ?? pipe.top.md;
		const bonded = intervals.filter((each) => each.bonded);
		return [
			{
				string: string.id,
				date: log.date,
				...maybe("run_by", log.runBy),
				...maybe("stated_by", log.statedBy),
				...maybe(
					"bonded_amplitude",
					log.freePipe && log.fullBond && bondedAmplitude.of({ A_0: log.freePipe, A_100: log.fullBond }),
				),
				intervals,
				longest_bonded: longestWithin.of({ top: against, bottom: pipe.shoe.md, ...ends(bonded) }),
				against_rock_from: holeMark(path, against, well.datum),
			},
		];
	});

interface Span {
	readonly top: Tvd;
	readonly base: Tvd;
}

/** What shows the seal of each string's cement across a zone, the outermost first. Strings that end above it are left out. */
export const sealsAcross = (
	well: Well,
	path: KnownTable,
	built: Built,
	logs: readonly BondLogResults[],
	zone: Span,
): readonly ZoneSeal[] => {
	const [from, to] = [zone.top, zone.base].map((tvd) => verticalMark(path, tvd, well.datum).md);
	if (from === undefined || to === undefined || to.value < from.value) return [];
	return well.strings.flatMap((string): ZoneSeal[] => {
		const columns = built.cement[string.id]?.columns ?? [];
		const touching = columns.filter(
			({ top, bottom }) => top.md.value < to.value + 1 && bottom.md.value > from.value - 1,
		);
		if (touching.length === 0) return [];
		return [
			{
				string: string.id,
				covers: touching.some(
					({ top, bottom }) => top.tvd.value <= zone.top.value && zone.base.value <= bottom.tvd.value,
				),
				...stateOf(string, logs, from, to),
				...maybe("shoe_test", shoeTestBelow(string, built, zone)),
			},
		];
	});
};

/** The shoe test that held below the zone: the cement round the shoe bears what lies under it. */
const shoeTestBelow = ({ id, shoeTest }: CasingString, { casing }: Built, zone: Span) => {
	const shoe = casing[id]?.shoe.tvd;
	const held = /^held\b/iu.test(shoeTest?.actual?.outcome ?? "");
	return held && shoe !== undefined && shoe.value >= zone.base.value
		? shoeTest?.actual?.equivalent
		: undefined;
};

type State = Omit<ZoneSeal, "string" | "covers" | "shoe_test">;

const stateOf = (string: CasingString, logs: readonly BondLogResults[], from: Md, to: Md): State => {
	const actual = string.cement?.actual;
	if (actual === undefined) return { state: "planned" };
	const meets = (each: { readonly top: Md; readonly bottom: Md }) =>
		each.top.value <= to.value && each.bottom.value >= from.value;
	const test = actual.seal?.tests.filter(meets).at(-1);
	const squeeze = actual.seal?.squeezes.filter(meets).at(-1);
	const log = logs.find((each) => each.string === string.id);
	const across = { top: from, bottom: to };
	const logged = log && lengthWithin.of({ ...across, ...ends(log.intervals) });
	const bonded = log && lengthWithin.of({ ...across, ...ends(log.intervals.filter((each) => each.bonded)) });
	if (test?.held === true)
		return { state: "tested", by: test.through, date: test.date, pressure: test.pressure };
	if (squeeze !== undefined && (log === undefined || squeeze.date >= log.date) && squeeze.held === true)
		return { state: "tested", by: "squeeze", date: squeeze.date };
	const measured = log && {
		state: "measured" as const,
		by: "bond log",
		date: log.date,
		...maybe("stated_by", log.stated_by),
	};
	const there = log?.intervals.find(
		({ top, bottom }) => top.md.value <= from.value && to.value <= bottom.md.value,
	);
	// A base is a depth and no stretch: the interval that holds it says all that there is.
	if (measured && there !== undefined && to.value - from.value < 1)
		return { ...measured, bond: there.bonded ? "throughout" : "nowhere" };
	// A log of a stretch says nothing of the rest: half of the zone has to be on it.
	if (measured && logged && bonded && logged.value >= Math.max(1, (to.value - from.value) / 2))
		return {
			...measured,
			logged,
			bonded,
			bond: bonded.value >= logged.value - 1 ? "throughout" : bonded.value > 1 ? "in part" : "nowhere",
		};
	const survey = actual.seal?.surveys.filter(meets).at(-1);
	if (survey?.showsCement === true)
		return {
			state: "inferred",
			by: survey.kind,
			date: survey.date,
			...maybe("stated_by", survey.statedBy),
		};
	const { top, returnsToSurface, pumped } = actual;
	if (top !== undefined && top.method !== "calculated" && top.method !== "returns seen")
		return { state: "inferred", by: top.method };
	if (top?.method === "returns seen" || (returnsToSurface?.value ?? 0) > 0)
		return { state: "inferred", by: "returns seen", ...maybe("returns", returnsToSurface) };
	return top === undefined && pumped.length === 0
		? { state: "planned" }
		: { state: "placed", by: "calculated" };
};

/** Whether the cement of a string is known to be badly bonded across a zone. */
export const isPoorlyBonded = (seals: readonly ZoneSeal[], string: string): boolean =>
	seals.some((seal) => seal.string === string && seal.bond === "nowhere");

/** Annuli with readings: what was found, and what came back after the last bleed. */
export const annulusSeals = (well: Well): readonly AnnulusSeal[] =>
	well.strings.flatMap((string, i): AnnulusSeal[] => {
		const readings = string.annulusReadings ?? [];
		if (readings.length === 0) return [];
		const rebuilt = readings.flatMap(({ rebuiltTo: p_rebuilt, bledTo: p_bled }) =>
			p_rebuilt === undefined || p_bled === undefined ? [] : [pressureRebuilt.of({ p_rebuilt, p_bled })],
		);
		const [most] = [...rebuilt].sort((a, b) => b.value - a.value);
		const [highest] = readings.map(({ pressure }) => pressure).sort((a, b) => b.value - a.value);
		return [
			{
				string: string.id,
				...maybe("outer", well.strings[i - 1]?.id),
				readings: readings.length,
				...maybe("highest", highest),
				...maybe("rebuilt", most),
				unwatched: readings.some(({ pressure, rebuiltTo }) => pressure.value > 0 && rebuiltTo === undefined),
			},
		];
	});
