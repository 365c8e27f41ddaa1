import type { Known } from "../../cite/known.ts";
import type { Cell } from "../../document/blocks.ts";
import { text } from "../../document/inline.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { isFinished } from "../narrative/done.ts";
import { asGiven, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const ROUNDED = { significant: 2 } as const;

/** A volume as the public has it: in gallons, or in the paper's metric unit. */
const volume = (context: PaperContext, known: Known<"volume">): Cell => ({
	kind: "rich",
	children: [shown(context, known, context.units === "metric" ? ROUNDED : { ...ROUNDED, unit: "gal" })],
});
const mass = (context: PaperContext, known: Known<"mass">): Cell => ({
	kind: "rich",
	children: [shown(context, known, ROUNDED)],
});

/** What is poured in, before what it is made of. */
const named = (name: string): Cell => ({
	kind: "rich",
	children: [{ kind: "strong", children: [text(name)] }],
});

/** What an ingredient is, in plain words, where the language has some for its registry number. */
const plainly = (
	{ words }: PaperContext,
	{ cas, trade_secret }: { readonly cas?: string; readonly trade_secret?: string },
): Cell => {
	if (trade_secret !== undefined) return textCell(words.label("phrases.kept_secret"));
	return textCell(
		(cas === undefined ? undefined : words.findLabel(`ingredients_plain.${cas}`)) ??
			words.label("phrases.ask_what_it_is"),
	);
};

/**
 * Everything that is pumped, for a neighbor: water, sand, each additive with what it is for and how much of it, and under it
 * each ingredient with what it is. Shares are greatest shares of all that is pumped, by weight, as the regulator has them.
 */
export const ingredientsPlain: Part = (context) => {
	const disclosure = context.results.stimulation?.disclosure;
	const plan = context.well.stimulation;
	if (disclosure === undefined || plan === undefined) return [];
	const additives = new Map(plan.additives.map((each) => [each.id, each]));
	const { label, findLabel } = context.words;
	const water = context.results.stimulation?.water_volume;
	const sand = context.results.stimulation?.proppant_mass;
	return table(
		context,
		isFinished(context) ? "ingredients_plain_done" : "ingredients_plain",
		[
			textColumn(context, "pumped_name", { width: 2.5, rowHead: true }),
			textColumn(context, "in_plain_words", { width: 3.4 }),
			textColumn(context, "pumped_amount", { width: 1.3 }),
			quantityColumn(context, "share_of_all", "share", { width: 1, style: ROUNDED }),
		],
		[
			row({
				pumped_name: named(label("slides.share_water")),
				in_plain_words: textCell(label("phrases.water_plain")),
				pumped_amount: water === undefined ? { kind: "none" } : volume(context, water),
				share_of_all: cell(context, disclosure.base_fluid.share, { decimals: 1 }),
			}),
			row({
				pumped_name: named(label("slides.share_sand")),
				in_plain_words: textCell(label("phrases.sand_plain")),
				pumped_amount: sand === undefined ? { kind: "none" } : mass(context, sand),
				share_of_all: cell(context, disclosure.proppant_share, { decimals: 1 }),
			}),
			...disclosure.additives.flatMap((additive) => {
				const purpose = additives.get(additive.id)?.purpose;
				return [
					row({
						pumped_name: named(additive.name),
						in_plain_words: textCell(findLabel(`purposes_plain.${purpose}`) ?? asGiven(context, purpose)),
						pumped_amount: volume(context, additive.volume),
						share_of_all: cell(context, additive.share, ROUNDED),
					}),
					...additive.ingredients.map((each) =>
						row({
							pumped_name: textCell(each.name),
							in_plain_words: plainly(context, each),
							share_of_all: cell(context, each.share, ROUNDED),
						}),
					),
				];
			}),
		],
		{
			dense: true,
			note: "ingredients_plain",
		},
	);
};
