import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "../pressure/hydrostatic.ts";

/** Margins of every step as densities of the column above them: a few psi are much near the surface, little deep down. */
export const leastAsDensity = formula({
	id: "cement/least-margin-as-density",
	name: "Least margin of the job as an equivalent density",
	expression: "least of margin / (0.052 D) over all steps",
	source: cite("lapeyrouse", "ch. 1, pressure to equivalent mud weight"),
	inputs: { margins: { table: "pumped, tvd, margin" } },
	gives: "density",
	validity: "at each step the place of the least margin in pressure",
	compute: ({ margins }) =>
		Math.min(
			...margins.rows.map(
				(row) => (row["margin"] ?? Number.NaN) / (HYDROSTATIC_CONSTANT * (row["tvd"] ?? Number.NaN)),
			),
		),
});
