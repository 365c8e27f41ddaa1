import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { arcPoint } from "./arc.ts";
import { bisect } from "./bisect.ts";
import { doglegAngle } from "./dogleg.ts";
import { type PathStation, pathStationsOf } from "./path.ts";

/**
 * Every measured depth at which the path stands at a vertical depth, from the top. A hole that climbs past horizontal
 * passes a depth more than once, so there may be several; a hole that does not reach it has none.
 *
 * @param tvd  [ft]; past the last station the hole is not followed
 * @source     sawaryn-thorogood-2005 for the arc; the depth on it by bisection
 */
export const crossingsOf = (path: readonly PathStation[], tvd: number): readonly number[] => {
	const crossings: number[] = [];
	for (let i = 0; i + 1 < path.length; i += 1) {
		const [upper, lower] = [path[i], path[i + 1]];
		if (upper === undefined || lower === undefined) continue;
		for (const md of crossingsBetween(upper, lower, tvd))
			if (md - (crossings.at(-1) ?? Number.NEGATIVE_INFINITY) > 1e-6) crossings.push(md);
	}
	return crossings;
};

const crossingsBetween = (upper: PathStation, lower: PathStation, tvd: number): readonly number[] => {
	// The arc is a circle's, below a half turn: its depth has one greatest or least value at most, where it is level.
	const turns = upper.inclination < 90 !== lower.inclination < 90 && lower.inclination !== 90;
	const length = lower.md - upper.md;
	const reach = turns ? length * steepest(upper, lower) : 0;
	if (tvd < Math.min(upper.tvd, lower.tvd) - reach || tvd > Math.max(upper.tvd, lower.tvd) + reach) return [];
	const depthAt = (s: number): number => upper.tvd + arcPoint(upper, lower, s).step[2];
	const turn = turns ? bisect(0, length, (s) => arcPoint(upper, lower, s).vertical) : length;
	const pieces: readonly (readonly [number, number])[] = turns
		? [
				[0, turn],
				[turn, length],
			]
		: [[0, length]];
	return pieces.flatMap(([from, to]) => {
		const [start, end] = [depthAt(from) - tvd, depthAt(to) - tvd];
		if (Math.abs(start) < 1e-9) return [upper.md + from];
		if (Math.abs(end) < 1e-9) return [upper.md + to];
		return start * end > 0 ? [] : [upper.md + bisect(from, to, (s) => depthAt(s) - tvd)];
	});
};

/**
 * The most that the hole drops or climbs per length between two stations on either side of level. Of a great circle's
 * tangents the steepest lies a quarter turn from the level one, so that within less than that it is at an end.
 */
const steepest = (upper: PathStation, lower: PathStation): number => {
	const turn = doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth);
	return turn < Math.PI / 2
		? Math.max(...[upper, lower].map(({ inclination }) => Math.abs(offLevel(inclination))))
		: 1;
};

const offLevel = (inclination: number): number => Math.cos((inclination * Math.PI) / 180);

const crossed = new WeakMap<KnownTable, Map<number, readonly number[]>>();

/** As `crossingsOf`, on a path as a table; a depth is looked for once, for one well asks for the same ones again and again. */
export const crossingsOn = (path: KnownTable, tvd: number): readonly number[] => {
	const of = crossed.get(path) ?? new Map<number, readonly number[]>();
	crossed.set(path, of);
	const found = of.get(tvd) ?? crossingsOf(pathStationsOf(path), tvd);
	of.set(tvd, found);
	return found;
};

export const mdAtTvdFormula = formula({
	id: "trajectory/md-at-tvd",
	name: "Measured depth at a true vertical depth",
	expression: "the least MD for which TVD(MD) is the depth asked for",
	source: cite("sawaryn-thorogood-2005", "interpolation on the minimum-curvature arc, inverted"),
	inputs: { path: { table: "path" }, TVD: "true-vertical-depth" },
	gives: "measured-depth",
	validity: "the path reaches the depth",
	compute: ({ path, TVD }) => crossingsOn(path, TVD)[0] ?? Number.NaN,
});

export const passesAtTvd = formula({
	id: "trajectory/passes-at-tvd",
	name: "Times the hole passes a true vertical depth",
	expression: "number of MD for which TVD(MD) is the depth asked for",
	source: cite("sawaryn-thorogood-2005", "interpolation on the minimum-curvature arc, inverted"),
	inputs: { path: { table: "path" }, TVD: "true-vertical-depth" },
	gives: "count",
	compute: ({ path, TVD }) => crossingsOn(path, TVD).length,
});

interface MdAtTvd {
	/** The shallowest along the hole; absent where the hole does not reach the depth. */
	readonly md?: Known<"measured-depth">;
	/** Present where the hole passes the depth more than once: the measured depth is then not unique. */
	readonly passes?: Known<"count">;
}

export const mdAtTvd = (path: KnownTable, tvd: Known<"true-vertical-depth">): MdAtTvd => {
	const passes = passesAtTvd.of({ path, TVD: tvd });
	if (passes.value === 0) return {};
	const md = mdAtTvdFormula.of({ path, TVD: tvd });
	return passes.value === 1 ? { md } : { md, passes };
};
