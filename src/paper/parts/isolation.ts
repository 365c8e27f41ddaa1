import type { AnnulusGap, IsolationLayer, ZonePhase } from "../../calc/results.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { evidenceOf } from "../narrative/other-wells.ts";
import { asGiven, facts, named, type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";
import { uncertaintyCell } from "./path-places.ts";

const sentence = (words: readonly string[]): string => titled(words.join(", "));

/** The few lines that answer whether the water is isolated; the rock is counted from the base of protected water. */
export const isolationFacts: Part = (context) => {
	const { isolation, stimulation } = context.results;
	return facts(
		context,
		[
			["steel_layers", cell(context, isolation.steel_at_protected_water)],
			["cement_layers", verifiedOf(context)],
			["water_to_perforation", cell(context, isolation.protected_water_to_top_perforation)],
			["water_to_fracture", cell(context, stimulation?.fractures?.least_below_protected_water)],
			["survey_uncertainty", uncertaintyCell(context)],
			["confining_between", confiningWords(context)],
		],
		{ columns: 2 },
	);
};

/** Cement columns across the base, and how many of them are more than a plan. */
const verifiedOf = (context: PaperContext): Cell => {
	const columns = context.results.isolation.cement_at_protected_water;
	if (columns === undefined) return { kind: "none" };
	const verified = columns.filter(({ evidence }) => evidence !== "planned").length;
	const count = (value: number) => ({ kind: "quantity" as const, dimension: "count" as const, value });
	return {
		kind: "rich",
		children: [
			count(columns.length),
			{ kind: "text", text: `, ${context.words.label("phrases.of_them_verified")} ` },
			count(verified),
		],
	};
};

const confiningWords = (context: PaperContext): Cell => {
	const beds = context.results.isolation.confining;
	if (beds.length === 0) return { kind: "none" };
	return {
		kind: "rich",
		children: beds.flatMap(({ name, thickness }, i) => {
			const value = cell(context, thickness);
			return [
				{ kind: "text" as const, text: `${i > 0 ? "; " : ""}${name}, ` },
				...(value.kind === "quantity" ? [value] : []),
			];
		}),
	};
};

/** Each string against the base of protected water: shoe, cement top, and what the column rests on. */
export const barriersTable: Part = (context) => {
	const { isolation, casing, cement, geology } = context.results;
	if (geology.protected_water_base === undefined) return [];
	return table(
		context,
		"barriers",
		[
			textColumn(context, "string", { width: 1.3, rowHead: true }),
			quantityColumn(context, "shoe", "measured-depth"),
			quantityColumn(context, "shoe_below_water", "offset", { width: 1.2 }),
			quantityColumn(context, "cement_top", "measured-depth"),
			quantityColumn(context, "cement_above_water", "offset", { width: 1.2 }),
			textColumn(context, "evidence", { width: 2.2 }),
		],
		isolation.strings.map((string) => {
			const across = isolation.cement_at_protected_water?.find((column) => column.string === string.id);
			return row({
				string: textCell(named(context, string.id)),
				shoe: cell(context, casing[string.id]?.shoe.md),
				shoe_below_water: cell(context, string.shoe_below_protected_water),
				cement_top: cell(context, cement[string.id]?.top.md),
				cement_above_water: cell(context, string.cement_top_above_protected_water),
				evidence: textCell(
					context.words.label(across === undefined ? "evidence.not_across" : `evidence.${across.evidence}`),
				),
			});
		}),
		{ note: "barriers" },
	);
};

/** Every stretch of hole with what is crossed from the inside of the well to the rock. */
export const layersTable: Part = (context) =>
	table(
		context,
		"layers",
		[
			quantityColumn(context, "top_md", "measured-depth", { rowHead: true }),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "bottom_tvd", "true-vertical-depth"),
			textColumn(context, "layers", { width: 6 }),
		],
		context.results.isolation.layers.map(({ top, bottom, layers }) =>
			row({
				top_md: cell(context, top.md),
				bottom_md: cell(context, bottom.md),
				bottom_tvd: cell(context, bottom.tvd),
				layers: textCell(
					layers.length === 0
						? context.words.label("layers.open_hole")
						: sentence(layers.map((layer) => layerWords(context, layer))),
				),
			}),
		),
		{ dense: true, note: "layers" },
	);

const layerWords = (context: PaperContext, layer: IsolationLayer): string => {
	const label = context.words.label;
	const name = named(context, layer.string).toLowerCase();
	if (layer.kind === "open annulus") return label("layers.open_annulus");
	const words = label("layers.of_string")
		.replace("{string}", name)
		.replace("{layer}", label(`layers.${layer.kind}`));
	return `${words} (${label(`layer_evidence.${layer.evidence}`)})`;
};

/** Layers across each zone, a column for each part of the well's life; only layers that span the zone whole are counted. */
export const zonesTable: Part = (context) => {
	const { zones } = context.results.isolation;
	const phases = new Map(zones.flatMap((zone) => zone.phases.map((phase) => [phase.id, phase] as const)));
	const order = [...context.well.holes.map(({ id }) => `drilling-${id}`), "stimulating", "producing"];
	return table(
		context,
		"zones",
		[
			textColumn(context, "zone", { width: 1.7, rowHead: true }),
			quantityColumn(context, "top_tvd", "true-vertical-depth", { width: 0.8 }),
			quantityColumn(context, "base_tvd", "true-vertical-depth", { width: 0.8 }),
			...order.flatMap((id) => {
				const phase = phases.get(id);
				return phase === undefined
					? []
					: [{ id, head: phaseWords(context, phase), kind: "text" as const, width: 1.4 }];
			}),
		],
		zones.map(({ name, kind, top, base, phases: of }) =>
			row({
				zone: textCell(
					kind === "base of protected water" ? name : `${name} (${context.words.label(`zones.${kind}`)})`,
				),
				top_tvd: cell(context, top),
				base_tvd: cell(context, base),
				...Object.fromEntries(of.map((phase) => [phase.id, countsCell(context, phase)])),
			}),
		),
		{ dense: true, note: "zones" },
	);
};

const phaseWords = (context: PaperContext, { phase, hole }: ZonePhase): string =>
	`${context.words.label(`life.${phase}`)}${hole === undefined ? "" : ` ${named(context, hole).toLowerCase()}`}`;

/** `steel 2 (1), cement 2 (0)`: how many, how many of them verified, and what the zone is open to. */
const countsCell = (context: PaperContext, phase: ZonePhase): Cell => {
	const label = context.words.label;
	const text = (words: string) => ({ kind: "text" as const, text: words });
	const open = openWords(context, phase);
	if (open !== undefined && phase.steel.value + phase.cement.value === 0) return textCell(open);
	return {
		kind: "rich",
		children: [
			text(`${label("layers.steel")} `),
			shown(context, phase.steel),
			text(" ("),
			shown(context, phase.verified_steel),
			text(`), ${label("layers.cement")} `),
			shown(context, phase.cement),
			text(" ("),
			shown(context, phase.verified_cement),
			text(`)${open === undefined ? "" : `. ${open}`}`),
		],
	};
};

const openWords = (context: PaperContext, { open, fluid }: ZonePhase): string | undefined => {
	if (open === undefined) return undefined;
	const label = context.words.label;
	return `${label(`open_to.${open}`)}${fluid === undefined ? "" : `; ${label(`fluid.${fluid}`)}`}`;
};

/** Stretches of annulus without cement, with what stands open in them. */
export const gapsTable: Part = (context) => {
	const zones = new Map(context.results.isolation.zones.map(({ id, name }) => [id, name]));
	const label = context.words.label;
	const opened = ({ against, zones: ids }: AnnulusGap): string =>
		against !== "rock"
			? label("phrases.between_strings")
			: ids.length === 0
				? label("phrases.no_zone_open")
				: ids.map((id) => zones.get(id) ?? id).join(", ");
	return table(
		context,
		"gaps",
		[
			textColumn(context, "outside_of", { width: 1.4, rowHead: true }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "bottom_tvd", "true-vertical-depth"),
			textColumn(context, "against", { width: 1.3 }),
			textColumn(context, "opens", { width: 3 }),
		],
		context.results.isolation.gaps.map((gap) =>
			row({
				outside_of: textCell(named(context, gap.string)),
				top_md: cell(context, gap.top.md),
				bottom_md: cell(context, gap.bottom.md),
				bottom_tvd: cell(context, gap.bottom.tvd),
				against: textCell(gap.against === "rock" ? label("phrases.the_rock") : named(context, gap.against)),
				opens: textCell(opened(gap)),
			}),
		),
		{ note: "gaps" },
	);
};

/** Beds stated to confine between protected water and the shallowest perforation. */
export const confiningTable: Part = (context) =>
	table(
		context,
		"confining",
		[
			textColumn(context, "formation", { width: 2, rowHead: true }),
			textColumn(context, "lithology", { width: 1.3 }),
			quantityColumn(context, "top_tvd", "true-vertical-depth"),
			quantityColumn(context, "base_tvd", "true-vertical-depth"),
			quantityColumn(context, "thickness_between", "offset", { width: 1.4 }),
		],
		context.results.isolation.confining.map((bed) =>
			row({
				formation: textCell(bed.name),
				lithology: textCell(bed.lithology),
				top_tvd: cell(context, bed.top),
				base_tvd: cell(context, bed.base),
				thickness_between: cell(context, bed.thickness),
			}),
		),
	);

/** A surveyed distance where there is one, with who measured it; else the one computed from coordinates. */
const distanceCell = (
	context: PaperContext,
	neighbor: PaperContext["well"]["neighbors"][number],
	from: "wellhead" | "pad edge" | "wellbore",
): Cell => {
	const place = context.results.site.neighbors.find(({ id }) => id === neighbor.id);
	const surveyed = neighbor.surveyed?.find((entry) => entry.from === from);
	const computed =
		from === "wellhead" ? place?.from_wellhead : from === "wellbore" ? place?.from_path : undefined;
	const distance = cell(context, surveyed?.distance ?? computed);
	if (from === "wellbore" && surveyed === undefined && distance.kind === "quantity")
		return { kind: "rich", children: [distance, ...plusOrMinus(context)] };
	return surveyed === undefined || distance.kind !== "quantity"
		? distance
		: {
				kind: "rich",
				children: [
					distance,
					{ kind: "text", text: ` (${surveyed.by ?? context.words.label("phrases.surveyed")})` },
				],
			};
};

/** A distance to the path is no better than the survey. */
const plusOrMinus = (context: PaperContext): readonly Inline[] => {
	const radius = context.results.trajectory.uncertainty_radius;
	return radius === undefined ? [] : [{ kind: "text", text: " ± " }, shown(context, radius)];
};

/** What is near: how far from wellhead, pad and path, and how much rock lies below its well. */
export const neighborsTable: Part = (context) => {
	const wells = new Map(context.results.isolation.neighbor_wells.map((well) => [well.id, well]));
	return table(
		context,
		"neighbors",
		[
			textColumn(context, "neighbor", { width: 1.7, rowHead: true }),
			textColumn(context, "neighbor_kind", { width: 1.1 }),
			textColumn(context, "from_wellhead", { width: 1 }),
			textColumn(context, "from_pad", { width: 1 }),
			textColumn(context, "from_path", { width: 1.4 }),
			quantityColumn(context, "well_depth", "depth-below-ground", { width: 0.8 }),
			quantityColumn(context, "above_perforation", "offset", { width: 2.2 }),
			textColumn(context, "sampled", { width: 1 }),
		],
		context.well.neighbors.map((neighbor) =>
			row({
				neighbor: textCell(neighbor.name),
				neighbor_kind: textCell(asGiven(context, neighbor.kind)),
				from_wellhead: distanceCell(context, neighbor, "wellhead"),
				from_pad: distanceCell(context, neighbor, "pad edge"),
				from_path: distanceCell(context, neighbor, "wellbore"),
				well_depth: cell(context, neighbor.depth?.depth),
				above_perforation: cell(context, wells.get(neighbor.id)?.above_top_perforation),
				sampled: textCell(neighbor.sampled),
			}),
		),
		{ dense: true, note: "neighbors" },
	);
};

/** Other wells nearby: nearest approach, separation, reach of the fractures, and what their state rests on. */
export const offsetWellsTable: Part = (context) => {
	const places = new Map(context.results.site.offset_wells.map((place) => [place.id, place]));
	const found = new Map(context.results.isolation.offset_wells.map((well) => [well.id, well]));
	const notEvaluated: Cell = { kind: "text", text: context.words.label("phrases.not_evaluated") };
	return table(
		context,
		"offset_wells",
		[
			textColumn(context, "offset_well", { width: 1.9, rowHead: true }),
			textColumn(context, "status", { width: 1.1 }),
			quantityColumn(context, "in_space", "distance", { width: 1.1 }),
			quantityColumn(context, "nearest_md", "measured-depth", { width: 1 }),
			quantityColumn(context, "separation_factor", "ratio", { width: 1.1 }),
			quantityColumn(context, "treated_in_plan", "distance", { width: 1.3 }),
			quantityColumn(context, "fracture_reach", "distance", { width: 1.1 }),
			quantityColumn(context, "above_perforation", "offset", { width: 1.3 }),
			textColumn(context, "evidence", { width: 2.4 }),
		],
		context.well.offsetWells.map((well) => {
			const [place, bore] = [places.get(well.id), found.get(well.id)];
			const unknown = place?.path === undefined;
			const or = (value: Cell): Cell => (value.kind === "none" ? notEvaluated : value);
			return row({
				offset_well: textCell(
					[well.name, well.api_number].filter((part) => part !== undefined).join(", API "),
				),
				status: textCell(well.status),
				in_space: or(cell(context, bore?.in_space)),
				nearest_md: cell(context, bore?.nearest_in_space?.md),
				separation_factor: or(cell(context, bore?.separation_factor)),
				treated_in_plan: unknown
					? notEvaluated
					: cell(context, bore?.treated_in_plan_at_depth ?? bore?.treated_in_plan),
				fracture_reach: cell(context, bore?.fracture_reach),
				above_perforation: cell(context, bore?.above_top_perforation),
				evidence: textCell(evidenceOf(well)),
			});
		}),
		{ dense: true, note: "offset_wells" },
	);
};

/** The pad's other wells, by name. */
export const padWellsTable: Part = (context) =>
	table(
		context,
		"pad_wells",
		[
			textColumn(context, "offset_well", { width: 2.4, rowHead: true }),
			textColumn(context, "status", { width: 1.4 }),
			quantityColumn(context, "between_wellheads", "distance", { width: 1.2 }),
		],
		(context.well.site.pad?.other_wells ?? []).map((well) =>
			row({
				offset_well: textCell(well.name),
				status: textCell(well.status),
				between_wellheads: cell(context, well.distance),
			}),
		),
	);
