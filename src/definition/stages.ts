import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { message } from "../messages/message.ts";
import { parseQuantity } from "../units/parse.ts";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { columnsOf } from "./columns-field.ts";
import { measuredDepth } from "./depth-field.ts";
import { date, entry, field, file, group, list, oneOf, optional, reference, text } from "./field.ts";
import { count, part, q, refuse, typed } from "./quantity-field.ts";
import { STAND_IN } from "./stand-ins.ts";

/** The flush: as much as fills the pipe to the uppermost cluster, which the calculation finds. */
export interface FlushTo {
	readonly flush_to: "top cluster";
}

const cleanVolume = field(
	z.string().transform((text, ctx): Known<"volume"> | FlushTo => {
		if (/^\s*to top cluster\s*$/i.test(text)) return { flush_to: "top cluster" };
		if (text === STAND_IN) return typed("volume", Number.NaN, text);
		const read = parseQuantity(text, "volume");
		if (!read.ok) return refuse(ctx, text, { dimension: "volume", failure: read });
		return typed("volume", read.value, text);
	}),
	{
		title: "Clean volume",
		why: "Fluid before proppant; sums to the water used.",
		papers: EVERY,
		dimension: "volume",
		expected: message("definition/expected.flush"),
		example: "700 bbl",
	},
);

const step = entry("Step", "One part of a stage, at one fluid and one concentration.", EVERY, {
	name: text("Name", "On the treatment chart.", EVERY, "pad"),
	fluid: optional(
		reference("Fluid", "Short name of an additive pumped neat; else the base fluid.", TECHNICAL),
	),
	proppant: optional(reference("Proppant", "Short name of the proppant.", TECHNICAL)),
	concentration: optional(
		q("proppant-concentration", "Concentration", "Proppant per volume of clean fluid.", TECHNICAL),
	),
	clean_volume: cleanVolume,
	rate: optional(q("flow-rate", "Rate", "Where it is not the stage's.", TECHNICAL)),
});

const steps = list("Steps", "In the order pumped.", EVERY, step);

const ramp = group(
	"Proppant ramp",
	"Pad and proppant steps found from the fluid's efficiency, put in before the flush.",
	EVERY,
	{
		slurry_volume: q("volume", "Slurry volume", "Pad and proppant steps together.", EVERY),
		proppant: reference("Proppant", "Short name of the proppant.", TECHNICAL),
		mass: q("mass", "Proppant mass", "Placed by the whole ramp.", EVERY),
		efficiency: part("Fluid efficiency", "The part of what is pumped that stays in the fracture.", TECHNICAL),
		steps: count("Steps", "Into which the ramp is cut, after the pad.", TECHNICAL),
	},
);

const perforating = {
	shot_diameter: optional(q("diameter", "Shot diameter", "Pressure lost through the holes.", TECHNICAL)),
	phasing: optional(q("angle", "Phasing", "Angle between shots.", RECORD)),
};

const layout = group("Regular layout", "Equal stages from the bottom up.", EVERY, {
	count: count("Number of stages", "How many times the job repeats.", EVERY),
	bottom: measuredDepth("Bottom of stage 1", "The deepest.", EVERY),
	length: q("length", "Length of a stage", "Along the hole.", EVERY),
	clusters: count("Clusters in a stage", "Places the rock is opened.", TECHNICAL),
	cluster_spacing: q("length", "Cluster spacing", "Along the hole.", TECHNICAL),
	shots_per_cluster: optional(count("Shots in a cluster", "Pressure lost through the holes.", TECHNICAL)),
	...perforating,
	plug_below_bottom_cluster: optional(
		q("length", "Plug below the bottom cluster", "Where the stage's plug is set.", TECHNICAL),
	),
});

const interval = group("Single interval", "One stretch, treated once.", EVERY, {
	from: measuredDepth("Top of the interval", "Shallowest opening.", EVERY),
	to: measuredDepth("Bottom of the interval", "Deepest opening.", EVERY),
	shots: optional(count("Shots", "Pressure lost through the holes.", TECHNICAL)),
	...perforating,
});

const override = entry("Stage that differs", "Only what differs from the layout is given.", EVERY, {
	stage: count("Stage", "Its number; 1 is the deepest.", EVERY),
	bottom: optional(measuredDepth("Bottom", "Instead of the layout's.", EVERY)),
	top: optional(measuredDepth("Top", "Instead of the layout's.", EVERY)),
	clusters: optional(
		list(
			"Cluster depths",
			"Instead of the layout's.",
			TECHNICAL,
			measuredDepth("Cluster", "Mid-depth.", TECHNICAL),
		),
	),
	shots_per_cluster: optional(count("Shots in a cluster", "Instead of the layout's.", TECHNICAL)),
	plug: optional(measuredDepth("Plug", "Instead of the layout's.", TECHNICAL)),
	rate: optional(q("flow-rate", "Rate", "Instead of the treatment's.", TECHNICAL)),
	steps: optional(steps),
	why: optional(text("Why it differs", "A fault, a neighbor, an old well.", RECORD)),
});

const sleeve = entry("Sleeve", "The sleeve of one stage, and the ball that opens it.", TECHNICAL, {
	stage: count("Stage", "Its number; 1 is the deepest.", TECHNICAL),
	seat: q("diameter", "Seat", "Bore that the ball lands on; the smaller the nearer the toe.", TECHNICAL),
	ball: optional(
		q(
			"diameter",
			"Ball",
			"Passes every seat above and not its own; absent where pressure opens the sleeve.",
			TECHNICAL,
		),
	),
});

/** How a stage came to its end. */
export const STAGE_ENDS = ["flush", "screen-out", "pressure limit", "equipment", "other"] as const;

const stageRecord = entry("Stage record", "What one stage was like.", RECORD, {
	stage: count("Stage", "Its number; 1 is the deepest.", RECORD),
	date: optional(date("Date", "When it was pumped.", RECORD)),
	average_rate: optional(q("flow-rate", "Average rate", "As charted.", RECORD)),
	average_pressure: optional(q("pressure", "Average treating pressure", "As charted.", RECORD)),
	maximum_pressure: optional(q("pressure", "Maximum treating pressure", "As charted.", RECORD)),
	breakdown: optional(q("pressure", "Breakdown pressure", "As charted.", RECORD)),
	instantaneous_shut_in: optional(q("pressure", "Instantaneous shut-in pressure", "As charted.", RECORD)),
	clean_volume: optional(q("volume", "Clean volume", "As metered.", RECORD)),
	proppant_mass: optional(q("mass", "Proppant placed", "As weighed.", RECORD)),
	started: optional(text("Started", "First pump on, time of day.", RECORD, "06:40")),
	ended: optional(text("Ended", "Last pump off, time of day.", RECORD, "09:15")),
	ended_by: optional(oneOf(STAGE_ENDS, "Ended by", "A stage that was cut short says why.", RECORD)),
	problem: optional(
		text("Problem", "What went wrong, in a sentence.", RECORD, "screened out in the last sand step"),
	),
});

/** Where the stages are, what each is pumped with, and what was pumped. Exactly one of layout, rows and interval. */
export const stages = group("Stages", "Where the rock is opened, and what is pumped there.", EVERY, {
	layout: optional(layout),
	rows: optional(
		group("Stage list", "Every stage on a row of a file.", EVERY, {
			file: file("Stage file", "Stages as CSV or XLSX.", RECORD, "stages.csv"),
			columns: columnsOf(
				"stage",
				"bottom",
				"top",
				"clusters",
				"plug",
				"shots_per_cluster",
				"shot_diameter",
				"phasing",
				"rate",
				"why",
			),
		}),
	),
	interval: optional(interval),
	sleeves: optional(list("Sleeves", "Of a well that is opened by sliding sleeves.", TECHNICAL, sleeve)),
	treatment: group("Treatment", "What is pumped in each stage unless an override says otherwise.", EVERY, {
		rate: q("flow-rate", "Rate", "Sets pressure and time.", TECHNICAL),
		steps,
		ramp: optional(ramp),
	}),
	couplings: optional(
		group(
			"Couplings",
			"Where the casing's couplings are, from its tally: plugs and guns keep clear of them.",
			RECORD,
			{
				file: file("Coupling file", "The depth of each coupling, as CSV or XLSX.", RECORD, "couplings.csv"),
				columns: columnsOf("coupling"),
				clearance: q("length", "Clearance", "Least distance to a plug or a cluster.", RECORD),
			},
		),
	),
	overrides: optional(list("Stages that differ", "From the layout or the treatment.", EVERY, override)),
	actual: optional(
		group("As pumped", "The job's records, stage by stage.", RECORD, {
			file: optional(
				file("Record file", "Records of the stages, as CSV or XLSX.", RECORD, "stages-actual.csv"),
			),
			columns: columnsOf(
				"stage",
				"date",
				"average_rate",
				"average_pressure",
				"maximum_pressure",
				"breakdown",
				"instantaneous_shut_in",
				"clean_volume",
				"proppant_mass",
				"started",
				"ended",
				"ended_by",
				"problem",
			),
			charts: optional(
				list(
					"Treatment charts",
					"Printed as one page a stage in the appendices; the volume is held against the record.",
					RECORD,
					entry("Treatment chart", "Readings of one stage over time.", RECORD, {
						stage: count("Stage", "Its number; 1 is the deepest.", RECORD),
						file: file("Chart file", "A CSV of readings, a second apart or more.", RECORD, "stage-1.csv"),
						columns: columnsOf("time", "pressure", "rate", "concentration", "annulus"),
					}),
				),
			),
			records: optional(list("Records", "Where a file is not worth it.", RECORD, stageRecord)),
		}),
	),
});
