import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { quantity } from "../../../units/quantity.ts";
import { ballooningForce, temperatureForce } from "../axial.ts";
import { FORCE, type ForceRow, forceAt } from "./force-table.ts";
import { profileAt } from "./profiles.ts";
import { type LoadStation, loadStations } from "./stations.ts";

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

/** The same string once cement and hanger hold it, after pressures and temperature have changed. */
export const heldForce = tableFormula({
	id: "casing/held-force",
	name: "Axial force of the held string",
	expression: "F + 2 ν (A_i Δp_i − A_o Δp_o) − α E A_p ΔT",
	source: cite("lubinski", "ballooning and temperature effect; both ends held"),
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
	},
	gives: FORCE,
	validity: "both ends held; no buckling",
	compute: (given) =>
		loadStations(
			given.path,
			given.sections,
			given.inside,
			given.outside,
			given.inside_before,
			given.outside_before,
			given.temperature_before,
			given.temperature,
		).map((station) => {
			const { tvd, section } = station;
			const change = (after: KnownTable, before: KnownTable) =>
				quantity(
					"pressure-difference",
					profileAt(after, "pressure", tvd) - profileAt(before, "pressure", tvd),
				);
			const degrees = (table: KnownTable) => quantity("temperature", profileAt(table, "temperature", tvd));
			const [D, t] = [quantity("diameter", section.D), quantity("diameter", section.t)];
			const ballooning = ballooningForce.compute({
				D,
				t,
				Δp_i: change(given.inside, given.inside_before),
				Δp_o: change(given.outside, given.outside_before),
			}) as number;
			const thermal = temperatureForce.compute({
				D,
				t,
				T_1: degrees(given.temperature_before),
				T_2: degrees(given.temperature),
			}) as number;
			const landed = forceAt(given.landed, station);
			return { md: station.md, tvd, section: station.number, force: landed + ballooning + thermal };
		}),
});
