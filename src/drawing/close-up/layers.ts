import { cementSpans } from "../../calc/isolation/index.ts";
import type { Results } from "../../calc/results.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { compose, type Line, lineText } from "../line-of-text.ts";
import { type Print, stringName, withinSentence } from "../print.ts";

/** One thing between the rock and the bore, at one depth. */
export interface Layer {
	readonly kind: "cement" | "fluid" | "steel";
	readonly string: CasingString;
	/** Half-widths of the layer as drawn. */
	readonly near: number;
	readonly far: number;
}

/** Half-widths of what is drawn, as the nesting gives them. */
interface Widths {
	readonly string: (string: CasingString) => { readonly outer: number; readonly inner: number };
	readonly hole: (hole: CasingString["hole"]) => number;
}

/** What is crossed from the rock inward at a true vertical depth [ft]. */
export const layersAt = (well: Well, results: Results, tvd: number, widths: Widths): Layer[] => {
	const across = well.strings.filter((string) => {
		const found = results.casing[string.id];
		return found !== undefined && found.top.tvd.value <= tvd && found.shoe.tvd.value >= tvd;
	});
	return across.flatMap((string, i): Layer[] => {
		const { outer, inner } = widths.string(string);
		const outside = across[i - 1];
		const far = outside === undefined ? widths.hole(string.hole) : widths.string(outside).inner;
		const cemented = cementSpans(results.cement[string.id], tvd);
		return [
			{ kind: cemented ? "cement" : "fluid", string, near: outer, far },
			{ kind: "steel", string, near: inner, far: outer },
		];
	});
};

/** The layers in words, one line each, in order. */
export const layerLines = (layers: readonly Layer[], results: Results, print: Print): Line[] => {
	const { words } = print;
	return layers.map(({ kind, string }): Line => {
		const name = withinSentence(stringName(words, string));
		const [section] = string.sections;
		if (kind === "steel")
			return compose(words.layerSteel, {
				string: name,
				size: section === undefined ? "" : print.value(section.outsideDiameter, { pipeSize: true }),
			});
		if (kind === "fluid") return compose(words.layerFluid, { string: name });
		const known = results.isolation.cement_at_protected_water?.find((each) => each.string === string.id);
		const evidence =
			known === undefined
				? words[results.cement[string.id]?.top_basis ?? "planned"]
				: words.evidence[known.evidence];
		return compose(words.layerCement, { string: name, evidence });
	});
};

export const layersText = (lines: readonly Line[]): string =>
	lines.map((line, i) => `${i + 1} ${lineText(line)}`).join("; ");
