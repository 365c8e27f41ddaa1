import { readFileSync } from "node:fs";
import fc from "fast-check";
import { changes, mutated } from "./mutate.ts";
import { reshaped, reshapings } from "./reshape.ts";
import { type Case, starter } from "./run-case.ts";

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

const broken = (name: string): string =>
	readFileSync(new URL(`../../fixtures/broken/${name}`, import.meta.url), "utf8");

/** Definitions without a fault, and the tables they name. */
const WELLS: readonly { readonly text: string; readonly tables: Readonly<Record<string, string>> }[] = [
	{ text: starter("horizontal.yaml"), tables: {} },
	{ text: starter("vertical-metric.yaml"), tables: {} },
	{
		text: starter("horizontal-as-built.yaml"),
		tables: {
			"horizontal-as-built-survey.csv": starter("horizontal-as-built-survey.csv"),
			"horizontal-as-built-stages.csv": starter("horizontal-as-built-stages.csv"),
			"horizontal-as-built-bond-log.csv": starter("horizontal-as-built-bond-log.csv"),
			"horizontal-as-built-offset-survey.csv": starter("horizontal-as-built-offset-survey.csv"),
		},
	},
	{ text: broken("base.yaml"), tables: {} },
	{
		text: broken("base.yaml").replace(/^ {4}layout: .*$/m, "    rows: { file: base-stages.csv }"),
		tables: { "base-stages.csv": broken("base-stages.csv") },
	},
];

const besideOf = (tables: Readonly<Record<string, string>>): Map<string, Uint8Array> =>
	new Map(Object.entries(tables).map(([name, text]) => [name, bytesOf(text)]));

/** The small wells more often: they are quick, and nearly every rule reaches them. */
const wellOf = (small: number) =>
	fc.oneof(
		{ weight: 1, arbitrary: fc.constantFrom(...WELLS.slice(0, 3)) },
		{ weight: small, arbitrary: fc.constantFrom(...WELLS.slice(3)) },
	);

const well = wellOf(2);

const changedDefinition = fc
	.tuple(well, changes)
	.map(
		([{ text, tables }, made]): Case => ({ bytes: bytesOf(mutated(text, made)), beside: besideOf(tables) }),
	);

const reshapedDefinition = fc
	.tuple(wellOf(9), reshapings)
	.map(
		([{ text, tables }, made]): Case => ({ bytes: bytesOf(reshaped(text, made)), beside: besideOf(tables) }),
	);

const changedTable = fc
	.tuple(fc.constantFrom(...WELLS.filter(({ tables }) => Object.keys(tables).length > 0)), fc.nat(), changes)
	.map(([{ text, tables }, which, made]): Case => {
		const names = Object.keys(tables);
		const name = names[which % names.length] ?? "";
		return {
			bytes: bytesOf(text),
			beside: besideOf({ ...tables, [name]: mutated(tables[name] ?? "", made) }),
		};
	});

const lineEnds = fc.tuple(well, changes, fc.constantFrom("\r\n", "\r", "\n\n"), fc.boolean()).map(
	([{ text, tables }, made, end, mark]): Case => ({
		bytes: bytesOf((mark ? "\ufeff" : "") + mutated(text, made).replaceAll("\n", end)),
		beside: besideOf(tables),
	}),
);

const splicedBytes = fc
	.tuple(well, fc.nat(), fc.uint8Array({ maxLength: 64 }), fc.nat({ max: 64 }))
	.map(([{ text, tables }, at, put, lost]): Case => {
		const whole = bytesOf(text);
		const from = at % whole.length;
		return {
			bytes: Uint8Array.from([...whole.subarray(0, from), ...put, ...whole.subarray(from + lost)]),
			beside: besideOf(tables),
		};
	});

const rawBytes = fc
	.oneof(
		fc.uint8Array({ maxLength: 2000 }),
		fc.string({ unit: "binary", maxLength: 500 }).map(bytesOf),
		fc.json({ maxDepth: 8 }).map(bytesOf),
		fc
			.array(
				fc.constantFrom(
					"a",
					"- ",
					": ",
					"\n",
					"  ",
					"{",
					"}",
					"[",
					"]",
					",",
					'"',
					"#",
					"&x ",
					"*x",
					"|",
					"!",
					"casing:",
				),
				{
					maxLength: 200,
				},
			)
			.map((parts) => bytesOf(parts.join(""))),
	)
	.map((bytes): Case => ({ bytes, beside: new Map() }));

/** Whatever may be handed in: mostly a well with a few changes, now and then bytes of any kind. */
export const anyCase: fc.Arbitrary<Case> = fc.oneof(
	{ weight: 14, arbitrary: reshapedDefinition },
	{ weight: 9, arbitrary: changedDefinition },
	{ weight: 3, arbitrary: changedTable },
	{ weight: 2, arbitrary: lineEnds },
	{ weight: 2, arbitrary: splicedBytes },
	{ weight: 2, arbitrary: rawBytes },
);
