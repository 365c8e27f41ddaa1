import { formula, tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { annulusProfile, type Cell, type Pumped, runJob, type Train } from "./plug-flow.ts";

const source = cite("conservation", "plug flow: fluids follow one another without mixing");

/** The way of the fluids and what is pumped, as every method here takes them. */
const way = {
	/** Pipe, from the top down. */
	D_pipe: { many: "true-vertical-depth" },
	L_pipe: { many: "length" },
	V_pipe: { many: "volume" },
	d_pipe: { many: "diameter" },
	V_below: "volume",
	/** Annulus, from the shoe up; one depth more than cells. */
	D_annulus: { many: "true-vertical-depth" },
	L_annulus: { many: "length" },
	V_annulus: { many: "volume" },
	D_hole: { many: "diameter" },
	d_inner: { many: "diameter" },
	/** Fluids: first what is in the hole, then in the order pumped. */
	ρ_i: { many: "density" },
	PV_i: { many: "plastic-viscosity" },
	YP_i: { many: "yield-point" },
	V_i: { many: "volume" },
	Q_i: { many: "flow-rate" },
} as const;

type Numbers = {
	readonly [N in keyof typeof way]: N extends "V_below" ? number : readonly number[];
};

const at = (list: readonly number[], i: number): number => list[i] ?? Number.NaN;

const cellsOf = (n: Numbers): readonly Cell[] => [
	...n.V_pipe.map(
		(volume, i): Cell => ({
			side: "pipe",
			length: at(n.L_pipe, i),
			volume,
			tvdIn: at(n.D_pipe, i),
			tvdOut: at(n.D_pipe, i + 1),
			D: at(n.d_pipe, i),
			d: 0,
		}),
	),
	{
		side: "rathole",
		length: 0,
		volume: n.V_below,
		tvdIn: 0,
		tvdOut: 0,
		D: 0,
		d: 0,
	},
	...n.V_annulus.map(
		(volume, i): Cell => ({
			side: "annulus",
			length: at(n.L_annulus, i),
			volume,
			tvdIn: at(n.D_annulus, i),
			tvdOut: at(n.D_annulus, i + 1),
			D: at(n.D_hole, i),
			d: at(n.d_inner, i),
		}),
	),
];

const trainOf = ({ ρ_i, PV_i, YP_i, V_i, Q_i }: Numbers): Train => {
	const [mud, ...fluids] = ρ_i.map((ρ, i) => ({
		ρ,
		PV: at(PV_i, i),
		YP: at(YP_i, i),
	}));
	if (mud === undefined) throw new RangeError("the hole holds a fluid before the job");
	return {
		mud,
		fluids: fluids.map((fluid, i): Pumped => ({ ...fluid, V: at(V_i, i), Q: at(Q_i, i) })),
	};
};

/** Looks at a job this often, besides each change of fluid and each time one passes the shoe. */
const STEPS = 60;

const stopsOf = (cells: readonly Cell[], { fluids }: Train): readonly number[] => {
	const total = fluids.reduce((sum, { V }) => sum + V, 0);
	const toShoe = cells.reduce((sum, cell) => sum + (cell.side === "annulus" ? 0 : cell.volume), 0);
	const changes = [0];
	for (const { V } of fluids) changes.push((changes.at(-1) ?? 0) + V);
	const stops = [
		...changes,
		...changes.map((change) => change + toShoe),
		...Array.from({ length: STEPS }, (_, i) => (total * (i + 1)) / STEPS),
	].filter((stop) => stop >= 0 && stop <= total);
	return [...new Set([...stops, total])].sort((a, b) => a - b);
};

/** A job from the first spacer to the plug, in steps. */
export const placement = tableFormula({
	id: "cement/placement",
	name: "The job in steps: what has gone round, and the pressures at the shoe",
	expression:
		"a fluid pumped after S is at S_w − S, S_w the volume gone round; p_pump = p_out + Σ ΔP − p_in ≥ 0; where it would be less, S_w runs ahead of the pump until p_out + Σ ΔP = p_in; F = W + Σ p_in A − p_out (π/4) D²",
	source,
	inputs: { ...way, W: "force", D_end: "diameter" },
	gives: {
		pumped: "volume",
		time: "duration",
		displaced: "volume",
		empty: "volume",
		rate: "flow-rate",
		pump: "pressure",
		standing: "pressure",
		circulating: "pressure",
		net_force: "force",
	},
	validity:
		"fluids do not mix; open hole holds its volume with the excess; Bingham friction in gauge hole, pipe in the middle; an annulus too wide for the friction formula has none",
	compute: (n) => {
		const [cells, train] = [cellsOf(n), trainOf(n)];
		return runJob(cells, train, stopsOf(cells, train)).map((moment) => ({
			pumped: moment.pumped,
			time: moment.time,
			displaced: moment.displaced,
			empty: moment.displaced - moment.pumped,
			rate: moment.rate,
			pump: moment.pumpPressure,
			standing: moment.balance.standing,
			circulating: moment.balance.circulating,
			net_force:
				n.W + moment.balance.weightInside - moment.balance.circulating * (Math.PI / 4) * n.D_end ** 2,
		}));
	},
});

/** What the rock bears at the places of the open hole, against the pressure there at every step. */
const rock = {
	...way,
	job: { table: "pumped, displaced, rate" },
	/** Places, by the boundary of the annulus they are, counted from its top; or which they stand under. */
	n_j: { many: "count" },
	D_j: { many: "true-vertical-depth" },
	/** Of what stands still between the boundary and the place. */
	u_j: { many: "pressure" },
	p_j: { many: "pressure" },
} as const;

const marginTable = {
	pumped: "volume",
	tvd: "true-vertical-depth",
	pressure: "pressure",
	rock: "pressure",
	margin: "pressure-difference",
} as const;

const tightest = (
	n: Numbers & {
		readonly job: KnownTable;
		readonly n_j: readonly number[];
		readonly D_j: readonly number[];
		readonly u_j: readonly number[];
		readonly p_j: readonly number[];
	},
	which: "standing" | "circulating",
	sign: 1 | -1,
) => {
	const [cells, train] = [cellsOf(n), trainOf(n)];
	return n.job.rows.flatMap((row) => {
		const [pumped, displaced, rate] = [row["pumped"] ?? 0, row["displaced"] ?? 0, row["rate"] ?? 0];
		const profile = annulusProfile(cells, train, { pumped, displaced, rate });
		const margins = n.n_j.map((boundary, j) => {
			const pressure = (profile[boundary]?.[which] ?? Number.NaN) + at(n.u_j, j);
			const bears = at(n.p_j, j);
			return {
				pumped,
				tvd: at(n.D_j, j),
				pressure,
				rock: bears,
				margin: sign * (bears - pressure),
			};
		});
		const [least] = margins.sort((a, b) => a.margin - b.margin);
		return least === undefined ? [] : [least];
	});
};

/** At each step, where the moving annulus comes nearest to breaking rock down. */
export const fractureMargins = tableFormula({
	id: "cement/fracture-margins",
	name: "Least fracture margin at each step of the job",
	expression: "least of p_f − (p + Σ ΔP) over the open hole",
	source: cite("hydrostatics"),
	inputs: rock,
	gives: marginTable,
	validity: "rock with a fracture gradient; margins below zero break it down",
	compute: (n) => tightest(n, "circulating", 1),
});

/** At each step, where the standing annulus comes nearest to letting rock flow. */
export const poreMargins = tableFormula({
	id: "cement/pore-margins",
	name: "Least margin over pore pressure at each step of the job",
	expression: "least of p − p_pore over the open hole, at rest",
	source: cite("hydrostatics"),
	inputs: rock,
	gives: marginTable,
	validity: "rock with a pore pressure; while cement is fluid and carries its full weight",
	compute: (n) => tightest(n, "standing", -1),
});

const rowOf = (table: KnownTable, column: string, sign: 1 | -1) =>
	table.rows.reduce<Readonly<Record<string, number>> | undefined>(
		(best, row) =>
			best === undefined || sign * (row[column] ?? 0) > sign * (best[column] ?? 0) ? row : best,
		undefined,
	);
const cellOf = (row: Readonly<Record<string, number>> | undefined, column: string): number =>
	row?.[column] ?? Number.NaN;

const margins = { margins: { table: "pumped, tvd, margin" } } as const;
const FIRST = "the first step where it is least";

export const tightestMargin = formula({
	id: "cement/tightest-margin",
	name: "Tightest margin of the job",
	expression: "least margin over all steps",
	source: cite("definition"),
	inputs: margins,
	gives: "pressure-difference",
	compute: ({ margins: table }) => cellOf(rowOf(table, "margin", -1), "margin"),
});

export const tightestAt = formula({
	id: "cement/tightest-margin-depth",
	name: "Depth of the tightest margin",
	expression: "TVD where the margin is least",
	source: cite("definition"),
	inputs: margins,
	gives: "true-vertical-depth",
	validity: FIRST,
	compute: ({ margins: table }) => cellOf(rowOf(table, "margin", -1), "tvd"),
});

export const tightestWhen = formula({
	id: "cement/tightest-margin-pumped",
	name: "Volume pumped at the tightest margin",
	expression: "volume pumped where the margin is least",
	source: cite("definition"),
	inputs: margins,
	gives: "volume",
	validity: FIRST,
	compute: ({ margins: table }) => cellOf(rowOf(table, "margin", -1), "pumped"),
});

export const lostFrom = formula({
	id: "cement/margin-lost-from",
	name: "Volume pumped when a margin is lost",
	expression: "first volume pumped with a margin below zero",
	source: cite("definition"),
	inputs: margins,
	gives: "volume",
	validity: "not a number where no margin is lost",
	compute: ({ margins: table }) =>
		cellOf(
			table.rows.find((row) => (row["margin"] ?? 0) < 0),
			"pumped",
		),
});

const job = {
	job: { table: "pumped, time, empty, pump, circulating, net_force" },
} as const;

export const greatestPumpPressure = formula({
	id: "cement/greatest-pump-pressure",
	name: "Greatest pump pressure of the job",
	expression: "greatest p_pump over all steps, before the plug lands",
	source: cite("definition"),
	inputs: job,
	gives: "pressure",
	compute: ({ job: table }) => cellOf(rowOf(table, "pump", 1), "pump"),
});

export const finalCirculatingPressure = formula({
	id: "cement/final-circulating-pressure",
	name: "Final circulating pressure",
	expression: "p_pump at the last step, at the rate of the last fluid",
	source: cite("definition"),
	inputs: job,
	gives: "pressure",
	compute: ({ job: table }) => cellOf(table.rows.at(-1), "pump"),
});

export const leastNetForce = formula({
	id: "cement/least-net-force",
	name: "Least net downward force on the string through the job",
	expression: "least F over all steps",
	source: cite("drilling-pressure-page", "hydraulic lift of casing; annular friction added outside"),
	inputs: job,
	gives: "force",
	validity: "pump pressure acts inside and does not enter again",
	compute: ({ job: table }) => cellOf(rowOf(table, "net_force", -1), "net_force"),
});

export const leastNetForceWhen = formula({
	id: "cement/least-net-force-pumped",
	name: "Volume pumped when the net force is least",
	expression: "volume pumped where F is least",
	source: cite("definition"),
	inputs: job,
	gives: "volume",
	validity: FIRST,
	compute: ({ job: table }) => cellOf(rowOf(table, "net_force", -1), "pumped"),
});

/** Less empty pipe than this is none [bbl]. */
const SLIGHT = 0.05;

export const freeFallFrom = formula({
	id: "cement/free-fall-from",
	name: "Volume pumped when the pipe begins to stand empty",
	expression: "first volume pumped with S_w > S",
	source: cite("conservation"),
	inputs: job,
	gives: "volume",
	validity: "not a number where the fluids never fall ahead of the pump",
	compute: ({ job: table }) =>
		cellOf(
			table.rows.find((row) => (row["empty"] ?? 0) > SLIGHT),
			"pumped",
		),
});

export const greatestEmpty = formula({
	id: "cement/greatest-empty-pipe",
	name: "Greatest volume of empty pipe in free fall",
	expression: "greatest S_w − S",
	source: cite("conservation"),
	inputs: job,
	gives: "volume",
	compute: ({ job: table }) => cellOf(rowOf(table, "empty", 1), "empty"),
});

/** Minutes for which fluids pumped between two volumes flow past a place. */
export const timeAtPlace = formula({
	id: "cement/time-at-place",
	name: "Contact time of a fluid at a place",
	expression: "t(S_w = X + S_2) − t(S_w = X + S_1), ended by the landing of the plug",
	source: cite("common-practice", "contact time is how long a fluid flows past a place"),
	inputs: {
		job: { table: "time, displaced" },
		X: "volume",
		S_1: "volume",
		S_2: "volume",
	},
	gives: "duration",
	validity: "X is the volume on the way from the pump to the place",
	compute: ({ job: table, X, S_1, S_2 }) => Math.max(0, timeAt(table, X + S_2) - timeAt(table, X + S_1)),
});

const timeAt = ({ rows }: KnownTable, displaced: number): number => {
	for (const [i, row] of rows.entries()) {
		const [to, time] = [row["displaced"] ?? 0, row["time"] ?? 0];
		if (to < displaced) continue;
		const before = rows[i - 1];
		const [from, then] = [before?.["displaced"] ?? 0, before?.["time"] ?? 0];
		return to > from ? then + ((time - then) * (displaced - from)) / (to - from) : time;
	}
	return rows.at(-1)?.["time"] ?? Number.NaN;
};

/** Outside less inside, against what the string and the head are good for. */
export const bumpPressure = formula({
	id: "cement/bump-pressure",
	name: "Pressure at which the plug is bumped",
	expression: "p_bump = p_final + Δp",
	source: cite("common-practice", "500 to 1,000 psi over the final circulating pressure"),
	inputs: { p_final: "pressure", Δp: "pressure" },
	gives: "pressure",
	compute: ({ p_final, Δp }) => p_final + Δp,
});

/** Greatest of what several pieces are good for at the bump, by the least. */
export const leastLimit = formula({
	id: "cement/least-bump-limit",
	name: "Least limit at the bump",
	expression: "least of the limits",
	source: cite("definition"),
	inputs: { p_i: { many: "pressure" } },
	gives: "pressure",
	compute: ({ p_i }) => Math.min(...p_i),
});

/** Internal yield over its design factor. */
export const factoredYield = formula({
	id: "cement/factored-yield",
	name: "Internal yield over the design factor",
	expression: "p_yield / DF",
	source: cite("definition"),
	inputs: { p_yield: "pressure", DF: "ratio" },
	gives: "pressure",
	compute: ({ p_yield, DF }) => p_yield / DF,
});
