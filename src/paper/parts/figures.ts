import type { Block } from "../../document/blocks.ts";
import { type Language, type Paper, readBy } from "../../document/document.ts";
import type { Drawing } from "../../document/shapes.ts";
import { abandonmentChart } from "../../drawing/abandonment/abandonment-chart.ts";
import { barrierPanels } from "../../drawing/barriers/barrier-panels.ts";
import { isolationCloseUp } from "../../drawing/close-up/isolation-close-up.ts";
import { evidenceChart } from "../../drawing/evidence/evidence-chart.ts";
import { hookLoadCharts } from "../../drawing/hook-loads/hook-load-chart.ts";
import { pressureLadderView } from "../../drawing/ladder/pressure-ladder-view.ts";
import { loadLines } from "../../drawing/load-lines/load-lines.ts";
import { planView } from "../../drawing/maps/plan-view.ts";
import { sectionView } from "../../drawing/maps/section-view.ts";
import { pressureWindowChart } from "../../drawing/pressure-window/pressure-window.ts";
import { wellboreSchematic } from "../../drawing/schematic/wellbore-schematic.ts";
import { stagePlan } from "../../drawing/stage-plan/stage-plan.ts";
import { talkMap } from "../../drawing/talk/talk-map.ts";
import { talkSection } from "../../drawing/talk/talk-section.ts";
import { timeline } from "../../drawing/timeline/timeline.ts";
import { wellToScale } from "../../drawing/to-scale/well-to-scale.ts";
import { treatmentCharts } from "../../drawing/treatment/treatment-chart.ts";
import { treatmentPlot } from "../../drawing/treatment/treatment-plot.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { DrawingWords } from "../../drawing/words/words.ts";
import type { UnitSystem } from "../../units/format.ts";
import { type Findings, type PaperContext, textCell } from "../context.ts";
import { findingsFor } from "../findings-for.ts";
import { frameForJob, sequenceStrip } from "../sequence/sequence.ts";
import { isWaterShownProtected } from "../water-verdict.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Width of the small drawing of the first page [pt]. */
export const TO_SCALE = 158;

/** Width of the picture beside what is asked first [pt]. */
const BESIDE = 206;

/** Width of the text column [pt]. */
const COLUMN = 504;

interface DrawingContext extends Pick<Findings, "well" | "results" | "index" | "judgement"> {
	readonly units: UnitSystem;
	readonly language: Language;
}

/** A drawing of a height; nothing where the well has nothing to draw there. */
type Sketch = (context: DrawingContext, height: number) => readonly Drawing[];

const options = ({ units, index, language }: DrawingContext, height: number) => ({
	units,
	width: COLUMN,
	height,
	words: DRAWING_WORDS[language],
	keyOf: index.keyOf,
});

const schematic =
	(detail: "full" | "plain" | "numbers"): Sketch =>
	(context, height) => [
		wellboreSchematic(context.well, context.results, { ...options(context, height), detail }),
	];

/** Nothing to draw where the protected water is not known. */
const closeUp =
	(detail: "full" | "plain"): Sketch =>
	(context, height) =>
		context.results.geology.protected_water_base === undefined
			? []
			: [isolationCloseUp(context.well, toldOfWater(context), { ...options(context, height), detail })];

/** The string that covers the water is drawn as its protection only where no check on it is open; what falls short is. */
const toldOfWater = (context: DrawingContext): Findings["results"] => {
	const { protecting_string, shoe_below_protected_water, ...isolation } = context.results.isolation;
	return protecting_string === undefined || isWaterShownProtected(context)
		? context.results
		: { ...context.results, isolation };
};

/** Beside other things: a third of the page's width. */
const toScale: Sketch = (context, height) => [
	wellToScale(context.well, context.results, {
		...options(context, height),
		width: TO_SCALE,
	}),
];

/** One scale up and sideways: the main picture of a public paper. */
const plainSection: Sketch = (context, height) => [
	talkSection(context.well, context.results, {
		...options(context, height),
		language: context.language,
		width: BESIDE,
		size: 10,
		keyBelow: true,
	}),
];

/** The map of a room, with what each place is called and how far it is beside it. */
const talkedMap: Sketch = (context, height) =>
	one(
		talkMap(context.well, context.results, {
			...options(context, height),
			language: context.language,
			size: 10,
		}),
	);

const section: Sketch = (context, height) => [
	sectionView(context.well, context.results, options(context, height)),
];

const plan =
	(detail: "full" | "plain"): Sketch =>
	(context, height) => [planView(context.well, context.results, { ...options(context, height), detail })];

const one = (drawing: Drawing | undefined): readonly Drawing[] => (drawing === undefined ? [] : [drawing]);

const pressureWindow: Sketch = (context, height) =>
	one(pressureWindowChart(context.well, context.results, options(context, height)));

const loads: Sketch = (context, height) => loadLines(context.well, context.results, options(context, height));

const hooks: Sketch = (context, height) =>
	hookLoadCharts(context.well, context.results, options(context, height));

const evidence: Sketch = (context, height) =>
	one(evidenceChart(context.well, context.results, options(context, height)));

const abandonment: Sketch = (context, height) =>
	one(abandonmentChart(context.well, context.results, options(context, height)));

const stages: Sketch = (context, height) =>
	one(stagePlan(context.well, context.results, options(context, height)));

const treatment: Sketch = (context, height) =>
	one(treatmentPlot(context.well, context.results, options(context, height)));

const charts: Sketch = (context, height) =>
	treatmentCharts(context.well, context.results, options(context, height));

const phases =
	(detail: "full" | "plain"): Sketch =>
	(context, height) =>
		one(timeline(context.well, { ...options(context, height), detail }));

const ladder: Sketch = (context, height) =>
	one(pressureLadderView(context.well, context.results, options(context, height)));

const barriers: Sketch = (context, height) =>
	one(barrierPanels(context.well, context.results, options(context, height)));

const figure = (drawing: Drawing): Block => ({
	kind: "figure",
	drawing,
	caption: [{ kind: "text", text: drawing.title }],
	id: drawing.id,
});

/** What a drawing had no room for, by name: the reader of a plain paper looks up nothing. */
const undrawnNames = ({ undrawn = [] }: Drawing, words: DrawingWords): readonly Block[] =>
	undrawn.length === 0
		? []
		: [
				{
					kind: "paragraph",
					tone: "note",
					children: [
						{
							kind: "text",
							text: `${words.undrawnHead}: ${undrawn.map(({ name }) => name).join("; ")}.`,
						},
					],
				},
			];

/** What drawings had no room for, with what they would have said: a row a drawing. */
const undrawnTable: Part = (context) => {
	const { drawn = [], words } = context;
	const { undrawnSays } = DRAWING_WORDS[words.language];
	return table(
		context,
		"undrawn",
		[
			textColumn(context, "figure", { width: 1.4, rowHead: true }),
			{ id: "says", head: undrawnSays, kind: "text", width: 6 },
		],
		drawn.flatMap(({ title, undrawn = [] }) =>
			undrawn.length === 0
				? []
				: [
						row({
							figure: textCell(title),
							says: textCell(
								undrawn.map(({ name, says }) => (says === "" ? name : `${name}, ${says}`)).join("; "),
							),
						}),
					],
		),
		{ dense: true },
	);
};

const part =
	(sketch: Sketch, height: number): Part =>
	(context: PaperContext) =>
		sketch({ ...context, language: context.words.language }, height).flatMap((drawing) => [
			figure(drawing),
			// The regulator's stand in the appendix, all together.
			...(readBy(context.paper) === "regulator"
				? []
				: undrawnNames(drawing, DRAWING_WORDS[context.words.language])),
		]);

/** A drawing that has a page to itself, under the name of its figure; the first of a section under its title [pt]. */
const SHEET = 590;
const FIRST_SHEET = 530;

/** Sections in the body, of a hole that goes out and of one that goes down [pt]. */
const LEVEL = 205;
const UPRIGHT = 350;

/** Whether the hole ends near beneath the wellhead. */
const isUpright = ({ results: { trajectory } }: PaperContext): boolean =>
	trajectory.closure.value < trajectory.total_depth.tvd.value / 4;

/** Drawings by the part that a page order names, each at the height that its page leaves for it [pt]. */
const SKETCHES: Readonly<Record<string, readonly [Sketch, number]>> = {
	schematic: [schematic("full"), 570],
	"section-plain": [plainSection, 272],
	"section-handout": [plainSection, 240],
	"isolation-close-up-small": [closeUp("full"), 205],
	"isolation-close-up-plain": [closeUp("plain"), 330],
	"well-to-scale": [toScale, 100],
	"barrier-panels": [barriers, 150],
	"section-sheet": [section, FIRST_SHEET],
	"plan-sheet": [plan("full"), SHEET],
	"plan-view-plain": [plan("plain"), 280],
	"map-handout": [talkedMap, 176],
	"pressure-window": [pressureWindow, 205],
	"load-lines": [loads, 250],
	"hook-load-charts": [hooks, 190],
	"stage-plan": [stages, 165],
	"treatment-plot": [treatment, 270],
	"evidence-chart": [evidence, 200],
	"abandonment-chart": [abandonment, 210],
	"treatment-charts": [charts, 340],
	"timeline-plain": [phases("plain"), 236],
};

export const figures: Readonly<Record<string, Part>> = {
	...Object.fromEntries(
		Object.entries(SKETCHES).map(([name, [sketch, height]]) => [name, part(sketch, height)]),
	),
	// At one scale both ways a long lateral is low, and a vertical hole needs the height.
	"section-view": (context) => part(section, isUpright(context) ? UPRIGHT : LEVEL)(context),
	// Two pages, for a section that begins one.
	"sequence-strip": (context) => sequenceStrip(context).map(figure),
	"well-at-job": (context) =>
		context.job === undefined ? [] : one(frameForJob(context, context.job)).map(figure),
	// Each drawing counts in a note of its own what it leaves out.
	"drawings-left-out": undrawnTable,
};

/** Every drawing of a well, for files of their own. */
export const wellDrawings = (
	findings: Findings,
	units: UnitSystem,
	language: Language = "en",
	paper: Paper = "regulator",
): readonly Drawing[] => {
	const context = { ...findingsFor(findings, paper), units, language };
	const sketches: readonly (readonly [Sketch, number])[] = [
		[schematic("full"), 570],
		[schematic("plain"), 500],
		[schematic("numbers"), 570],
		[closeUp("full"), 420],
		[closeUp("plain"), 400],
		[barriers, 230],
		[section, 420],
		[plan("full"), 400],
		[plan("plain"), 400],
		[pressureWindow, 420],
		[loads, 278],
		[hooks, 260],
		[evidence, 320],
		[abandonment, 320],
		[stages, 400],
		[treatment, 360],
		[charts, 400],
		[ladder, 320],
		[phases("full"), 300],
		[phases("plain"), 300],
	];
	return sketches.flatMap(([sketch, height]) => sketch(context, height));
};
