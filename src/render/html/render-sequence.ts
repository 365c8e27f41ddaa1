import { createHash } from "node:crypto";
import type { SequenceDocument, SequenceFrame } from "../../document/sequence.ts";
import type { Shape } from "../../document/shapes.ts";
import { FACES, FAMILY } from "../../measure/faces.ts";
import { fontSubset } from "../../measure/font-subset.ts";
import { type Printing, printInline } from "../print/print-text.ts";
import { renderSvg } from "../svg/render-svg.ts";
import { COLOR_RULES } from "./colors.ts";
import { escaped } from "./escape.ts";

/** Words of the page's own buttons. */
const CONTROLS = {
	en: { back: "Back", next: "Next", play: "Play", pause: "Pause", step: "Step", of: "of", controls: "Show" },
	es: {
		back: "Atrás",
		next: "Siguiente",
		play: "Reproducir",
		pause: "Pausa",
		step: "Paso",
		of: "de",
		controls: "Mostrar",
	},
} as const;

/** How long a step stays [s]: long enough to read its sentence aloud. */
const SECONDS = 7;

/**
 * One page that shows the steps in turn, over and over. Nothing is fetched. Without a script, and on paper, all steps stand
 * under each other. It does not start by itself where the reader asked for less motion; a button and the space bar stop
 * it, the arrow keys go from step to step, and a screen reader is told a step only when its reader goes there.
 *
 * @source W3C, *Web Content Accessibility Guidelines 2.1* (2018), 2.1.1, 2.2.2, 1.1.1, 4.1.3 (from memory)
 */
export const renderSequence = (document: SequenceDocument): string => {
	const printing: Printing = { units: document.units, language: document.language };
	const words = CONTROLS[document.language];
	const said = document.frames.map((frame) => printInline(frame.say, printing));
	const script = scriptText(words);
	const style = styleText([
		document.title,
		document.well,
		document.operator,
		document.standing,
		document.caution,
		...Object.values(words),
		"0123456789 ·/–",
		...said,
		...document.frames.flatMap(({ title, drawing }) => [title, ...textsOf(drawing.shapes), drawing.scale]),
	]);
	const count = document.frames.length;
	const policy = `default-src 'none'; style-src 'unsafe-inline'; font-src data:; script-src 'sha256-${digestOf(script)}'`;
	return [
		"<!doctype html>",
		`<html lang="${document.language}">`,
		"<head>",
		'<meta charset="utf-8">',
		'<meta name="viewport" content="width=device-width, initial-scale=1">',
		`<meta http-equiv="Content-Security-Policy" content="${policy}">`,
		`<title>${escaped(`${document.title}: ${document.well}`)}</title>`,
		`<style>${style}</style>`,
		"</head>",
		"<body>",
		"<header>",
		`<h1>${escaped(document.title)}</h1>`,
		`<p>${escaped(`${document.operator}  ·  ${document.well}`)}</p>`,
		"</header>",
		"<main>",
		`<div class="controls" role="group" aria-label="${words.controls}" hidden>`,
		`<button type="button" id="back">${words.back}</button>`,
		`<button type="button" id="play">${words.pause}</button>`,
		`<button type="button" id="next">${words.next}</button>`,
		"</div>",
		'<div id="frames" tabindex="-1">',
		...document.frames.map((frame, i) => frameHtml(frame, said[i] ?? "", count, words)),
		"</div>",
		`<p class="scale">${escaped(document.frames[0]?.drawing.scale ?? "")}</p>`,
		"</main>",
		"<footer>",
		`<p>${escaped(document.caution)}</p>`,
		`<p>${escaped(document.standing)}</p>`,
		"</footer>",
		`<script>${script}</script>`,
		"</body>",
		"</html>",
		"",
	].join("\n");
};

type Controls = (typeof CONTROLS)[keyof typeof CONTROLS];

const frameHtml = (frame: SequenceFrame, said: string, count: number, words: Controls): string =>
	[
		`<figure id="step-${escaped(frame.id)}" class="frame">`,
		renderSvg(frame.drawing, { embedFonts: false, keepNames: false, idPrefix: `f${frame.number}-` })
			.trim()
			// The page gives it its width; the height follows.
			.replace(/ width="[^"]*" height="[^"]*"/u, ""),
		"<figcaption>",
		`<h2><span class="count">${words.step} ${frame.number} ${words.of} ${count}</span> ${escaped(frame.title)}</h2>`,
		`<p>${escaped(said)}</p>`,
		"</figcaption>",
		"</figure>",
	].join("\n");

const textsOf = (shapes: readonly Shape[]): string[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? textsOf(shape.children) : shape.kind === "text" ? [shape.text] : [],
	);

const digestOf = (script: string): string => createHash("sha256").update(script).digest("base64");

const styleText = (texts: readonly string[]): string =>
	[
		...FACES.filter(({ italic }) => !italic).map((face) => {
			const bytes = Buffer.from(fontSubset(face, texts)).toString("base64");
			return `@font-face{font-family:"${FAMILY}";font-weight:${face.css};font-style:normal;src:url(data:font/ttf;base64,${bytes})format("truetype")}`;
		}),
		COLOR_RULES,
		`*{box-sizing:border-box}
body{margin:0 auto;padding:1rem;max-width:62rem;font-family:"${FAMILY}","Source Sans Pro",Helvetica,Arial,sans-serif;font-size:112.5%;line-height:1.4;color:var(--text);background:var(--ground)}
h1,h2{color:var(--heading);line-height:1.2}
h1{font-size:1.7rem;margin:.3em 0}
h2{font-size:1.3rem;margin:.5em 0 .2em}
.count{display:block;font-size:.8em;font-weight:600;color:var(--text)}
figure{margin:0 0 1.6rem}
figure svg{display:block;width:100%;height:auto}
figcaption p{margin:0;font-size:1.15em}
.controls{display:flex;gap:.6rem;margin:.6rem 0}
.controls[hidden]{display:none}
button{font:inherit;font-weight:600;min-width:6.5rem;min-height:2.75rem;padding:.3rem 1rem;border:2px solid var(--heading);background:var(--ground);color:var(--heading);cursor:pointer}
button:focus-visible,#frames:focus-visible{outline:3px solid var(--heading);outline-offset:2px}
.alone .frame{display:none}
.alone .frame.shown{display:block}
.alone figcaption{min-height:8.5rem}
.scale,footer{font-size:.9em}
@media print{.controls{display:none!important}.alone .frame{display:block}figure{break-inside:avoid}}`,
	].join("\n");

const scriptText = ({ play, pause }: Controls): string =>
	`(function(){
var box=document.getElementById("frames"),frames=box.querySelectorAll(".frame"),bar=document.querySelector(".controls"),button=document.getElementById("play"),at=0,timer=0;
function show(i,byReader){at=(i+frames.length)%frames.length;for(var k=0;k<frames.length;k++)frames[k].classList.toggle("shown",k===at);box.setAttribute("aria-live",byReader?"polite":"off")}
function stop(){clearInterval(timer);timer=0;button.textContent=${JSON.stringify(play)}}
function start(){stop();timer=setInterval(function(){show(at+1,false)},${SECONDS * 1000});button.textContent=${JSON.stringify(pause)}}
function go(by){stop();show(at+by,true)}
document.body.classList.add("alone");bar.hidden=false;
document.getElementById("back").addEventListener("click",function(){go(-1)});
document.getElementById("next").addEventListener("click",function(){go(1)});
button.addEventListener("click",function(){if(timer)stop();else start()});
document.addEventListener("keydown",function(e){if(e.ctrlKey||e.altKey||e.metaKey)return;if(e.key==="ArrowRight")go(1);else if(e.key==="ArrowLeft")go(-1);else if(e.key==="Home"){stop();show(0,true)}else if(e.key==="End"){stop();show(frames.length-1,true)}else if(e.key===" "&&e.target.tagName!=="BUTTON"){if(timer)stop();else start()}else return;if(e.target.tagName!=="BUTTON"||e.key!==" ")e.preventDefault()});
show(0,false);
if(window.matchMedia&&window.matchMedia("(prefers-reduced-motion: reduce)").matches)stop();else start();
})();`;
