import type { Section, SheetName } from "../../document/blocks.ts";
import { type Fit, RunAlone, runsOf } from "./components/paper.tsx";
import { POSTER_SCALES, SCALES, SHEETS } from "./design.ts";
import { type LayoutFinding, short } from "./findings.ts";
import { layPages } from "./layout/pages.ts";
import type { Scene } from "./scene.ts";

/** How each run of a paper's sections is set; nothing for one that takes the pages it needs. */
export interface Fitting {
	readonly fits: readonly (Fit | undefined)[];
	readonly findings: readonly LayoutFinding[];
}

const scalesOf = ([first]: readonly Section[]): readonly number[] =>
	first?.poster === true ? POSTER_SCALES : SCALES;

/** The largest type in which a run keeps to one page of a sheet; nothing where even the least does not. */
const largest = (
	scene: Scene,
	sections: readonly Section[],
	first: boolean,
	sheet: SheetName,
): Fit | undefined => {
	const scales = scalesOf(sections);
	const fitAt = (i: number): Fit => ({ sheet: SHEETS[sheet], scale: scales[i] ?? 1 });
	const fits = (i: number): boolean => layPages(RunAlone(scene, sections, first, fitAt(i))).length === 1;
	if (!fits(scales.length - 1)) return undefined;
	let [low, high] = [0, scales.length - 1];
	while (low < high) {
		const middle = Math.floor((low + high) / 2);
		if (fits(middle)) high = middle;
		else low = middle + 1;
	}
	return fitAt(low);
};

/**
 * Finds the type for the sections that are to keep to one page each: on the paper's own sheet, or all of them on the larger
 * one that it names. What fits on neither is a fault: nothing is cut.
 */
export const fitPages = (scene: Scene): Fitting => {
	const { sheet = "letter", largerSheet } = scene.document;
	const runs = runsOf(scene.sections);
	const tried = (name: SheetName): readonly (Fit | undefined | null)[] =>
		runs.map((sections, i) =>
			sections[0]?.onePage === true
				? (largest(scene, sections, i === 0, sections[0].sheet ?? name) ?? null)
				: undefined,
		);
	let found = tried(sheet);
	if (found.includes(null) && largerSheet !== undefined) found = tried(largerSheet);
	return {
		fits: found.map((fit) => fit ?? undefined),
		findings: found.flatMap((fit, i): LayoutFinding[] =>
			fit !== null
				? []
				: [
						{
							kind: "over-full",
							page: i + 1,
							text: short(runs[i]?.[0]?.title ?? ""),
							detail: `does not go on one page in type of ${Math.min(...scalesOf(runs[i] ?? []))} of its size, which is the least`,
						},
					],
		),
	};
};
