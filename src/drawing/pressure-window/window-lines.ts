import { equivalentMudWeight } from "../../calc/pressure/hydrostatic.ts";
import type { Results } from "../../calc/results.ts";
import { placeAt } from "../../calc/trajectory/at-depth.ts";
import { pathStationsOf } from "../../calc/trajectory/path.ts";
import type { Stroke } from "../../document/shapes.ts";
import { quantity } from "../../units/quantity.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { BLUE, BLUISH_GREEN, INK, VERMILLION } from "../palette.ts";

/** A pressure at a true vertical depth [ft, psi]. */
interface PressureAt {
	readonly tvd: number;
	readonly pressure: number;
}

export type WindowLineKind = "pore" | "fracture" | "mud" | "circulating" | "surge" | "swab" | "cement";

/** One line of the window: a stretch of depth without a gap. */
export interface WindowLine {
	readonly kind: WindowLineKind;
	readonly points: readonly PressureAt[];
	readonly hole?: Hole;
	readonly string?: CasingString;
}

/** Each differs from the others in dash and weight as well as in color. */
export const STROKES: Readonly<Record<WindowLineKind, Stroke>> = {
	pore: { color: BLUISH_GREEN, width: 2.2 },
	fracture: { color: VERMILLION, width: 2.2, dash: [7, 1.8] },
	mud: { color: INK, width: 1.5, dash: [2.2, 1.6] },
	circulating: { color: INK, width: 1 },
	surge: { color: INK, width: 0.7, dash: [5, 1.6] },
	swab: { color: INK, width: 0.7, dash: [5, 1.6, 1, 1.6] },
	cement: { color: BLUE, width: 1.5, dash: [7, 2, 1.4, 2] },
};

/** Beds less than this apart are neighbors [ft]. */
const APART = 1;
/** A straight of pressure is a curve of equivalent density: points along it. */
const STEPS = 16;

/** A window's rows come two to a bed, top and base; beds that touch make one line. */
const ofRock = (results: Results, kind: "pore" | "fracture"): WindowLine[] => {
	const lines: PressureAt[][] = [];
	for (const row of results.pressure.window.rows) {
		const last = lines.at(-1);
		const point = { tvd: row.tvd, pressure: row[kind] };
		const before = last?.at(-1);
		const opens = before === undefined || (last ?? []).length % 2 === 0;
		if (last === undefined || before === undefined || (opens && row.tvd - before.tvd > APART))
			lines.push([point]);
		else last.push(point);
	}
	return lines.map((points) => ({ kind, points }));
};

/** From the datum the pressure of a fluid grows straight; it is drawn along its own hole. */
const ofMud = (well: Well, results: Results): WindowLine[] => {
	const stations = pathStationsOf(results.trajectory.path);
	return well.holes.flatMap((hole): WindowLine[] => {
		const found = results.pressure.holes.find((each) => each.id === hole.id);
		const [pressure, bottom] = [found?.mud_hydrostatic_at_bottom?.value, found?.bottom.tvd.value];
		const top = placeAt(stations, hole.top.value)?.tvd ?? hole.top.value;
		if (pressure === undefined || bottom === undefined || bottom <= top) return [];
		const points = [
			{ tvd: top, pressure: (pressure * top) / bottom },
			{ tvd: bottom, pressure },
		];
		return [{ kind: "mud", points, hole }];
	});
};

/** What pumps and moving pipe make of the mud, along its own hole: the greatest surge, and the drill string's swab. */
const ofMoving = (well: Well, results: Results): WindowLine[] =>
	well.holes.flatMap((hole): WindowLine[] => {
		const found = results.pressure.holes.find((each) => each.id === hole.id)?.hydraulics;
		const [most] = (found?.moving ?? []).toSorted(
			(a, b) => b.surge_at_bottom.value - a.surge_at_bottom.value,
		);
		const swab = found?.moving.find((each) => each.swab !== undefined)?.swab;
		const columns = { circulating: found?.circulating, surge: most?.surge, swab } as const;
		return (["circulating", "surge", "swab"] as const).flatMap((kind): WindowLine[] => {
			const points = (columns[kind]?.rows ?? [])
				.filter(({ md }) => md >= hole.top.value)
				.map(({ tvd, pressure }) => ({ tvd, pressure }));
			return points.length < 2 ? [] : [{ kind, points, hole }];
		});
	});

/** Cement in place outside a string, along the hole below the string before it: that is where the rock feels it. */
const ofCement = (well: Well, results: Results): WindowLine[] =>
	well.strings.flatMap((string): WindowLine[] => {
		const rows = results.cement[string.id]?.annulus_column?.rows ?? [];
		const outside = well.strings.find((other) => other.id === string.within);
		const from = outside === undefined ? 0 : (results.casing[outside.id]?.shoe.tvd.value ?? 0);
		const points = rows.map((row) => ({ tvd: row.tvd, pressure: row.standing }));
		const start = pressureIn(points, from);
		if (start === undefined) return [];
		const below = points.filter((point) => point.tvd > from);
		return below.length === 0
			? []
			: [{ kind: "cement", points: [{ tvd: from, pressure: start }, ...below], string }];
	});

/** Pressure of a line at a depth, where it reaches so far. */
const pressureIn = (points: readonly PressureAt[], tvd: number): number | undefined => {
	const after = points.findIndex((point) => point.tvd >= tvd);
	const [low, high] = [points[after - 1], points[after]];
	if (high !== undefined && high.tvd === tvd) return high.pressure;
	if (low === undefined || high === undefined) return undefined;
	return low.pressure + ((high.pressure - low.pressure) * (tvd - low.tvd)) / (high.tvd - low.tvd);
};

export const windowLines = (well: Well, results: Results): WindowLine[] => [
	...ofRock(results, "pore"),
	...ofRock(results, "fracture"),
	...ofMud(well, results),
	...ofMoving(well, results),
	...ofCement(well, results),
];

/**
 * The same as equivalent densities, from a depth down: a point every little way, because a straight of pressure is none of
 * density.
 */
export const asDensity = (
	points: readonly PressureAt[],
	from: number,
): { readonly tvd: number; readonly density: number }[] => {
	const start = pressureIn(points, from);
	const below = [
		...(start === undefined ? [] : [{ tvd: from, pressure: start }]),
		...points.filter((point) => point.tvd > from),
	];
	return below
		.flatMap((point, i) => {
			const before = below[i - 1];
			if (before === undefined) return [point];
			return Array.from({ length: STEPS }, (_, step) => {
				const share = (step + 1) / STEPS;
				return {
					tvd: before.tvd + (point.tvd - before.tvd) * share,
					pressure: before.pressure + (point.pressure - before.pressure) * share,
				};
			});
		})
		.filter((point) => point.tvd > 0)
		.map(({ tvd, pressure }) => ({ tvd, density: densityOf(pressure, tvd) }));
};

const densityOf = (pressure: number, tvd: number): number => {
	const inputs = { p: quantity("pressure", pressure), D: quantity("true-vertical-depth", tvd) };
	const computed = equivalentMudWeight.compute(inputs);
	return typeof computed === "number" ? computed : computed.value;
};
