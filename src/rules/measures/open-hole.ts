import type { HolePressureResults } from "../../calc/results.ts";
import type { Hole } from "../../well/well.ts";
import { type Case, missingAt, stringPath } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import type { PreventerStack } from "../subject.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";

/** The drilled section a rule is asked of, and what was worked of it. */
const holeOf = ({ subject, well, results }: Case) => {
	if (subject.kind !== "hole") throw new TypeError(`a measure of holes was asked of a ${subject.kind}`);
	const { hole } = subject;
	return {
		hole,
		at: ["holes", well.holes.indexOf(hole)] as const,
		found: results.pressure.holes.find(({ id }) => id === hole.id),
	};
};

/** Once its string is on record as landed, a hole is open no more. */
const isCased = ({ well }: Pick<Case, "well">, { id }: Hole): boolean =>
	well.strings.some((string) => string.hole.id === id && string.landed !== undefined);

/** A reading of a hole that is still to be drilled with a liquid. */
const open =
	(read: (the: Case, found: HolePressureResults | undefined, missing: MissingInput) => Reading) =>
	(the: Case): Reading => {
		const { hole, at, found } = holeOf(the);
		if (isCased(the, hole)) return absent(`the ${hole.id} hole is drilled and cased`);
		if (hole.fluid?.kind === "air") return absent(`the ${hole.id} hole is drilled with air`);
		if (hole.fluid?.density === undefined)
			return lacking(
				missingAt(`density of the drilling fluid of the ${hole.id} hole`, ...at, "fluid", "density"),
			);
		return read(
			the,
			found,
			missingAt(`pore pressure of the rock open to the ${hole.id} hole`, "geology", "formations"),
		);
	};

const isShutIn = (found: HolePressureResults | undefined): boolean => found?.preventer_rating !== undefined;

const stackOf = ({ subject, well, results }: Case) => {
	if (subject.kind !== "stack") throw new TypeError(`a measure of preventers was asked of a ${subject.kind}`);
	const { stack } = subject;
	return {
		stack,
		at: ["well_control", "preventers", well.wellControl?.preventers?.indexOf(stack) ?? 0] as const,
		casing: results.casing[stack.over],
		string: well.strings.find(({ id }) => id === stack.over),
	};
};

/** The hole that is drilled through a stack, once its string is on record as landed, is closed off. */
const isDrilledThrough = ({ well }: Case, { over }: PreventerStack): boolean => {
	const above = well.strings.find(({ id }) => id === over);
	const below = above && well.holes.find(({ bottom }) => bottom.value > above.hole.bottom.value);
	return below !== undefined && isCased({ well }, below);
};

const test = ({ test: planned }: PreventerStack) => planned;

export const openHoleMeasures = {
	"mud over pore pressure": {
		noun: "mud density over the highest pore pressure",
		read: open((_, found, missing) => known(found?.mud_over_pore, missing)),
		say: ({ value, size }, the) => {
			const { hole, found } = holeOf(the);
			return [
				`the mud of the ${hole.id} hole is `,
				size,
				` ${value.value < 0 ? "lighter" : "heavier"} than the pore pressure of the ${found?.highest_pore?.formation ?? "rock"}`,
				...(found?.highest_pore === undefined ? [] : [" (", found.highest_pore.density, ")"]),
			];
		},
	},
	"weakest place over mud": {
		noun: "strength of the weakest place over the mud density",
		read: open((the, found) => {
			const { hole, at } = holeOf(the);
			if (found?.weakest_over_mud !== undefined)
				return { state: "known", value: found.weakest_over_mud.margin };
			return the.well.strings.some(
				(string) => string.shoe.value < hole.bottom.value && string.hole.id !== hole.id,
			)
				? lacking(missingAt(`strength of the shoe above the ${hole.id} hole`, ...at))
				: absent(`no shoe is above the ${hole.id} hole`);
		}),
		say: ({ value, size }, the) => {
			const { hole, found } = holeOf(the);
			const place = found?.weakest_over_mud?.place;
			const shoe = place === found?.shoe;
			return [
				`the ${shoe ? `${place} shoe` : place} bears `,
				size,
				` ${value.value < 0 ? "less" : "more"} than the mud of the ${hole.id} hole at rest`,
			];
		},
	},
	"kick tolerance": {
		noun: "kick tolerance",
		read: open((the, found) => {
			const { hole } = holeOf(the);
			if (!isShutIn(found)) return absent(`no preventers are closed on a kick of the ${hole.id} hole`);
			if (the.well.wellControl?.kick?.gas_gradient === undefined)
				return lacking(missingAt("design kick and its gas gradient", "well_control", "kick"));
			if (the.well.drillString === undefined) return lacking(missingAt("drill string", "drill_string"));
			return known(
				found?.kick_tolerance,
				missingAt(`strength of the shoe above the ${hole.id} hole`, "casing"),
			);
		}),
		say: ({ part }, the) => {
			const { hole, found } = holeOf(the);
			return [
				`the ${found?.kick_limited_by ?? `${found?.shoe} shoe`} holds a kick of `,
				part,
				` while the ${hole.id} hole is drilled`,
				...(found?.kick_intensity === undefined ? [] : [", ", found.kick_intensity, " over pore pressure"]),
			];
		},
	},
	"design kick": {
		noun: "design kick",
		read: (the) => {
			const { hole, at, found } = holeOf(the);
			return known(
				found?.design_kick,
				missingAt(`design kick volume of the ${hole.id} hole`, ...at, "kick", "volume"),
			);
		},
		say: ({ part }) => ["the design kick is ", part],
	},
	"rated pressure of preventers": {
		noun: "rated working pressure of the preventers",
		read: (the) => ({ state: "known", value: stackOf(the).stack.working_pressure }),
		say: ({ part }, the) => [`the preventers on the ${stackOf(the).stack.over} casing are rated for `, part],
	},
	"anticipated surface pressure": {
		noun: "anticipated surface pressure",
		read: (the) => {
			const { stack, casing } = stackOf(the);
			return known(
				casing?.maximum_surface_pressure,
				missingAt(`pore pressure and shoe strength below the ${stack.over} shoe`, "geology", "formations"),
			);
		},
		say: ({ part }) => ["gas may bring ", part, " to surface"],
	},
	"low-pressure test of preventers": {
		noun: "low-pressure test of the preventers",
		read: (the) => {
			const { stack, at } = stackOf(the);
			if (isDrilledThrough(the, stack)) return absent("the hole beneath is drilled and cased");
			return known(
				test(stack)?.low,
				missingAt(`low-pressure test of the preventers on ${stack.over}`, ...at, "test", "low"),
			);
		},
		say: ({ part }, the) => [
			`the low-pressure test of the preventers on ${stackOf(the).stack.over} is to `,
			part,
		],
	},
	"test of preventers on casing": {
		noun: "high-pressure test of the preventers",
		read: (the) => {
			const { stack, at } = stackOf(the);
			if (isDrilledThrough(the, stack)) return absent("the hole beneath is drilled and cased");
			if (test(stack)?.test_plug === true)
				return absent("a test plug keeps the test of the preventers off the casing");
			return known(
				test(stack)?.high,
				missingAt(`high-pressure test of the preventers on ${stack.over}`, ...at, "test", "high"),
			);
		},
		say: ({ part }, the) => [
			`the preventers on the ${stackOf(the).stack.over} casing are to be tested to `,
			part,
			" and no test plug is stated",
		],
	},
	"internal yield beneath preventers": {
		noun: "internal yield of the casing beneath",
		read: (the) => {
			const { casing, string, stack } = stackOf(the);
			return known(
				casing?.worn_internal_yield ?? casing?.least_internal_yield,
				string === undefined
					? missingAt(`string called "${stack.over}"`, "casing")
					: { what: `the pipe of the ${string.id} string`, at: stringPath(the.well, string, "pipe") },
			);
		},
		say: ({ part }) => ["the internal yield of the casing beneath is ", part],
	},
} as const satisfies Readonly<Record<string, Measure>>;
