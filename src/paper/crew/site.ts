import type { Block, Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { surfaceLocation } from "../parts/identity.ts";
import { titled } from "../parts/part.ts";
import { backGoesOn } from "./goes-on.ts";
import { jobOf, stringOf } from "./job.ts";
import { SHEET_VALUES } from "./numbers.ts";
import { withNote } from "./values/line.ts";

type Item = Extract<Block, { kind: "facts" }>["items"][number];

/** A line that nobody filled is a box to fill. */
const box = (value: string | undefined): Cell => {
	const made = textCell(value);
	return made.kind === "none" ? { kind: "blank" } : made;
};

/** A value of the sheet under the sheet's own label; what the definition lacks is left out. */
const itemsOf = (context: PaperContext, value: string): readonly Item[] =>
	(SHEET_VALUES[value]?.(context, stringOf(context)) ?? []).map((found) => ({
		label: `${context.words.label(`crew.numbers.${value}`)}${found.of === undefined ? "" : `: ${found.of}`}`,
		value: withNote(found),
	}));

/** Whom to call, what to say and where help is stay on the sheet, however full it is: contacts beyond go on behind it. */
const EMERGENCY = 12;

/** Whom to call, what to say, where help is and where to go. */
export const emergency = (context: PaperContext): Block[] => {
	const { safety, site } = context.well;
	const label = (key: string): string => context.words.label(`crew.${key}`);
	const of = safety?.emergency;
	const distance = cell(context, of?.hospital_distance, {
		unit: context.units === "metric" ? "km" : "mi",
		decimals: 0,
	});
	const hospital: Cell =
		of?.hospital === undefined || distance.kind !== "quantity"
			? box(of?.hospital)
			: { kind: "rich", children: [{ kind: "text", text: `${of.hospital}, ` }, distance] };
	const points = safety?.muster_points ?? [];
	const contacts = (safety?.contacts ?? []).filter(
		({ papers }) => papers === undefined || papers.includes("crew"),
	);
	return backGoesOn(
		context,
		"emergency",
		label("emergency_head"),
		[
			{
				kind: "facts",
				caption: label("emergency_head"),
				items: [
					{ label: label("emergency"), value: box(of?.number) },
					{ label: label("say_this_address"), value: box(of?.site_address) },
					{ label: context.words.label("facts.location"), value: box(surfaceLocation(site)) },
					{
						label: label("landing"),
						value: SHEET_VALUES["landing_site"]?.(context, undefined)[0]?.cell ?? box(undefined),
					},
					{ label: label("hospital"), value: hospital },
					{ label: label("first_aider"), value: box(safety?.first_aider) },
					...(points.length === 0
						? [{ label: context.words.label("crew.numbers.muster_points"), value: box(undefined) }]
						: points.map(({ id, at, route }) => ({
								label: `${context.words.label("crew.numbers.muster_points")}: ${titled(id)}`,
								value: textCell(route === undefined ? at : `${at}. ${route}`),
							}))),
					{ label: label("radio"), value: box(safety?.radio_channel) },
					{ label: label("eyewash"), value: box(safety?.eyewash) },
					{ label: label("extinguishers"), value: box(safety?.extinguishers) },
					...contacts.map(({ role, name, phone }) => ({ label: role, value: textCell(`${name}, ${phone}`) })),
				],
			},
		],
		EMERGENCY,
	);
};

/** What of the site this job meets, where the front of the sheet does not have it already. */
export const siteFacts = (context: PaperContext): Block[] => {
	const job = jobOf(context);
	const front = new Set(job?.numbers.map(({ value }) => value));
	const items = ["flame_resistant_clothing", ...(job?.site ?? [])]
		.filter((value) => !front.has(value))
		.flatMap((value) => itemsOf(context, value));
	const caption = context.words.label("crew.this_site");
	return items.length === 0
		? []
		: backGoesOn(context, "this_site", caption, [{ kind: "facts", caption, items }]);
};
