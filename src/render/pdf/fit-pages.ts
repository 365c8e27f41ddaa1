import type { Section, SheetName } from "../../document/blocks.ts";
import { type Fit, RunAlone, runsOf } from "./components/paper.tsx";
import { POSTER_SCALES, SCALES, SHEETS } from "./design.ts";
import { type LayoutFinding, short } from "./findings.ts";
import { afterMoves, movesOf } from "./go-on.ts";
import { layPages } from "./layout/pages.ts";
import type { Scene } from "./scene.ts";

/** How each run of a paper's sections is set; nothing for one that takes the pages it needs. */
interface Fitting {
	/** Those of the paper, and what of them goes on behind a sheet. */
	readonly sections: readonly Section[];
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

/** A run of sections, with how it is set; null where it does not fit. */
interface Run {
	readonly sections: readonly Section[];
	readonly fit: Fit | undefined | null;
}

const least = (sections: readonly Section[]): number => Math.min(...scalesOf(sections));

/**
 * Takes from a page that is too full, item by item, the fewest that let the rest fit in the least type.
 *
 * @param page  where what goes on will be read
 * @returns nothing where not even that is enough, or where nothing of the section may leave its page
 */
const partOf = (scene: Scene, section: Section, first: boolean, sheet: SheetName, page: number) => {
	const fit: Fit = { sheet: SHEETS[sheet], scale: least([section]) };
	const moves = section.goesOn === undefined ? [] : movesOf(section);
	const after = (count: number) => afterMoves(section, moves.slice(0, count), page);
	const fits = (count: number): boolean =>
		layPages(RunAlone(scene, [after(count).stay], first, fit)).length === 1;
	if (moves.length === 0 || !fits(moves.length)) return undefined;
	let [low, high] = [1, moves.length];
	while (low < high) {
		const middle = Math.floor((low + high) / 2);
		if (fits(middle)) high = middle;
		else low = middle + 1;
	}
	return { ...after(low), fit };
};

/** Runs of one sheet of paper after each other: those whose sections say that they are of the same. */
const sheetsOf = (runs: readonly Run[]): readonly (readonly Run[])[] =>
	runs.reduce<Run[][]>((all, run) => {
		const last = all.at(-1);
		const of = run.sections[0]?.goesOn?.sheet;
		if (of !== undefined && last?.[0]?.sections[0]?.goesOn?.sheet === of) last.push(run);
		else all.push([run]);
		return all;
	}, []);

/** Puts behind each sheet what does not go on it, and says on the sheet where it is. */
const goneOn = (scene: Scene, runs: readonly Run[], sheet: SheetName): readonly Run[] => {
	const made: Run[] = [];
	let page = 1;
	const pagesOf = (sections: readonly Section[], fit: Fit): number =>
		layPages(RunAlone(scene, sections, made.length === 0, fit)).length;
	for (const group of sheetsOf(runs)) {
		const behind: Run[] = [];
		let next = page + group.length;
		for (const { sections, fit } of group) {
			const [section] = sections;
			const own = section?.sheet ?? sheet;
			const parted =
				fit === null && section !== undefined && sections.length === 1
					? partOf(scene, section, made.length === 0, own, next)
					: undefined;
			if (parted === undefined) {
				made.push({ sections, fit });
				continue;
			}
			made.push({ sections: [parted.stay], fit: parted.fit });
			const whole: Fit = { sheet: SHEETS[own], scale: 1 };
			behind.push({ sections: [parted.go], fit: whole });
			next += pagesOf([parted.go], whole);
		}
		made.push(...behind);
		page = next;
	}
	return made;
};

/**
 * Finds the type for the sections that are to keep to one page each: on the paper's own sheet, or all of them on the larger
 * one that it names. Of what fits on neither, the rest goes on behind the sheet; where nothing may, that is a fault: nothing
 * is cut.
 */
export const fitPages = (scene: Scene): Fitting => {
	const { sheet = "letter", largerSheet } = scene.document;
	const groups = runsOf(scene.sections);
	const tried = (name: SheetName): readonly Run[] =>
		groups.map((sections, i) => ({
			sections,
			fit:
				sections[0]?.onePage === true
					? (largest(scene, sections, i === 0, sections[0].sheet ?? name) ?? null)
					: undefined,
		}));
	const isFull = (runs: readonly Run[]): boolean => runs.some(({ fit }) => fit === null);
	let runs = tried(sheet);
	if (isFull(runs) && largerSheet !== undefined) runs = tried(largerSheet);
	if (isFull(runs)) runs = goneOn(scene, runs, largerSheet ?? sheet);
	return {
		sections: runs.flatMap(({ sections }) => sections),
		fits: runs.map(({ fit }) => fit ?? undefined),
		findings: runs.flatMap(({ sections, fit }, i): LayoutFinding[] =>
			fit !== null
				? []
				: [
						{
							kind: "over-full",
							page: i + 1,
							text: short(sections[0]?.title ?? ""),
							detail: `does not go on one page in type of ${least(sections)} of its size, which is the least`,
						},
					],
		),
	};
};
