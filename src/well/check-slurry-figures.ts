import type { CementClassRow } from "../catalog/cement-table.ts";
import type { Known } from "../cite/known.ts";
import type { CementDefinition, Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import { asWritten, listOf, measured } from "./said.ts";
import { figureName } from "./slurry-figures.ts";

type Slurry = CementDefinition["slurries"][number];

/** Sacks and volume stated together may differ by a part in a hundred. */
const ONE_PERCENT = 0.01;
/** Figures of a neat slurry are printed to two or three digits, and a little of an additive moves them by so much. */
const NEAT = 0.03;
/** A figure that is mistyped is farther off than an additive moves it. */
const SLIP = 0.08;

/** The figures of each slurry held against each other, as far as they are stated, and the basis of the volumes. */
export const checkSlurryFigures = ({ casing, holes }: Definition, desk: Desk): void => {
	for (const [i, { cement, hole }] of casing.entries()) {
		if (cement?.volume_basis === "caliper")
			checkBasis(
				holes.find(({ id }) => id === hole),
				["casing", i, "cement", "volume_basis"],
				desk,
			);
		for (const [j, slurry] of (cement?.slurries ?? []).entries()) {
			const at: Path = ["casing", i, "cement", "slurries", j];
			checkSacks(slurry, at, desk);
			const row = slurry.class === undefined ? undefined : desk.catalog.cementClass(slurry.class);
			if (row !== undefined && mixedOfWater(slurry)) checkNeat(slurry, row, at, desk);
		}
	}
};

/** Volumes by caliper rest on a log, or on the enlargement that was read from one. */
const checkBasis = (hole: Definition["holes"][number] | undefined, at: Path, desk: Desk): void => {
	if (hole === undefined || hole.caliper !== undefined || hole.actual?.washout !== undefined) return;
	if (/caliper/i.test(hole.washout?.from ?? "")) return;
	fault(desk, "well/no-caliper", at, {
		what: message("well/no-caliper.what", { hole: hole.id }),
		expected: message("well/no-caliper.expected"),
		found: "caliper",
		mend: message("well/no-caliper.mend"),
	});
};

const checkSacks = ({ role, sacks, yield: slurryYield, volume }: Slurry, at: Path, desk: Desk): void => {
	if (sacks === undefined || slurryYield === undefined || volume === undefined) return;
	const mixed = sacks.value * slurryYield.value;
	const stated = volume.value * CUBIC_FEET_PER_BARREL;
	if (Math.abs(mixed - stated) <= ONE_PERCENT * stated) return;
	fault(desk, "well/sacks-volume", placeOf(volume, [...at, "volume"]), {
		what: message("well/sacks-volume.what", { role }),
		expected: message("well/sacks-volume.expected", {
			mixed: measured("volume", mixed / CUBIC_FEET_PER_BARREL, volume.value),
			sacks: asWritten(sacks),
			slurryYield: asWritten(slurryYield),
		}),
		found: asWritten(volume),
		mend: message("well/sacks-volume.mend"),
		related: [{ at: placeOf(sacks, [...at, "sacks"]), label: message("well/sacks-volume.label") }],
	});
};

/** 42 gallons of 231 cubic inches, exactly. */
const CUBIC_FEET_PER_BARREL = (42 * 231) / 12 ** 3;

/** Nothing that is named in it changes its weight or its water. */
const mixedOfWater = ({ additives, components, water_by_weight }: Slurry): boolean =>
	additives === undefined && components === undefined && water_by_weight === undefined;

const FIGURES = ["density", "yield", "water"] as const;

/**
 * Two of the three figures that are those of the class mixed neat give the third. A slurry that is extended or weighted
 * has at most one of them, so it is never judged.
 */
const checkNeat = (slurry: Slurry, row: CementClassRow, at: Path, desk: Desk): void => {
	const figures = FIGURES.map((name) => {
		const stated: Known | undefined = slurry[name];
		const neat = row[name].value;
		const off = stated === undefined ? 0 : Math.abs(stated.value - neat) / neat;
		return { name, stated, row: row[name], off };
	});
	const [odd, ...more] = figures.filter(({ off, stated }) => stated === undefined || off > NEAT);
	if (odd?.stated === undefined || odd.off < SLIP || more.length > 0) return;
	const others = figures.filter((each) => each !== odd).map(({ name }) => name);
	fault(desk, "well/neat-slurry", placeOf(odd.stated, [...at, odd.name]), {
		what: message("well/neat-slurry.what", {
			others: listOf(others.map(figureName)),
			role: slurry.role,
			row: row.id,
			odd: figureName(odd.name),
		}),
		expected: message("well/neat-slurry.expected", { row: asWritten(odd.row) }),
		found: asWritten(odd.stated),
		mend: message("well/neat-slurry.mend", { odd: figureName(odd.name) }),
		source: row.density.from.kind === "catalogue" ? row.density.from.source.key : "api-10a",
	});
};
