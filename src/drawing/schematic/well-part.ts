import type { Shape } from "../../document/shapes.ts";
import type { CasingString } from "../../well/well.ts";
import { cementFill, cementPlug, cementTopMark, paced } from "../marks/cement.ts";
import { bedMarks, clusterMarks, valveMarks } from "../marks/perforations.ts";
import { floatCollarMark, holeShapes, plugMark, sealMark, shoeMark, steelWall } from "../marks/steel.ts";
import type { AxisPoint } from "../well-axis.ts";
import { bedsOf, isLast, shoeOutside, type View } from "./view.ts";

/** Plugs closer than this are counted, not drawn [pt]. */
const PLUGS_APART = 6;
/** Strokes along an interval that is perforated all along [pt]. */
const INTERVAL_PACE = 2.6;
/** Clusters closer than this are drawn one for a stage [pt]. */
const CLUSTERS_APART = 1.6;

/** The hole, steel, cement and what is in the bore: everything people put in the ground. */
export const wellPart = (view: View): Shape[] => {
	const { well, axis, nest } = view;
	return [
		...well.holes.flatMap((hole) =>
			holeShapes(axis.between(hole.top.value, hole.bottom.value), nest.hole(hole)),
		),
		...well.strings.flatMap((string) => cementOf(view, string)),
		...well.strings.flatMap((string) => steelOf(view, string)),
		...stimulated(view),
	];
};

/** What bounds a string's annulus outside: steel above the shoe of the string around it, rock below. */
export const annulusParts = (
	{ well, nest }: Pick<View, "well" | "nest">,
	string: CasingString,
	from: number,
	to: number,
) => {
	const near = nest.string(string).outer;
	const outside = well.strings.find((other) => other.id === string.within);
	const shoe = shoeOutside(well, string);
	const parts: { from: number; to: number; near: number; far: number }[] = [];
	if (outside !== undefined && from < shoe)
		parts.push({
			from,
			to: Math.min(to, shoe),
			near,
			far: nest.string(outside).inner,
		});
	if (to > shoe)
		parts.push({
			from: Math.max(from, shoe),
			to,
			near,
			far: nest.hole(string.hole),
		});
	return parts.filter((part) => part.to > part.from);
};

/** Planned top of a string's cement, where the job says one. */
export const plannedTopOf = (string: CasingString): number | undefined => {
	const tops = string.cement?.slurries.map((slurry) => slurry.top.value) ?? [];
	return tops.length === 0 ? undefined : Math.min(...tops);
};

const cementOf = (view: View, string: CasingString): Shape[] => {
	const { results, axis, nest, well } = view;
	const cement = results.cement[string.id];
	if (cement === undefined) return [];
	// A top worked from volumes is as little proven as a planned one, and is drawn as such.
	const basis = cement.top_basis === "recorded" ? "recorded" : "planned";
	const columns = cement.columns.map((column) => {
		const [from, to] = [column.top.md.value, Math.min(column.bottom.md.value, string.shoe.value)];
		return { top: from, parts: annulusParts(view, string, from, to) };
	});
	const top = cement.top.md.value;
	const planned = plannedTopOf(string);
	const shoeTrack = string.shoeTrack?.value;
	const inner = nest.string(string).inner;
	return [
		...columns.flatMap(({ parts }) =>
			parts.flatMap((part) => cementFill(axis.between(part.from, part.to), part.near, part.far, basis)),
		),
		...columns.flatMap(({ top: at, parts: [uppermost] }) =>
			uppermost === undefined ? [] : cementTopMark(axis.at(at), uppermost.near, uppermost.far, basis),
		),
		...(basis === "recorded" && planned !== undefined && Math.abs(planned - top) > 1
			? annulusParts(view, string, planned, planned + 1).flatMap((part) =>
					cementTopMark(axis.at(planned), part.near, part.far, "planned"),
				)
			: []),
		...(shoeTrack !== undefined && isLast(well, string)
			? cementPlug(axis.between(string.shoe.value - shoeTrack, string.shoe.value), inner, basis)
			: []),
	];
};

const steelOf = (view: View, string: CasingString): Shape[] => {
	const { well, axis, nest, detail } = view;
	const width = nest.string(string);
	const outside = well.strings.find((other) => other.id === string.within);
	const seals =
		string.kind === "liner" && outside !== undefined
			? sealMark(axis.at(string.top.value), width.outer, nest.string(outside).inner)
			: [];
	const collar =
		string.shoeTrack !== undefined && isLast(well, string) && detail !== "plain"
			? floatCollarMark(axis.at(string.shoe.value - string.shoeTrack.value), width.inner)
			: [];
	const foot = Math.min(4, Math.max(2.4, nest.hole(string.hole) - width.outer));
	return [
		...steelWall(axis.between(string.top.value, string.shoe.value), width),
		...(string.kind === "tieback" ? [] : shoeMark(axis.at(string.shoe.value), width.outer, foot)),
		...seals,
		...collar,
	];
};

const apart = (a: AxisPoint | undefined, b: AxisPoint | undefined): number =>
	a === undefined || b === undefined ? Number.POSITIVE_INFINITY : Math.hypot(a.x - b.x, a.y - b.y);

/** Least distance between neighbors of a list of places, on the page. */
const closest = (places: readonly AxisPoint[]): number =>
	Math.min(...places.slice(1).map((place, i) => apart(place, places[i])), Number.POSITIVE_INFINITY);

const plugPlaces = ({ results, axis }: View): AxisPoint[] =>
	(results.stimulation?.stages ?? []).flatMap((stage) =>
		stage.plug === undefined ? [] : [axis.at(stage.plug.md.value)],
	);

/** Whether the plugs between stages stand far enough apart to be drawn. */
export const plugsDrawn = (view: View): boolean => closest(plugPlaces(view)) >= PLUGS_APART;

const stimulated = (view: View): Shape[] => {
	const { well, results, axis, nest, detail } = view;
	const stages = results.stimulation?.stages ?? [];
	const through =
		well.strings.find((string) => string.id === well.stimulation?.treatedThrough) ?? well.strings.at(-1);
	if (stages.length === 0 || through === undefined) return [];
	const { outer, inner } = nest.string(through);
	// An interval without clusters is perforated all along.
	const all = stages.flatMap((stage) =>
		stage.clusters.length > 0
			? stage.clusters.map((cluster) => axis.at(cluster.md.value))
			: paced(axis.between(stage.top.md.value, stage.bottom.md.value), INTERVAL_PACE),
	);
	const each = stages.map((stage) => axis.at((stage.top.md.value + stage.bottom.md.value) / 2));
	const places = all.length > 0 && closest(all) >= CLUSTERS_APART ? all : each;
	const toe = well.stimulation?.toe;
	const valveAtToe = toe?.kind.includes("valve") === true ? [axis.at(toe.depth.value)] : [];
	if (well.stimulation?.method === "sliding sleeve") return valveMarks([...places, ...valveAtToe], outer);
	const width = Math.min(1.1, Math.max(0.5, closest(places) * 0.5));
	const reach = nest.hole(through.hole) + (detail === "full" ? 3.5 : 4.5);
	// A level hole is drawn far wider than the bed that it lies in: strokes into the rock would cross the beds above and below.
	const inBed = (place: AxisPoint): boolean =>
		detail === "plain" && axis.level !== undefined && place.md >= axis.level;
	return [
		...clusterMarks(
			places.filter((place) => !inBed(place)),
			inner,
			reach,
			width,
		),
		...bedMarks(
			places.filter(inBed).map((place) => ({ x: place.x, ...withinBed(view, place.y, reach) })),
			width,
		),
		...valveMarks(valveAtToe, outer),
		...(plugsDrawn(view) ? plugPlaces(view).flatMap((at) => plugMark(at, inner)) : []),
	];
};

/** Up and down from a height on the page as far as the bed there goes, and no farther than a stroke would reach [pt]. */
const withinBed = ({ well, scale, deepest }: View, y: number, reach: number) => {
	const bed = bedsOf(well, deepest).find(({ top, base }) => scale.y(top) <= y && y < scale.y(base));
	return {
		top: Math.max(y - reach, bed === undefined ? y : scale.y(bed.top)),
		bottom: Math.min(y + reach, bed === undefined ? y : scale.y(bed.base)),
	};
};
