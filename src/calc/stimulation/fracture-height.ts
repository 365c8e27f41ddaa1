import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("simonson-1978", "symmetric barriers, no toughness");

/** Height that a net pressure opens between two like barriers [ft]: an estimate, illustrative. */
export const fractureHeight = formula({
	id: "stimulation/fracture-height",
	name: "Equilibrium fracture height (illustrative)",
	expression: "h = h_pay / cos(π p_net / (2 Δσ))",
	source,
	inputs: { pay: "length", net: "pressure", contrast: "pressure" },
	gives: "length",
	validity: "net pressure from 0 to less than the stress contrast; beyond it the model has no bound",
	compute: ({ pay, net, contrast }) =>
		net < 0 || net >= contrast ? Number.NaN : pay / Math.cos((Math.PI * net) / (2 * contrast)),
});

/** Net pressure that opens a height [psi]. */
export const netPressureForHeight = formula({
	id: "stimulation/net-pressure-for-height",
	name: "Net pressure for a fracture height",
	expression: "p_net = (2/π) Δσ acos(h_pay / h)",
	source,
	inputs: { pay: "length", height: "length", contrast: "pressure" },
	gives: "pressure",
	validity: "a height no less than the pay's",
	compute: ({ pay, height, contrast }) =>
		height < pay || height <= 0 ? Number.NaN : (2 / Math.PI) * contrast * Math.acos(pay / height),
});

/** Growth out of the pay on each side [ft]. */
export const heightGrowth = formula({
	id: "stimulation/height-growth",
	name: "Growth above the pay (illustrative)",
	expression: "(h − h_pay) / 2",
	source,
	inputs: { height: "length", pay: "length" },
	gives: "length",
	compute: ({ height, pay }) => (height - pay) / 2,
});
