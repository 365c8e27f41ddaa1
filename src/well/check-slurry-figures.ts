import type { CementClassRow } from "../catalog/cement-table.ts";
import type { Known } from "../cite/known.ts";
import type { CementDefinition, Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { asWritten, type Desk, fault, placeOf } from "./desk.ts";

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
		what: `the volumes are to be by caliper, and the ${hole.id} hole has none`,
		expected: "`caliper` or `actual.washout` of that hole",
		found: "caliper",
		mend: "name the log, record the enlargement, or write `washed-out hole`",
	});
};

const checkSacks = ({ role, sacks, yield: slurryYield, volume }: Slurry, at: Path, desk: Desk): void => {
	if (sacks === undefined || slurryYield === undefined || volume === undefined) return;
	const mixed = sacks.value * slurryYield.value;
	const stated = volume.value * CUBIC_FEET_PER_BARREL;
	if (Math.abs(mixed - stated) <= ONE_PERCENT * stated) return;
	fault(desk, "well/sacks-volume", placeOf(volume, [...at, "volume"]), {
		what: `sacks and yield of the ${role} slurry make another volume than is stated`,
		expected: `about ${(mixed / CUBIC_FEET_PER_BARREL).toFixed(1)} bbl, which is ${asWritten(sacks, "")} sacks of ${asWritten(slurryYield, "ft³/sk")}`,
		found: asWritten(volume, "bbl"),
		mend: "correct the one that is wrong, or state only sacks or volume",
		related: [{ at: placeOf(sacks, [...at, "sacks"]), label: "the sacks" }],
	});
};

/** 42 gallons of 231 cubic inches, exactly. */
const CUBIC_FEET_PER_BARREL = (42 * 231) / 12 ** 3;

/** Nothing that is named in it changes its weight or its water. */
const mixedOfWater = ({ additives, components, water_by_weight }: Slurry): boolean =>
	additives === undefined && components === undefined && water_by_weight === undefined;

const FIGURES = [
	["density", "lb/gal"],
	["yield", "ft³/sk"],
	["water", "gal/sk"],
] as const;

/**
 * Two of the three figures that are those of the class mixed neat give the third. A slurry that is extended or weighted
 * has at most one of them, so it is never judged.
 */
const checkNeat = (slurry: Slurry, row: CementClassRow, at: Path, desk: Desk): void => {
	const figures = FIGURES.map(([name, unit]) => {
		const stated: Known | undefined = slurry[name];
		const neat = row[name].value;
		const off = stated === undefined ? 0 : Math.abs(stated.value - neat) / neat;
		return { name, unit, stated, neat, off };
	});
	const [odd, ...more] = figures.filter(({ off, stated }) => stated === undefined || off > NEAT);
	if (odd?.stated === undefined || odd.off < SLIP || more.length > 0) return;
	const others = figures.filter((each) => each !== odd).map(({ name }) => name);
	fault(desk, "well/neat-slurry", placeOf(odd.stated, [...at, odd.name]), {
		what: `${others.join(" and ")} of the ${slurry.role} slurry are those of class ${row.id} mixed neat, and its ${odd.name} is not`,
		expected: `about ${odd.neat} ${odd.unit}`,
		found: asWritten(odd.stated, odd.unit),
		mend: `correct the ${odd.name}; or name under \`additives\` what the blend holds besides`,
		source: row.density.from.kind === "catalogue" ? row.density.from.source.key : "api-10a",
	});
};
