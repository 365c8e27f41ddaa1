import { formula } from "../cite/formula.ts";
import { cite } from "../cite/source.ts";

/*
 * How a regular layout places its stages. There is no published rule; it is the tool's own convention, and these are its
 * words: the bottom cluster lies at the stage's bottom, and the stage ends where the next one's bottom cluster lies.
 */

export const stageBottom = formula({
	id: "stimulation/stage-bottom",
	name: "Bottom of a stage",
	expression: "MD_n = MD_1 − (n − 1) L",
	source: cite("definition", "regular layout"),
	inputs: { MD_1: "measured-depth", n: "count", L: "length" },
	gives: "measured-depth",
	validity: "the result below the datum",
	compute: ({ MD_1, n, L }) => positive(MD_1 - (n - 1) * L),
});

export const stageTop = formula({
	id: "stimulation/stage-top",
	name: "Top of a stage",
	expression: "MD_top = MD_bottom − L",
	source: cite("definition", "regular layout"),
	inputs: { MD_bottom: "measured-depth", L: "length" },
	gives: "measured-depth",
	validity: "the result below the datum",
	compute: ({ MD_bottom, L }) => positive(MD_bottom - L),
});

export const clusterDepth = formula({
	id: "stimulation/cluster-depth",
	name: "Mid-depth of a cluster",
	expression: "MD_k = MD_bottom − (k − 1) s",
	source: cite("definition", "regular layout"),
	inputs: { MD_bottom: "measured-depth", k: "count", s: "length" },
	gives: "measured-depth",
	validity: "the result below the datum",
	compute: ({ MD_bottom, k, s }) => positive(MD_bottom - (k - 1) * s),
});

export const plugDepth = formula({
	id: "stimulation/plug-depth",
	name: "Depth of a stage's plug",
	expression: "MD_plug = MD_bottom cluster + a",
	source: cite("definition", "regular layout"),
	inputs: { MD_cluster: "measured-depth", a: "length" },
	gives: "measured-depth",
	compute: ({ MD_cluster, a }) => MD_cluster + a,
});

export const plugMidway = formula({
	id: "stimulation/plug-midway",
	name: "Depth of a plug midway between two stages",
	expression: "MD_plug = (MD_bottom cluster + MD_top cluster of the stage below) / 2",
	source: cite("definition", "regular layout"),
	inputs: { MD_cluster: "measured-depth", MD_below: "measured-depth" },
	gives: "measured-depth",
	compute: ({ MD_cluster, MD_below }) => (MD_cluster + MD_below) / 2,
});

const positive = (depth: number): number => (depth > 0 ? depth : Number.NaN);
