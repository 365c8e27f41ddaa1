import type { Known } from "../cite/known.ts";
import { STAGE_ENDS } from "../definition/stages.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import type { CsvRow } from "../source/csv-columns.ts";
import { unitAtEnd } from "../source/csv-heads.ts";
import { toCanonical } from "../units/convert.ts";
import { quantity } from "../units/quantity.ts";
import { matchUnit } from "../units/units-of.ts";
import { type Desk, fault, maybe } from "./desk.ts";
import type { PlacedStage } from "./lay-out-stages.ts";
import type { ReadFile } from "./read-file.ts";
import { cellValue, type Foreign, type NamedTable, readNamedTable } from "./read-table.ts";
import type { Stage, StageActual } from "./well.ts";

const STAGE_COLUMNS = {
	stage: { dimension: "count", aliases: ["number"] },
	bottom: { dimension: "measured-depth" },
	top: { dimension: "measured-depth" },
	clusters: { dimension: "text" },
	plug: { dimension: "measured-depth", optional: true },
	shots_per_cluster: { dimension: "count", optional: true },
	shot_diameter: { dimension: "diameter", optional: true },
	phasing: { dimension: "angle", optional: true },
	rate: { dimension: "flow-rate", optional: true },
	why: { dimension: "text", optional: true },
} as const;

type StageColumn = keyof typeof STAGE_COLUMNS;

/** A stage of a list, with the rate it states. */
export interface ListedStage extends PlacedStage {
	readonly rate?: Known<"flow-rate">;
}

/** Every stage of a stage file, in the order of their numbers. */
export const readStageTable = (
	name: string,
	at: Path,
	files: ReadFile,
	desk: Desk,
	stated?: Foreign<StageColumn>,
): readonly ListedStage[] | undefined => {
	const read = readNamedTable(name, at, STAGE_COLUMNS, files, desk, stated);
	if (read === undefined) return undefined;
	const { rows } = read.columns;
	const unit = clusterUnit(read, stated, desk);
	if (unit === undefined || !numberedFromOne(rows, desk)) return undefined;
	const stages = rows.map((row): ListedStage | undefined => {
		const value = <D extends Parameters<typeof cellValue>[2]>(column: StageColumn, dimension: D) =>
			cellValue(row, column, dimension, at, name) as Known<D> | undefined;
		const bottom = value("bottom", "measured-depth");
		const top = value("top", "measured-depth");
		const clusters = clustersOf(row, unit, at, name, desk);
		if (bottom === undefined || top === undefined || clusters === undefined) return undefined;
		return {
			number: row.numbers.stage ?? 0,
			bottom,
			top,
			clusters,
			...maybe("shotsPerCluster", value("shots_per_cluster", "count")),
			...maybe("shotDiameter", value("shot_diameter", "diameter")),
			...maybe("phasing", value("phasing", "angle")),
			...maybe("plug", value("plug", "measured-depth")),
			...maybe("rate", value("rate", "flow-rate")),
			...maybe("why", row.texts.why),
		};
	});
	const complete = stages.filter((stage) => stage !== undefined);
	return complete.length < stages.length ? undefined : complete.sort((a, b) => a.number - b.number);
};

const clusterUnit = (
	{ table, columns }: NamedTable<StageColumn>,
	stated: Foreign<StageColumn>,
	desk: Desk,
): string | undefined => {
	if (!columns.present.includes("clusters")) return undefined;
	const foreign = stated?.clusters;
	const head = table.header.find(({ text }) =>
		foreign === undefined ? /^clusters\b|^clusters_/i.test(text) : text.trim() === foreign.head,
	);
	const written = foreign?.unit ?? unitAtEnd(head?.text ?? "");
	const match = matchUnit(written, "measured-depth");
	if (match !== undefined && "unit" in match) return match.unit.symbol;
	return fault(
		desk,
		"well/stage-row",
		{ file: table.file, path: [], ...maybe("range", head?.range) },
		{
			what: message("well/stage-row.what"),
			expected: message("well/stage-row.expected"),
			...maybe("found", head?.text),
			mend: message("well/stage-row.mend"),
		},
	);
};

const numberedFromOne = (rows: readonly CsvRow<StageColumn>[], desk: Desk): boolean => {
	const numbers = rows.map(({ numbers }) => numbers.stage ?? 0);
	const sorted = [...numbers].sort((a, b) => a - b);
	const wrong = sorted.findIndex((number, i) => number !== i + 1);
	if (wrong < 0) return true;
	const row = rows[numbers.indexOf(sorted[wrong] ?? 0)];
	fault(desk, "well/stage-row", row?.at.stage ?? { path: [] }, {
		what: message("well/stage-row.stages-are-not-numbered-from"),
		expected: message("well/stage-row.stage-next", { wrong: String(wrong + 1) }),
		found: String(sorted[wrong]),
		mend: message("well/stage-row.number-stages-from-1-deepest"),
	});
	return false;
};

const clustersOf = (
	row: CsvRow<StageColumn>,
	unit: string,
	at: Path,
	file: string,
	desk: Desk,
): Stage["clusters"] | undefined => {
	const written = (row.texts.clusters ?? "").split(/[\s;]+/).filter((word) => word !== "");
	const bad = written.find((word) => !/^\d+(?:\.\d+)?$/.test(word));
	if (written.length === 0 || bad !== undefined)
		return fault(desk, "well/stage-row", row.at.clusters ?? ({ file, path: [] } satisfies Place), {
			what:
				written.length === 0
					? message("well/stage-row.stage-has-no-clusters")
					: message("well/stage-row.cluster-depth-is-not-plain"),
			expected: message("well/stage-row.depths-parted-by-blanks-such"),
			...maybe("found", bad),
			mend: message("well/stage-row.write-depth-each-cluster"),
		});
	return written
		.map(
			(word): Known<"measured-depth"> => ({
				dimension: "measured-depth",
				value: quantity("measured-depth", toCanonical(Number(word), "measured-depth", unit)),
				from: {
					kind: "definition",
					at,
					text: `${word} ${unit}`,
					file,
					...maybe("range", row.at.clusters?.range),
				},
			}),
		)
		.sort((a, b) => b.value - a.value);
};

const RECORD_COLUMNS = {
	stage: { dimension: "count", aliases: ["number"] },
	date: { dimension: "text", optional: true },
	average_rate: { dimension: "flow-rate", optional: true },
	average_pressure: { dimension: "pressure", optional: true },
	maximum_pressure: { dimension: "pressure", optional: true },
	breakdown: { dimension: "pressure", optional: true },
	instantaneous_shut_in: { dimension: "pressure", optional: true },
	clean_volume: { dimension: "volume", optional: true },
	proppant_mass: { dimension: "mass", optional: true },
	started: { dimension: "text", optional: true },
	ended: { dimension: "text", optional: true },
	ended_by: { dimension: "text", optional: true },
	problem: { dimension: "text", optional: true },
} as const;

/** A record of one stage, with its place. */
export interface StageRecord {
	readonly number: number;
	readonly at: Place;
	readonly dateAt: Place;
	readonly averageAt: Place;
	readonly actual: StageActual;
}

/** Every record of a record file. */
export const readRecordTable = (
	name: string,
	at: Path,
	files: ReadFile,
	desk: Desk,
	stated?: Foreign<keyof typeof RECORD_COLUMNS>,
): readonly StageRecord[] => {
	const read = readNamedTable(name, at, RECORD_COLUMNS, files, desk, stated);
	return (read?.columns.rows ?? []).map((row) => {
		const value = <D extends Parameters<typeof cellValue>[2]>(
			column: keyof typeof RECORD_COLUMNS,
			dimension: D,
		) => cellValue(row, column, dimension, at, name) as Known<D> | undefined;
		const here: Place = row.at.stage ?? { file: name, path: [] };
		return {
			number: row.numbers.stage ?? 0,
			at: here,
			dateAt: row.at.date ?? here,
			averageAt: row.at.average_pressure ?? here,
			actual: {
				...maybe("date", row.texts.date),
				...maybe("dateAt", row.at.date),
				...maybe("averageRate", value("average_rate", "flow-rate")),
				...maybe("averagePressure", value("average_pressure", "pressure")),
				...maybe("maximumPressure", value("maximum_pressure", "pressure")),
				...maybe("breakdown", value("breakdown", "pressure")),
				...maybe("instantaneousShutIn", value("instantaneous_shut_in", "pressure")),
				...maybe("cleanVolume", value("clean_volume", "volume")),
				...maybe("proppantMass", value("proppant_mass", "mass")),
				...maybe("started", said(row.texts.started)),
				...maybe("ended", said(row.texts.ended)),
				...maybe("endedBy", endOf(row, here, desk)),
				...maybe("problem", said(row.texts.problem)),
			},
		};
	});
};

const said = (text: string | undefined): string | undefined =>
	text?.trim() === "" ? undefined : text?.trim();

const endOf = (
	row: CsvRow<keyof typeof RECORD_COLUMNS>,
	here: Place,
	desk: Desk,
): StageActual["endedBy"] | undefined => {
	const written = said(row.texts.ended_by)?.toLowerCase();
	const end = STAGE_ENDS.find((each) => each === written);
	return end !== undefined || written === undefined
		? end
		: fault(desk, "well/stage-row", row.at.ended_by ?? here, {
				what: message("well/stage-row.end-unknown"),
				expected: message("source/one-of", { names: STAGE_ENDS.join(", ") }),
				found: written,
				mend: message("well/stage-row.write-one-of-the-ends"),
			});
};
