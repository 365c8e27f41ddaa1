import type { Block, Section } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import { linkTarget } from "../print/link-target.ts";
import { entriesOf, figureCaption, printingOf } from "../print/print-text.ts";
import { PRINT_WORDS, type PrintWords } from "../print/print-words.ts";
import { saysScale } from "../print/says-scale.ts";
import { renderSvg } from "../svg/render-svg.ts";
import { escaped } from "./escape.ts";
import { cellHtml, classOf, idOf, inline, type Kind, type Scene } from "./inline.ts";
import { styleSheet } from "./style.ts";
import { signIn, table } from "./table.ts";

const noted = (note: string | undefined): string =>
	note === undefined ? "" : ` <span class="note">${escaped(note)}</span>`;

const facts = (block: Kind<"facts">, scene: Scene): string => {
	const id = `l-${scene.next()}`;
	const items = block.items.map(
		(item) =>
			`<div><dt>${escaped(item.label)}</dt><dd>${cellHtml(item.value, scene)}${noted(item.note)}</dd></div>`,
	);
	const abreast = { 1: undefined, 2: "two", 3: "three" }[block.columns ?? 1];
	const list = `<dl${classOf("facts", abreast)}>\n${items.join("\n")}\n</dl>`;
	return block.caption === undefined
		? list
		: `<div role="group" aria-labelledby="${id}"><p id="${id}" class="caption">${escaped(block.caption)}</p>\n${list}</div>`;
};

const keyFigures = (block: Kind<"figures">, scene: Scene): string => {
	const items = block.items.map(
		(item) =>
			`<div><dt>${escaped(item.label)}</dt><dd>${cellHtml(item.value, scene)}</dd>${
				item.note === undefined ? "" : `<dd class="note">${escaped(item.note)}</dd>`
			}</div>`,
	);
	return `<dl class="figures">\n${items.join("\n")}\n</dl>`;
};

/** From this width on a drawing is too broad for a phone [pt]. */
const BROAD = 420;

const figure = (block: Kind<"figure">, scene: Scene): string => {
	const { drawing } = block;
	const svg = renderSvg(drawing, {
		embedFonts: false,
		keepNames: false,
		idPrefix: `d${scene.next()}-`,
	}).trimEnd();
	const scale = saysScale(drawing) ? "" : ` <span class="scale">${escaped(drawing.scale)}</span>`;
	// On a phone a broad drawing keeps the size that its words are read at, and is moved along under the finger.
	const shown =
		block.drawing.width < BROAD
			? svg
			: `<div class="wide drawing" role="group" tabindex="0" aria-label="${escaped(block.drawing.title)}">\n${svg}\n</div>`;
	return `<figure${idOf(block.id)}>\n${shown}\n<figcaption>${escaped(figureCaption(block, scene.printing))}${scale}</figcaption>\n</figure>`;
};

const TONES = { stop: "stop", caution: "caution", note: "remark" } as const;

const callout = (block: Kind<"callout">, scene: Scene): string => {
	const id = `c-${scene.next()}`;
	return `<div role="note" class="callout ${TONES[block.tone]}" aria-labelledby="${id}">
<p id="${id}" class="title">${escaped(`${scene.words.tones[block.tone]}: ${block.title}`)}</p>
${setBlocks(block.blocks, scene)}
</div>`;
};

const contents = (scene: Scene): string => {
	const { sections, imprint } = scene.document;
	const entries = sections
		.filter(({ unlisted }) => unlisted !== true)
		.map(
			(section) =>
				`<li><a href="#${escaped(section.id)}">${
					section.number === undefined ? "" : `<span class="number">${escaped(section.number)}</span>`
				} <span>${escaped(section.title)}</span></a></li>`,
		);
	const { contents: name } = imprint.words;
	return `<nav aria-label="${escaped(name)}">
${name === scene.title ? "" : `<p class="caption">${escaped(name)}</p>\n`}<ul>
${entries.join("\n")}
</ul>
</nav>`;
};

/** Numbered tables or figures, each a link. */
const listOf = (block: Kind<"list-of">, scene: Scene): string => {
	const { caption } = block;
	const blocks = scene.document.sections.flatMap((section) => section.blocks);
	const entries = entriesOf(block, blocks, scene.printing).map(
		({ to, number, title }) =>
			`<li><a href="${escaped(linkTarget(to, "html"))}"><span class="number">${escaped(number)}</span> <span>${escaped(title)}</span></a></li>`,
	);
	return entries.length === 0
		? ""
		: `<nav aria-label="${escaped(caption)}">\n<p class="caption">${escaped(caption)}</p>\n<ul>\n${entries.join("\n")}\n</ul>\n</nav>`;
};

const beside = ({ left, right }: Kind<"beside">, scene: Scene): string =>
	`<div class="beside"><div>${setBlocks(left, scene)}</div><div>${setBlocks(right, scene)}</div></div>`;

const setBlock = (block: Block, scene: Scene): string => {
	switch (block.kind) {
		case "heading":
			return `<h${block.level + 1}${idOf(block.id)}>${escaped(block.text)}</h${block.level + 1}>`;
		case "paragraph":
			return `<p${classOf(block.tone === "body" ? undefined : block.tone)}>${inline(block.children, scene)}</p>`;
		case "list": {
			const name = block.ordered ? "ol" : "ul";
			const items = block.items.map((item) => `<li>${setBlocks(item, scene)}</li>`);
			return `<${name}>\n${items.join("\n")}\n</${name}>`;
		}
		case "facts":
			return facts(block, scene);
		case "figures":
			return keyFigures(block, scene);
		case "table":
			return table(block, scene);
		case "figure":
			return figure(block, scene);
		case "callout":
			return callout(block, scene);
		case "columns":
			return `<div class="columns">\n${setBlocks(block.blocks, scene)}\n</div>`;
		case "sign-in":
			return signIn(block, scene);
		case "contents":
			return contents(scene);
		case "list-of":
			return listOf(block, scene);
		case "beside":
			return beside(block, scene);
		case "page-break":
			return '<div class="break"></div>';
		default:
			return block satisfies never;
	}
};

const setBlocks = (blocks: readonly Block[], scene: Scene): string =>
	blocks.map((block, i) => setBlock(oneStepDown(block, blocks.slice(0, i)), scene)).join("\n");

/** A reader of structure is taken down one level at a time: a lesser heading without one above it stands in its place. */
const oneStepDown = (block: Block, preceding: readonly Block[]): Block =>
	block.kind !== "heading" || preceding.some((before) => before.kind === "heading" && before.level === 2)
		? block
		: { ...block, level: 2 };

const setSection = (section: Section, scene: Scene): string => {
	const number =
		section.number === undefined ? "" : `<span class="number">${escaped(section.number)}</span> `;
	return `<section id="${escaped(section.id)}"${classOf(section.newPage === true ? "new-page" : undefined)}>
<h2${classOf(section.headless === true ? "unseen" : undefined)}>${number}${escaped(section.title)}</h2>
${setBlocks(section.blocks, { ...scene, title: section.title })}
</section>`;
};

const imprintItems = (
	{ imprint }: PaperDocument,
	words: PrintWords,
): readonly (readonly [string, string])[] => [
	...(imprint.apiNumber === undefined ? [] : [[words.apiNumber, imprint.apiNumber] as const]),
	[imprint.words.revision, imprint.revision],
	[words.issued, imprint.issuedAs],
	...(imprint.validUntil === undefined ? [] : [[words.validUntil, imprint.validUntil] as const]),
	[words.digest, imprint.digest],
];

/** Every text that the file shows, so that the typeface in it has their signs. */
const textsOf = (document: PaperDocument, body: string): readonly string[] => {
	const labels = (shapes: readonly Shape[]): readonly string[] =>
		shapes.flatMap((shape) =>
			shape.kind === "group" ? labels(shape.children) : shape.kind === "text" ? [shape.text] : [],
		);
	const drawings = (blocks: readonly Block[]): readonly Drawing[] =>
		blocks.flatMap((block) => {
			if (block.kind === "figure") return [block.drawing];
			if (block.kind === "callout" || block.kind === "columns") return drawings(block.blocks);
			return block.kind === "list" ? block.items.flatMap(drawings) : [];
		});
	const shown = body.replaceAll(/<[^>]*>/gu, "\n").replaceAll(/&(?:#39|quot|amp|lt|gt);/gu, "&'\"<>");
	const { imprint } = document;
	return [
		...new Set(shown.split(/\s+/u)),
		...document.sections
			.flatMap((section) => drawings(section.blocks))
			.flatMap(({ shapes }) => labels(shapes)),
		`${imprint.words.page} ${imprint.words.of} 0123456789 · & ' " < >`,
	];
};

/**
 * A paper as one self-contained HTML file, from the blocks that the PDF is made of: no script, nothing fetched, its
 * drawings inline and its typeface inside, with a style of its own for print. Equal input, equal bytes.
 *
 * @throws RangeError for a number that cannot be printed
 */
export const renderHtml = (document: PaperDocument): string => {
	const { imprint, language, sections } = document;
	const words = PRINT_WORDS[language];
	let count = 0;
	const scene: Scene = {
		document,
		printing: printingOf(document),
		words,
		title: "",
		next: () => {
			count += 1;
			return count;
		},
	};
	const standing = [
		imprint.state,
		`${imprint.words.revision} ${imprint.revision}`,
		imprint.issuedAs,
		imprint.digest,
	];
	const items = imprintItems(document, words).map(
		([label, value]) => `<div><dt>${escaped(label)}</dt><dd>${escaped(value)}</dd></div>`,
	);
	const body = `<body>
<a class="skip" href="#paper">${escaped(words.skip)}</a>
<header class="head"><p>${escaped(imprint.operator)} · ${escaped(imprint.well)}</p><p class="state">${escaped(imprint.state)}</p></header>
<main id="paper">
<h1>${escaped(imprint.title)}</h1>
${imprint.subtitle === undefined ? "" : `<p class="lead">${escaped(imprint.subtitle)}</p>\n`}<dl class="imprint">
${items.join("\n")}
</dl>
<p class="note">${escaped(imprint.caution)}</p>
${sections.map((section) => setSection(section, scene)).join("\n")}
</main>
<footer class="foot"><p>${escaped(imprint.caution)}</p><p>${escaped(standing.join(" · "))}</p></footer>
</body>`;
	return `<!doctype html>
<html lang="${language === "es" ? "es-US" : "en-US"}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="author" content="${escaped(imprint.operator)}">
<meta name="description" content="${escaped(imprint.subject)}">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:">
<title>${escaped(`${imprint.title} – ${imprint.well}`)}</title>
<style>
${styleSheet(document, textsOf(document, body))}
</style>
</head>
${body}
</html>
`;
};
