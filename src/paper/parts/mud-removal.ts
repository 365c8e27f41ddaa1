import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, named, type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";

const WHOLE = { decimals: 0 } as const;
/** Rows from which a table runs two abreast. */
const ONE_COLUMN = 20;

const jobs = ({ well, results }: PaperContext) =>
	well.strings.flatMap(({ id }) => {
		const cement = results.cement[id];
		return cement === undefined ? [] : [{ id, cement }];
	});

/** Standoff at evenly spaced depths of each cemented length. */
export const standoffProfile: Part = (context) => {
	const rows = jobs(context).flatMap(({ id, cement }) =>
		cement.standoff_profile.map((station) =>
			row({
				string: textCell(named(context, id)),
				md: cell(context, station.at.md),
				inclination: cell(context, station.inclination),
				side_load: cell(context, station.side_load),
				at_centralizer: cell(context, station.at_centralizer),
				between_centralizers: cell(context, station.between),
			}),
		),
	);
	return table(
		context,
		"standoff_profile",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			quantityColumn(context, "md", "measured-depth"),
			quantityColumn(context, "inclination", "angle", { style: { decimals: 1 } }),
			quantityColumn(context, "side_load", "force", { style: WHOLE }),
			quantityColumn(context, "at_centralizer", "share", { style: WHOLE }),
			quantityColumn(context, "between_centralizers", "share", { style: WHOLE }),
		],
		rows,
		{ dense: true, note: "standoff_profile", ...(rows.length > ONE_COLUMN ? { abreast: 2 } : {}) },
	);
};

/** How each fluid displaces the one ahead of it, at each water zone and the shoe. */
export const mudRemovalTable: Part = (context) => {
	const fluid = (id: string) => context.words.findLabel(`displaced.${id}`) ?? asGiven(context, id) ?? id;
	return table(
		context,
		"mud_removal",
		[
			textColumn(context, "string", { width: 1.1, rowHead: true }),
			textColumn(context, "place", { width: 1.3 }),
			textColumn(context, "displaced_by", { width: 1.6 }),
			quantityColumn(context, "standoff_there", "share", { style: WHOLE }),
			quantityColumn(context, "density_step", "share", { style: { ...WHOLE, sign: true } }),
			quantityColumn(context, "friction_step", "share", { style: { ...WHOLE, sign: true } }),
			quantityColumn(context, "narrow_drive", "ratio", { style: { decimals: 1 } }),
			quantityColumn(context, "job_rate", "flow-rate", { style: { decimals: 1 } }),
			quantityColumn(context, "turbulent_from", "flow-rate", { style: { decimals: 1 } }),
			quantityColumn(context, "channel_index", "count"),
		],
		jobs(context).flatMap(({ id, cement }) =>
			cement.mud_removal.map((pair) =>
				row({
					string: textCell(named(context, id)),
					place: textCell(titled(pair.at_name)),
					displaced_by: textCell(`${titled(fluid(pair.ahead))} → ${fluid(pair.behind)}`),
					standoff_there: cell(context, pair.standoff),
					density_step: cell(context, pair.density_step),
					friction_step: cell(context, pair.friction_step),
					narrow_drive: cell(context, pair.drive),
					job_rate: cell(context, pair.rate),
					turbulent_from: cell(context, pair.turbulent_from),
					channel_index: cell(context, pair.index),
				}),
			),
		),
		{ dense: true, note: "mud_removal" },
	);
};
