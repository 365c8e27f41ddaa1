import type { PaperDocument, Setting } from "../../document/document.ts";
import { FACES, FAMILY } from "../../measure/faces.ts";
import { fontSubset } from "../../measure/font-subset.ts";
import { COLOR_RULES } from "./colors.ts";
import { cssString } from "./escape.ts";

/** Body type on the screen: 16 px for an office, more at a kitchen table and on a clipboard. */
const SIZES: Readonly<Record<Setting, string>> = {
	office: "100%",
	reference: "100%",
	public: "112.5%",
	lectern: "112.5%",
	field: "118.75%",
	screen: "125%",
};
/** Body type on paper [pt]: the PDF's own. */
const PRINTED: Readonly<Record<Setting, number>> = {
	office: 10,
	reference: 9,
	public: 12,
	lectern: 11.5,
	field: 12.5,
	screen: 14,
};

const fontFaces = (texts: readonly string[]): string =>
	FACES.map((face) => {
		const bytes = Buffer.from(fontSubset(face, texts)).toString("base64");
		return `@font-face{font-family:"${FAMILY}";font-weight:${face.css};font-style:${face.italic ? "italic" : "normal"};src:url(data:font/ttf;base64,${bytes})format("truetype")}`;
	}).join("\n");

const RULES = `
*{box-sizing:border-box}
body{margin:0 auto;padding:1.5rem 1rem 3rem;max-width:52rem;font-family:"${FAMILY}","Source Sans Pro",Helvetica,Arial,sans-serif;line-height:1.45;color:var(--text);background:var(--ground)}
h1,h2,h3,h4,caption,.caption,figcaption{color:var(--heading)}
h1{font-size:2rem;line-height:1.15;margin:.6em 0 .2em}
h2{font-size:1.45rem;line-height:1.2;margin:2.2em 0 .6em;padding-top:.4em;border-top:2px solid var(--heading)}
h3{font-size:1.15rem;margin:1.6em 0 .4em}
h4{font-size:1.05rem;font-weight:600;margin:1.4em 0 .4em}
p{margin:0 0 .7em}
a{color:var(--heading)}
a:focus-visible,[tabindex]:focus-visible{outline:3px solid var(--heading);outline-offset:2px}
.skip{position:absolute;left:-999rem}
.skip:focus{left:1rem;top:.5rem;padding:.4em .8em;background:var(--ground);border:2px solid var(--heading)}
.lead{font-size:1.12em}
.note{font-size:.92em}
.head{display:flex;flex-wrap:wrap;justify-content:space-between;gap:.5rem;font-weight:600}
.head p{margin:0}
.state{border:2px solid var(--rule);padding:.05em .5em;font-weight:700}
.imprint{display:flex;flex-wrap:wrap;gap:.4rem 2rem;margin:1em 0;padding-top:.5em;border-top:2px solid var(--heading)}
.imprint dd{margin:0;font-weight:600}
.foot{margin-top:3rem;padding-top:.6em;border-top:1px solid var(--rule);font-size:.9em}
nav ul{list-style:none;padding:0}
nav li{border-bottom:1px solid var(--rule);padding:.25em 0}
nav a{display:flex;color:var(--text);text-decoration:none}
nav a:hover span+span{text-decoration:underline}
.number{display:inline-block;min-width:2em;font-weight:600}
.facts>div{display:grid;grid-template-columns:minmax(9rem,2fr) 3fr;gap:0 1rem;padding:.25em 0;border-bottom:1px solid var(--rule)}
.facts{margin:0 0 1.2em}
.facts dd,.figures dd{margin:0}
.facts dd{font-weight:600}
.facts .note,.figures .note{display:block;font-weight:400}
@media(min-width:44rem){.two,.three{display:grid;grid-template-columns:1fr 1fr;gap:0 1.4rem}.three{grid-template-columns:1fr 1fr 1fr}}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(11rem,1fr));gap:1rem 1.4rem;margin:1em 0 1.4em}
.figures>div{display:flex;flex-direction:column;border-top:4px solid var(--heading);padding-top:.3em}
.figures dt{order:2;font-weight:600}
.figures dd{order:1;font-size:1.8em;font-weight:700;line-height:1.15}
.figures .note{order:3;font-size:.92rem;line-height:1.35}
.caption,caption{font-weight:600;text-align:start;margin:0;padding:0 0 .25em}
.wide{overflow-x:auto;margin:1em 0 1.4em}
.wide+.note{margin-top:-1em}
table{border-collapse:collapse;border-top:2px solid var(--rule);border-bottom:2px solid var(--rule);font-size:.95em;line-height:1.3}
.dense{font-size:.88em}
thead th{border-bottom:1px solid var(--rule);vertical-align:bottom;font-weight:600}
.unit{display:block;font-weight:400}
tbody tr+tr>*,tbody+tbody tr>*{border-top:1px solid var(--rule)}
th,td{padding:.25em .5em;text-align:start;vertical-align:top}
.end{text-align:end;font-variant-numeric:tabular-nums}
.middle{text-align:center}
tbody th{font-weight:600}
.group th{font-weight:700;padding-top:.6em}
.total>*{font-weight:600;border-top-width:2px}
.unset,.not-met,.cannot-tell{font-weight:700;border:2px solid var(--rule);padding:0 .3em}
.cannot-tell{border-style:dashed}
.needs-judgement{font-weight:600;border:1px solid var(--rule);padding:0 .3em}
.met{font-weight:600}
.does-not-apply{font-style:italic}
.blank{display:inline-block;min-width:6rem;min-height:1.6em;width:100%;border:1px solid var(--rule)}
.sign{width:100%}
.line{height:2.2em}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
figure{margin:1.2em 0 1.6em}
figure svg{display:block;max-width:100%;height:auto;margin:0 auto .6em}
.drawing{margin:0}
@media screen and (max-width:40rem){.drawing svg{max-width:none;width:42rem}}
figcaption{font-size:.95em;font-weight:600}
figcaption .scale{display:block;font-weight:400;color:var(--text)}
.callout{margin:1.2em 0;padding:.7em .9em .2em;break-inside:avoid}
.callout>.title{font-weight:700}
.stop{border:4px solid var(--stop)}
.stop>.title{font-size:1.12em;color:var(--stop)}
.caution{border:1px solid var(--rule);border-left-width:6px}
.callout.remark{border-top:1px solid var(--rule);border-bottom:1px solid var(--rule);padding-left:.2em}
.break{height:0}
@media (min-width:60em){.columns{columns:2;column-gap:2em}}
@media print{
body{max-width:none;padding:0}
.skip,.wide:focus{display:none}
.wide{overflow:visible;display:block}
h1,h2,h3,h4,caption,.caption{break-after:avoid}
tr,figure,.facts>div,.figures>div,li{break-inside:avoid}
thead{display:table-header-group}
.new-page,.break{break-before:page}
p{orphans:2;widows:2}
a{text-decoration:none}
}`;

/** Page margins carry what every page must say: the caution, the standing of the paper, the page. */
const pageRule = ({ imprint }: PaperDocument): string => {
	const identity = `${imprint.operator} · ${imprint.well}`;
	const standing = `${imprint.state} · ${imprint.words.revision} ${imprint.revision} · ${imprint.issuedAs} · ${imprint.digest}`;
	const type = `font:8pt "${FAMILY}",Helvetica,Arial,sans-serif`;
	const box = (text: string): string => `{content:${cssString(text)};${type};text-align:left}`;
	return `@page{size:letter;margin:60pt 54pt 72pt;
@top-left${box(identity)}
@top-right{content:${cssString(imprint.title)};${type};font-weight:600}
@bottom-left${box(`${imprint.caution}\n${standing}`)}
@bottom-right{content:${cssString(`${imprint.words.page} `)} counter(page) ${cssString(` ${imprint.words.of} `)} counter(pages);${type};font-weight:600}}
@page{@bottom-left{white-space:pre-line;width:80%}}`;
};

/** The style sheet, with the signs of the typeface that `texts` use. */
export const styleSheet = (document: PaperDocument, texts: readonly string[]): string =>
	[
		fontFaces(texts),
		`html{font-size:${SIZES[document.setting]}}`,
		COLOR_RULES,
		RULES,
		`@media print{html{font-size:${PRINTED[document.setting]}pt}}`,
		pageRule(document),
	].join("\n");
