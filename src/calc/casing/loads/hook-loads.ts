import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { HookLoadResults } from "../../results.ts";
import { loadSectionsOf } from "./load-sections.ts";
import { runTo } from "./run-to.ts";
import { laidOut, slidingForce } from "./soft-string.ts";

const source = cite("johancsik-1984", "soft-string tension and side force; from memory");

/** Depths of the shoe at which hook loads are worked. */
const SHOE_DEPTHS = 25;

/** What the hook carries while a string is run, over the depth of its shoe. */
export const hookLoads = tableFormula({
	id: "casing/hook-loads",
	name: "Hook load over the depth of the shoe",
	expression:
		"axial force at the top of the string, without friction and pulled with the least and the greatest",
	source,
	inputs: {
		path: { table: "path" },
		sections: { table: "sections" },
		inside: { table: "pressure" },
		outside: { table: "pressure" },
		MD_cased: "measured-depth",
		μ_cased: { many: "ratio" },
		μ_open: { many: "ratio" },
		MD_collar: { many: "measured-depth" },
	},
	gives: {
		md: "measured-depth",
		free: "force",
		pulled_least: "force",
		pulled_greatest: "force",
	},
	validity: `no stiffness, no buckling; a least and a greatest coefficient for casing and for rock; without the traveling block`,
	compute: ({ path, sections: table, inside, outside, MD_cased, μ_cased, μ_open, MD_collar: landed }) => {
		const sections = loadSectionsOf(table);
		const [top, bottom] = [sections[0]?.top, sections.at(-1)?.bottom];
		if (top === undefined || bottom === undefined) return [];
		return Array.from({ length: SHOE_DEPTHS }, (_, i) => top + ((i + 1) / SHOE_DEPTHS) * (bottom - top)).map(
			(md) => {
				const MD_collar = landed.map((collar) => collar - (bottom - md));
				const run = laidOut(path, runTo(sections, md), MD_cased, MD_collar);
				const hook = (end: 0 | 1 | undefined): number => {
					const [on, rock] =
						end === undefined ? [0, 0] : [μ_cased[end] ?? Number.NaN, μ_open[end] ?? Number.NaN];
					const one = { inside, outside, MD_cased, MD_collar, μ_cased: on, μ_open: rock, way: 1 as const };
					return slidingForce(run, one)[0]?.force ?? Number.NaN;
				};
				return {
					md,
					free: hook(undefined),
					pulled_least: hook(0),
					pulled_greatest: hook(1),
				};
			},
		);
	},
});

const atBottom = (column: "free" | "pulled_least" | "pulled_greatest", name: string) =>
	formula({
		id: `casing/hook-load-${column.replaceAll("_", "-")}`,
		name,
		expression: "hook load with the shoe at bottom",
		source,
		inputs: { hook_loads: { table: "hook loads" } },
		gives: "force",
		validity: "the traveling block not counted",
		compute: ({ hook_loads }) => hook_loads.rows.at(-1)?.[column] ?? Number.NaN,
	});

export const hookLoadFree = atBottom("free", "Hook load without friction");
export const hookLoadPulledLeast = atBottom("pulled_least", "Hook load pulled back, least friction");
export const hookLoadPulledGreatest = atBottom("pulled_greatest", "Hook load pulled back, greatest friction");

/** Hook loads of a string pulled, at bottom. */
export const hookLoadsAtBottom = (hook_loads: KnownTable): Omit<HookLoadResults, `run_in_${string}`> => ({
	free: hookLoadFree.of({ hook_loads }),
	pulled_least_friction: hookLoadPulledLeast.of({ hook_loads }),
	pulled_greatest_friction: hookLoadPulledGreatest.of({ hook_loads }),
});
