import { isOpen } from "../../rules/finding.ts";
import type { PaperContext } from "../context.ts";
import { factorStyle, nearestOffsetWell, nearestToFactor } from "../governing.ts";
import { asGiven, named, namedInWords } from "../parts/part.ts";
import { citationText } from "../words/citation.ts";
import { listed, say, sayText } from "./say.ts";

const FACTOR = { decimals: 2 } as const;
const WHOLE = { decimals: 0 } as const;

/** What each section of the regulator's attachment opens with: its conclusion, in this well's numbers. */
export const attachmentWords = (context: PaperContext): Record<string, unknown> => ({
	...pathWords(context),
	...designWords(context),
	...cementWords(context),
	...limitWords(context),
	...treatmentTold(context),
	...nearWords(context),
	...ruleWords(context),
});

const pathWords = (context: PaperContext): Record<string, unknown> => {
	const { trajectory } = context.results;
	return {
		kickoff_md: say(context, trajectory.kickoff?.md),
		landing_md: say(context, trajectory.landing?.md),
		landing_tvd: say(context, trajectory.landing?.tvd),
		total_md: say(context, trajectory.total_depth.md),
		total_tvd: say(context, trajectory.total_depth.tvd),
		greatest_dogleg: say(context, trajectory.maximum_dogleg),
		greatest_inclination: say(context, trajectory.maximum_inclination),
		path_surveyed: trajectory.basis === "surveyed",
	};
};

const designWords = (context: PaperContext): Record<string, unknown> => {
	const loads = nearestToFactor(
		Object.values(context.results.casing).flatMap(({ id, loads: of }) => of.map((load) => ({ id, load }))),
		({ load }) => load,
	);
	const [worst] = loads;
	const short = loads.filter(({ load }) => load.reached === false).length;
	const { label } = context.words;
	return {
		has_loads: worst !== undefined,
		load_cases: { kind: "quantity", dimension: "count", value: loads.length },
		loads_short: short === 0 ? false : { kind: "quantity", dimension: "count", value: short },
		governing_factor: say(context, worst?.load.least_factor, FACTOR),
		governing_required: say(
			context,
			worst?.load.required,
			worst === undefined ? FACTOR : factorStyle(worst.load.required),
		),
		governing_kind: worst === undefined ? false : label(`load_kinds.${worst.load.kind}`),
		governing_case: worst === undefined ? false : label(`situations.${worst.load.situation}`).toLowerCase(),
		governing_string: worst === undefined ? false : namedInWords(context, worst.id),
		...governedWords(context),
	};
};

/** What governs each string, a sentence each; and strings of which no load case could be evaluated. */
const governedWords = (context: PaperContext): Record<string, unknown> => {
	const { label } = context.words;
	const strings = context.well.strings.map(({ id }) => ({
		name: namedInWords(context, id),
		worst: nearestToFactor(context.results.casing[id]?.loads ?? [], (load) => load)[0],
	}));
	return {
		governed: strings.flatMap(({ name, worst }) =>
			worst === undefined
				? []
				: [
						{
							name,
							kind: label(`load_kinds.${worst.kind}`).toLowerCase(),
							case: label(`situations.${worst.situation}`).toLowerCase(),
							factor: say(context, worst.least_factor, FACTOR),
							required: say(context, worst.required, factorStyle(worst.required)),
							depth: say(context, worst.at?.md),
						},
					],
		),
		not_evaluated: strings.flatMap(({ name, worst }) => (worst === undefined ? [{ name }] : [])),
	};
};

const cementWords = (context: PaperContext): Record<string, unknown> => {
	const and = context.words.label("phrases.and");
	const cemented = context.well.strings.flatMap(({ id }) => {
		const cement = context.results.cement[id];
		return cement === undefined ? [] : [{ id, cement }];
	});
	const names = (some: typeof cemented): string =>
		listed(
			some.map(({ id }) => named(context, id).toLowerCase()),
			and,
		);
	const tight = cemented
		.flatMap(({ id, cement }) => {
			const margin = cement.placement?.fracture?.margin ?? cement.least_fracture_margin?.margin;
			return margin === undefined ? [] : [{ id, margin }];
		})
		.toSorted((a, b) => a.margin.value - b.margin.value)[0];
	const verified = (context.results.isolation.cement_at_protected_water ?? []).filter(
		({ evidence }) => evidence !== "planned",
	);
	return {
		to_surface: sayText(names(cemented.filter(({ cement }) => cement.to_surface))),
		not_to_surface: cemented
			.filter(({ cement }) => !cement.to_surface)
			.map(({ id, cement }) => ({
				name: named(context, id).toLowerCase(),
				top: say(context, cement.top.md),
			})),
		tightest_margin: say(context, tight?.margin),
		tightest_margin_string: tight === undefined ? false : namedInWords(context, tight.id),
		tops_verified: {
			kind: "quantity",
			dimension: "count",
			value: verified.length,
		},
		none_verified: verified.length === 0,
	};
};

const limitWords = (context: PaperContext): Record<string, unknown> => {
	const limits = context.well.stimulation?.limits;
	const kickouts = (limits?.pumpKickouts ?? []).toSorted((a, b) => a.value - b.value);
	const tests = context.well.strings.filter(({ pressureTest }) => pressureTest !== undefined);
	return {
		first_kickout: say(context, kickouts[0]),
		ladder_in_order: context.results.stimulation?.ladder?.broken.length === 0,
		ladder_broken: (context.results.stimulation?.ladder?.broken.length ?? 0) > 0,
		tests_planned: {
			kind: "quantity",
			dimension: "count",
			value: tests.length,
		},
		tests_made: {
			kind: "quantity",
			dimension: "count",
			value: tests.filter(({ pressureTest }) => pressureTest?.actual !== undefined).length,
		},
		some_tests: tests.length > 0,
	};
};

const treatmentTold = (context: PaperContext): Record<string, unknown> => {
	const totals = context.results.stimulation;
	return {
		hardest_stage: totals?.hardest_stage === undefined ? false : String(totals.hardest_stage.number),
		expected_exact: say(context, totals?.expected_treating_pressure, WHOLE),
		margin_to_kickout: say(context, totals?.hardest_stage?.screen_out?.room_to_first_kickout, WHOLE),
		water_bbl: say(context, totals?.water_volume, WHOLE),
		recycled_bbl: say(context, totals?.recycled_water_volume, WHOLE),
		base_fluid: sayText(asGiven(context, context.well.stimulation?.baseFluid.kind)),
		fracture_separation: say(context, totals?.fractures?.least_below_protected_water),
		stages_recorded: say(context, totals?.as_pumped?.stages_recorded),
		highest_recorded: say(context, totals?.as_pumped?.highest_pressure, WHOLE),
		perforation_top: say(context, totals?.top_perforation.md),
		perforation_bottom: say(context, totals?.bottom_perforation.md),
	};
};

const nearWords = (context: PaperContext): Record<string, unknown> => {
	const near = nearestOffsetWell(context.results);
	return {
		has_offset_wells: context.well.offsetWells.length > 0,
		offset_count: {
			kind: "quantity",
			dimension: "count",
			value: context.well.offsetWells.length,
		},
		nearest_offset: sayText(near?.name),
		nearest_offset_distance: say(context, near?.in_space),
		nearest_offset_factor: say(context, near?.separation_factor),
		neighbor_count: {
			kind: "quantity",
			dimension: "count",
			value: context.well.neighbors.length,
		},
		has_neighbors: context.well.neighbors.length > 0,
	};
};

const ruleWords = (context: PaperContext): Record<string, unknown> => {
	const { counts, findings } = context.judgement;
	const count = (value: number) => ({
		kind: "quantity" as const,
		dimension: "count" as const,
		value,
	});
	const due = context.due.filter(({ sent }) => sent === undefined);
	return {
		checks_apply: count(findings.filter(({ verdict }) => verdict !== "does not apply").length),
		checks_met: count(counts.met),
		checks_open: count(findings.filter(({ verdict }) => isOpen(verdict)).length),
		checks_confirm: count(counts["needs judgement"]),
		checks_not_applied: count(counts["does not apply"]),
		practice_met: count(
			findings.filter(({ verdict, cite }) => verdict === "met" && cite.kind === "practice").length,
		),
		reports_due: count(due.length),
		some_due: due.length > 0,
		next_due: sayText(due[0]?.due),
		next_due_citation: due[0] === undefined ? false : citationText(context, due[0].citation),
	};
};
