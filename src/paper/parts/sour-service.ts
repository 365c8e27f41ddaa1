import { cell, textCell } from "../context.ts";
import { facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Steel and connections against hydrogen sulfide; one line where none is expected. */
export const sourServiceTable: Part = (context) => {
	const label = context.words.label;
	const sections = context.well.strings.flatMap((string) =>
		string.sections.flatMap((section) => {
			const found = context.results.casing[string.id]?.sections.find(
				({ number }) => number === section.number,
			);
			return found === undefined ? [] : [{ string, section, sour: found.sour_service }];
		}),
	);
	if (sections.length === 0) return [];
	if (sections.every(({ sour }) => sour.finding === "not sour" && sour.partial_pressure === undefined))
		return facts(context, [["sour_service", textCell(label("sour.none_expected"))]], { columns: 1 });
	return table(
		context,
		"sour_service",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "grade", { width: 0.8 }),
			textColumn(context, "connection", { width: 1.2 }),
			quantityColumn(context, "sulfide_pressure", "pressure", { width: 1.2, style: { decimals: 2 } }),
			quantityColumn(context, "sour_from", "pressure", { width: 1, style: { decimals: 2 } }),
			quantityColumn(context, "coldest", "temperature", { width: 0.9 }),
			quantityColumn(context, "taken_above", "temperature", { width: 1 }),
			textColumn(context, "sour_finding", { width: 2.2 }),
		],
		sections.map(({ string, section, sour }) =>
			row({
				string: textCell(
					string.sections.length === 1
						? named(context, string.id)
						: `${named(context, string.id)} ${section.number}`,
				),
				grade: textCell(section.grade),
				connection: textCell(section.connection),
				sulfide_pressure: cell(context, sour.partial_pressure),
				sour_from: cell(context, sour.threshold),
				coldest: cell(context, sour.coldest),
				taken_above: cell(context, sour.lowest_temperature),
				sour_finding: textCell(
					sour.missing === undefined
						? label(`sour.${sour.finding}`)
						: `${label(`sour.${sour.finding}`)}: ${label(`sour_missing.${sour.missing}`)}`,
				),
			}),
		),
		{ dense: true, note: "sour_service" },
	);
};
