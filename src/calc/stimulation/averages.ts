import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("definition");

/** From the shallowest opening to the deepest, along the hole [ft]. */
export const treatedLength = formula({
	id: "stimulation/treated-length",
	name: "Treated length",
	expression: "L = MD_bottom − MD_top",
	source,
	inputs: { MD_top: "measured-depth", MD_bottom: "measured-depth" },
	gives: "length",
	validity: "the bottom lies below the top",
	compute: ({ MD_top, MD_bottom }) => (MD_bottom >= MD_top ? MD_bottom - MD_top : Number.NaN),
});

/** [bbl] */
export const volumePerStage = formula({
	id: "stimulation/volume-per-stage",
	name: "Clean volume of a stage, on average",
	expression: "V / N",
	source,
	inputs: { V: "volume", N: "count" },
	gives: "volume",
	validity: "at least one stage",
	compute: ({ V, N }) => (N > 0 ? V / N : Number.NaN),
});

/** [lb] */
export const massPerStage = formula({
	id: "stimulation/mass-per-stage",
	name: "Proppant of a stage, on average",
	expression: "m / N",
	source,
	inputs: { m: "mass", N: "count" },
	gives: "mass",
	validity: "at least one stage",
	compute: ({ m, N }) => (N > 0 ? m / N : Number.NaN),
});

/** [bbl/ft] */
export const volumePerLength = formula({
	id: "stimulation/volume-per-length",
	name: "Clean volume on a length of hole",
	expression: "V / L",
	source,
	inputs: { V: "volume", L: "length" },
	gives: "capacity",
	validity: "a length above zero",
	compute: ({ V, L }) => (L > 0 ? V / L : Number.NaN),
});

/** [lb/ft] */
export const massPerLength = formula({
	id: "stimulation/mass-per-length",
	name: "Proppant on a length of hole",
	expression: "m / L",
	source,
	inputs: { m: "mass", L: "length" },
	gives: "linear-weight",
	validity: "a length above zero",
	compute: ({ m, L }) => (L > 0 ? m / L : Number.NaN),
});

/** Pumps that give a power, none loaded past a share of its own [count]. */
export const pumpCount = formula({
	id: "stimulation/pump-count",
	name: "Pumps on the job",
	expression: "n = HHP / (h s), rounded up, + spare",
	source: cite("common-practice", "pumps run below their rating, with spare ones on line"),
	inputs: { HHP: "hydraulic-power", h: "hydraulic-power", s: "share", n_s: "count" },
	gives: "count",
	validity: "a power above zero; a share above 0 to 1",
	compute: ({ HHP, h, s, n_s }) =>
		h <= 0 || s <= 0 || s > 1 ? Number.NaN : Math.ceil(HHP / (h * s) - 1e-9) + n_s,
});
