import type { Known } from "../cite/known.ts";
import type { Bibliography } from "./bibliography.ts";
import { CASING_TABLE, type CasingRow } from "./casing-table.ts";
import type { CementAdditiveRow, CementClassRow } from "./cement-table.ts";
import type { BowSpringRow } from "./centralizer-table.ts";
import type { ErrorModel } from "./error-model-table.ts";
import type { GlossaryTerm } from "./glossary.ts";
import { type GradeRow, gradeKey } from "./grade-table.ts";
import type { CommonItems, Job } from "./jobs.ts";
import type { Band } from "./plausibility.ts";
import { SOUR_SERVICE_TABLE, type SourService, type SourServiceRow } from "./sour-service-table.ts";
import type { StateRow } from "./state-table.ts";
import type { SizeThreads, ThreadRow } from "./thread-table.ts";

/** Everything that ships with the tool as tables, read and checked. */
export interface Tables {
	readonly casing: readonly CasingRow[];
	readonly grades: readonly GradeRow[];
	readonly threads: readonly SizeThreads[];
	readonly sourService: SourService;
	readonly errorModels: readonly ErrorModel[];
	readonly cementClasses: readonly CementClassRow[];
	readonly cementAdditives: readonly CementAdditiveRow[];
	readonly bowSprings: readonly BowSpringRow[];
	readonly sources: Bibliography;
	readonly plausibility: readonly Band[];
	readonly states: readonly StateRow[];
	readonly glossary: readonly GlossaryTerm[];
	/** In the order of a well's life. */
	readonly jobs: readonly Job[];
	/** What every job is prepared with; the shipped ones have it already. */
	readonly commonItems: CommonItems;
}

export interface Catalog extends Tables {
	/** Casing of an outside diameter [in] and nominal weight [lb/ft]; metric labels match within their rounding. */
	readonly findCasing: (outsideDiameter: number, nominalWeight: number) => CasingRow | undefined;
	/** Casing of an outside diameter and wall thickness [in]. */
	readonly findCasingByWall: (outsideDiameter: number, wall: number) => CasingRow | undefined;
	/** Every weight of the size, light to heavy; empty where the size is not listed. */
	readonly casingOfSize: (outsideDiameter: number) => readonly CasingRow[];
	/** `L80`, `L-80`, `l80 type 1` … */
	readonly findGrade: (name: string) => GradeRow | undefined;
	/** The steel as written, type and all: `L80 type 1` is taken in sour service, `L80-13Cr` is another steel. */
	readonly findSourService: (name: string) => SourServiceRow | undefined;
	/** API threads of a size; with the weight, the row of the light weight that has its own short thread. */
	readonly threadsFor: (outsideDiameter: number, nominalWeight?: number) => ThreadRow | undefined;
	/** `C`, `class C`. */
	readonly cementClass: (name: string) => CementClassRow | undefined;
	readonly cementAdditive: (name: string) => CementAdditiveRow | undefined;
	/** Least restoring force of a bow spring on casing of an outside diameter [in]. */
	readonly restoringForce: (outsideDiameter: number) => Known<"force"> | undefined;
	/** How a shipped figure was known when it was written in: `read`, `memory` … */
	readonly howKnown: (table: string, row: string, column: string) => string | undefined;
}

/** Half of the last digit that millimetre and kilogram-per-metre labels are written to, and a little more. */
const DIAMETER_TOLERANCE = 0.005;
const WEIGHT_TOLERANCE = 0.05;
const WALL_TOLERANCE = 0.0025;

const near = (a: number, b: number, tolerance: number): boolean => Math.abs(a - b) <= tolerance;

export const catalogOf = (tables: Tables): Catalog => {
	const ofSize = (od: number) =>
		tables.casing.filter((row) => near(row.outsideDiameter.value, od, DIAMETER_TOLERANCE));
	const grades = new Map(
		tables.grades.flatMap((row) =>
			[row.id, ...row.alsoWritten].map((name) => [gradeKey(name), row] as const),
		),
	);
	const knownBy: Readonly<
		Record<
			string,
			readonly {
				readonly id: string;
				readonly known: Readonly<Record<string, string>>;
			}[]
		>
	> = {
		[CASING_TABLE]: tables.casing,
		grades: tables.grades,
		threads: tables.threads.map(({ usual }) => usual),
		[SOUR_SERVICE_TABLE]: tables.sourService.grades,
		"cement classes": tables.cementClasses,
	};
	return {
		...tables,
		findCasing: (od, weight) =>
			ofSize(od).find((row) => near(row.nominalWeight.value, weight, WEIGHT_TOLERANCE)),
		findCasingByWall: (od, wall) => ofSize(od).find((row) => near(row.wall.value, wall, WALL_TOLERANCE)),
		casingOfSize: ofSize,
		findGrade: (name) => grades.get(gradeKey(name)),
		findSourService: (name) =>
			tables.sourService.grades.find((row) =>
				[row.id, ...row.alsoWritten].some((each) => gradeKey(each) === gradeKey(name)),
			),
		threadsFor: (od, weight) => {
			const found = tables.threads.find(({ usual }) => near(usual.outsideDiameter, od, DIAMETER_TOLERANCE));
			const light = found?.light;
			return light !== undefined && weight !== undefined && near(light.weight, weight, WEIGHT_TOLERANCE)
				? light.row
				: found?.usual;
		},
		cementClass: (name) => {
			const key = name
				.trim()
				.replace(/^class\s+/i, "")
				.toUpperCase();
			return tables.cementClasses.find(({ id }) => id === key);
		},
		cementAdditive: (name) => {
			const key = name.trim().toLowerCase();
			return tables.cementAdditives.find(({ id }) => id === key);
		},
		restoringForce: (od) =>
			tables.bowSprings.find(({ size }) => near(size, od, DIAMETER_TOLERANCE))?.restoringForce,
		howKnown: (table, row, column) => {
			if (table === "bow springs") return "memory";
			if (table === "cement additives") return tables.cementAdditives.find(({ id }) => id === row)?.howKnown;
			const rows = knownBy[table] ?? [];
			return (rows.find(({ id }) => id === row) ?? rows[0])?.known[column];
		},
	};
};
