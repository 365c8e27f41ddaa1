import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { absoluteVolume } from "../cement/slurry-design.ts";

/** Gallons in a barrel. */
const GALLONS_PER_BARREL = 42;

/** Proppant of one kind in a recorded mass of several [lb]. */
export const massByPlan = formula({
	id: "stimulation/mass-by-plan",
	name: "Proppant of one kind placed, by its part of the plan",
	expression: "m = M m_p / M_p",
	source: cite("definition", "a record that weighs all proppant of a stage together is divided as planned"),
	inputs: { M: "mass", m_p: "mass", M_p: "mass" },
	gives: "mass",
	validity: "some proppant planned",
	compute: ({ M, m_p, M_p }) => (M_p > 0 ? (M * m_p) / M_p : Number.NaN),
});

/** Slurry of a clean volume and the proppant placed with it [bbl]. */
export const slurryPumped = formula({
	id: "stimulation/slurry-pumped",
	name: "Slurry volume from clean volume and proppant mass",
	expression: "V_s = V_c + Σ m_i V_i / 42, V_i = 1 / (8.33 SG_i)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { V_c: "volume", m_i: { many: "mass" }, SG_i: { many: "ratio" } },
	gives: "volume",
	validity: "one specific gravity for each mass",
	compute: ({ V_c, m_i, SG_i }) =>
		m_i.length !== SG_i.length
			? Number.NaN
			: m_i.reduce<number>(
					(sum, m, i) =>
						sum + (m * Number(absoluteVolume.compute({ SG: SG_i[i] as never }))) / GALLONS_PER_BARREL,
					V_c,
				),
});

/** Volume as recorded less volume as planned; negative where less was pumped [bbl]. */
export const volumeOverPlan = formula({
	id: "stimulation/volume-over-plan",
	name: "Clean volume, recorded less planned",
	expression: "V − V_p",
	source: cite("definition"),
	inputs: { V: "volume", V_p: "volume" },
	gives: "volume",
	compute: ({ V, V_p }) => V - V_p,
});

/** Mass as recorded less mass as planned; negative where less was placed [lb]. */
export const massOverPlan = formula({
	id: "stimulation/mass-over-plan",
	name: "Proppant, recorded less planned",
	expression: "m − m_p",
	source: cite("definition"),
	inputs: { m: "mass", m_p: "mass" },
	gives: "mass",
	compute: ({ m, m_p }) => m - m_p,
});

/** What was pumped as a part of what was planned. */
export const volumeOfPlan = formula({
	id: "stimulation/volume-of-plan",
	name: "Clean volume, recorded over planned",
	expression: "V / V_p",
	source: cite("definition"),
	inputs: { V: "volume", V_p: "volume" },
	gives: "share",
	validity: "a planned volume above zero",
	compute: ({ V, V_p }) => (V_p > 0 ? V / V_p : Number.NaN),
});

/** What was placed as a part of what was planned. */
export const massOfPlan = formula({
	id: "stimulation/mass-of-plan",
	name: "Proppant, recorded over planned",
	expression: "m / m_p",
	source: cite("definition"),
	inputs: { m: "mass", m_p: "mass" },
	gives: "share",
	validity: "a planned mass above zero",
	compute: ({ m, m_p }) => (m_p > 0 ? m / m_p : Number.NaN),
});

/** The greatest pressure on record [psi]. */
export const greatestRecorded = formula({
	id: "stimulation/greatest-recorded",
	name: "Highest treating pressure on record",
	expression: "max p_i",
	source: cite("definition"),
	inputs: { p_i: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one record",
	compute: ({ p_i }) => (p_i.length === 0 ? Number.NaN : Math.max(...p_i)),
});
