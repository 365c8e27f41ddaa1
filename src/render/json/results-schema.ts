const TEXT = { type: "string" } as const;

/** A key of the values, or the number of an input. */
const REFERENCE = { ...TEXT, pattern: "^(?:(?:results|well|findings)\\.|#[0-9]+$)" };

const AMOUNT = {
	properties: { value: { type: ["number", "null"], description: "Ten significant digits." }, unit: TEXT },
	required: ["value", "unit"],
};

const TABLE = {
	properties: {
		columns: { type: "object", additionalProperties: TEXT, description: "Unit of each column." },
		rows: { type: "array", items: { type: "array", items: { type: ["number", "null"] } } },
	},
	required: ["columns", "rows"],
};

/** One of these says where a figure comes from. */
const ORIGINS = [
	{ properties: { written: TEXT, at: TEXT, file: TEXT }, required: ["written", "at"] },
	{ properties: { catalogue: TEXT, source: TEXT }, required: ["catalogue", "source"] },
	{ properties: { assumption: TEXT, source: TEXT }, required: ["assumption"] },
	{ properties: { constant: TEXT, source: TEXT }, required: ["constant", "source"] },
	{
		properties: {
			formula: TEXT,
			branch: TEXT,
			inputs: {
				type: "object",
				description: "By the symbol in the formula: a reference, or of several terms a list of them.",
				additionalProperties: { anyOf: [REFERENCE, { type: "array", items: REFERENCE }] },
			},
		},
		required: ["formula", "inputs"],
	},
] as const;

interface Shape {
	readonly properties: Readonly<Record<string, unknown>>;
	readonly required: readonly string[];
}

const whole = (...parts: readonly Shape[]): object => ({
	type: "object",
	properties: Object.assign({}, ...parts.map(({ properties }) => properties)) as object,
	required: parts.flatMap(({ required }) => required),
	additionalProperties: false,
});

const withOrigin = (shape: Shape): readonly object[] => ORIGINS.map((origin) => whole(shape, origin));

const ROWS: Shape = { properties: { rows: { type: "integer", minimum: 0 } }, required: ["rows"] };

/** What `casebound results` prints, as JSON Schema (draft 2020-12): for scripts that read it. */
export const resultsJsonSchema = (): Record<string, unknown> => ({
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Results of a well",
	type: "object",
	properties: {
		values: {
			type: "object",
			description:
				"Every value by its key. A text in place of an object is the key of the value that this one is.",
			propertyNames: { pattern: "^(?:results|well|findings)\\." },
			additionalProperties: { anyOf: [TEXT, ...withOrigin(AMOUNT), ...withOrigin(TABLE)] },
		},
		inputs: {
			type: "object",
			description: "What the values refer to and that is not among them; of a table the number of its rows.",
			propertyNames: REFERENCE,
			additionalProperties: {
				anyOf: [whole(AMOUNT), whole(ROWS), ...withOrigin(AMOUNT), ...withOrigin(ROWS)],
			},
		},
		formulas: {
			type: "object",
			description: "Id of each formula used, with its published source.",
			additionalProperties: TEXT,
		},
		not_evaluated: {
			type: "object",
			description: "What could not be worked out, why, and the paths of the definition that would mend it.",
			additionalProperties: whole({
				properties: { because: TEXT, needs: { type: "array", items: TEXT } },
				required: ["because", "needs"],
			}),
		},
	},
	required: ["values", "inputs", "formulas", "not_evaluated"],
	additionalProperties: false,
});
