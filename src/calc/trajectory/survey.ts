import type { KnownTable } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../../diagnostics/diagnostic.ts";
import type { Survey, Well } from "../../well/well.ts";
import type { WellPath } from "../results.ts";
import { writtenAt } from "../written-at.ts";
import { arcStep } from "./arc.ts";
import { northOfTrue, turnBetweenNorths, turnedStations, turnOf } from "./north.ts";
import { stationsOf } from "./path.ts";

type Stations = KnownTable<"md" | "inclination" | "azimuth">;

/**
 * A survey's stations with azimuths from the well's own north, turned where the survey counts from another. Where the
 * turn is not known, an error: azimuths from two norths are never mixed.
 */
export const surveyedStations = (well: Well, survey: Survey): Stations | Diagnostic => {
	const own = well.site.north?.reference;
	const { north, stations } = survey;
	if (north === undefined || north === own) return stations;
	if (own === undefined)
		return mixed({
			what: `the survey counts from ${north} north, and the north of the plan is not given`,
			expected: "the north that the well's azimuths are counted from",
			mend: "state `reference` under site, north",
		});
	const [δ_from, δ_to] = [northOfTrue(north, well.site), northOfTrue(own, well.site)];
	if (δ_from !== undefined && δ_to !== undefined)
		return turnedStations.of({ stations, turn: turnBetweenNorths.of({ δ_from, δ_to }) });
	const wanting = [north, own].flatMap((each) =>
		each === "true" || northOfTrue(each, well.site) !== undefined ? [] : [turnOf(each)],
	);
	return mixed({
		what: `the survey counts from ${north} north and the well from ${own} north`,
		expected: `the ${wanting.map(([name]) => name).join(" and the ")}, to turn one to the other`,
		mend: `state ${wanting.map(([, key]) => `\`${key}\``).join(" and ")} under site, north`,
	});
};

const mixed = (telling: Parameters<typeof diagnose>[2]): Diagnostic =>
	diagnose("calc/mixed-norths", { path: ["trajectory", "actual", "north"] }, telling);

/** A hole already inclined at its first station has come there by a way that the survey does not tell [°]. */
const INCLINED = 1;

/** What a survey that begins down the hole leaves out. */
export const unknownStart = (table: Stations): readonly Diagnostic[] => {
	const [first] = stationsOf(table);
	if (first === undefined || first.md <= 0 || first.inclination < INCLINED) return [];
	return [
		diagnose("calc/survey-start", surveyPlace(table), {
			what: `the survey begins at ${first.md} ft, where the hole is already inclined ${first.inclination} degrees`,
			expected: "stations from the datum down, the hole above a sidetrack included",
			found: `a first station at ${first.md} ft`,
			why: "the hole above is taken as one arc from vertical at the datum, so every place below is only as good as that",
			mend: "add the stations above it; of a sidetrack, those of the parent hole",
		}),
	];
};

/** Why a survey gives no path; nothing where it does. */
export const unusable = (table: Stations): readonly Diagnostic[] => {
	const stations = stationsOf(table);
	for (const [i, station] of stations.entries()) {
		const above = stations[i - 1];
		if (above === undefined) continue;
		if (!(station.md > above.md))
			return [
				diagnose("calc/unusable-survey", stationPlace(table, i), {
					what: `survey station ${i + 1} lies no deeper than the one before it`,
					expected: `a measured depth below ${above.md} ft`,
					found: `${station.md} ft`,
					mend: "put the stations in order of depth, each once",
				}),
			];
		if (!Number.isFinite(arcStep(above, station)[2]))
			return [
				diagnose("calc/unusable-survey", stationPlace(table, i), {
					what: `the hole turns right back on itself at survey station ${i + 1}`,
					expected: "less than a half turn between stations",
					found: `${above.inclination}° at ${above.azimuth}°, then ${station.inclination}° at ${station.azimuth}°`,
					mend: "correct the inclination or the azimuth of the station",
				}),
			];
	}
	return [];
};

/** Above the datum by more than rounding would have it [ft]. */
const IN_THE_AIR = 1;

/**
 * Why a path leads out of the ground; nothing where it does not. Angles that are each possible may add up to a hole
 * that turns back up past the rig floor, where no pressure or density has a meaning.
 */
export const outOfTheGround = (
	path: WellPath,
	stations: Stations,
	surveyed: boolean,
): readonly Diagnostic[] => {
	const out = path.rows.find(({ tvd }) => tvd < -IN_THE_AIR);
	if (out === undefined) return [];
	const told = {
		expected: "a hole below the datum all the way",
		found: `${Math.round(-out.tvd)} ft above the datum at ${Math.round(out.md)} ft along the hole`,
		why: "an inclination above 90 degrees leads upward",
	};
	if (!surveyed)
		return [
			diagnose(
				"calc/impossible-plan",
				{ path: ["trajectory", "plan"] },
				{
					...told,
					what: "the planned path comes out of the ground",
					mend: "correct its angles or its lengths",
				},
			),
		];
	const list = stationsOf(stations);
	const next = list.findIndex(({ md }) => md >= out.md);
	const i = next < 0 ? list.length - 1 : next;
	return [
		diagnose("calc/unusable-survey", stationPlace(stations, i), {
			...told,
			what: `the hole comes out of the ground by survey station ${i + 1}`,
			mend: "correct the inclination of this station or of those before it",
		}),
	];
};

/** A station where it is written: its row of the file, or its item of the list. */
const stationPlace = (table: Stations, i: number): Place => {
	const { from } = table;
	if (from.kind !== "definition") return surveyPlace(table);
	const range = from.rows?.[i];
	if (from.file === undefined) return { path: [...from.at, "stations", i] };
	return { path: from.at, file: from.file, ...(range === undefined ? {} : { range }) };
};

const surveyPlace = (table: Stations): Place => writtenAt(table, ["trajectory", "actual", "survey"]);
