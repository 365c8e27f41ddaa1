import { annulusGradient, type BinghamFluid, pipeGradient } from "../pressure/bingham-flow.ts";
import { HYDROSTATIC_CONSTANT } from "../pressure/hydrostatic.ts";

/*
 * A cement job as fluids that follow each other through a row of cells without mixing: down the pipe, through the hole
 * below the shoe, up the annulus. A place is a volume along the way, counted from the top of the pipe, so that what was
 * pumped is either somewhere on the way or has come back, and nothing can be lost. Canonical units throughout.
 */

/** A stretch of one cross-section, in the order that a fluid passes it. */
export interface Cell {
	readonly side: "pipe" | "rathole" | "annulus";
	/** Along the hole [ft]; none in the hole below the shoe. */
	readonly length: number;
	readonly volume: number;
	/** Where the fluid comes in and goes out [ft TVD]. */
	readonly tvdIn: number;
	readonly tvdOut: number;
	/** Bore, or the outer and the inner diameter [in]. */
	readonly D: number;
	readonly d: number;
}

/** A fluid pumped, and at what rate. */
export interface Pumped extends BinghamFluid {
	readonly V: number;
	readonly Q: number;
}

export interface Train {
	/** In the hole before the job. */
	readonly mud: BinghamFluid;
	/** In the order pumped. */
	readonly fluids: readonly Pumped[];
}

/** Where everything is: `displaced` has gone round, of it `pumped` from above; the rest is empty pipe at the top. */
export interface State {
	readonly displaced: number;
	readonly pumped: number;
	/** Flow at the shoe [bbl/min]. */
	readonly rate: number;
}

interface Part {
	readonly fluid: BinghamFluid;
	/** Share of the cell from its inlet. */
	readonly from: number;
	readonly to: number;
}

/** What fills a cell, inlet to outlet; nothing where the pipe stands empty. */
export const fillOf = (
	cell: Cell,
	start: number,
	train: Train,
	{ displaced, pumped }: State,
): readonly Part[] => {
	const end = start + cell.volume;
	const parts: Part[] = [];
	const add = (fluid: BinghamFluid, a: number, b: number) => {
		const [from, to] = [Math.max(a, start), Math.min(b, end)];
		if (to > from)
			parts.push({
				fluid,
				from: (from - start) / cell.volume,
				to: (to - start) / cell.volume,
			});
	};
	let cumulative = 0;
	for (const fluid of train.fluids) {
		const last = Math.min(cumulative + fluid.V, pumped);
		if (last > cumulative) add(fluid, displaced - last, displaced - cumulative);
		cumulative += fluid.V;
	}
	add(train.mud, displaced, Number.POSITIVE_INFINITY);
	return parts.sort((a, b) => a.from - b.from);
};

/** Standing weight and friction of a cell [psi]: what it adds from inlet to outlet, downward positive. */
interface CellPressure {
	readonly standing: number;
	readonly friction: number;
}

export const pressureOf = (cell: Cell, start: number, train: Train, state: State): CellPressure => {
	if (cell.volume <= 0) return { standing: 0, friction: 0 };
	let [standing, friction] = [0, 0];
	for (const { fluid, from, to } of fillOf(cell, start, train, state)) {
		const share = to - from;
		standing += HYDROSTATIC_CONSTANT * fluid.ρ * (cell.tvdOut - cell.tvdIn) * share;
		friction += gradientIn(cell, fluid, state.rate) * cell.length * share;
	}
	return { standing, friction };
};

/** Too wide for the formula is wide enough to neglect; so is a hole with no pipe in it. */
const gradientIn = (cell: Cell, fluid: BinghamFluid, rate: number): number => {
	if (cell.side === "rathole" || rate <= 0 || fluid.PV <= 0) return 0;
	const found =
		cell.side === "pipe" ? pipeGradient(fluid, rate, cell.D) : annulusGradient(fluid, rate, cell.D, cell.d);
	const gradient = typeof found === "number" ? found : found.value;
	return Number.isFinite(gradient) ? gradient : 0;
};

/** Volume along the way where each cell begins. */
export const startsOf = (cells: readonly Cell[]): readonly number[] => {
	let sum = 0;
	return cells.map(({ volume }) => {
		const start = sum;
		sum += volume;
		return start;
	});
};

/** Totals of one moment. */
interface Balance {
	/** Inside at the shoe, the pump not pressing [psi]. */
	readonly inside: number;
	/** Outside at the shoe, at rest and moving [psi]. */
	readonly standing: number;
	readonly circulating: number;
	readonly pipeFriction: number;
	/** Of the fluids in the pipe [lbf], by the vertical. */
	readonly weightInside: number;
}

const balanceOf = (
	cells: readonly Cell[],
	starts: readonly number[],
	train: Train,
	state: State,
): Balance => {
	let [inside, standing, annulusFriction, pipeFriction, weightInside] = [0, 0, 0, 0, 0];
	for (const [i, cell] of cells.entries()) {
		const { standing: weight, friction } = pressureOf(cell, starts[i] ?? 0, train, state);
		if (cell.side === "pipe") {
			inside += weight;
			pipeFriction += friction;
			weightInside += weight * (Math.PI / 4) * cell.D ** 2;
		} else if (cell.side === "annulus") {
			standing -= weight;
			annulusFriction += friction;
		}
	}
	return {
		inside,
		standing,
		circulating: standing + annulusFriction,
		pipeFriction,
		weightInside,
	};
};

/** What the pump has to give at a moment [psi]; below zero the fluids run ahead of it. */
const wanted = (cells: readonly Cell[], starts: readonly number[], train: Train, state: State): number => {
	const { inside, circulating, pipeFriction } = balanceOf(cells, starts, train, state);
	return circulating + pipeFriction - inside;
};

interface Moment extends State {
	readonly time: number;
	readonly balance: Balance;
	readonly pumpPressure: number;
}

const HALVINGS = 40;

/**
 * The job in steps. Where the fluids in the pipe outweigh the annulus and all friction, they fall ahead of the pump as
 * fast as friction lets them; the pipe then stands empty at the top until the pump has caught up.
 *
 * @param stops volumes pumped at which to look, rising
 */
export const runJob = (cells: readonly Cell[], train: Train, stops: readonly number[]): readonly Moment[] => {
	const starts = startsOf(cells);
	const moments: Moment[] = [];
	let before = { pumped: 0, displaced: 0, time: 0 };
	for (const pumped of stops) {
		const Q = rateAt(train, pumped);
		const added = pumped - before.pumped;
		const minutes = added > 0 && Q > 0 ? added / Q : 0;
		const moving = (displaced: number): State => ({
			pumped,
			displaced,
			rate: minutes > 0 ? (displaced - before.displaced) / minutes : Q,
		});
		const least = Math.max(pumped, before.displaced);
		const displaced = fallsTo(least, pumped, (to) => wanted(cells, starts, train, moving(to)), cells);
		const state = moving(displaced);
		const time = before.time + minutes;
		moments.push({
			...state,
			time,
			balance: balanceOf(cells, starts, train, state),
			pumpPressure: displaced > pumped ? 0 : Math.max(0, wanted(cells, starts, train, state)),
		});
		before = { pumped, displaced, time };
	}
	return moments;
};

/** How far the fluids fall beyond `least`: to where their weight is balanced, and never beyond the pipe's own volume. */
const fallsTo = (
	least: number,
	pumped: number,
	lacking: (displaced: number) => number,
	cells: readonly Cell[],
): number => {
	if (lacking(least) >= 0) return least;
	const pipe = cells.reduce((sum, cell) => sum + (cell.side === "pipe" ? cell.volume : 0), 0);
	let [low, high] = [least, Math.max(least, pumped + pipe)];
	for (let i = 0; i < HALVINGS; i += 1) {
		const middle = (low + high) / 2;
		if (lacking(middle) < 0) low = middle;
		else high = middle;
	}
	return high - pumped < SLIGHT ? Math.max(least, pumped) : high;
};

/** Less than this is not an empty pipe [bbl]. */
const SLIGHT = 1e-6;

/** The rate at which the last of a volume was pumped. */
const rateAt = ({ fluids }: Train, pumped: number): number => {
	let cumulative = 0;
	for (const { V, Q } of fluids) {
		cumulative += V;
		if (pumped <= cumulative + SLIGHT) return Q;
	}
	return fluids.at(-1)?.Q ?? 0;
};

/** Pressure at each boundary of the annulus, from its top down [psi]. */
export const annulusProfile = (
	cells: readonly Cell[],
	train: Train,
	state: State,
): readonly { readonly standing: number; readonly circulating: number }[] => {
	const starts = startsOf(cells);
	const up = cells.flatMap((cell, i) => (cell.side === "annulus" ? [{ cell, start: starts[i] ?? 0 }] : []));
	let [standing, friction] = [0, 0];
	const profile = [{ standing, circulating: 0 }];
	for (const { cell, start } of up.reverse()) {
		const part = pressureOf(cell, start, train, state);
		standing -= part.standing;
		friction += part.friction;
		profile.push({ standing, circulating: standing + friction });
	}
	return profile;
};

/** Volumes of each fluid by where they are: conservation in numbers. The mud's share of what came back is listed last. */
export const whereabouts = (
	cells: readonly Cell[],
	train: Train,
	{ displaced, pumped }: State,
): {
	readonly inPlace: readonly number[];
	readonly returned: readonly number[];
	readonly mudReturned: number;
} => {
	const way = cells.reduce((sum, { volume }) => sum + volume, 0);
	const inPlace: number[] = [];
	const returned: number[] = [];
	let cumulative = 0;
	for (const { V } of train.fluids) {
		const last = Math.min(cumulative + V, pumped);
		const amount = Math.max(0, last - cumulative);
		const back = Math.min(amount, Math.max(0, displaced - cumulative - way));
		returned.push(back);
		inPlace.push(amount - back);
		cumulative += V;
	}
	return { inPlace, returned, mudReturned: Math.min(displaced, way) };
};
