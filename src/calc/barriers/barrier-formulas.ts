import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "../pressure/hydrostatic.ts";

/** A barrier counts if none of its elements is known to fail; one without elements is none. */
export const barriersStanding = formula({
	id: "barriers/standing",
	name: "Barriers that hold",
	expression: "number of barriers, primary and secondary, in which every element holds",
	source: cite("norsok-d010", "well barrier schematics and element tables; from memory, in our own form"),
	inputs: { primary: { many: "count" }, secondary: { many: "count" } },
	gives: "count",
	compute: ({ primary, secondary }) =>
		[primary, secondary].filter((barrier) => barrier.length > 0 && barrier.every((holds) => holds > 0))
			.length,
});

/** How many barriers a phase lacks. */
export const barriersShort = formula({
	id: "barriers/short",
	name: "Barriers short of the number required",
	expression: "required − standing, no less than zero",
	source: cite("norsok-d010", "number of barriers by source of inflow; from memory"),
	inputs: { required: "count", standing: "count" },
	gives: "count",
	compute: ({ required, standing }) => Math.max(0, required - standing),
});

/** What is left of a rating when the element before it has failed. */
export const factorAfterFailure = formula({
	id: "barriers/factor-after-failure",
	name: "Factor of the next barrier after a single failure",
	expression: "SF = rating / p",
	source: cite("iso-16530-1", "failure of one element of a barrier; from memory"),
	inputs: { rating: "pressure", p: "pressure-difference" },
	gives: "ratio",
	validity: "p above zero",
	compute: ({ rating, p }) => (p > 0 ? rating / p : Number.NaN),
});

/** Where the floats leak, the heavier column outside pushes back up the pipe, and the head holds the difference. */
export const pressureAtHead = formula({
	id: "barriers/pressure-at-head",
	name: "Pressure at the cementing head when the floats leak",
	expression: "p = Δp",
	source: cite("definition"),
	inputs: { Δp: "pressure-difference" },
	gives: "pressure",
	compute: ({ Δp }) => Δp,
});

/** Gas under a leaking packer pushes on the packer fluid above it, that fills the annulus to the surface. */
export const pressureAfterPackerLeak = formula({
	id: "barriers/annulus-pressure-after-packer-leak",
	name: "Annulus pressure at surface after a packer leak",
	expression: "p = p_t + (g − 0.052 ρ) D, no less than zero",
	source: cite("hydrostatics"),
	inputs: {
		p_t: "pressure",
		g: "pressure-gradient",
		ρ: "density",
		D: "true-vertical-depth",
	},
	gives: "pressure-difference",
	validity: "annulus full of packer fluid; tubing full of gas, shut in",
	compute: ({ p_t, g, ρ, D }) => Math.max(0, p_t + (g - HYDROSTATIC_CONSTANT * ρ) * D),
});
