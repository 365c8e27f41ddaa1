import type { KnownTable } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../../diagnostics/diagnostic.ts";
import { message, type Said } from "../../messages/message.ts";
import { listOf, measured } from "../../well/said.ts";
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
			what: message("calc/surveyed-stations.what", { north }),
			expected: message("calc/surveyed-stations.expected"),
			mend: message("calc/surveyed-stations.mend"),
		});
	const [δ_from, δ_to] = [northOfTrue(north, well.site), northOfTrue(own, well.site)];
	if (δ_from !== undefined && δ_to !== undefined)
		return turnedStations.of({ stations, turn: turnBetweenNorths.of({ δ_from, δ_to }) });
	const wanting = [north, own].flatMap((each) =>
		each === "true" || northOfTrue(each, well.site) !== undefined ? [] : [turnOf(each)],
	);
	return mixed({
		what: message("calc/surveyed-stations.survey-counts-from-north-and", { north, own }),
		expected: message("calc/surveyed-stations.to-turn-one-to-other", {
			wanting: listOf(wanting.map(([name]) => name)),
		}),
		mend: message("calc/surveyed-stations.state-under-site-north", {
			wanting: listOf(wanting.map(([, key]) => `\`${key}\``)),
		}),
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
			what: message("calc/survey-start.what", {
				md: measured("measured-depth", first.md),
				inclination: measured("angle", first.inclination),
			}),
			expected: message("calc/survey-start.expected"),
			found: message("calc/survey-start.found", { md: measured("measured-depth", first.md) }),
			why: message("calc/survey-start.why"),
			mend: message("calc/survey-start.mend"),
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
					what: message("calc/unusable-survey.what", { i: String(i + 1) }),
					expected: message("calc/unusable-survey.expected", {
						md: measured("measured-depth", above.md, station.md),
					}),
					found: measured("measured-depth", station.md, above.md),
					mend: message("calc/unusable-survey.mend"),
				}),
			];
		if (!Number.isFinite(arcStep(above, station)[2]))
			return [
				diagnose("calc/unusable-survey", stationPlace(table, i), {
					what: message("calc/unusable-survey.hole-turns-right-back-on", { i: String(i + 1) }),
					expected: message("calc/unusable-survey.less-than-half-turn-between"),
					found: message("calc/unusable-survey.found", {
						inclination: String(above.inclination),
						azimuth: String(above.azimuth),
						inclination2: String(station.inclination),
						azimuth2: String(station.azimuth),
					}),
					mend: message("calc/unusable-survey.correct-inclination-or-azimuth-station"),
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
	const told: { readonly expected: Said; readonly found: Said; readonly why: Said } = {
		expected: message("calc/told.expected"),
		found: message("calc/told.found", {
			tvd: measured("length", -out.tvd),
			md: measured("measured-depth", out.md),
		}),
		why: message("calc/told.why"),
	};
	if (!surveyed)
		return [
			diagnose(
				"calc/impossible-plan",
				{ path: ["trajectory", "plan"] },
				{
					...told,
					what: message("calc/impossible-plan.planned-path-comes-out-ground"),
					mend: message("calc/impossible-plan.correct-its-angles-or-its"),
				},
			),
		];
	const list = stationsOf(stations);
	const next = list.findIndex(({ md }) => md >= out.md);
	const i = next < 0 ? list.length - 1 : next;
	return [
		diagnose("calc/unusable-survey", stationPlace(stations, i), {
			...told,
			what: message("calc/unusable-survey.hole-comes-out-ground-by", { i: String(i + 1) }),
			mend: message("calc/unusable-survey.correct-inclination-this-station-or"),
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
