import type { Cell } from "../../document/blocks.ts";
import { cell, textCell } from "../context.ts";
import { surfaceLocation } from "../parts/identity.ts";
import { type Part, row, table, textColumn, titled } from "../parts/part.ts";
import { contactsFor } from "../parts/people.ts";

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
		[
			textColumn(context, "what_to_know", { width: 2, rowHead: true }),
			textColumn(context, "value", { width: 3 }),
		],
		[
			row({ what_to_know: textCell(label("crew.emergency")), value: box(emergency?.number) }),
			row({ what_to_know: textCell(label("crew.say_this_address")), value: box(emergency?.site_address) }),
			row({ what_to_know: textCell(label("facts.location")), value: box(surfaceLocation(site)) }),
			row({
				what_to_know: textCell(label("crew.hospital")),
				value:
					emergency?.hospital === undefined || hospital.kind !== "quantity"
						? box(emergency?.hospital)
						: { kind: "rich", children: [{ kind: "text", text: `${emergency.hospital}, ` }, hospital] },
			}),
			...(safety?.muster_points ?? []).map((point) =>
				row({
					what_to_know: textCell(`${label("crew.numbers.muster_points")}: ${titled(point.id)}`),
					value: textCell(point.at),
				}),
			),
			row({ what_to_know: textCell(label("crew.radio")), value: box(safety?.radio_channel) }),
			row({ what_to_know: textCell(label("crew.eyewash")), value: box(safety?.eyewash) }),
			row({ what_to_know: textCell(label("crew.extinguishers")), value: box(safety?.extinguishers) }),
		],
	);
};

export const crewContacts: Part = (context) => contactsFor(context);

const SIGN_IN_LINES = 30;

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
