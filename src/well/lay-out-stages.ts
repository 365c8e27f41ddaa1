import { constant, type Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, maybe, placeOf } from "./desk.ts";
import { asWritten, measured } from "./said.ts";
import { clusterDepth, plugDepth, plugMidway, stageBottom, stageTop } from "./stage-layout.ts";
import type { Stage } from "./well.ts";

export type StagesDefinition = StimulationDefinition["stages"];
type Layout = NonNullable<StagesDefinition["layout"]>;
type Override = NonNullable<StagesDefinition["overrides"]>[number];

/** Where a stage is, before what is pumped in it. */
export type PlacedStage = Omit<Stage, "steps" | "ramp" | "rate" | "actual">;

const AT: Path = ["stimulation", "stages"];

const numbered = (value: number, what: string): Known<"count"> =>
	constant("count", value, what, cite("definition", "regular layout"));

/** Far more than any well has; a count above it is a slip, and laying it out would take the memory there is. */
const MOST_STAGES = 1000;

/** Every stage of a regular layout, the overrides applied; empty where the layout does not fit above the datum. */
export const layOutStages = (
	layout: Layout,
	overrides: readonly Override[],
	plugged: boolean,
	desk: Desk,
): readonly PlacedStage[] => {
	if (!layoutFits(layout, desk)) return [];
	const byNumber = new Map(overrides.map((each) => [each.stage.value as number, each]));
	const places = Array.from({ length: layout.count.value }, (_, i) =>
		placeStage(layout, i + 1, byNumber.get(i + 1)),
	);
	let midway = false;
	const stages = places.map((place, i): PlacedStage => {
		const override = byNumber.get(place.number);
		const below = places[i - 1];
		const plug =
			!plugged || below === undefined
				? undefined
				: (override?.plug ?? plugOf(layout, place.clusters, below.clusters));
		midway ||=
			plug !== undefined && override?.plug === undefined && layout.plug_below_bottom_cluster === undefined;
		return {
			...place,
			top:
				override?.top ?? places[i + 1]?.bottom ?? stageTop.of({ MD_bottom: place.bottom, L: layout.length }),
			...maybe("plug", plug),
			...maybe("why", override?.why),
		};
	});
	if (midway)
		desk.assumptions.push({
			id: "plug-depth",
			at: [...AT, "layout", "plug_below_bottom_cluster"],
			what: message("well/plug-midway.what"),
			why: message("well/plug-midway.why"),
			source: cite("common-practice"),
		});
	return stages;
};

const layoutFits = (layout: Layout, desk: Desk): boolean => {
	const { count, bottom, length, clusters, cluster_spacing: spacing } = layout;
	const at: Path = [...AT, "layout"];
	if (count.value > MOST_STAGES || bottom.value - count.value * length.value <= 0) {
		fault(desk, "well/stage-outside", placeOf(count, [...at, "count"]), {
			what: message("well/stage-outside.stages-do-not-fit-above", {
				count: count.value,
				length: asWritten(length),
				bottom: asWritten(bottom),
			}),
			expected: message("well/stage-outside.at-most-them", {
				max: String(Math.max(0, Math.min(MOST_STAGES, Math.ceil(bottom.value / length.value) - 1))),
			}),
			found: asWritten(count),
			mend: message("well/stage-outside.correct-number-stages-their-length"),
			related: [{ at: placeOf(length, [...at, "length"]), label: message("well/stage-outside.label") }],
		});
		return false;
	}
	const span = (clusters.value - 1) * spacing.value;
	if (span < length.value) return true;
	fault(desk, "well/stage-clusters", placeOf(clusters, [...at, "clusters"]), {
		what: message("well/stage-clusters.clusters-apart-reach-into-next", {
			clusters: clusters.value,
			spacing: asWritten(spacing),
		}),
		expected: message("well/stage-clusters.clusters-over-less-than", { length: asWritten(length) }),
		found: measured("measured-depth", span, length.value),
		mend: message("well/stage-clusters.fewer-clusters-closer-spacing-or"),
		related: [
			{ at: placeOf(length, [...at, "length"]), label: message("well/stage-outside.label") },
			{ at: placeOf(spacing, [...at, "cluster_spacing"]), label: message("well/stage-clusters.label") },
		],
	});
	return false;
};

const placeStage = (
	layout: Layout,
	number: number,
	override: Override | undefined,
): Omit<PlacedStage, "top"> => {
	const stated = override?.clusters && [...override.clusters].sort((a, b) => b.value - a.value);
	const bottom =
		override?.bottom ??
		stated?.[0] ??
		stageBottom.of({ MD_1: layout.bottom, n: numbered(number, "stage number"), L: layout.length });
	const clusters =
		stated ??
		Array.from({ length: layout.clusters.value }, (_, k) =>
			clusterDepth.of({ MD_bottom: bottom, k: numbered(k + 1, "cluster number"), s: layout.cluster_spacing }),
		);
	return {
		number,
		bottom,
		clusters,
		...maybe("shotsPerCluster", override?.shots_per_cluster ?? layout.shots_per_cluster),
		...maybe("shotDiameter", layout.shot_diameter),
		...maybe("phasing", layout.phasing),
	};
};

const plugOf = (
	layout: Layout,
	clusters: readonly Known<"measured-depth">[],
	clustersBelow: readonly Known<"measured-depth">[],
): Known<"measured-depth"> | undefined => {
	const [bottomCluster] = clusters;
	const topBelow = clustersBelow.at(-1);
	if (bottomCluster === undefined || topBelow === undefined) return undefined;
	return layout.plug_below_bottom_cluster === undefined
		? plugMidway.of({ MD_cluster: bottomCluster, MD_below: topBelow })
		: plugDepth.of({ MD_cluster: bottomCluster, a: layout.plug_below_bottom_cluster });
};
