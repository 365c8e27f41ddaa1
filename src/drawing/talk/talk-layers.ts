import type { IsolationLayer, Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { compose, lineText, run } from "../line-of-text.ts";
import { type Box, boxPath } from "../lithology.ts";
import { cementFill } from "../marks/cement.ts";
import { waterBand } from "../marks/water.ts";
import { INK, PAPER } from "../palette.ts";
import { stringName } from "../print.ts";
import { insetAxis } from "../sequence/inset-axis.ts";
import { keyShapes, type Numbered, numberShapes } from "./numbered.ts";
import type { TalkOptions } from "./talk-options.ts";

/** Share of the width that the layers take. */
const LAYERS = 0.48;

/**
 * What stands side by side between the inside of the well and the rock, where the protected water ends: steel black, cement
 * as everywhere, a gap with fluid white. Thicknesses are not to scale.
 */
export const talkLayers = (well: Well, results: Results, options: TalkOptions): Drawing | undefined => {
	const { width, height, size, words } = options;
	const base = results.geology.protected_water_base?.tvd.value;
	const here = results.isolation.layers.find(
		({ top, bottom }) => base !== undefined && top.tvd.value <= base && base < bottom.tvd.value,
	);
	if (here === undefined || here.layers.length === 0) return undefined;
	const room = width * LAYERS;
	const [inside, rock] = [room * 0.14, room * 0.2];
	const thick = (room - inside - rock) / here.layers.length;
	const box = (x: number, wide: number): Box => ({ x, y: size, width: wide, height: height - size });
	const nameOf = ({ string }: IsolationLayer): string => {
		const found = well.strings.find(({ id }) => id === string);
		return found === undefined ? string : stringName(words, found);
	};
	const placed = here.layers.map((layer, i) => ({ layer, area: box(inside + i * thick, thick) }));
	const middle = ({ x, width: wide, y, height: tall }: Box, i: number): readonly [number, number] => [
		x + wide / 2,
		y + tall * (0.25 + 0.5 * ((i % 3) / 2)),
	];
	const items: Numbered[] = placed.map(
		({ layer, area }, i): Numbered => ({
			at: middle(area, i),
			says: [
				...compose(
					{ steel: words.talkSteel, cement: words.talkCement, "open annulus": words.talkFluid }[layer.kind],
					{ string: nameOf(layer) },
				),
				run(
					"evidence" in layer
						? `, ${layer.evidence === "run" ? words.talkRun : words.evidence[layer.evidence]}`
						: "",
				),
			].filter(({ text }) => text !== ""),
		}),
	);
	const outer = box(inside + placed.length * thick, rock);
	const shapes: Shape[] = [
		{ kind: "path", d: boxPath(box(0, inside)), fill: PAPER, stroke: { color: INK, width: 1 } },
		...waterBand(outer),
		...placed.flatMap(({ layer, area }): Shape[] => {
			if (layer.kind === "steel") return [{ kind: "path", d: boxPath(area), fill: INK }];
			if (layer.kind === "open annulus")
				return [{ kind: "path", d: boxPath(area), fill: PAPER, stroke: { color: INK, width: 1 } }];
			const basis = layer.evidence === "planned" || layer.evidence === "calculated" ? "planned" : "recorded";
			const axis = insetAxis(area, "down");
			return cementFill(axis.between(0, 1), 0, axis.half, basis);
		}),
		...numberShapes(items, { left: 0, top: 0, right: room, bottom: height }, size),
		...keyShapes(items, { left: room + size, top: 2, right: width, bottom: height }, size),
	];
	return {
		id: "talk-layers",
		width,
		height,
		title: words.talkLayers,
		alternative: items.map(({ says }, i) => `${i + 1}. ${lineText(says)}.`).join(" "),
		scale: words.talkLayersScale,
		shapes,
	};
};
