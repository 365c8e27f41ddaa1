import type {
	CasingResults,
	LoadCaseResults,
	LoadKind,
	LoadSituation,
	SituationResults,
} from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Cell, Row } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { CasingString, DesignFactors, FrictionRange } from "../../well/well.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { factorStyle } from "../governing.ts";
import { facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const PRESSURE = { nearest: 10 } as const;
const FORCE = { nearest: 1000 } as const;
const FACTOR = { decimals: 2 } as const;

/** Strings that something loads, from the outermost inward. */
const loaded = (context: PaperContext): readonly CasingResults[] =>
	context.well.strings.flatMap(({ id }) => {
		const results = context.results.casing[id];
		return results === undefined || results.loads.length === 0 ? [] : [results];
	});

/** Said behind a value that nobody stated. */
const assumed = (context: PaperContext): Inline => ({
	kind: "text",
	text: `, ${context.words.label("phrases.assumed")}`,
});

/** A value, marked where nobody stated it; `strong` where the values around it are. */
const withOrigin = (
	context: PaperContext,
	known: Known,
	style?: { readonly decimals: number },
	strong = false,
): Cell => {
	const value = shown(context, known, style);
	if (known.from.kind === "definition") return value;
	return {
		kind: "rich",
		children: [strong ? { kind: "strong", children: [value] } : value, assumed(context)],
	};
};

const FACTORS = [
	"burst",
	"collapse",
	"tension",
	"bending",
	"overpull",
	"triaxial",
] as const satisfies readonly (keyof DesignFactors)[];

/** What the strings are designed against: factors, what helps outside, wear, heat, friction. */
export const designBasisFacts: Part = (context) => {
	if (loaded(context).length === 0) return [];
	const { designBasis } = context.well;
	const factors = FACTORS.map(
		(name) =>
			[
				`factor_${name}`,
				withOrigin(
					context,
					designBasis.designFactors[name],
					factorStyle(designBasis.designFactors[name]),
					true,
				),
			] as const,
	);
	return facts(
		context,
		[
			...factors,
			["burst_backup", withOrigin(context, designBasis.burstBackup, undefined, true)],
			["wear", withOrigin(context, designBasis.wear, undefined, true)],
			["temperature_derating", withOrigin(context, designBasis.temperatureDerating, undefined, true)],
			["overpull", withOrigin(context, designBasis.overpull, undefined, true)],
			["running_speed", withOrigin(context, designBasis.runningSpeed, undefined, true)],
			["friction_cased", frictionCell(context, designBasis.friction.cased)],
			["friction_open_hole", frictionCell(context, designBasis.friction.openHole)],
			...context.well.strings.flatMap((string) => ownBasis(context, string)),
		],
		{ caption: "design_basis" },
	);
};

/** What a string states for itself. */
const ownBasis = (
	context: PaperContext,
	string: CasingString,
): readonly (readonly [label: string, value: Cell, note: string])[] => {
	const { burstBackup, wear, evacuation, production } = string;
	const level = evacuation?.kind === "level" ? evacuation : undefined;
	const of = `${named(context, string.id)} ${context.words.label("phrases.string")}`;
	return [
		["burst_backup", cell(context, burstBackup), of],
		["wear", cell(context, wear), of],
		["fluid_level", cell(context, level?.level), of],
		["fluid_below_level", cell(context, level?.fluid), of],
		["packer", cell(context, production?.packer), of],
		["packer_fluid", cell(context, production?.packerFluid), of],
		["tubing_pressure", cell(context, production?.tubingPressure), of],
		["drawn_down_to", cell(context, production?.drawnDownTo), of],
		["producing_temperature", cell(context, production?.producingTemperature), of],
	];
};

const frictionCell = (context: PaperContext, [least, greatest]: FrictionRange): Cell => ({
	kind: "rich",
	children: [
		{
			kind: "strong",
			children: [
				shown(context, least, FACTOR),
				{ kind: "text", text: ` ${context.words.label("phrases.to")} ` },
				shown(context, greatest, FACTOR),
			],
		},
		...(least.from.kind === "definition" ? [] : [assumed(context)]),
	],
});

/** Only the produced string has hot cases, so one column serves. */
const pressedTogether = ({ situations }: { readonly situations: readonly SituationResults[] }): boolean =>
	situations.some(({ effective_force }) => effective_force !== undefined);

/** What stands inside and outside in each situation, and the pressure at surface of each string. */
export const loadSituations: Part = (context) => {
	const strings = loaded(context);
	const label = context.words.label;
	const order = [...new Set(strings.flatMap(({ situations }) => situations.map(({ id }) => id)))];
	const place = (id: LoadSituation): number =>
		Math.max(...strings.map(({ situations }) => situations.findIndex((each) => each.id === id)));
	return table(
		context,
		"load_situations",
		[
			textColumn(context, "situation", { width: 2.2, rowHead: true }),
			textColumn(context, "inside", { width: 2.6 }),
			textColumn(context, "outside", { width: 2.4 }),
			...strings.map(({ id }) => ({
				...quantityColumn(context, id, "pressure", { label: "surface_pressure_of", style: PRESSURE }),
				head: `${label("columns.surface_pressure_of")} ${named(context, id).toLowerCase()}`,
			})),
			...(strings.some(pressedTogether)
				? [quantityColumn(context, "effective_force", "force", { style: FORCE })]
				: []),
		],
		order
			.toSorted((a, b) => place(a) - place(b))
			.map((id) =>
				row({
					situation: textCell(label(`situations.${id}`)),
					inside: textCell(label(`situation_inside.${id}`)),
					outside: textCell(label(`situation_outside.${id}`)),
					...Object.fromEntries(
						strings.map((string) => [
							string.id,
							cell(context, string.situations.find((each) => each.id === id)?.surface_pressure),
						]),
					),
					effective_force: cell(
						context,
						strings
							.flatMap(({ situations }) => situations)
							.find((each) => each.id === id && each.effective_force !== undefined)?.effective_force,
					),
				}),
			),
		{ dense: true, note: "load_situations" },
	);
};

const shortfall = ({ least_factor, required }: LoadCaseResults): number =>
	(least_factor?.value ?? Number.POSITIVE_INFINITY) / required.value;

/** The case nearest to its required factor, if anything loads the string so. */
const tightest = (loads: readonly LoadCaseResults[]): LoadCaseResults | undefined =>
	loads
		.filter(({ least_factor }) => least_factor !== undefined)
		.toSorted((a, b) => shortfall(a) - shortfall(b))[0];

const KINDS = ["burst", "collapse", "tension", "triaxial"] as const satisfies readonly LoadKind[];

/** A column that says of every case that its factor is reached says nothing. */
const isShort = (context: PaperContext): boolean =>
	loaded(context).some(({ loads }) => loads.some(({ reached }) => reached === false));

/** Of each string and kind of load the case nearest to what is required: pipe beside connection, and where. */
export const tightestFactors: Part = (context) =>
	table(
		context,
		"tightest_factors",
		[
			textColumn(context, "load_kind", { width: 1, rowHead: true }),
			textColumn(context, "situation", { width: 2.4 }),
			quantityColumn(context, "pipe_factor", "ratio", { width: 0.8, style: FACTOR }),
			quantityColumn(context, "connection_factor", "ratio", { width: 0.9, style: FACTOR }),
			textColumn(context, "required_factor", { width: 0.8 }),
			quantityColumn(context, "least_at", "measured-depth", { width: 0.8 }),
			textColumn(context, "load_there", { width: 1.1 }),
			textColumn(context, "rating_there", { width: 1.1 }),
			textColumn(context, "weakest", { width: 1.5 }),
			...(isShort(context) ? [textColumn(context, "load_mark", { width: 0.9 })] : []),
		],
		loaded(context).flatMap((string): Row[] => [
			row({ load_kind: textCell(named(context, string.id)) }, "group"),
			...KINDS.flatMap((kind) => {
				const worst = tightest(string.loads.filter((load) => load.kind === kind));
				return worst === undefined ? [] : [tightRow(context, worst)];
			}),
		]),
		{ dense: true, note: "least_factors" },
	);

const tightRow = (context: PaperContext, load: LoadCaseResults): Row => {
	const label = context.words.label;
	const style = load.kind === "tension" ? FORCE : PRESSURE;
	return row({
		load_kind: textCell(label(`load_kinds.${load.kind}`)),
		situation: textCell(label(`situations.${load.situation}`)),
		pipe_factor: cell(context, load.pipe_factor ?? load.least_factor),
		connection_factor: cell(context, load.connection_factor),
		required_factor: withOrigin(context, load.required, factorStyle(load.required)),
		least_at: cell(context, load.at?.md),
		load_there: cell(context, load.load, style),
		rating_there: cell(context, load.rating, style),
		weakest: textCell(load.governed_by === undefined ? undefined : label(`weakest.${load.governed_by}`)),
		load_mark: textCell(label(`load_marks.${load.reached === false ? "short" : "reached"}`)),
	});
};

/** Every situation of every string, in the order that it meets them: the least factor of each kind, and the mark. */
export const leastFactors: Part = (context) =>
	table(
		context,
		"least_factors",
		[
			textColumn(context, "situation", { width: 3, rowHead: true }),
			...KINDS.map((kind) =>
				quantityColumn(context, `in_${kind}`, "ratio", {
					width: 0.8,
					label: `in_${kind}`,
					style: FACTOR,
				}),
			).toSpliced(
				2,
				0,
				quantityColumn(context, "in_collapse_combined", "ratio", {
					width: 0.9,
					style: FACTOR,
				}),
			),
			textColumn(context, "nearest_in", { width: 1 }),
			quantityColumn(context, "least_at", "measured-depth", { width: 0.8 }),
			textColumn(context, "required_factor", { width: 1 }),
			...(isShort(context) ? [textColumn(context, "load_mark", { width: 0.9 })] : []),
		],
		loaded(context).flatMap((string): Row[] => {
			const situations = [...new Set(string.loads.map(({ situation }) => situation))];
			return [
				row({ situation: textCell(named(context, string.id)) }, "group"),
				...situations.map((situation) =>
					situationRow(
						context,
						situation,
						string.loads.filter((load) => load.situation === situation),
					),
				),
			];
		}),
		{ dense: true, note: "factors_by_situation" },
	);

const situationRow = (
	context: PaperContext,
	situation: LoadSituation,
	loads: readonly LoadCaseResults[],
): Row => {
	const label = context.words.label;
	const worst = tightest(loads);
	const mark = worst === undefined ? "no_load" : worst.reached === false ? "short" : "reached";
	return row({
		situation: textCell(label(`situations.${situation}`)),
		...Object.fromEntries(
			loads.map(({ kind, least_factor }): [string, Cell] => [`in_${kind}`, cell(context, least_factor)]),
		),
		in_collapse_combined: cell(context, loads.find(({ kind }) => kind === "collapse")?.combined_factor),
		nearest_in: textCell(worst && label(`load_kinds.${worst.kind}`)),
		least_at: cell(context, worst?.at?.md),
		required_factor:
			worst === undefined
				? { kind: "none" }
				: withOrigin(context, worst.required, factorStyle(worst.required)),
		load_mark: textCell(label(`load_marks.${mark}`)),
	});
};

/** What the hook carries with the shoe at bottom, over the range of friction. */
export const hookLoadsTable: Part = (context) =>
	table(
		context,
		"hook_loads",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			quantityColumn(context, "hook_free", "force", { style: FORCE }),
			quantityColumn(context, "let_down_least", "force", { style: FORCE }),
			quantityColumn(context, "let_down_greatest", "force", { style: FORCE }),
			quantityColumn(context, "pulled_least", "force", { style: FORCE }),
			quantityColumn(context, "pulled_greatest", "force", { style: FORCE }),
			quantityColumn(context, "slides_to", "measured-depth", { width: 1.2 }),
		],
		loaded(context).flatMap(({ id, hook_load: hook, slack_off: slide }) =>
			hook === undefined
				? []
				: [
						row({
							string: textCell(named(context, id)),
							hook_free: cell(context, hook.free),
							let_down_least: cell(context, hook.run_in_least_friction),
							let_down_greatest: cell(context, hook.run_in_greatest_friction),
							pulled_least: cell(context, hook.pulled_least_friction),
							pulled_greatest: cell(context, hook.pulled_greatest_friction),
							slides_to: cell(context, slide?.greatest_friction.reach.md),
						}),
					],
		),
		{ note: "hook_loads" },
	);
