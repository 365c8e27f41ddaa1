import type { LoadSection } from "./load-sections.ts";

/** A string as far as it has been run: its lower pipe, hanging from where its top is to be. */
export const runTo = (sections: readonly LoadSection[], shoe: number): readonly LoadSection[] => {
	const [first] = sections;
	const left = (sections.at(-1)?.bottom ?? 0) - shoe;
	const top = first?.top ?? 0;
	return sections
		.map((s) => ({ ...s, top: Math.max(top, s.top - left), bottom: s.bottom - left }))
		.filter((s) => s.bottom > s.top);
};
