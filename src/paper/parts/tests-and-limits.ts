import { cell, type PaperContext, textCell } from "../context.ts";
import { named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Pressure tests of strings: planned beside measured. */
export const pressureTests: Part = (context) =>
	table(
		context,
		"pressure_tests",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			quantityColumn(context, "test_pressure", "pressure"),
			quantityColumn(context, "hold", "duration"),
			quantityColumn(context, "allowed_fall", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "measured_pressure", "pressure"),
			quantityColumn(context, "measured_hold", "duration"),
			quantityColumn(context, "measured_fall", "share", { style: { decimals: 1 } }),
			textColumn(context, "date", { width: 1 }),
			textColumn(context, "witnessed_by", { width: 1.4 }),
		],
		context.well.strings.flatMap((string) => {
			const test = string.pressureTest;
			return test === undefined
				? []
				: [
						row({
							string: textCell(named(context, string.id)),
							test_pressure: cell(context, test.pressure),
							hold: cell(context, test.hold),
							allowed_fall: cell(context, test.allowedFall),
							measured_pressure: cell(context, test.actual?.pressure),
							measured_hold: cell(context, test.actual?.hold),
							measured_fall: cell(context, test.actual?.fall),
							date: textCell(test.actual?.date),
							witnessed_by: textCell(test.actual?.witnessedBy),
						}),
					];
		}),
	);

export const shoeTests: Part = (context) =>
	table(
		context,
		"shoe_tests",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "test_kind", { width: 0.8 }),
			quantityColumn(context, "equivalent", "density"),
			quantityColumn(context, "surface_pressure", "pressure"),
			quantityColumn(context, "new_hole", "length"),
			quantityColumn(context, "measured_equivalent", "density", { width: 1.2 }),
			textColumn(context, "date", { width: 1 }),
		],
		context.well.strings.flatMap((string) => {
			const test = string.shoeTest;
			return test === undefined
				? []
				: [
						row({
							string: textCell(named(context, string.id)),
							test_kind: textCell(test.kind),
							equivalent: cell(context, test.equivalent, { decimals: 1 }),
							surface_pressure: cell(context, context.results.casing[string.id]?.shoe_test_surface_pressure),
							new_hole: cell(context, test.newHole),
							measured_equivalent: cell(context, test.actual?.equivalent, { decimals: 1 }),
							date: textCell(test.actual?.date),
						}),
					];
		}),
	);

/** Every element that sees treating pressure, weakest marked. */
export const pressureBoundary: Part = (context) => {
	const limiting = context.results.stimulation?.limiting?.element;
	return table(
		context,
		"pressure_boundary",
		[
			textColumn(context, "element", { width: 2, rowHead: true }),
			quantityColumn(context, "rating", "pressure", { style: { nearest: 10 } }),
			quantityColumn(context, "factor", "ratio"),
			quantityColumn(context, "allowed", "pressure", { style: { nearest: 10 } }),
			textColumn(context, "limits", { width: 1.4 }),
		],
		(context.results.stimulation?.boundary ?? []).map((element, i) =>
			row({
				element: textCell(named(context, element.element)),
				rating: cell(context, element.rating),
				factor: cell(context, context.well.stimulation?.boundary[i]?.factor),
				allowed: cell(context, element.allowed),
				limits:
					element.element === limiting
						? textCell(context.words.label("phrases.limits_the_job"))
						: { kind: "none" },
			}),
		),
		{ note: "pressure_boundary" },
	);
};

const TENS = { nearest: 10 } as const;

const nameOf = (context: PaperContext, between: readonly string[]) =>
	textCell(between.map((id) => named(context, id)).join(" – "));

/** Pressure outside the treated string: stated, worked and recorded, where the job stops, and who is told. */
export const annuliTable: Part = (context) => {
	const worked = new Map(context.results.stimulation?.annuli.map((each) => [each.id, each]));
	const agency = context.well.agency?.name ?? context.words.label("phrases.agency");
	return table(
		context,
		"annuli",
		[
			textColumn(context, "annulus", { width: 2.2, rowHead: true }),
			quantityColumn(context, "predicted_rise", "pressure"),
			quantityColumn(context, "annulus_relief", "pressure"),
			quantityColumn(context, "highest_without_leak", "pressure", { width: 1.2, style: TENS }),
			quantityColumn(context, "stop_above", "pressure"),
			quantityColumn(context, "highest_recorded", "pressure"),
			textColumn(context, "tell", { width: 1.8 }),
			quantityColumn(context, "notify_within", "duration", { style: { unit: "hr", decimals: 0 } }),
		],
		(context.well.stimulation?.annuli ?? []).map((annulus) =>
			row({
				annulus: nameOf(context, annulus.between),
				predicted_rise: cell(context, annulus.predictedRise),
				annulus_relief: cell(context, annulus.relief),
				highest_without_leak: cell(context, worked.get(annulus.between.join("-"))?.highest),
				stop_above: cell(context, annulus.stopAbove),
				highest_recorded: cell(context, annulus.highest),
				tell: textCell(annulus.tell ?? agency),
				notify_within: cell(context, annulus.notifyWithin, { unit: "hr", decimals: 0 }),
			}),
		),
		{ note: "annuli" },
	);
};

/** What the worked rise of each annulus is made of, with the outer pipe free and held. */
export const annuliWorked: Part = (context) => {
	const worked = new Map(context.results.stimulation?.annuli.map((each) => [each.id, each]));
	return table(
		context,
		"annuli_worked",
		[
			textColumn(context, "annulus", { width: 2.2, rowHead: true }),
			quantityColumn(context, "pressure_wall_free", "pressure", { style: TENS }),
			quantityColumn(context, "pressure_wall_held", "pressure", { style: TENS }),
			quantityColumn(context, "heat_wall_free", "pressure", { style: TENS }),
			quantityColumn(context, "heat_wall_held", "pressure", { style: TENS }),
			quantityColumn(context, "rise_wall_free", "pressure", { style: TENS }),
			quantityColumn(context, "rise_wall_held", "pressure", { style: TENS }),
		],
		(context.well.stimulation?.annuli ?? []).flatMap(({ between }) => {
			const found = worked.get(between.join("-"));
			return found?.rise === undefined
				? []
				: [
						row({
							annulus: nameOf(context, between),
							pressure_wall_free: cell(context, found.rise_from_pressure?.free),
							pressure_wall_held: cell(context, found.rise_from_pressure?.held),
							heat_wall_free: cell(context, found.rise_from_heat?.free),
							heat_wall_held: cell(context, found.rise_from_heat?.held),
							rise_wall_free: cell(context, found.rise.free),
							rise_wall_held: cell(context, found.rise.held),
						}),
					];
		}),
		{ note: "annuli_worked" },
	);
};
