import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Least pressure to test treating lines to [psi], as one state has it. */
export const lineTestPressure = formula({
	id: "safety/line-test-pressure",
	name: "Least line test pressure, Wyoming form",
	expression: "P_test = P_max + 1,000 psi",
	source: cite("wyoming-osha-8", "ch. 8 sec. 2"),
	inputs: { P_max: "pressure" },
	gives: "pressure",
	validity: "one state's rule; elsewhere the company's own",
	compute: ({ P_max }) => P_max + 1000,
});
