import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { doglegAngle } from "../../trajectory/dogleg.ts";
import { type PathStation, pathStationsOf } from "../../trajectory/path.ts";
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
} as const;

const validity = "no stiffness, no buckling; the pipe on the wall all the way";

/** Elements are no longer than this [ft]. */
const ELEMENT = 25;

interface Slide {
	readonly inside: KnownTable;
	readonly outside: KnownTable;
	/** Shoe of the string outside: above it the pipe slides on steel [ft]. */
	readonly MD_cased: number;
	readonly μ_cased: number;
	readonly μ_open: number;
	/** 1 of pipe pulled, −1 of pipe let down. */
	readonly way: 1 | -1;
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
const nodesOf = (path: readonly PathStation[], section: LoadSection, MD_cased: number): readonly Node[] => {
	const marks = [...path.map(({ md }) => md), MD_cased].filter(
		(md) => md > section.top && md < section.bottom,
	);
	const ends = [section.top, ...new Set(marks.sort((a, b) => a - b)), section.bottom];
	const depths = ends.flatMap((md, i) => {
		const next = ends[i + 1];
		const pieces = next === undefined ? 1 : Math.max(1, Math.ceil((next - md) / ELEMENT));
		return Array.from({ length: pieces }, (_, k) => md + (k * ((next ?? md) - md)) / pieces);
	});
	return depths.reverse().flatMap((md) => nodeAt(path, md) ?? []);
};

const areas = ({ D, t }: LoadSection): readonly [bore: number, full: number] => [
	(Math.PI / 4) * (D - 2 * t) ** 2,
	(Math.PI / 4) * D ** 2,
];

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** What an element adds to the effective tension F at its foot. */
const added = (upper: Node, lower: Node, section: LoadSection, F: number, slide: Slide): number => {
	const [bore, full] = areas(section);
	const change = (table: KnownTable) =>
		profileAt(table, "pressure", lower.tvd) - profileAt(table, "pressure", upper.tvd);
	const length = lower.md - upper.md;
	const down = lower.tvd - upper.tvd;
	// Weight along the hole, buoyed: that of the steel, of what is inside, less that of what it displaces.
	const hung = section.w * down + bore * change(slide.inside) - full * change(slide.outside);
	const gradient = (table: KnownTable) =>
		profileAt(table, "pressure", lower.tvd + 1) - profileAt(table, "pressure", lower.tvd);
	const W = (section.w + bore * gradient(slide.inside) - full * gradient(slide.outside)) * length;
	const μ = lower.md <= slide.MD_cased ? slide.μ_cased : slide.μ_open;
	const inclination = radians((upper.inclination + lower.inclination) / 2);
	const ΔI = radians(upper.inclination - lower.inclination);
	const turn = sideTurn(upper, lower, ΔI);
	const dragWith = (tension: number) =>
		μ * Math.hypot(tension * turn, tension * ΔI + W * Math.sin(inclination));
	const first = hung + slide.way * dragWith(F);
	return hung + slide.way * dragWith(F + first / 2);
};

/** Δα sin Ī: the part of an element's dogleg that is not build [rad]. */
const sideTurn = (upper: Node, lower: Node, ΔI: number): number => {
	const β = doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth);
	return Math.sqrt(Math.max(0, β ** 2 - ΔI ** 2));
};

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
): readonly Laid[] => {
	const stations = pathStationsOf(path);
	return sections
		.map((section, i) => ({ section, number: i + 1, nodes: nodesOf(stations, section, MD_cased) }))
		.reverse();
};

/** True axial force from the top down, of pipe sliding one way. */
export const slidingForce = (laid: readonly Laid[], slide: Slide): readonly ForceRow[] => {
	const rows: ForceRow[] = [];
	let F = 0;
	for (const { section, number, nodes } of laid) {
		const [bore, full] = areas(section);
		let below: Node | undefined;
		for (const node of nodes) {
			if (below !== undefined) F += added(node, below, section, F, slide);
			const pressed =
				profileAt(slide.inside, "pressure", node.tvd) * bore -
				profileAt(slide.outside, "pressure", node.tvd) * full;
			rows.push({ md: node.md, tvd: node.tvd, section: number, force: F + pressed });
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
		slidingForce(laidOut(given.path, loadSectionsOf(given.sections), given.MD_cased), { ...given, way: 1 }),
});
