import type { Known } from "../cite/known.ts";
import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { cellValue, readNamedTable } from "./read-table.ts";

/** One reading of a treatment chart; what the file lacks is absent. */
export interface ChartReading {
	readonly time: Known<"duration">;
	readonly pressure: Known<"pressure">;
	readonly rate: Known<"flow-rate">;
	readonly concentration?: Known<"proppant-concentration">;
	readonly annulus?: Known<"pressure">;
}

/** The treatment chart of one stage, in order of time. */
export interface StageChart {
	readonly file: string;
	readonly at: Path;
	readonly readings: readonly ChartReading[];
}

type Written = NonNullable<NonNullable<StimulationDefinition["stages"]["actual"]>["charts"]>[number];

const COLUMNS = {
	time: { dimension: "duration", aliases: ["elapsed"] },
	pressure: { dimension: "pressure" },
	rate: { dimension: "flow-rate" },
	concentration: { dimension: "proppant-concentration", optional: true },
	annulus: { dimension: "pressure", optional: true },
} as const;

/** The chart that a file holds; nothing where it holds fewer than two readings, or time runs backward. */
export const readStageChart = (
	{ file: name, columns: stated }: Written,
	at: Path,
	files: ReadFile,
	desk: Desk,
): StageChart | undefined => {
	const where: Path = [...at, "file"];
	const read = readNamedTable(name, where, COLUMNS, files, desk, stated);
	if (read === undefined) return undefined;
	const readings = read.columns.rows.flatMap((row): ChartReading[] => {
		const time = cellValue(row, "time", "duration", where, name);
		const pressure = cellValue(row, "pressure", "pressure", where, name);
		const rate = cellValue(row, "rate", "flow-rate", where, name);
		const concentration = cellValue(row, "concentration", "proppant-concentration", where, name);
		const annulus = cellValue(row, "annulus", "pressure", where, name);
		return time === undefined || pressure === undefined || rate === undefined
			? []
			: [
					{
						time,
						pressure,
						rate,
						...(concentration === undefined ? {} : { concentration }),
						...(annulus === undefined ? {} : { annulus }),
					},
				];
	});
	const back = readings.findIndex(({ time }, i) => i > 0 && time.value <= (readings[i - 1]?.time.value ?? 0));
	if (back >= 0)
		return fault(desk, "well/stage-row", read.columns.rows[back]?.at.time ?? { path: where }, {
			what: message("well/stage-row.time-runs-backward"),
			expected: message("well/stage-row.time-from-the-first-pump"),
			mend: message("well/stage-row.sort-by-time"),
		});
	return readings.length < 2 ? undefined : { file: name, at, readings };
};
