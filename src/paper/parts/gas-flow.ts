import { cell, textCell } from "../context.ts";
import { named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Gas zones behind cement: what the gelling column may lose, and how much overbalance is left as it gels. */
export const gasFlowTable: Part = (context) => {
	const zones = context.well.strings.flatMap(({ id }) =>
		(context.results.cement[id]?.gas_flow ?? []).map((zone) => ({ id, zone })),
	);
	const whole = { style: { decimals: 0 } } as const;
	return table(
		context,
		"gas_flow",
		[
			textColumn(context, "string", { width: 1.3, rowHead: true }),
			textColumn(context, "zone", { width: 1.4 }),
			quantityColumn(context, "overbalance", "pressure-difference", whole),
			quantityColumn(context, "gas_flow_potential", "ratio", { style: { decimals: 1 } }),
			quantityColumn(context, "critical_gel", "yield-point", whole),
			quantityColumn(context, "left_at_100", "pressure-difference", whole),
			quantityColumn(context, "left_at_250", "pressure-difference", whole),
			quantityColumn(context, "left_at_500", "pressure-difference", whole),
		],
		zones.map(({ id, zone }) =>
			row({
				string: textCell(named(context, id)),
				zone: textCell(zone.formation),
				overbalance: cell(context, zone.overbalance),
				gas_flow_potential: cell(context, zone.potential),
				critical_gel: cell(context, zone.critical_gel),
				left_at_100: cell(context, zone.decay[0]?.left),
				left_at_250: cell(context, zone.decay[1]?.left),
				left_at_500: cell(context, zone.decay[2]?.left),
			}),
		),
		{ dense: true, note: "gas_flow" },
	);
};
