import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("simonson-1978", "symmetric barriers, no toughness");

/** Height that a net pressure opens between two like barriers [ft]: an estimate, illustrative. */
export const fractureHeight = formula({
	id: "stimulation/fracture-height",
	name: "Equilibrium fracture height (illustrative)",
	expression: "h = h_pay / cos(π p_net / (2 Δσ))",
	source,
	inputs: { h_pay: "length", p_net: "pressure", Δσ: "pressure" },
	gives: "length",
	validity: "net pressure from 0 to less than the stress contrast; beyond it the model has no bound",
	compute: ({ h_pay, p_net, Δσ }) =>
		p_net < 0 || p_net >= Δσ ? Number.NaN : h_pay / Math.cos((Math.PI * p_net) / (2 * Δσ)),
});

/** Net pressure that opens a height [psi]. */
export const netPressureForHeight = formula({
	id: "stimulation/net-pressure-for-height",
	name: "Net pressure for a fracture height",
	expression: "p_net = (2/π) Δσ acos(h_pay / h)",
	source,
	inputs: { h_pay: "length", h: "length", Δσ: "pressure" },
	gives: "pressure",
	validity: "a height no less than the pay's",
	compute: ({ h_pay, h, Δσ }) =>
		h < h_pay || h <= 0 ? Number.NaN : (2 / Math.PI) * Δσ * Math.acos(h_pay / h),
});

/** Growth out of the pay on each side [ft]. */
export const heightGrowth = formula({
	id: "stimulation/height-growth",
	name: "Growth above the pay (illustrative)",
	expression: "(h − h_pay) / 2",
	source,
	inputs: { h: "length", h_pay: "length" },
	gives: "length",
	compute: ({ h, h_pay }) => (h - h_pay) / 2,
});

/** Thickness of the treated formation [ft]. */
export const payHeight = formula({
	id: "stimulation/pay-height",
	name: "Height of the treated formation",
	expression: "h_pay = TVD_base − TVD_top",
	source: cite("definition"),
	inputs: { TVD_top: "true-vertical-depth", TVD_base: "true-vertical-depth" },
	gives: "length",
	validity: "the base lies below the top",
	compute: ({ TVD_top, TVD_base }) => (TVD_base < TVD_top ? Number.NaN : TVD_base - TVD_top),
});
