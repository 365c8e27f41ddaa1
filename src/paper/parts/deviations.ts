import type { Row } from "../../document/blocks.ts";
import { cell, textCell } from "../context.ts";
import { named, type Part, row, table, textColumn } from "./part.ts";

/** Of a drilled well, what was done otherwise than the plan said. */
export const deviations: Part = (context) => {
	const { well, results } = context;
	const label = (key: string): string => context.words.label(`review.${key}`);
	const shoes = well.strings.flatMap(({ id, plannedShoe, shoe }): readonly Row[] =>
		plannedShoe === undefined || plannedShoe.value === shoe.value
			? []
			: [
					row({
						what: textCell(label("shoe_moved").replace("{string}", named(context, id).toLowerCase())),
						as_planned: cell(context, plannedShoe),
						as_recorded: cell(context, shoe),
					}),
				],
	);
	const record = results.stimulation?.as_pumped;
	const treated =
		record === undefined
			? []
			: [
					row({
						what: textCell(context.words.label("facts.proppant_mass")),
						as_planned: cell(context, record.planned.proppant_mass),
						as_recorded: cell(context, results.stimulation?.proppant_mass),
					}),
					row({
						what: textCell(context.words.label("facts.water_volume")),
						as_planned: cell(context, record.planned.water_volume, {
							decimals: 0,
						}),
						as_recorded: cell(context, results.stimulation?.water_volume, {
							decimals: 0,
						}),
					}),
				];
	const differing = (well.stimulation?.stages ?? [])
		.filter(({ why }) => why !== undefined)
		.map(({ number }) => number);
	const stages =
		differing.length === 0
			? []
			: [
					row({
						what: textCell(label("stages_differ")),
						as_recorded: textCell(`${label("stage_numbers")} ${differing.join(", ")}`),
					}),
				];
	// The stage that was given least of its plan stands by name: a total hides it.
	const shortest = (results.stimulation?.stages ?? [])
		.flatMap(({ number, proppant_mass: planned, as_pumped }) => {
			const placed = as_pumped?.proppant_mass;
			return placed === undefined || planned.value <= 0
				? []
				: [{ number, planned, placed, share: placed.value / planned.value }];
		})
		.toSorted((a, b) => a.share - b.share)[0];
	const least =
		shortest === undefined || shortest.share >= 1
			? []
			: [
					row({
						what: textCell(label("least_proppant").replace("{stage}", String(shortest.number))),
						as_planned: cell(context, shortest.planned),
						as_recorded: cell(context, shortest.placed),
					}),
				];
	const cutShort = (well.stimulation?.stages ?? []).flatMap(({ number, actual }): readonly Row[] => {
		const end = actual?.endedBy;
		if (end === undefined || end === "flush") return [];
		const worked = results.stimulation?.stages.find((stage) => stage.number === number);
		return [
			row({
				what: textCell(
					label("stage_cut_short")
						.replace("{stage}", String(number))
						.replace("{end}", context.words.label(`stage_ends.${end}`).toLowerCase()),
				),
				as_planned: cell(context, worked?.proppant_mass),
				as_recorded: cell(context, worked?.as_pumped?.proppant_mass),
			}),
		];
	});
	return table(
		context,
		"deviations",
		[
			textColumn(context, "what", {
				width: 2.4,
				rowHead: true,
				label: "deviation",
			}),
			textColumn(context, "as_planned", { width: 1.4 }),
			textColumn(context, "as_recorded", { width: 2 }),
		],
		[...shoes, ...treated, ...stages, ...(cutShort.length > 0 ? cutShort : least)],
		{ dense: true },
	);
};
