import { isTable } from "../../cite/known.ts";
import type { Block, Column, Row, Section } from "../../document/blocks.ts";
import type { Inline, QuantityText } from "../../document/inline.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { PaperContext } from "../context.ts";
import { formulaNames } from "../parts/answers.ts";
import { row } from "../parts/part.ts";
import { keysIn } from "../places.ts";
import type { PictureSize } from "./pictures.ts";
import { type Slide, slidesOf } from "./slides.ts";

/** A slide in the speaker's hand: half a page with what belongs to it [pt]. */
const SMALL: PictureSize = { width: 400, height: 128, size: 9.5 };

/** Of each slide its picture and words, the numbers as they are, where they come from, and a question with its answer. */
export const noteSections = (context: PaperContext): readonly Section[] =>
	slidesOf(context).map((slide, i): Section => {
		const drawing = slide.picture?.(SMALL);
		return {
			id: slide.id,
			number: String(i + 1),
			title: slide.title,
			blocks: [
				...(drawing === undefined ? [] : [{ kind: "figure", drawing, caption: [] } as const]),
				...slide.say.map(asBody),
				...numbers(context, slide, drawing, i + 1),
				...asked(context, slide),
			],
		};
	});

const asBody = (block: Block): Block =>
	block.kind === "paragraph" ? { kind: "paragraph", children: block.children } : block;

const quantitiesIn = (blocks: readonly Block[]): readonly QuantityText[] =>
	blocks.flatMap((block): readonly QuantityText[] =>
		block.kind === "paragraph"
			? inlineQuantities(block.children)
			: block.kind === "list"
				? block.items.flatMap(quantitiesIn)
				: [],
	);

const inlineQuantities = (inlines: readonly Inline[]): readonly QuantityText[] =>
	inlines.flatMap((inline): readonly QuantityText[] =>
		inline.kind === "quantity" ? [inline] : "children" in inline ? inlineQuantities(inline.children) : [],
	);

/** Numbers of a picture that are listed. */
const MOST_DRAWN = 8;

const fromIndex = (context: PaperContext, key: string): (readonly [string, QuantityText])[] => {
	const known = context.index.byKey.get(key);
	if (known === undefined || isTable(known)) return [];
	const { dimension, value } = known;
	const unit = dimension === "duration" ? { unit: "d", decimals: 0 } : {};
	return [[key, { kind: "quantity", dimension, value, key, style: { ...unit, spoken: true } }]];
};

/** What the picture itself prints of each number: the speaker's sheet has to say what the room reads. */
const drawnTexts = (shapes: readonly Shape[]): readonly (readonly [string, string])[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group"
			? drawnTexts(shape.children)
			: shape.kind === "text" && shape.key !== undefined
				? [[shape.key, shape.text] as const]
				: [],
	);

const WIDTHS = [
	["said", 1.5],
	["exact", 2],
	["how", 2.2],
	["where", 2],
] as const;

/** Each number that the slide says: as said, exactly, how it was worked, and where the regulator's copy prints it. */
const numbers = (
	context: PaperContext,
	{ say }: Slide,
	drawing: Drawing | undefined,
	number: number,
): readonly Block[] => {
	const { label } = context.words;
	const drawn = drawing === undefined ? [] : keysIn([{ kind: "figure", drawing, caption: [] }]);
	const spoken = quantitiesIn(say).flatMap((each) =>
		each.key === undefined ? [] : [[each.key, each] as const],
	);
	const ofPicture = new Map(drawn.flatMap((key) => fromIndex(context, key)));
	const byKey = new Map([...[...ofPicture].slice(0, MOST_DRAWN), ...spoken]);
	const unlisted = [...ofPicture.keys()].filter((key) => !byKey.has(key)).length;
	if (byKey.size === 0) return [];
	const aloud = new Set(spoken.map(([key]) => key));
	const read = new Map(drawing === undefined ? [] : drawnTexts(drawing.shapes));
	const rows = [...byKey].map(([key, quantity]): Row => {
		const { style: _, ...exact } = quantity;
		const printed = aloud.has(key) ? undefined : read.get(key);
		return row({
			// A number without its unit, in a range, is said with it.
			said:
				printed !== undefined && /[\p{L}%]/u.test(printed)
					? { kind: "text", text: printed }
					: { kind: "rich", children: [quantity] },
			exact: {
				kind: "rich",
				children: exactly(closely(exact, read.get(key)), quantity.style?.unit),
			},
			how: { kind: "text", text: formulaNames([key], context).join("; ") },
			where: textOrNone(context.printedAt?.(key)),
		});
	});
	const columns = WIDTHS.map(
		([id, width]): Column => ({
			id,
			head: label(`slides.${id}`),
			kind: "text",
			width,
			...(id === "said" ? { rowHead: true } : {}),
		}),
	);
	return [
		{
			kind: "table",
			caption: label("slides.captions.numbers").replace("{number}", String(number)),
			columns: columns.filter(({ id }) => rows.some(({ cells }) => cells[id]?.kind !== "none")),
			rows,
			...(unlisted === 0
				? {}
				: {
						note: [{ kind: "text", text: label("slides.unlisted").replace("{count}", String(unlisted)) }],
					}),
			dense: true,
		},
	];
};

/** A share as closely as the picture has it: fewer decimals beside those would not be the exact number. */
const closely = (exact: QuantityText, printed: string | undefined): QuantityText => {
	const decimals = printed?.match(/\.(\d{2,})/u)?.[1]?.length;
	return exact.dimension === "share" && decimals !== undefined ? { ...exact, style: { decimals } } : exact;
};

/** From so many barrels on the regulator's copy prints whole ones. */
const LARGE = 1000;

/** In the unit of the calculation, and in the one that the room hears; days and hours in that one alone. */
const exactly = (exact: QuantityText, unit: string | undefined): readonly Inline[] => {
	if (unit === undefined) return [exact];
	if (exact.dimension === "duration") return [{ ...exact, style: { unit, decimals: 1 } }];
	const large = exact.dimension === "volume" && exact.value >= LARGE;
	return [
		large ? { ...exact, style: { decimals: 0 } } : exact,
		{ kind: "text", text: " = " },
		{ ...exact, style: { unit, decimals: 0 } },
	];
};

const textOrNone = (text: string | undefined) =>
	text === undefined || text === "" ? ({ kind: "none" } as const) : ({ kind: "text", text } as const);

const asked = ({ words: { label } }: PaperContext, { ask, answer, own }: Slide): readonly Block[] => {
	if (ask === undefined) return [];
	const said: readonly Inline[] = [
		...answer,
		...(own === undefined
			? []
			: [
					{ kind: "text", text: `${answer.length > 0 ? " " : ""}${label("slides.operator")} ` } as const,
					{ kind: "text", text: own } as const,
				]),
	];
	return [
		{
			kind: "callout",
			tone: "note",
			title: `${label("slides.question")}: ${ask}`,
			blocks: [
				{
					kind: "paragraph",
					children: said.length === 0 ? [{ kind: "text", text: label("slides.open") }] : said,
				},
			],
		},
	];
};
