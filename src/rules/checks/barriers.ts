import type { Check } from "./check.ts";

export const barrierChecks = {
	"well-barriers": {
		title: "Two barriers in each phase",
		looksAt:
			"primary and secondary barrier of drilling, cementing, treating, producing and shut in, element by element",
		explain:
			"Where gas, oil or pressure above normal may flow, two barriers stand between it and the surface, each whole by itself; elsewhere one. Elements come from strings, cement, mud, wellhead, preventers and packer; tubing, tree and plugs are stated under well_barriers.",
	},
	"single-failure": {
		title: "Single failure of a barrier element",
		looksAt: "rating of what holds next against the pressure that a leaking seal, float or packer brings",
		explain:
			"One element fails at a time. What is behind it holds the pressure then, or a relief valve lets it out. At surface; a leak of the treated string has a check of its own.",
	},
} as const satisfies Readonly<Record<string, Check>>;
