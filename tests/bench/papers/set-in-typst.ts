import { dirname } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { Block } from "../../../src/document/blocks.ts";
import type { PaperDocument } from "../../../src/document/document.ts";
import { FACES, FAMILY } from "../../../src/measure/faces.ts";
import { columnUnit, printCell, printInline, printingOf } from "../../../src/render/print/print-text.ts";
import { PRINT_WORDS } from "../../../src/render/print/print-words.ts";
import { renderSvg } from "../../../src/render/svg/render-svg.ts";

/** A yardstick: the same words, numbers and drawings set by typst, which tags what it writes. */

/** A typst string, which needs no markup escaped. */
const quoted = (text: string): string => `#${JSON.stringify(text).replaceAll("\\u2028", "\\u{2028}")}`;

interface Source {
	readonly main: string;
	readonly drawings: readonly string[];
}

const sourceOf = (paper: PaperDocument): Source => {
	const printing = printingOf(paper);
	const words = PRINT_WORDS[paper.language];
	const drawings: string[] = [];
	const set = (block: Block): string => {
		switch (block.kind) {
			case "heading":
				return `${"=".repeat(block.level)} ${quoted(block.text)}\n`;
			case "paragraph":
				return `${quoted(printInline(block.children, printing))}\n\n`;
			case "list":
				return `#${block.ordered ? "enum" : "list"}(${block.items.map((item) => `[${item.map(set).join("")}]`).join(", ")})\n`;
			case "facts":
			case "figures":
				return `#table(columns: (2fr, 3fr), stroke: (x, y) => (bottom: 0.5pt), ${block.items
					.map(
						({ label, value, note }) =>
							`[${quoted(label)}], [${quoted(`${printCell(value, printing)} ${note ?? ""}`)}]`,
					)
					.join(", ")})\n`;
			case "table": {
				const columns = block.columns.map((column) => `${column.width}fr`).join(", ");
				const align = block.columns
					.map((column) => (column.kind === "quantity" ? "right" : "left"))
					.join(", ");
				const head = block.columns.map(
					(column) => `[*${quoted(column.head)}* \\ ${quoted(columnUnit(column, printing) ?? "")}]`,
				);
				const rows = block.rows.map((row) => {
					const [only, ...others] = Object.values(row.cells);
					return row.emphasis === "group" && others.length === 0
						? `table.cell(colspan: ${block.columns.length})[*${quoted(printCell(only, printing))}*]`
						: block.columns
								.map((column) => `[${quoted(printCell(row.cells[column.id], printing, column))}]`)
								.join(", ");
				});
				return `#text(weight: 600)[${quoted(block.caption)}]
#table(columns: (${columns},), align: (${align},), stroke: (x, y) => (bottom: 0.5pt), inset: 3pt, table.header(${head.join(", ")}),
${rows.join(",\n")})
${quoted(printInline(block.note ?? [], printing))}

`;
			}
			case "figure": {
				drawings.push(renderSvg(block.drawing, { embedFonts: false }));
				return `#figure(image("/drawing-${drawings.length}.svg", width: ${block.drawing.width}pt, alt: ${JSON.stringify(block.drawing.alternative)}), caption: [${quoted(printInline(block.caption, printing))}])\n`;
			}
			case "callout":
				return `#block(stroke: 1pt, inset: 6pt, width: 100%)[*${quoted(`${words.tones[block.tone]}: ${block.title}`)}*

${block.blocks.map(set).join("")}]\n`;
			case "columns":
				return block.blocks.map(set).join("");
			case "sign-in":
				return `#table(columns: ${block.columns.length}, ${block.columns.map(({ head }) => `[${quoted(head)}]`).join(", ")}, ${"[#v(16pt)], ".repeat(block.lines * block.columns.length)})\n`;
			case "contents":
				return "#outline(depth: 1)\n";
			case "beside":
				return [...block.left, ...block.right].map(set).join("");
			case "list-of":
				return "";
			case "page-break":
				return "#pagebreak(weak: true)\n";
			default:
				return block satisfies never;
		}
	};
	const { imprint } = paper;
	const body = paper.sections.map(
		(section) =>
			`${section.newPage === true ? "#pagebreak(weak: true)\n" : ""}= ${quoted(`${section.number ?? ""} ${section.title}`)}\n${section.blocks.map(set).join("\n")}`,
	);
	return {
		drawings,
		main: `#set document(title: ${JSON.stringify(imprint.title)})
#set page(paper: "us-letter", margin: (x: 54pt, top: 68pt, bottom: 66pt), header: text(8pt)[${quoted(`${imprint.operator} · ${imprint.well}`)}], footer: context text(8pt)[${quoted(imprint.caution)} #h(1fr) #counter(page).display()])
#set text(font: ${JSON.stringify(FAMILY)}, size: 10pt, lang: ${JSON.stringify(paper.language)})
#show table: set text(9.5pt)
#text(23pt, weight: 700)[${quoted(imprint.title)}]

${body.join("\n")}
`,
	};
};

let compiler: NodeCompiler | undefined;

/** @returns the file */
export const setInTypst = (paper: PaperDocument): Uint8Array => {
	const { main, drawings } = sourceOf(paper);
	compiler ??= NodeCompiler.create({
		workspace: "/",
		fontArgs: [{ fontPaths: [...new Set(FACES.map((face) => dirname(face.path)))] }],
	});
	for (const [i, svg] of drawings.entries()) compiler.mapShadow(`/drawing-${i + 1}.svg`, Buffer.from(svg));
	return compiler.pdf({ mainFileContent: main });
};
