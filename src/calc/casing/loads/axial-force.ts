import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { quantity } from "../../../units/quantity.ts";
import { pathStationsOf } from "../../trajectory/path.ts";
import { ballooningForce, temperatureForce } from "../axial.ts";
import { areaOf } from "../pipe-body.ts";
import { FORCE, type ForceRow, forceAt } from "./force-table.ts";
import { loadSectionsOf } from "./load-sections.ts";
import { profileAt } from "./profiles.ts";
import { type LoadStation, loadStations, stationAt } from "./stations.ts";

/**
 * True axial force of a string that hangs free, without friction: weight below by the vertical, and pressure on every
 * area that faces along the hole.
 */
export const hangingForce = tableFormula({
	id: "casing/hanging-force",
	name: "Axial force of the hanging string",
	expression:
		"F(D) = Σ w ΔTVD + (p_i A_i − p_o A_o) at the shoe + p ΔA at each change of size; tension positive",
	source: cite("lubinski", "pressure-area method; weights by TVD after devereux p. 75"),
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
	},
	gives: FORCE,
	compute: ({ path, sections, inside, outside }) => {
		const stations = loadStations(path, sections, inside, outside);
		const rows: ForceRow[] = [];
		let below: (LoadStation & { readonly force: number }) | undefined;
		for (const station of stations.toReversed()) {
			const hung = below === undefined ? 0 : below.force + below.section.w * (below.tvd - station.tvd);
			const force = hung + pressureOn(station, below, inside, outside);
			rows.push({ md: station.md, tvd: station.tvd, section: station.number, force });
			below = { ...station, force };
		}
		return rows.reverse();
	},
});

const areas = ({ D, t }: { readonly D: number; readonly t: number }): readonly [number, number] => [
	(Math.PI / 4) * (D - 2 * t) ** 2,
	(Math.PI / 4) * D ** 2,
];

/** Pressure on the areas that face along the hole between a station and the one below it; all of them at the shoe. */
const pressureOn = (
	station: LoadStation,
	below: LoadStation | undefined,
	inside: KnownTable,
	outside: KnownTable,
): number => {
	if (station.number === below?.number) return 0;
	const [bore, full] = areas(station.section);
	const [boreBelow, fullBelow] = below === undefined ? [0, 0] : areas(below.section);
	return (
		profileAt(inside, "pressure", station.tvd) * (bore - boreBelow) -
		profileAt(outside, "pressure", station.tvd) * (full - fullBelow)
	);
};

/**
 * The same string once cement and hanger hold it, after pressures and temperature have changed.
 *
 * Where cement holds it, no cross-section moves and the change is what acts there. A stretch that hangs free between two
 * fixed points keeps only its whole length: one change of force all along it, the mean of what acts over the stretch,
 * each part weighed by how much it gives (1 / A_p), and the push of pressure on the shoulders of sections in between.
 */
export const heldForce = tableFormula({
	id: "casing/held-force",
	name: "Axial force of the held string",
	expression:
		"F + f in cement, f = 2 ν (A_i Δp_i − A_o Δp_o) − α E A_p ΔT; F + ∫ (f / A_p) dL / ∫ dL / A_p over a free stretch",
	source: cite("lubinski", "ballooning and temperature effect; length kept between fixed points"),
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		landed: { table: "force" },
		inside_before: { table: "pressure" },
		outside_before: { table: "pressure" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		temperature_before: { table: "temperature" },
		temperature: { table: "temperature" },
		/** Stretches that nothing holds between their ends. */
		free_top: { many: "measured-depth" },
		free_bottom: { many: "measured-depth" },
	},
	gives: FORCE,
	validity: "both ends held; no buckling; a bottom for each free stretch",
	compute: (given) => {
		if (given.free_top.length !== given.free_bottom.length) return [];
		const local = localChange(given);
		const profiles = [
			given.inside,
			given.outside,
			given.inside_before,
			given.outside_before,
			given.temperature_before,
			given.temperature,
		];
		const stations = loadStations(given.path, given.sections, ...profiles);
		const free = given.free_top.map((top, i): Free => {
			const stretch = { top, bottom: given.free_bottom[i] ?? top };
			return { ...stretch, ...meanChange(stretch, stations, local, given) };
		});
		return withEnds(given.path, stations, free).map((station) => {
			const within = free.find(
				({ top, bottom }) => station.md >= top - EDGE / 2 && station.md <= bottom + EDGE / 2,
			);
			const change =
				within === undefined ? local(station) : within.change - pushedAbove(within, station.number);
			const { md, tvd, number } = station;
			return { md, tvd, section: number, force: forceAt(given.landed, station) + change };
		});
	},
});

/** A stretch that hangs free, with the change of force at its top and the push at each shoulder in it. */
interface Free {
	readonly top: number;
	readonly bottom: number;
	readonly change: number;
	/** Push on the foot of a section, by the number of the section above; added to everything above it. */
	readonly shoulders: ReadonlyMap<number, number>;
}

interface Changed {
	readonly inside_before: KnownTable;
	readonly outside_before: KnownTable;
	readonly inside: KnownTable;
	readonly outside: KnownTable;
	readonly temperature_before: KnownTable;
	readonly temperature: KnownTable;
}

const changeAt = (after: KnownTable, before: KnownTable, tvd: number): number =>
	profileAt(after, "pressure", tvd) - profileAt(before, "pressure", tvd);

/** What ballooning and temperature add where no cross-section can move [lbf]. */
const localChange =
	(given: Changed) =>
	({ tvd, section }: LoadStation): number => {
		const degrees = (table: KnownTable) => quantity("temperature", profileAt(table, "temperature", tvd));
		const [D, t] = [quantity("diameter", section.D), quantity("diameter", section.t)];
		const ballooning = ballooningForce.compute({
			D,
			t,
			Δp_i: quantity("pressure-difference", changeAt(given.inside, given.inside_before, tvd)),
			Δp_o: quantity("pressure-difference", changeAt(given.outside, given.outside_before, tvd)),
		}) as number;
		const thermal = temperatureForce.compute({
			D,
			t,
			T_1: degrees(given.temperature_before),
			T_2: degrees(given.temperature),
		}) as number;
		return ballooning + thermal;
	};

/**
 * The change of force at the top of a free stretch, so that its ends stay where they are:
 * ∫ (ΔF − f) / A_p dL = 0, where ΔF is less by every shoulder's push below that shoulder.
 */
const meanChange = (
	{ top, bottom }: { readonly top: number; readonly bottom: number },
	stations: readonly LoadStation[],
	local: (station: LoadStation) => number,
	given: Changed,
): Pick<Free, "change" | "shoulders"> => {
	const shoulders = new Map<number, number>();
	let [giving, wanted, passed] = [0, 0, 0];
	for (const [i, upper] of stations.entries()) {
		const lower = stations[i + 1];
		if (lower === undefined) break;
		if (lower.number !== upper.number) {
			if (upper.md <= top || upper.md >= bottom) continue;
			const push = shoulderPush(upper, lower, given);
			shoulders.set(upper.number, push);
			passed += push;
			continue;
		}
		const [from, to] = [Math.max(upper.md, top), Math.min(lower.md, bottom)];
		if (to <= from || lower.md === upper.md) continue;
		const [f_upper, f_lower] = [local(upper), local(lower)];
		const at = (md: number) => f_upper + ((f_lower - f_upper) * (md - upper.md)) / (lower.md - upper.md);
		const gives = (to - from) / areaOf(upper.section.D, upper.section.t);
		giving += gives;
		wanted += gives * ((at(from) + at(to)) / 2 + passed);
	}
	return { change: giving === 0 ? 0 : wanted / giving, shoulders };
};

/** What buckles pipe: true force less what the fluids hold up. Pressed together below zero. */
export const effectiveForceAt = formula({
	id: "casing/effective-force",
	name: "Effective axial force",
	expression: "F_e = F − p_i A_i + p_o A_o at the depth MD; tension positive",
	source: cite("lubinski", "effective force: buckling by the fictitious force"),
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		force: { table: "force" },
		MD: "measured-depth",
	},
	gives: "force",
	validity: "MD on the string; at a change of force, the side above",
	compute: ({ path, sections, inside, outside, force, MD }) => {
		const along = pathStationsOf(path);
		const number = loadSectionsOf(sections).findIndex(({ top, bottom }) => MD > top && MD <= bottom);
		const section = loadSectionsOf(sections)[number];
		const station =
			section === undefined ? undefined : stationAt(along, { section, number: number + 1 }, MD - EDGE / 2);
		if (station === undefined) return Number.NaN;
		const [bore, full] = areas(station.section);
		return (
			forceAt(force, station) -
			profileAt(inside, "pressure", station.tvd) * bore +
			profileAt(outside, "pressure", station.tvd) * full
		);
	},
});

/** Change of the push on the areas that face along the hole where two sections meet; up is tension below [lbf]. */
const shoulderPush = (upper: LoadStation, lower: LoadStation, given: Changed): number => {
	const [bore, full] = areas(upper.section);
	const [boreBelow, fullBelow] = areas(lower.section);
	return (
		changeAt(given.inside, given.inside_before, upper.tvd) * (bore - boreBelow) -
		changeAt(given.outside, given.outside_before, upper.tvd) * (full - fullBelow)
	);
};

/** Pushes at the shoulders above a section: what the sections below them carry less than the top. */
const pushedAbove = ({ shoulders }: Free, number: number): number =>
	[...shoulders].reduce((sum, [above, push]) => (above < number ? sum + push : sum), 0);

/** Two depths this near are the two sides of a change of force [ft]. */
const EDGE = 1e-3;

/** The stations, and both sides of each end of a free stretch, where the force steps. */
const withEnds = (
	path: KnownTable,
	stations: readonly LoadStation[],
	free: readonly Free[],
): readonly LoadStation[] => {
	const along = pathStationsOf(path);
	const ends = free.flatMap(({ top, bottom }) => [top, top - EDGE, bottom, bottom + EDGE]);
	const added = ends.flatMap((md) => {
		const after = stations.findIndex((each, i) => each.md < md && (stations[i + 1]?.md ?? 0) > md);
		const [of, next] = [stations[after], stations[after + 1]];
		return of === undefined || of.number !== next?.number ? [] : (stationAt(along, of, md) ?? []);
	});
	return [...stations, ...added].sort((a, b) => a.number - b.number || a.md - b.md);
};
