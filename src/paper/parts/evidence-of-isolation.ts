import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const labelled = (context: PaperContext, group: string, word: string | undefined): string | undefined =>
	word === undefined ? undefined : (context.words.findLabel(`${group}.${word}`) ?? word);

/** Each interval of each bond log: amplitude, index, grade, and whether it counts as bonded. */
export const bondLogTable: Part = (context) =>
	table(
		context,
		"bond_log",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "bottom_tvd", "true-vertical-depth"),
			quantityColumn(context, "amplitude", "sonic-amplitude"),
			quantityColumn(context, "bond_index", "share", { style: { decimals: 0 } }),
			textColumn(context, "grade", { width: 0.8 }),
			textColumn(context, "counts_as", { width: 1.1 }),
			textColumn(context, "log_date", { width: 1.1 }),
			textColumn(context, "stated_by", { width: 2 }),
		],
		context.results.isolation.bond_logs.flatMap((log) =>
			log.intervals.map((interval) =>
				row({
					string: textCell(named(context, log.string)),
					top_md: cell(context, interval.top.md),
					bottom_md: cell(context, interval.bottom.md),
					bottom_tvd: cell(context, interval.bottom.tvd),
					amplitude: cell(context, interval.amplitude),
					bond_index: cell(context, interval.index),
					grade: textCell(asGiven(context, interval.quality)),
					counts_as: textCell(
						context.words.label(interval.bonded ? "bond_grades.bonded" : "bond_grades.not_bonded"),
					),
					log_date: textCell(log.date),
					stated_by: textCell(log.stated_by),
				}),
			),
		),
		{ dense: true, note: "bond_log" },
	);

/** Surveys, tests of the seal and squeezes, a line each, in the order of the strings. */
export const sealWorkTable: Part = (context) =>
	table(
		context,
		"seal_work",
		[
			textColumn(context, "string", { width: 1.1, rowHead: true }),
			textColumn(context, "seal_work", { width: 1.3 }),
			textColumn(context, "work_date", { width: 1 }),
			quantityColumn(context, "top_md", "measured-depth", { width: 0.8 }),
			quantityColumn(context, "bottom_md", "measured-depth", { width: 0.8 }),
			quantityColumn(context, "volume", "volume", { width: 0.8 }),
			quantityColumn(context, "pressure", "pressure", { width: 0.8 }),
			textColumn(context, "outcome", { width: 1.4 }),
			textColumn(context, "why", { width: 2.6 }),
		],
		context.well.strings.flatMap(({ id, cement }) => {
			const seal = cement?.actual?.seal;
			const of = (word: string) => context.words.label(`seal_outcomes.${word}`);
			const common = (
				each:
					| NonNullable<typeof seal>["surveys"][number]
					| NonNullable<typeof seal>["tests"][number]
					| NonNullable<typeof seal>["squeezes"][number],
			) => ({
				string: textCell(named(context, id)),
				work_date: textCell(each.date),
				top_md: cell(context, each.top),
				bottom_md: cell(context, each.bottom),
			});
			return [
				...(seal?.surveys ?? []).map((survey) =>
					row({
						...common(survey),
						seal_work: textCell(labelled(context, "seal_by", survey.kind)),
						outcome: textCell(of(survey.showsCement ? "cement" : "no_cement")),
						why: textCell(survey.statedBy),
					}),
				),
				...(seal?.squeezes ?? []).map((squeeze) =>
					row({
						...common(squeeze),
						seal_work: textCell(context.words.label("seal_by.squeeze")),
						volume: cell(context, squeeze.volume),
						pressure: cell(context, squeeze.pressure),
						outcome: textCell(
							squeeze.held === undefined
								? of("not_tested")
								: [of(squeeze.held ? "held" : "failed"), squeeze.testedBy]
										.filter((word) => word !== undefined)
										.join(", "),
						),
						why: textCell(squeeze.why),
					}),
				),
				...(seal?.tests ?? []).map((test) =>
					row({
						...common(test),
						seal_work: textCell(context.words.label("seal_outcomes.pressure_test")),
						pressure: cell(context, test.pressure),
						outcome: textCell(of(test.held ? "held" : "failed")),
						why: textCell(test.witnessedBy),
					}),
				),
			];
		}),
		{ dense: true },
	);

/** Readings of each annulus: found, bled to, and what came back. */
export const annulusReadingsTable: Part = (context) =>
	table(
		context,
		"annulus_readings",
		[
			textColumn(context, "outside_of", { width: 1.4, rowHead: true }),
			textColumn(context, "work_date", { width: 1.1 }),
			quantityColumn(context, "pressure_found", "pressure"),
			quantityColumn(context, "bled_to", "pressure"),
			quantityColumn(context, "bled_in", "duration"),
			quantityColumn(context, "rebuilt_to", "pressure"),
			quantityColumn(context, "watched_for", "duration", { style: { unit: "hr", decimals: 0 } }),
		],
		context.well.strings.flatMap(({ id, annulusReadings }) =>
			(annulusReadings ?? []).map((reading) =>
				row({
					outside_of: textCell(named(context, id)),
					work_date: textCell(reading.date),
					pressure_found: cell(context, reading.pressure),
					bled_to: cell(context, reading.bledTo),
					bled_in: cell(context, reading.bledIn),
					rebuilt_to: cell(context, reading.rebuiltTo),
					watched_for: cell(context, reading.rebuiltIn),
				}),
			),
		),
		{ dense: true, note: "annulus_readings" },
	);
