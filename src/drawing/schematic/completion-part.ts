import type { Shape } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { plannedShoeMark, stageToolMark, tubingWidth } from "../marks/completion.ts";
import { sealMark, steelWall } from "../marks/steel.ts";
import type { View } from "./view.ts";

/** A planned shoe nearer than this to the one that was set cannot be told from it on the page [pt]. */
const BESIDE = 2;

/** The pipe pumped down inside the treated string: its foot [ft MD]. */
export const treatingFoot = ({ stimulation }: Well): number | undefined => {
	const bottoms = (stimulation?.treatingString?.sections ?? []).map((section) => section.bottom.value);
	return bottoms.length === 0 ? undefined : Math.max(...bottoms);
};

/** The string that things hang in. */
const treated = (well: Well): CasingString | undefined =>
	well.strings.find((string) => string.id === well.stimulation?.treatedThrough) ?? well.strings.at(-1);

/** Packers in the well, each with the string that it seals in [ft MD]. */
export const packersOf = (
	well: Well,
): { readonly md: number; readonly string: CasingString; readonly tubing: boolean }[] => {
	const hung = treated(well);
	const treating = well.stimulation?.treatingString?.packer?.depth.value;
	return [
		...(hung === undefined || treating === undefined ? [] : [{ md: treating, string: hung, tubing: true }]),
		...well.strings.flatMap((string) =>
			string.production === undefined ? [] : [{ md: string.production.packer.value, string, tubing: false }],
		),
	];
};

/** Whether a planned shoe stands visibly elsewhere. */
export const plannedShoeShown = ({ axis }: View, { plannedShoe, shoe }: CasingString): boolean => {
	if (plannedShoe === undefined || plannedShoe.value > (axis.points.at(-1)?.md ?? 0)) return false;
	const [a, b] = [axis.at(plannedShoe.value), axis.at(shoe.value)];
	return Math.hypot(a.x - b.x, a.y - b.y) >= BESIDE;
};

/** Stage tools, packers, the treating string, and shoes where they were planned; of the public's drawing none. */
export const completionPart = (view: View): Shape[] => {
	const { well, axis, nest, detail } = view;
	if (detail === "plain") return [];
	const foot = treatingFoot(well);
	const hung = treated(well);
	return [
		...well.strings.flatMap((string): Shape[] => {
			const tool = string.cement?.stageTool?.value;
			const { outer } = nest.string(string);
			const size = Math.min(4, Math.max(2.4, nest.hole(string.hole) - outer));
			return [
				...(tool === undefined ? [] : stageToolMark(axis.at(tool), outer)),
				...(string.plannedShoe !== undefined && plannedShoeShown(view, string)
					? plannedShoeMark(axis.at(string.plannedShoe.value), outer, size)
					: []),
			];
		}),
		...(foot === undefined || hung === undefined
			? []
			: steelWall(axis.between(well.datum.casingHanger.value, foot), tubingWidth(nest.string(hung).inner))),
		...packersOf(well).flatMap(({ md, string, tubing }) => {
			const { inner } = nest.string(string);
			const width = tubingWidth(inner);
			return [
				// A packer seals around a tubing; the one pumped through is drawn above.
				...(tubing ? [] : steelWall(axis.between(well.datum.casingHanger.value, md), width)),
				...sealMark(axis.at(md), width.outer, inner),
			];
		}),
	];
};
