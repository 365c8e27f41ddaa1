import type { Shape } from "../../document/shapes.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { cementFill, cementPlug, cementTopMark, paced } from "../marks/cement.ts";
import { clusterMarks, valveMarks } from "../marks/perforations.ts";
import { floatCollarMark, holeShapes, plugMark, shoeMark, steelWall } from "../marks/steel.ts";
import { annulusParts } from "../schematic/well-part.ts";
import type { AxisPoint } from "../well-axis.ts";
import { faded } from "./faded.ts";
import type { Scene } from "./scene.ts";
import type { StepKind, WellStep } from "./steps.ts";

/** How far up its gap cement has come in the picture of it on its way. */
const ON_ITS_WAY = 0.55;
/** Plugs and strokes nearer to each other than this are drawn for some stages only [pt]. */
const APART = 3;

/** Where a step stands in the course of the work, and what that makes of each thing in the ground. */
interface Progress {
	readonly step: WellStep;
	/** Whether a thing of this step kind is there by now, and whether this very step adds it. */
	readonly since: (kinds: readonly StepKind[], string?: string) => "later" | "now" | "before";
}

export const progressOf = (steps: readonly WellStep[], step: WellStep): Progress => {
	const here = steps.findIndex(({ id }) => id === step.id);
	return {
		step,
		since: (kinds, string) => {
			const at = steps.findIndex(
				(each) => kinds.includes(each.kind) && (string === undefined || each.string === string),
			);
			if (at === -1 || at > here) return "later";
			return at === here ? "now" : "before";
		},
	};
};

/** What the step adds in full ink, what was there before in grey, what comes later not at all. */
const drawn = (since: ReturnType<Progress["since"]>, shapes: () => Shape[]): Shape[] =>
	since === "later" ? [] : since === "now" ? shapes() : faded(shapes());

const stringOfHole = ({ strings }: Well, hole: Hole): CasingString | undefined =>
	strings.find((string) => string.hole.id === hole.id) ?? strings.at(-1);

const HOLE: readonly StepKind[] = ["pad", "hole", "string"];
const PIPE: readonly StepKind[] = ["pad", "pipe", "string"];
const CEMENT: readonly StepKind[] = ["pad", "cement", "string"];

/** Holes, pipe and cement as far as they have come. */
export const builtPart = (scene: Scene, progress: Progress): Shape[] => {
	const { well } = scene;
	const holes = well.holes.flatMap((hole) => {
		const string = stringOfHole(well, hole);
		return drawn(progress.since(HOLE, string?.id), () =>
			holeShapes(scene.axis.between(hole.top.value, hole.bottom.value), scene.nest.hole(hole)),
		);
	});
	return [
		...holes,
		...well.strings.flatMap((string) =>
			drawn(progress.since(CEMENT, string.id), () => cementOf(scene, progress, string)),
		),
		...well.strings.flatMap((string) => drawn(progress.since(PIPE, string.id), () => steelOf(scene, string))),
		...completionOf(scene, progress),
	];
};

const steelOf = ({ axis, nest, mark, ground }: Scene, string: CasingString): Shape[] => {
	const width = nest.string(string);
	// The foot of a pipe that is hardly longer than it would be taller than the pipe.
	const foot = Math.min(
		7 * mark,
		Math.max(2.4, nest.hole(string.hole) - width.outer),
		(axis.at(string.shoe.value).y - ground) * 0.7,
	);
	return [
		...steelWall(axis.between(string.top.value, string.shoe.value), width),
		...(string.kind === "tieback" ? [] : shoeMark(axis.at(string.shoe.value), width.outer, foot)),
	];
};

const cementOf = (scene: Scene, { step }: Progress, string: CasingString): Shape[] => {
	const { results, axis, nest } = scene;
	const cement = results.cement[string.id];
	if (cement === undefined) return [];
	const moving = step.kind === "cement" && step.string === string.id;
	const basis = cement.top_basis === "recorded" ? "recorded" : "planned";
	const shoe = string.shoe.value;
	const level = levelOf(scene, string);
	const columns = cement.columns.flatMap((column): { from: number; to: number }[] => {
		const from = moving ? Math.max(level, column.top.md.value) : column.top.md.value;
		const to = Math.min(column.bottom.md.value, shoe);
		return to > from ? [{ from, to }] : [];
	});
	const { inner } = nest.string(string);
	const collar = shoe - (string.shoeTrack?.value ?? 0);
	return [
		...columns.flatMap(({ from, to }) =>
			annulusParts(scene, string, from, to).flatMap((part) =>
				cementFill(axis.between(part.from, part.to), part.near, part.far, basis),
			),
		),
		...columns.flatMap(({ from }) =>
			annulusParts(scene, string, from, from + 1)
				.slice(0, 1)
				.flatMap((part) => cementTopMark(axis.at(from), part.near, part.far, moving ? "recorded" : basis)),
		),
		// While it is pumped the pipe is full of it as far up as the plug behind it.
		...(moving ? cementPlug(axis.between(wiperOf(scene, string), shoe), inner, basis) : []),
		...(moving ? plugMark(axis.at(wiperOf(scene, string)), inner) : []),
		...(step.kind === "returns" && step.string === string.id ? floatCollarMark(axis.at(collar), inner) : []),
	];
};

/** Where cement on its way stands outside the pipe [ft MD]. */
export const levelOf = ({ results }: Scene, string: CasingString): number => {
	const top = results.cement[string.id]?.top.md.value ?? string.shoe.value;
	return string.shoe.value - ON_ITS_WAY * (string.shoe.value - top);
};

/** Where the plug behind it stands inside [ft MD]. */
const wiperOf = (_: Scene, string: CasingString): number =>
	string.top.value + 0.45 * (string.shoe.value - string.top.value);

/** Openings, plugs and their drilling out. */
const completionOf = (scene: Scene, progress: Progress): Shape[] => {
	const { well, results, axis, nest, mark } = scene;
	const stages = results.stimulation?.stages ?? [];
	const through =
		well.strings.find((string) => string.id === well.stimulation?.treatedThrough) ?? well.strings.at(-1);
	if (through === undefined || stages.length === 0) return closing(scene, progress);
	const { inner } = nest.string(through);
	const reach = nest.hole(through.hole) + 7 * mark;
	const opened = (from: number, to: number): AxisPoint[] => {
		const places = stages
			.slice(from, to)
			.flatMap((stage) =>
				stage.clusters.length > 0
					? stage.clusters.map((cluster) => axis.at(cluster.md.value))
					: paced(axis.between(stage.top.md.value, stage.bottom.md.value), Math.max(2, 3.4 * mark)),
			);
		return thinned(places);
	};
	const stroke = Math.max(0.8, 1.6 * mark);
	const strokes = (places: readonly AxisPoint[]): Shape[] =>
		well.stimulation?.method === "sliding sleeve"
			? valveMarks(places, nest.string(through).outer)
			: clusterMarks(places, inner, reach, stroke);
	const first = progress.since(["perforate", "stage"]);
	const rest = progress.since(["stages"]);
	const plugs = stages.slice(1).flatMap((stage) => (stage.plug === undefined ? [] : [stage.plug]));
	const setFirst = progress.since(["plug"]);
	const out = progress.since(["drill-out"]);
	const plugged = (from: number, to: number): Shape[] =>
		thinned(
			plugs.slice(from, to).map((plug) => axis.at(plug.md.value)),
			9 * mark,
		).flatMap((at) => plugMark(at, inner));
	return [
		...drawn(first, () => strokes(opened(0, 1))),
		...drawn(rest, () => strokes(opened(1, stages.length))),
		...(out === "later"
			? [...drawn(setFirst, () => plugged(0, 1)), ...drawn(rest, () => plugged(1, plugs.length))]
			: []),
		...closing(scene, progress),
	];
};

/** Enough of the places, from the first on, that each can be told from the next. */
const thinned = (places: readonly AxisPoint[], apart = APART): AxisPoint[] =>
	places.reduce<AxisPoint[]>((kept, place) => {
		const last = kept.at(-1);
		if (last === undefined || Math.hypot(place.x - last.x, place.y - last.y) >= apart) kept.push(place);
		return kept;
	}, []);

/** Cement in the pipe for good, where it is usual: over the openings, past the shoe that guards the water, near the top. */
const closing = (scene: Scene, progress: Progress): Shape[] => {
	const { well, results, axis, nest } = scene;
	const last = well.strings.at(-1);
	if (last === undefined || progress.since(["plugged"]) !== "now") return [];
	const top = last.top.value;
	const total = last.shoe.value;
	const base = results.geology.protected_water_base?.md?.value;
	const opening = results.stimulation?.top_perforation.md.value;
	const span = 0.05 * total;
	const stretches: (readonly [number, number])[] = [
		[top, top + 0.4 * span],
		...(base === undefined ? [] : [[base - 0.3 * span, base + span] as const]),
		...(opening === undefined ? [] : [[opening - 2 * span, opening] as const]),
	];
	const { inner } = nest.string(last);
	return stretches.flatMap(([from, to]) =>
		cementPlug(axis.between(Math.max(from, top), Math.min(to, total)), inner, "planned"),
	);
};
