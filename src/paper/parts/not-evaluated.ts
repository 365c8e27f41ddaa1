import { type PaperContext, saidCell, textCell } from "../context.ts";
import { asGiven, named, type Part, row, table, textColumn } from "./part.ts";

/*
 * What a result that could not be had is called. Its key is for the results file; a reader is told the quantity as the
 * trade names it, and of what: `joint strength: conductor`.
 */

type Naming = (context: PaperContext, id: string) => string;

const inWords: Naming = (context, id) => named(context, id).toLowerCase();
const listed =
	(of: (context: PaperContext) => readonly { readonly id: string; readonly name: string }[]): Naming =>
	(context, id) =>
		of(context).find((each) => each.id === id)?.name ?? id;

/** A load case by its id: `tubing-leak`, `tension` or `burst-gas-kick`. */
const loadCase: Naming = ({ words }, id) => {
	const whole = words.findLabel(`situations.${id}`) ?? words.findLabel(`load_kinds.${id}`);
	if (whole !== undefined) return whole.toLowerCase();
	const [kind = "", ...situation] = id.split("-");
	return [`load_kinds.${kind}`, `situations.${situation.join("-")}`]
		.flatMap((key) => words.findLabel(key)?.toLowerCase() ?? [])
		.join(", ");
};

/** Whether a section has to be named: not where its string has no other. */
const section: Naming = ({ words }, number) => words.label("not_evaluated.section").replace("{n}", number);

/** How each part of a key that is not fixed is said, by the name of its group. */
const NAMINGS: Readonly<Record<string, Naming>> = {
	string: inWords,
	hole: inWords,
	element: (context, id) => asGiven(context, id.replaceAll("-", " ")) ?? id,
	place: (context, id) => asGiven(context, id) ?? id,
	load: loadCase,
	section,
	stage: ({ words }, number) => words.label("not_evaluated.stage").replace("{n}", number),
	step: ({ words }, index) =>
		words.label("not_evaluated.step").replace("{n}", String(Number.parseInt(index, 10) + 1)),
	formation: listed(({ well }) => well.geology.formations),
	other: listed(({ well }) => [...well.offsetWells, ...well.neighbors]),
	additive: listed(({ well }) => well.stimulation?.additives ?? []),
};

/** Keys, the parts that are not fixed as named groups, each with its quantity in `not_evaluated` of the labels. */
const QUANTITIES: readonly (readonly [key: RegExp, quantity: string])[] = [
	[/^casing\.sour_service$/u, "sour_service"],
	[/^casing\.mobile_salt\.(?<formation>.+)$/u, "mobile_salt"],
	[/^casing\.(?<string>.+)\.fracture_pressure_at_shoe$/u, "fracture_pressure_at_shoe"],
	[/^casing\.(?<string>.+)\.shoe_test_surface_pressure$/u, "shoe_test_pressure"],
	[/^casing\.(?<string>.+)\.sections\.(?<section>\d+)\.joint_strength$/u, "joint_strength"],
	[/^casing\.(?<string>.+)\.sections\.(?<section>\d+)\.coupling_internal_yield$/u, "coupling_yield"],
	[/^casing\.(?<string>.+)\.loads\.(?<load>[^.]+)\.combined_factor$/u, "combined_collapse"],
	[/^casing\.(?<string>.+)\.loads\.(?<load>[^.]+)$/u, "load_case"],
	[/^casing\.(?<string>.+)\.loads$/u, "loads"],
	[/^cement\.(?<string>.+)\.standoff\.(?<place>.+)$/u, "standoff"],
	[/^cement\.(?<string>.+)\.centralizers$/u, "centralizers"],
	[/^cement\.(?<string>.+)\.float_collar$/u, "float_collar"],
	[/^cement\.(?<string>.+)\.displacement_volume$/u, "displacement_volume"],
	[/^cement\.(?<string>.+)\.pumped_over_calculated$/u, "pumped_over_calculated"],
	[/^cement\.(?<string>.+)\.setting\.strength_reached$/u, "strength_reached"],
	[/^cement\.(?<string>.+)\.annulus_hydrostatic_at_shoe$/u, "annulus_hydrostatic"],
	[/^cement\.(?<string>.+)\.final_lift$/u, "final_lift"],
	[/^cement\.(?<string>.+)\.circulating_density_at_shoe$/u, "circulating_density"],
	[/^cement\.(?<string>.+)\.second_stage\.placement\.friction$/u, "second_stage_friction"],
	[/^cement\.(?<string>.+)\.second_stage\.placement$/u, "second_stage_placement"],
	[/^cement\.(?<string>.+)\.placement\.friction$/u, "placement_friction"],
	[/^cement\.(?<string>.+)\.placement$/u, "placement"],
	[/^isolation\.protecting_string$/u, "protecting_string"],
	[/^isolation\.offset_wells\.(?<other>.+)\.separation_factor$/u, "separation_factor"],
	[/^logistics\.water_loads$/u, "water_loads"],
	[/^logistics\.proppant_loads$/u, "proppant_loads"],
	[/^logistics\.cement_loads$/u, "cement_loads"],
	[/^logistics\.pipe_loads$/u, "pipe_loads"],
	[/^pressure\.holes\.(?<hole>.+)\.kick_tolerance_factor$/u, "kick_tolerance_factor"],
	[/^pressure\.holes\.(?<hole>.+)\.kick_height$/u, "kick_tolerance"],
	[/^safety\.hydrogen_sulfide$/u, "exposure_radii"],
	[/^safety\.noise_at_nearest_dwelling$/u, "noise"],
	[/^site\.total_depth$/u, "total_depth_on_map"],
	[/^site\.from_path$/u, "distances_from_path"],
	[/^site\.(?:neighbors|offset_wells)\.(?<other>.+)\.from_wellhead$/u, "distance_from_wellhead"],
	[/^site\.offset_wells\.(?<other>.+)\.path$/u, "offset_path"],
	[/^stimulation\.boundary\.(?<element>.+)$/u, "allowed_pressure"],
	[/^stimulation\.disclosure\.additives\.(?<additive>.+)$/u, "additive_share"],
	[/^stimulation\.expected_treating_pressure$/u, "treating_pressure"],
	[/^stimulation\.hardest_stage\.limited_entry$/u, "limited_entry"],
	[/^stimulation\.fractures$/u, "fractures"],
	[/^stimulation\.illustrative_height$/u, "fracture_height"],
	[/^stimulation\.stages\.(?<stage>\d+)\.flush_volume$/u, "flush_volume"],
	[/^stimulation\.stages\.(?<stage>\d+)\.steps\.(?<step>\d+)$/u, "step_volume"],
	[/^stimulation\.toe$/u, "toe"],
	[/^stimulation\.toe_opens_at_surface$/u, "toe_opening_pressure"],
	[/^trajectory\.survey_error$/u, "survey_error"],
];

interface NotEvaluated {
	/** `Joint strength`. */
	readonly quantity: string;
	/** `conductor`, `section 2`. */
	readonly of: readonly string[];
}

/** Quantity and subject of a key; undefined for a key that no quantity is named for, which the tests rule out. */
export const notEvaluatedOf = (context: PaperContext, key: string): NotEvaluated | undefined => {
	for (const [pattern, quantity] of QUANTITIES) {
		const found = pattern.exec(key);
		if (found === null) continue;
		const groups = found.groups ?? {};
		const string = context.well.strings.find(({ id }) => id === groups["string"]);
		const of = Object.entries(groups).flatMap(([group, id]) =>
			group === "section" && (string?.sections.length ?? 0) < 2 ? [] : [NAMINGS[group]?.(context, id) ?? id],
		);
		return { quantity: context.words.label(`not_evaluated.${quantity}`), of };
	}
	return undefined;
};

const otherResult = ({ words }: PaperContext): NotEvaluated => ({
	quantity: words.label("not_evaluated.other"),
	of: [],
});

/** Subjects named on the first page; of more, how many. */
const MOST_NAMED = 4;

/** `Joint strength: conductor; Flush volume: stage 1, stage 2, stage 3 and 36 more`: each quantity once. */
export const notEvaluatedInShort = (context: PaperContext): string => {
	const quantities = new Map<string, Set<string>>();
	for (const { key } of context.results.undetermined) {
		const { quantity, of } = notEvaluatedOf(context, key) ?? otherResult(context);
		const subjects = quantities.get(quantity) ?? new Set();
		if (of.length > 0) subjects.add(of.join(" "));
		quantities.set(quantity, subjects);
	}
	const { label } = context.words;
	return [...quantities]
		.map(([quantity, subjects]) => {
			if (subjects.size === 0) return quantity;
			const first = [...subjects].slice(0, MOST_NAMED).join(", ");
			const more = subjects.size - MOST_NAMED;
			const rest = more > 0 ? ` ${label("not_evaluated.and_more").replace("{n}", String(more))}` : "";
			return `${quantity}: ${first}${rest}`;
		})
		.join("; ");
};

/** Results that could not be had, with what would mend them. */
export const undeterminedTable: Part = (context) =>
	table(
		context,
		"undetermined",
		[
			textColumn(context, "not_worked", { width: 2.4, rowHead: true }),
			textColumn(context, "because_missing", { width: 3.4 }),
		],
		context.results.undetermined.map(({ key, because }) => {
			const { quantity, of } = notEvaluatedOf(context, key) ?? otherResult(context);
			return row({
				not_worked: textCell([quantity, ...of].join(", ")),
				because_missing: saidCell(context, because),
			});
		}),
		{ dense: true },
	);
