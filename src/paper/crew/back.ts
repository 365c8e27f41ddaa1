import { ITEM_LISTS, type ItemList, type JobItem } from "../../catalog/jobs.ts";
import type { Block } from "../../document/blocks.ts";
import { type PaperContext, textCell } from "../context.ts";
import { asGiven, type Part, row, table, textColumn } from "../parts/part.ts";
import { backGoesOn } from "./goes-on.ts";
import { inPaperWords, jobOf, stringOf } from "./job.ts";
import { SHEET_VALUES } from "./numbers.ts";
import { emergency, siteFacts } from "./site.ts";
import { NOT_APPLICABLE } from "./values/line.ts";

/** What the law asks goes before what is good practice; else as the job's data has them. */
const lawFirst = ({ sources }: PaperContext, items: readonly JobItem[]): readonly JobItem[] => {
	const isLaw = ({ source }: JobItem): boolean =>
		source.some((key) => sources[key as keyof typeof sources]?.kind === "regulation");
	return [...items.filter(isLaw), ...items.filter((item) => !isLaw(item))];
};

/** Words under a heading, one line each. */
const listed = (context: PaperContext, list: string, lines: readonly string[]): Block[] =>
	lines.length === 0
		? []
		: [
				{ kind: "heading", level: 3, text: context.words.label(`crew.lists.${list}`) },
				...backGoesOn(context, list, context.words.label(`crew.lists.${list}`), [
					{
						kind: "list",
						ordered: false,
						items: lines.map((text): readonly Block[] => [
							{ kind: "paragraph", children: [{ kind: "text", text }] },
						]),
					},
				]),
			];

/** The lists that stand as they are; the others have what the definition knows beside them. */
const PLAIN = ITEM_LISTS.filter(
	(list) => list !== "roles" && list !== "chemicals" && list !== "lessons" && list !== "alongside",
);

const itemLines = (context: PaperContext, list: ItemList): readonly string[] =>
	lawFirst(context, jobOf(context)?.[list] ?? [])
		.filter(({ needs }) => needs === undefined || (context.well.site.pad?.other_wells ?? []).length > 0)
		.map((item) => inPaperWords(context, item));

/** What goes on at the other wells of the pad meanwhile, and who is told there; NOT SET where nobody is named. */
const padWork = ({ well, words: { label } }: PaperContext): readonly string[] =>
	(well.site.pad?.other_wells ?? []).flatMap(({ name, work, status, agreed_with: who }) =>
		work === undefined && who === undefined
			? []
			: [
					label("crew.pad_work")
						.replace("{well}", name)
						.replace("{work}", work ?? status ?? "")
						.replace("{who}", who ?? label("crew.not_set")),
				],
	);

/** Who does what: by name where the definition has it, else a line to write on. */
const roles = (context: PaperContext): Block[] => {
	const crew = context.well.safety?.crew ?? [];
	const same = (role: string, item: JobItem): boolean =>
		[item.en, item.es].some((words) => words?.toLowerCase() === role.toLowerCase());
	const items = jobOf(context)?.roles ?? [];
	const others = crew.filter(
		({ role, job }) =>
			(job === undefined
				? context.jobs.every((each) => !each.roles?.some((item) => same(role, item)))
				: isOf(context, job)) && !items.some((item) => same(role, item)),
	);
	const named = (name: string | undefined) => {
		const made = textCell(name);
		return made.kind === "none" ? ({ kind: "blank" } as const) : made;
	};
	const name = context.words.label("crew.lists.roles");
	return backGoesOn(context, "roles", name, [
		{
			kind: "facts",
			caption: name,
			items: [
				...items.map((item) => ({
					label: inPaperWords(context, item),
					value: named(
						crew.find(({ role, job }) => same(role, item) && (job === undefined || isOf(context, job)))?.name,
					),
				})),
				...others.map((one) => ({ label: one.role, value: named(one.name) })),
			],
		},
	]);
};

/** Whether words of the definition, such as `plug drill-out`, name the job of the sheet. */
const isOf = ({ job }: PaperContext, words: string): boolean => words.replaceAll(/\s+/gu, "-") === job?.id;

/** How each additive is handled, where the job handles them, and what is gone by with every chemical. */
const chemicals = (context: PaperContext): Block[] => {
	const additives =
		jobOf(context)?.additives !== true
			? []
			: (context.well.stimulation?.additives ?? []).filter(
					({ papers }) => papers === undefined || papers.includes("crew"),
				);
	return [
		...listed(context, "chemicals", itemLines(context, "chemicals")),
		...backGoesOn(
			context,
			"crew_additives",
			context.words.label("captions.crew_additives"),
			table(
				context,
				"crew_additives",
				[
					textColumn(context, "additive", { width: 2, rowHead: true }),
					textColumn(context, "handling", { width: 3 }),
				],
				additives.map(({ name, purpose, handling }) =>
					row({
						additive: textCell(`${name}: ${asGiven(context, purpose)}`),
						handling: handling === undefined ? { kind: "blank" } : textCell(handling),
					}),
				),
				{ dense: true },
			),
		),
	];
};

/** Whether a value has a meaning in this job: of a string that lands no plug, the pressure of landing one has none. */
const applies = (context: PaperContext, value: string): boolean =>
	SHEET_VALUES[value]?.(context, stringOf(context)) !== NOT_APPLICABLE;

/** Questions asked back. Each has its answer on the front, and none is printed beside it. */
const askBack = (context: PaperContext): Block[] => [
	{ kind: "heading", level: 3, text: context.words.label("crew.ask_back") },
	...backGoesOn(context, "ask_back", context.words.label("crew.ask_back"), [
		{
			kind: "list",
			ordered: true,
			items: (jobOf(context)?.ask ?? [])
				.filter(({ answers }) => answers.some((value) => applies(context, value)))
				.map(({ question }): readonly Block[] => [
					{
						kind: "paragraph",
						children: [
							{
								kind: "text",
								text:
									(typeof question === "string"
										? context.words.findLabel(`crew.ask.${question}`)
										: undefined) ?? inPaperWords(context, question),
							},
						],
					},
				]),
		},
	]),
];

/** The back of the sheet, above the lines to sign on. */
export const crewBack: Part = (context) => {
	const { safety } = context.well;
	const lessons = safety?.lessons ?? [];
	return [
		{
			kind: "columns",
			blocks: [
				...emergency(context),
				...siteFacts(context),
				...roles(context),
				...PLAIN.flatMap((list) => listed(context, list, itemLines(context, list))),
				...listed(context, "alongside", [
					...itemLines(context, "alongside"),
					...padWork(context),
					...(safety?.alongside ?? []),
				]),
				...chemicals(context),
				...listed(context, "lessons", [
					...lessons,
					...itemLines(context, "lessons"),
					context.words.label("crew.driving"),
				]),
				...askBack(context),
			],
		},
	];
};

/** Lines abreast: two people to each. */
const SIGN_IN_LINES = 6;

export const crewSignIn: Part = (context) => [
	{
		kind: "sign-in",
		abreast: 2,
		columns: [
			{ head: context.words.label("crew.name"), width: 2.8 },
			{ head: context.words.label("crew.company"), width: 2 },
			{ head: context.words.label("crew.months"), width: 1.5 },
			{ head: context.words.label("crew.muster"), width: 1.7 },
			{ head: context.words.label("crew.signature"), width: 2.6 },
		],
		lines: SIGN_IN_LINES,
	},
];
