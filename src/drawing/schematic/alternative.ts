import type { DepthMark, Results } from "../../calc/results.ts";
import type { Well } from "../../well/well.ts";
import { compose, type Line, lineText, sentence } from "../line-of-text.ts";
import { type Print, stringName, withinSentence } from "../print.ts";
import type { Detail } from "./view.ts";

/** Where the stages are; one depth where the two print alike, as along a level lateral counted from the ground. */
export const perforations = (
	{ stage_count }: NonNullable<Results["stimulation"]>,
	top: string,
	bottom: string,
	print: Print,
): string => {
	const { words } = print;
	const one = stage_count.value === 1;
	const between = one ? words.altPerforationsOne : words.altPerforations;
	const at = one ? words.altPerforationsOneAt : words.altPerforationsAt;
	return sentence(top === bottom ? at : between, { count: print.value(stage_count), top, bottom });
};

/**
 * What the schematic says, in sentences made from the data, for a reader who cannot see it. The public's, as its picture,
 * counts depth from the ground and lists no formations.
 */
export const schematicAlternative = (well: Well, results: Results, print: Print, detail: Detail): string => {
	const { words } = print;
	const plain = detail === "plain";
	const mark = plain ? print.below : print.mark;
	const { trajectory, stimulation, isolation, geology } = results;
	const at = (line: Line) => lineText(line);
	const strings = well.strings.map((string) => {
		const cement = results.cement[string.id];
		const shoe = results.casing[string.id]?.shoe;
		const [section] = string.sections;
		const basis = words[cement?.top_basis ?? "planned"];
		return sentence(words.altString, {
			string: stringName(words, string),
			size: section === undefined ? "" : print.value(section.outsideDiameter, { pipeSize: true }),
			depth: shoe === undefined ? print.value(string.shoe) : at(mark(shoe)),
			cement:
				cement === undefined
					? words.altNoCement
					: cement.to_surface
						? sentence(words.altCementSurface, { basis })
						: cement.columns.length > 1
							? cement.columns
									.map(({ top, bottom }) =>
										sentence(words.altCementBetween, {
											basis,
											top: at(mark(top)),
											bottom: at(mark(bottom)),
										}),
									)
									.join("; ")
							: sentence(words.altCementTop, {
									basis,
									depth: at(mark(cement.top)),
								}),
		});
	});
	const protecting = well.strings.find((string) => string.id === isolation.protecting_string);
	const below = isolation.shoe_below_protected_water;
	const gap = isolation.protected_water_to_top_perforation;
	const level =
		trajectory.kickoff !== undefined &&
		trajectory.landing !== undefined &&
		trajectory.lateral_length !== undefined;
	return [
		sentence(words.altWell, {
			well: well.identity.name,
			depth: at(mark(trajectory.total_depth)),
		}),
		...strings,
		...(geology.protected_water_base === undefined
			? []
			: [
					sentence(words.altWaterBase, {
						depth: waterBaseDepth(print, geology.protected_water_base, detail),
					}),
				]),
		...(protecting === undefined || below === undefined
			? []
			: [
					sentence(below.value < 0 ? words.altShoeAbove : words.altShoeBelow, {
						string: withinSentence(stringName(words, protecting)),
						distance: print.magnitude(below),
					}),
				]),
		...(plain || geology.formations.length === 0
			? []
			: [
					sentence(words.altFormations, {
						list: geology.formations
							.map((each) => `${each.name} ${print.value(each.top.tvd).text}`)
							.join("; "),
					}),
				]),
		...(level &&
		trajectory.kickoff !== undefined &&
		trajectory.landing !== undefined &&
		trajectory.lateral_length !== undefined
			? [
					sentence(words.altTurn, {
						kickoff: at(mark(trajectory.kickoff)),
						landing: at(mark(trajectory.landing)),
						lateral: print.value(trajectory.lateral_length),
					}),
				]
			: []),
		...(stimulation === undefined
			? []
			: [
					perforations(
						stimulation,
						at(mark(stimulation.top_perforation)),
						at(mark(stimulation.bottom_perforation)),
						print,
					),
				]),
		...(gap === undefined ? [] : [sentence(words.altGap, { distance: print.value(gap) })]),
		...(plain || results.stimulation?.fractures === undefined
			? []
			: [sentence(words.altFractures, { depth: print.value(results.stimulation.fractures.highest_top) })]),
		...(plain ? [] : [words.altTable]),
	].join(" ");
};

/** From where the drawing itself counts: the public's from the ground, the others' from the datum and from the ground. */
export const waterBaseDepth = (print: Print, base: DepthMark, detail: Detail): string =>
	[
		...(detail === "plain" ? [] : [compose(print.words.depthVertical, { tvd: print.value(base.tvd) })]),
		print.below(base),
	]
		.map(lineText)
		.join(" · ");
