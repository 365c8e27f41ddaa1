import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { doglegAngle } from "../../trajectory/dogleg.ts";
import { type PathStation, pathStationsOf } from "../../trajectory/path.ts";
import { coiledLoad, type Held, helicalLimit, sinusoidalLimit, stiffnessOf } from "./buckling.ts";
import { FORCE, type ForceRow } from "./force-table.ts";
import { type LoadSection, loadSectionsOf } from "./load-sections.ts";
import { profileAt } from "./profiles.ts";

/*
 * Pipe that slides, taken as a soft string: it has weight and tension but no stiffness, and lies against the wall of the
 * hole all the way. From the shoe up, element by element, the side force of weight and tension is worked and friction
 * times it is added to the tension of pipe that is pulled, or taken off that of pipe let down.
 *
 *     ΔF = W cos Ī ± μ N,   N = √[(F Δα sin Ī)² + (F ΔI + W sin Ī)²],   W = w_b ΔL
 *
 * F is the effective tension, without the pressure on the pipe's ends; the true one is F + p_i A_i − p_o A_o.
 *
 * Where it is told how much room the pipe has, pipe pressed beyond helical buckling lies on the wall with the load of its
 * coil as well.
 *
 * @source johancsik-1984, eqs. 1 and 2, from memory; F taken at the middle of an element where the paper takes its foot
 */

const source = cite("johancsik-1984", "soft-string tension and side force; from memory");

const inputs = {
	path: { table: "path" },
	sections: { table: "sections" },
	inside: { table: "pressure" },
	outside: { table: "pressure" },
	MD_cased: "measured-depth",
	μ_cased: "ratio",
	μ_open: "ratio",
	MD_collar: { many: "measured-depth" },
} as const;

const validity = "no stiffness, no buckling; the pipe on the wall all the way";

/** Force at which a march up the string is given up: pressed so hard, no pipe goes down [lbf]. */
export const LOCKED = -5e6;

/** Elements are no longer than this [ft]. */
const ELEMENT = 25;

export interface Slide {
	readonly inside: KnownTable;
	readonly outside: KnownTable;
	/** Shoe of the string outside: above it the pipe slides on steel [ft]. */
	readonly MD_cased: number;
	readonly μ_cased: number;
	readonly μ_open: number;
	/** Of a string that is floated in: below this it is empty of all but air [ft]; at most one. */
	readonly MD_collar: readonly number[];
	/** 1 of pipe pulled, −1 of pipe let down. */
	readonly way: 1 | -1;
	/** Diameters that the pipe may coil in: inside steel, and of open hole [in]. None: its buckling is not looked at. */
	readonly room?: { readonly cased: number; readonly open: number };
}

interface Node {
	readonly md: number;
	readonly tvd: number;
	readonly inclination: number;
	readonly azimuth: number;
}

/** Places of a path by measured depth: a string run to many depths comes by the same ones. */
const places = new WeakMap<readonly PathStation[], Map<number, Node>>();

const nodeAt = (path: readonly PathStation[], md: number): Node | undefined => {
	const of = places.get(path) ?? new Map<number, Node>();
	places.set(path, of);
	const known = of.get(md);
	if (known !== undefined) return known;
	const place = placeAt(path, md);
	if (place === undefined) return undefined;
	const node = { md, tvd: place.tvd, inclination: place.inclination, azimuth: place.azimuth };
	of.set(md, node);
	return node;
};

/** Nodes of one section from its bottom up. */
const nodesOf = (
	path: readonly PathStation[],
	section: LoadSection,
	cuts: readonly number[],
): readonly Node[] => {
	const inside = (md: number): boolean => md > section.top && md < section.bottom;
	const marks = new Set<number>();
	for (const { md } of path) if (inside(md)) marks.add(md);
	for (const md of cuts) if (inside(md)) marks.add(md);
	const ends = [section.top, ...[...marks].sort((a, b) => a - b), section.bottom];
	const nodes: Node[] = [];
	const put = (md: number): void => {
		const node = nodeAt(path, md);
		if (node !== undefined) nodes.push(node);
	};
	for (const [i, md] of ends.entries()) {
		const next = ends[i + 1];
		const pieces = next === undefined ? 1 : Math.max(1, Math.ceil((next - md) / ELEMENT));
		for (let k = 0; k < pieces; k++) put(md + (k * ((next ?? md) - md)) / pieces);
	}
	return nodes.reverse();
};

const areas = ({ D, t }: LoadSection): readonly [bore: number, full: number] => [
	(Math.PI / 4) * (D - 2 * t) ** 2,
	(Math.PI / 4) * D ** 2,
];

/** What a fluid does at a node: its pressure, and what it adds over the next foot [psi, psi/ft]. */
interface Standing {
	readonly pressure: number;
	readonly gradient: number;
}

/** By fluid and node: a string run to many depths, at several frictions, stands in the same fluids at the same nodes. */
const standing = new WeakMap<KnownTable, Map<Node, Standing>>();

const standingAt = (fluid: KnownTable, node: Node): Standing => {
	const of = standing.get(fluid) ?? new Map<Node, Standing>();
	standing.set(fluid, of);
	const known = of.get(node);
	if (known !== undefined) return known;
	const pressure = profileAt(fluid, "pressure", node.tvd);
	const one = { pressure, gradient: profileAt(fluid, "pressure", node.tvd + 1) - pressure };
	of.set(node, one);
	return one;
};

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How the hole goes from a node to the one below it. */
interface Bend {
	readonly lower: Node;
	/** Sine of the mean inclination. */
	readonly lean: number;
	/** Build, upwards [rad]. */
	readonly ΔI: number;
	/** Δα sin Ī: the part of the dogleg that is not build [rad]. */
	readonly turn: number;
}

const bends = new WeakMap<Node, Bend>();

const bendOf = (upper: Node, lower: Node): Bend => {
	const known = bends.get(upper);
	if (known?.lower === lower) return known;
	const ΔI = radians(upper.inclination - lower.inclination);
	const β = doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth);
	const bend = {
		lower,
		lean: Math.sin(radians((upper.inclination + lower.inclination) / 2)),
		ΔI,
		turn: Math.sqrt(Math.max(0, β ** 2 - ΔI ** 2)),
	};
	bends.set(upper, bend);
	return bend;
};

/** What an element adds to the effective tension F at its foot, and what would buckle it there. */
const added = (upper: Node, lower: Node, pipe: Pipe, F: number, slide: Slide) => {
	const { section, bore, full, stiffness } = pipe;
	const filled = lower.md > (slide.MD_collar[0] ?? Number.POSITIVE_INFINITY) ? 0 : bore;
	const [inside, insideAbove] = [standingAt(slide.inside, lower), standingAt(slide.inside, upper)];
	const [outside, outsideAbove] = [standingAt(slide.outside, lower), standingAt(slide.outside, upper)];
	const length = lower.md - upper.md;
	// Weight along the hole, buoyed: that of the steel, of what is inside, less that of what it displaces.
	const hung =
		section.w * (lower.tvd - upper.tvd) +
		filled * (inside.pressure - insideAbove.pressure) -
		full * (outside.pressure - outsideAbove.pressure);
	const w = section.w + filled * inside.gradient - full * outside.gradient;
	const W = w * length;
	const cased = lower.md <= slide.MD_cased;
	const μ = cased ? slide.μ_cased : slide.μ_open;
	const { lean, ΔI, turn } = bendOf(upper, lower);
	const onWall = (tension: number) => Math.hypot(tension * turn, tension * ΔI + W * lean);
	const hole = slide.room && (cased ? slide.room.cased : slide.room.open);
	const held = (tension: number): Held | undefined =>
		hole === undefined
			? undefined
			: { stiffness, w, w_c: onWall(tension) / length, r: (hole - section.D) / 2 };
	const dragWith = (tension: number) => {
		const at = held(tension);
		const coil = at !== undefined && -tension > helicalLimit(at) ? coiledLoad(tension, at) * length : 0;
		return μ * (onWall(tension) + coil);
	};
	const first = hung + slide.way * dragWith(F);
	const at = held(F);
	return {
		change: hung + slide.way * dragWith(F + first / 2),
		...(at === undefined ? {} : { sinusoidal: sinusoidalLimit(at), helical: helicalLimit(at) }),
	};
};

/** A section with what does not change along it. */
interface Pipe {
	readonly section: LoadSection;
	/** [in²] */
	readonly bore: number;
	readonly full: number;
	/** E J [lbf·in²]. */
	readonly stiffness: number;
}

/** A section laid out along the hole. */
interface Laid {
	readonly section: LoadSection;
	/** 1 is the uppermost. */
	readonly number: number;
	/** From its bottom up. */
	readonly nodes: readonly Node[];
}

/** The lowest section first. */
export const laidOut = (
	path: KnownTable,
	sections: readonly LoadSection[],
	MD_cased: number,
	MD_collar: readonly number[],
): readonly Laid[] => {
	const stations = pathStationsOf(path);
	return sections
		.map((section, i) => ({
			section,
			number: i + 1,
			nodes: nodesOf(stations, section, [MD_cased, ...MD_collar]),
		}))
		.reverse();
};

interface SlidingRow extends ForceRow {
	/** Without the pressure on the pipe's ends. */
	readonly effective: number;
	/** What would buckle the element below, where its room is told. */
	readonly sinusoidal?: number;
	readonly helical?: number;
}

/** True axial force from the top down, of pipe sliding one way; the topmost row is below `LOCKED` where it does not slide. */
export const slidingForce = (laid: readonly Laid[], slide: Slide): readonly SlidingRow[] => {
	const rows: SlidingRow[] = [];
	let F = 0;
	for (const { section, number, nodes } of laid) {
		const [bore, full] = areas(section);
		const pipe = { section, bore, full, stiffness: stiffnessOf(section.D, section.t) };
		let below: Node | undefined;
		for (const node of nodes) {
			const { change = 0, ...limits } = below === undefined ? {} : added(node, below, pipe, F, slide);
			F += change;
			const filled = node.md > (slide.MD_collar[0] ?? Number.POSITIVE_INFINITY) ? 0 : bore;
			const force =
				F +
				standingAt(slide.inside, node).pressure * filled -
				standingAt(slide.outside, node).pressure * full;
			rows.push({ md: node.md, tvd: node.tvd, section: number, force, effective: F, ...limits });
			if (!(F > LOCKED)) return [{ md: node.md, tvd: node.tvd, section: number, force: F, effective: F }];
			below = node;
		}
	}
	return rows.reverse();
};

export const pulledForce = tableFormula({
	id: "casing/pulled-force",
	name: "Axial force of the string pulled back with friction",
	expression:
		"ΔF = W cos Ī + μ N, N = √[(F Δα sin Ī)² + (F ΔI + W sin Ī)²], from the shoe up; F + p_i A_i − p_o A_o",
	source,
	inputs,
	gives: FORCE,
	validity,
	compute: (given) =>
		slidingForce(laidOut(given.path, loadSectionsOf(given.sections), given.MD_cased, given.MD_collar), {
			...given,
			way: 1,
		}).map(({ md, tvd, section, force }) => ({ md, tvd, section, force })),
});
