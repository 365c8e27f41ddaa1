import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { surfaceLocation } from "../parts/identity.ts";
import { asGiven, type Part, row, table, textColumn } from "../parts/part.ts";
import { contactsFor } from "../parts/people.ts";
import { SHEET_VALUES } from "./numbers.ts";
import { withNote } from "./values/line.ts";

/** A line of the site page: a value of the sheet under the sheet's own label. */
const line = (context: PaperContext, value: string) =>
	(SHEET_VALUES[value]?.(context, undefined) ?? []).map((found) =>
		row({
			item: textCell(
				`${context.words.label(`crew.numbers.${value}`)}${found.of === undefined ? "" : `: ${found.of}`}`,
			),
			value: withNote(found),
		}),
	);

/** Whether the first page has it already. */
const onSheet = (context: PaperContext, value: string): boolean =>
	context.jobs
		.find((entry) => entry.id === context.job?.id)
		?.numbers.some((number) => number.value === value) === true;

/** What a person on this site needs whatever the job; a line that the definition lacks is left out. */
const ON_SITE = [
	"muster_points",
	"exclusion",
	"ignition",
	"flame_resistant_clothing",
	"hearing_protection",
	"silica_area",
	"gas_alarms",
	"wind_limit_crane",
	"wind_limit_man_lift",
	"lightning",
] as const;

/** Where to muster, what to tell the dispatcher, where help is. A line without a value is a box to fill. */
export const crewSite: Part = (context) => {
	const { safety, site } = context.well;
	const label = context.words.label;
	const box = (value: string | undefined): Cell => {
		const made = textCell(value);
		return made.kind === "none" ? { kind: "blank" } : made;
	};
	const emergency = safety?.emergency;
	const hospital = cell(context, emergency?.hospital_distance, {
		unit: context.units === "metric" ? "km" : "mi",
		decimals: 0,
	});
	return table(
		context,
		"site",
		[textColumn(context, "item", { width: 2, rowHead: true }), textColumn(context, "value", { width: 3 })],
		[
			row({ item: textCell(label("crew.emergency")), value: box(emergency?.number) }),
			row({ item: textCell(label("crew.say_this_address")), value: box(emergency?.site_address) }),
			row({ item: textCell(label("facts.location")), value: box(surfaceLocation(site)) }),
			row({
				item: textCell(label("crew.hospital")),
				value:
					emergency?.hospital === undefined || hospital.kind !== "quantity"
						? box(emergency?.hospital)
						: { kind: "rich", children: [{ kind: "text", text: `${emergency.hospital}, ` }, hospital] },
			}),
			row({ item: textCell(label("crew.landing")), value: landing(context) }),
			row({ item: textCell(label("crew.radio")), value: box(safety?.radio_channel) }),
			row({ item: textCell(label("crew.eyewash")), value: box(safety?.eyewash) }),
			row({ item: textCell(label("crew.extinguishers")), value: box(safety?.extinguishers) }),
			...ON_SITE.filter((value) => !onSheet(context, value)).flatMap((value) => line(context, value)),
		],
		{ dense: true },
	);
};

const landing = (context: PaperContext): Cell =>
	SHEET_VALUES["landing_site"]?.(context, undefined)[0]?.cell ?? { kind: "blank" };

/** How each additive is handled, where the job handles them. */
export const crewAdditives: Part = (context) => {
	const job = context.jobs.find((entry) => entry.id === context.job?.id);
	if (job?.additives !== true) return [];
	return table(
		context,
		"crew_additives",
		[
			textColumn(context, "additive", { width: 2, rowHead: true }),
			textColumn(context, "handling", { width: 4 }),
		],
		(context.well.stimulation?.additives ?? [])
			.filter(({ papers }) => papers === undefined || papers.includes("crew"))
			.map(({ name, purpose, handling }) =>
				row({
					additive: textCell(`${name}: ${asGiven(context, purpose)}`),
					handling: handling === undefined ? { kind: "blank" } : textCell(handling),
				}),
			),
		{ dense: true },
	);
};

export const crewContacts: Part = (context) => contactsFor(context);

const SIGN_IN_LINES = 22;

export const crewSignIn: Part = (context) => [
	{
		kind: "sign-in",
		columns: [
			{ head: context.words.label("crew.name"), width: 3 },
			{ head: context.words.label("crew.company"), width: 2 },
			{ head: context.words.label("crew.months"), width: 1 },
			{ head: context.words.label("crew.muster"), width: 1.4 },
			{ head: context.words.label("crew.signature"), width: 3 },
		],
		lines: SIGN_IN_LINES,
	},
];
