import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { message } from "../messages/message.ts";
import { columnsSchema, type KnownOverride, tableCells } from "./columns.ts";
import { contradiction } from "./contradiction.ts";

const DIMENSIONS = {
	minimum_yield: "pressure",
	maximum_yield: "pressure",
	minimum_tensile: "pressure",
} as const;

const grade = z
	.strictObject({
		grade: z.string().min(1),
		minimum_yield: z.number().positive(),
		maximum_yield: z.number().positive(),
		minimum_tensile: z.number().positive(),
		also_written: z.array(z.string()).optional(),
		standing: z.enum(["current", "obsolete"]).default("current"),
	})
	.superRefine((each, ctx) => {
		for (const field of ["maximum_yield", "minimum_tensile"] as const)
			if (each[field] < each.minimum_yield)
				ctx.addIssue({
					code: "custom",
					path: [field],
					...contradiction(
						message("seed/grade.yield", { yield: { dimension: "pressure", value: each.minimum_yield } }),
					),
				});
	});

/** Form of `seeds/pipe/grades.yaml`. */
export const gradeSchema = z.strictObject({
	columns: columnsSchema(DIMENSIONS),
	grades: z.array(grade).min(1),
});

/** Strengths of a grade of casing. */
export interface GradeRow {
	/** `P110`. */
	readonly id: string;
	readonly minimumYield: Known<"pressure">;
	readonly maximumYield: Known<"pressure">;
	readonly minimumTensile: Known<"pressure">;
	readonly alsoWritten: readonly string[];
	readonly obsolete: boolean;
	readonly known: KnownOverride;
}

const GRADE_TABLE = "grades";

export const gradeRows = (seed: z.infer<typeof gradeSchema>): readonly GradeRow[] => {
	const cells = tableCells(GRADE_TABLE, DIMENSIONS, seed.columns);
	const known = Object.fromEntries(
		Object.entries(seed.columns).map(([name, column]) => [name, column.known]),
	);
	return seed.grades.map((row) => ({
		id: row.grade,
		minimumYield: cells.value(row.grade, "minimum_yield", row.minimum_yield),
		maximumYield: cells.value(row.grade, "maximum_yield", row.maximum_yield),
		minimumTensile: cells.value(row.grade, "minimum_tensile", row.minimum_tensile),
		alsoWritten: row.also_written ?? [],
		obsolete: row.standing === "obsolete",
		known,
	}));
};

/** `L-80 Type 1`, `l80 type1` → `L80TYPE1`. */
export const gradeKey = (name: string): string => name.toUpperCase().replace(/[\s-]/g, "");
