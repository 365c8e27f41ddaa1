import type { Check } from "./check.ts";

export const cementJobChecks = {
	"cement-fracture-margin": {
		title: "Cement against fracture",
		looksAt: "least margin of the job to the lesser of rock and shoe test, over depth and time",
		explain:
			"Cement is heavier than mud and adds friction. The margin is taken while the job moves and when it is in place; near the surface it is a few psi at best.",
	},
	"cement-pore-margin": {
		title: "Cement against pore pressure",
		looksAt: "least margin of the job over pore pressure, at rest",
		explain:
			"A light spacer may let the rock flow while it passes. Setting cement loses weight beyond this: see gas-flow potential.",
	},
	"plug-bump": {
		title: "Plug bump pressure",
		looksAt: "bump pressure with friction against the weakest of pipe, coupling and wellhead",
		explain:
			"Plugs, floats and cementing head have ratings of their own that the definition does not carry: compare them on the day.",
	},
	"transition-time": {
		title: "Transition time of the slurry",
		looksAt:
			"time that each slurry takes through the gel strengths in which gas may enter, behind which gas zones stand",
		explain:
			"While a slurry gels it passes its pressure on less and less and is not yet tight. The shorter that time, the less gas can enter.",
	},
	"thickening-time": {
		title: "Thickening time",
		looksAt: "thickening time of each slurry over its time in the job",
		explain:
			"Cement that sets before the plug lands leaves the pipe full. The margin covers a stop of the pumps.",
	},
	standoff: {
		title: "Standoff",
		looksAt: "least standoff at the shoe and at the base of each water zone",
		explain:
			"Mud stays on the narrow side of pipe that lies on the wall. Standoff is taken at the centralizers and between them; the lesser counts.",
	},
	"spacer-contact": {
		title: "Spacer contact",
		looksAt: "time the spacer takes to pass a place, or length of annulus that it fills",
		explain: "Spacer thins and displaces mud. Time or length serve; either is enough.",
	},
	"channel-index": {
		title: "Channel risk index",
		looksAt:
			"density, friction, drive on the narrow side and standoff, as each fluid displaces the one ahead of it",
		explain:
			"Criteria of effective laminar displacement (Couturier and others, from memory) with the standoff, each missed one counted; " +
			"the count is ours. It says at which place mud is likeliest to stay, and does not say that it stays there.",
	},
	"density-order": {
		title: "Order of densities",
		looksAt: "steps of density from mud to spacer to the first slurry",
		explain:
			"A lighter fluid behind a heavier one fingers through it. Each fluid is to be heavier than the one ahead.",
	},
	"gas-flow-potential": {
		title: "Gas flow through setting cement",
		looksAt: "pressure that gelling cement may lose over the overbalance on each gas zone",
		explain:
			"Cement that gels no longer carries its weight. Where it may lose much more than the overbalance, gas enters before it sets: shorten the column, raise the overbalance, or use a slurry proven against gas.",
	},
	silica: {
		title: "Silica for strength at heat",
		looksAt: "static temperature behind the cement, and silica in the recipe",
		explain: "In hot rock Portland cement loses strength and becomes permeable unless it carries silica.",
	},
	"strength-test": {
		title: "Strength test of cement",
		looksAt: "strength at drill-out, and test temperature against the rock",
		explain: "A test warmer than the rock promises a strength that the cement in the hole reaches later.",
	},
	"casing-lift": {
		title: "Hold-down while cementing",
		looksAt: "weight in and of the pipe, less the push on its end, over the job and when the plug lands",
		explain: "Light fluid inside and heavy slurry outside can push a short string out of the hole.",
	},
	"water-zone-record": {
		title: "Recorded cement beside water",
		looksAt: "recorded cement top against the top of each water zone that no outer string covers",
		explain: "Water that stands beside bare pipe is not shut off, whatever the plan was.",
	},
} as const satisfies Readonly<Record<string, Check>>;
