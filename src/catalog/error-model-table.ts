import * as z from "zod";
import type { KnownTable } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import { SOURCE_KEYS } from "../cite/source-keys.ts";
import { WEIGHTING_FUNCTIONS } from "../cite/weighting-functions.ts";

/** Degrees where the row says so; everything else is as the weighting functions take it. */
const UNITS = {
	m: 1,
	"1/m": 1,
	"m/s2": 1,
	nT: 1,
	ratio: 1,
	deg: Math.PI / 180,
	"deg.nT": Math.PI / 180,
} as const;
const PROPAGATIONS = ["random", "systematic", "global"] as const;

/** Form of `seeds/survey/<tool>.yaml`. */
export const errorModelSchema = z.strictObject({
	tool: z.string().min(1),
	name: z.string().min(1),
	source: z.enum(SOURCE_KEYS),
	at: z.string(),
	known: z.string().min(1),
	terms: z
		.array(
			z.strictObject({
				term: z.string().min(1),
				weight: z.enum(WEIGHTING_FUNCTIONS),
				magnitude: z.number().positive(),
				unit: z.enum(Object.keys(UNITS) as [keyof typeof UNITS, ...(keyof typeof UNITS)[]]),
				propagation: z.enum(PROPAGATIONS),
			}),
		)
		.min(1),
});

/** What a survey tool errs by. */
export interface ErrorModel {
	/** Chosen by it in the definition. */
	readonly tool: string;
	readonly name: string;
	readonly terms: readonly string[];
	/** A row a term: number of its weighting function, standard deviation in the function's unit, 0 where it is random. */
	readonly table: KnownTable<"weight" | "magnitude" | "propagation">;
}

const ERROR_MODELS = "error-models";

export const errorModel = ({
	tool,
	name,
	source,
	at,
	terms,
}: z.infer<typeof errorModelSchema>): ErrorModel => ({
	tool,
	name,
	terms: terms.map(({ term }) => term),
	table: {
		columns: { weight: "count", magnitude: "ratio", propagation: "count" },
		rows: terms.map(({ weight, magnitude, unit, propagation }) => ({
			weight: WEIGHTING_FUNCTIONS.indexOf(weight),
			magnitude: magnitude * UNITS[unit],
			propagation: PROPAGATIONS.indexOf(propagation),
		})),
		from: { kind: "catalogue", table: ERROR_MODELS, row: tool, column: "terms", source: cite(source, at) },
	},
});
