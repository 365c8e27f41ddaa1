import type { Results } from "../../src/calc/results.ts";
import type { Language } from "../../src/document/document.ts";
import type { Drawing } from "../../src/document/shapes.ts";
import { abandonmentChart } from "../../src/drawing/abandonment/abandonment-chart.ts";
import { barrierPanels } from "../../src/drawing/barriers/barrier-panels.ts";
import { isolationCloseUp } from "../../src/drawing/close-up/isolation-close-up.ts";
import { evidenceChart } from "../../src/drawing/evidence/evidence-chart.ts";
import { hookLoadCharts } from "../../src/drawing/hook-loads/hook-load-chart.ts";
import { pressureLadderView } from "../../src/drawing/ladder/pressure-ladder-view.ts";
import { loadLines } from "../../src/drawing/load-lines/load-lines.ts";
import { planView } from "../../src/drawing/maps/plan-view.ts";
import { sectionView } from "../../src/drawing/maps/section-view.ts";
import { pressureWindowChart } from "../../src/drawing/pressure-window/pressure-window.ts";
import type { KeyOf } from "../../src/drawing/print.ts";
import { wellboreSchematic } from "../../src/drawing/schematic/wellbore-schematic.ts";
import { stagePlan } from "../../src/drawing/stage-plan/stage-plan.ts";
import { timeline } from "../../src/drawing/timeline/timeline.ts";
import { treatmentCharts } from "../../src/drawing/treatment/treatment-chart.ts";
import { treatmentPlot } from "../../src/drawing/treatment/treatment-plot.ts";
import { DRAWING_WORDS } from "../../src/drawing/words/drawing-words.ts";
import type { UnitSystem } from "../../src/units/format.ts";
import type { Well } from "../../src/well/well.ts";

/** Every drawing of a well, at the sizes that papers use. */
export const everyDrawing = (
	well: Well,
	results: Results,
	units: UnitSystem,
	language: Language,
	keyOf?: KeyOf,
): Drawing[] => {
	const shared = {
		units,
		width: 504,
		words: DRAWING_WORDS[language],
		...(keyOf === undefined ? {} : { keyOf }),
	};
	const details = ["full", "plain"] as const;
	return [
		wellboreSchematic(well, results, { ...shared, height: 570, detail: "full" }),
		wellboreSchematic(well, results, { ...shared, height: 520, detail: "plain" }),
		wellboreSchematic(well, results, { ...shared, height: 570, detail: "numbers" }),
		...details.map((detail) => isolationCloseUp(well, results, { ...shared, height: 420, detail })),
		barrierPanels(well, results, { ...shared, height: 190 }),
		sectionView(well, results, { ...shared, height: 420 }),
		...details.map((detail) => planView(well, results, { ...shared, height: 400, detail })),
		pressureWindowChart(well, results, { ...shared, height: 420 }),
		...loadLines(well, results, { ...shared, height: 290 }),
		...hookLoadCharts(well, results, { ...shared, height: 230 }),
		evidenceChart(well, results, { ...shared, height: 320 }),
		abandonmentChart(well, results, { ...shared, height: 320 }),
		stagePlan(well, results, { ...shared, height: 400 }),
		treatmentPlot(well, results, { ...shared, height: 360 }),
		...treatmentCharts(well, results, { ...shared, height: 400 }),
		pressureLadderView(well, results, { ...shared, height: 320 }),
		...details.map((detail) => timeline(well, { ...shared, height: 300, detail })),
	].filter((drawing) => drawing !== undefined);
};
