import type { Label } from "../label.ts";
import { keeping } from "../never-dropped.ts";
import { perforationLabels, placeLabels } from "./place-labels.ts";
import { plainLabels } from "./plain-labels.ts";
import { ASIDE, cementTopLabels, stringLabels } from "./string-labels.ts";
import type { View } from "./view.ts";

/** Labels of what people put in the ground: those beside the vertical hole, and those that go under a lateral. */
export const wellLabels = (view: View): { readonly beside: Label[]; readonly under: Label[] } => {
	const { well, axis, detail } = view;
	const all =
		detail === "plain"
			? plainLabels(view)
			: [
					...well.strings.flatMap((string) => [
						...stringLabels(view, string),
						...cementTopLabels(view, string),
					]),
					...placeLabels(view),
					...perforationLabels(view),
				];
	const start = axis.at(0).x;
	const out: { beside: Label[]; under: Label[] } = { beside: [], under: [] };
	for (const { md, across, ...label } of keeping(detail, all).sort((a, b) => a.md - b.md)) {
		const at = axis.at(md);
		const under = axis.level !== undefined && at.x - start >= ASIDE;
		const side = under ? -across : across;
		const x = at.x + at.normal[0] * side;
		// Places in order along the hole are in order along the row, whichever way a toe leans.
		const last = under ? (out.under.at(-1)?.anchor[0] ?? x) : x;
		const anchor = [Math.max(x, last), at.y + at.normal[1] * side] as const;
		(under ? out.under : out.beside).push({ ...label, anchor });
	}
	return out;
};
