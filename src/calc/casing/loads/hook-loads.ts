import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { HookLoadResults } from "../../results.ts";
import { type LoadSection, loadSectionsOf } from "./load-sections.ts";
import { laidOut, slidingForce } from "./soft-string.ts";

const source = cite("johancsik-1984", "soft-string tension and side force; from memory");

/** Depths of the shoe at which hook loads are worked. */
const SHOE_DEPTHS = 25;

/** A string as far as it has been run: its lower pipe, hanging from where its top is to be. */
const runTo = (sections: readonly LoadSection[], shoe: number): readonly LoadSection[] => {
	const [first] = sections;
	const left = (sections.at(-1)?.bottom ?? 0) - shoe;
	const top = first?.top ?? 0;
	return sections
		.map((s) => ({ ...s, top: Math.max(top, s.top - left), bottom: s.bottom - left }))
		.filter((s) => s.bottom > s.top);
};

/** What the hook carries while a string is run, over the depth of its shoe. */
export const hookLoads = tableFormula({
	id: "casing/hook-loads",
	name: "Hook load over the depth of the shoe",
	expression:
		"axial force at the top of the string, without friction and let down or pulled with the least and the greatest",
	source,
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		MD_cased: "measured-depth",
		μ_cased: { many: "ratio" },
		μ_open: { many: "ratio" },
	},
	gives: {
		md: "measured-depth",
		free: "force",
		run_in_least: "force",
		run_in_greatest: "force",
		pulled_least: "force",
		pulled_greatest: "force",
	},
	validity: `no stiffness, no buckling; a least and a greatest coefficient for casing and for rock; without the traveling block`,
	compute: ({ path, sections: table, inside, outside, MD_cased, μ_cased, μ_open }) => {
		const sections = loadSectionsOf(table);
		const [top, bottom] = [sections[0]?.top, sections.at(-1)?.bottom];
		if (top === undefined || bottom === undefined) return [];
		return Array.from({ length: SHOE_DEPTHS }, (_, i) => top + ((i + 1) / SHOE_DEPTHS) * (bottom - top)).map(
			(md) => {
				const run = laidOut(path, runTo(sections, md), MD_cased);
				const hook = (end: 0 | 1 | undefined, way: 1 | -1): number => {
					const [on, rock] =
						end === undefined ? [0, 0] : [μ_cased[end] ?? Number.NaN, μ_open[end] ?? Number.NaN];
					const one = { inside, outside, MD_cased, μ_cased: on, μ_open: rock, way };
					return slidingForce(run, one)[0]?.force ?? Number.NaN;
				};
				return {
					md,
					free: hook(undefined, 1),
					run_in_least: hook(0, -1),
					run_in_greatest: hook(1, -1),
					pulled_least: hook(0, 1),
					pulled_greatest: hook(1, 1),
				};
			},
		);
	},
});

const atBottom = (
	column: "free" | "run_in_least" | "run_in_greatest" | "pulled_least" | "pulled_greatest",
	name: string,
) =>
	formula({
		id: `casing/hook-load-${column.replaceAll("_", "-")}`,
		name,
		expression: "hook load with the shoe at bottom",
		source,
		inputs: { hook_loads: { table: "hook loads" } },
		gives: "force",
		validity: "the traveling block not counted; below zero the string does not go down by its own weight",
		compute: ({ hook_loads }) => hook_loads.rows.at(-1)?.[column] ?? Number.NaN,
	});

export const hookLoadFree = atBottom("free", "Hook load without friction");
export const hookLoadRunInLeast = atBottom("run_in_least", "Hook load let down, least friction");
export const hookLoadRunInGreatest = atBottom("run_in_greatest", "Hook load let down, greatest friction");
export const hookLoadPulledLeast = atBottom("pulled_least", "Hook load pulled back, least friction");
export const hookLoadPulledGreatest = atBottom("pulled_greatest", "Hook load pulled back, greatest friction");

/** Hook loads at bottom. */
export const hookLoadsAtBottom = (hook_loads: KnownTable): HookLoadResults => ({
	free: hookLoadFree.of({ hook_loads }),
	run_in_least_friction: hookLoadRunInLeast.of({ hook_loads }),
	run_in_greatest_friction: hookLoadRunInGreatest.of({ hook_loads }),
	pulled_least_friction: hookLoadPulledLeast.of({ hook_loads }),
	pulled_greatest_friction: hookLoadPulledGreatest.of({ hook_loads }),
});
