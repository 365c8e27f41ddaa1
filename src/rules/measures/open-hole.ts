import type { HolePressureResults, OpenHoleMargin, SurgeResults } from "../../calc/results.ts";
import { message } from "../../messages/message.ts";
import type { Hole } from "../../well/well.ts";
import { type Case, missingAt, stringPath } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import type { Reason } from "../reason.ts";
import type { PreventerStack } from "../subject.ts";
import { unknownFracture, unknownPore } from "../unknown-rock.ts";
import { absent, boundedBy, known, lacking, type Measure, type Reading } from "./reading.ts";

/** The drilled section a rule is asked of, and what was worked of it. */
export const holeOf = ({ subject, well, results }: Case) => {
	if (subject.kind !== "hole") throw new TypeError(`a measure of holes was asked of a ${subject.kind}`);
	const { hole } = subject;
	return {
		hole,
		at: ["holes", well.holes.indexOf(hole)] as const,
		found: results.pressure.holes.find(({ id }) => id === hole.id),
	};
};

/** Once its string is on record as landed, a hole is open no more. */
export const isCased = ({ well }: Pick<Case, "well">, { id }: Hole): boolean =>
	well.strings.some((string) => string.hole.id === id && string.landed !== undefined);

/** A reading of a hole that is still to be drilled with a liquid. */
const open =
	(read: (the: Case, found: HolePressureResults | undefined, missing: MissingInput) => Reading) =>
	(the: Case): Reading => {
		const { hole, at, found } = holeOf(the);
		if (isCased(the, hole)) return absent(message("rules/hole-is-drilled-and-cased", { hole: hole.id }));
		if (hole.fluid?.kind === "air")
			return absent(message("rules/hole-is-drilled-with-air", { hole: hole.id }));
		if (hole.fluid?.density === undefined)
			return lacking(
				missingAt(message("rules/density-drilling-fluid-hole", { hole: hole.id }), ...at, "fluid", "density"),
			);
		return read(
			the,
			found,
			missingAt(message("rules/pore-pressure-rock-open-to-hole", { hole: hole.id }), "geology", "formations"),
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

const isBelowShoe = (the: Case): boolean => {
	const { hole } = holeOf(the);
	return the.well.strings.some(
		(string) => string.shoe.value < hole.bottom.value && string.hole.id !== hole.id,
	);
};

const hasSpeed = (the: Case): boolean => {
	const { hole } = holeOf(the);
	return (
		hole.drilling?.tripSpeed !== undefined ||
		the.well.strings.some(({ hole: own, running }) => own.id === hole.id && running?.speed !== undefined)
	);
};

const speedMissing = (the: Case): Reading => {
	const { hole, at } = holeOf(the);
	return lacking(
		missingAt(message("rules/speed-of-pipe-in-hole", { hole: hole.id }), ...at, "drilling", "trip_speed"),
	);
};

/** What friction cannot be worked without. */
const frictionMissing = (the: Case): MissingInput => {
	const { hole, at } = holeOf(the);
	if (the.well.drillString === undefined) return missingAt(message("rules/drill-string"), "drill_string");
	return missingAt(message("rules/readings-of-mud", { hole: hole.id }), ...at, "fluid", "readings");
};

/** The pipe that leaves least under the weakest rock, run at its greatest speed. */
const surgeOf = (the: Case) => {
	const margins = (holeOf(the).found?.hydraulics?.moving ?? []).flatMap(
		({ by, speed, weakest_over_surge }) =>
			weakest_over_surge === undefined ? [] : [{ ...weakest_over_surge, by, speed }],
	);
	return margins.sort((a, b) => a.margin.value - b.margin.value)[0];
};

const swabOf = (the: Case) =>
	(holeOf(the).found?.hydraulics?.moving ?? []).flatMap(({ swab_over_pore }) => swab_over_pore ?? [])[0];

/** The weakest place beside a column that moves: `the shoe of the intermediate string bears 1.89 lb/gal more than …`. */
const saidOfColumn = (
	the: Case,
	margin: number,
	size: Reason[number],
	found: (OpenHoleMargin & Partial<Pick<SurgeResults, "by" | "speed">>) | undefined,
	how: "circulating" | "surge",
): Reason => {
	const { hole, found: results } = holeOf(the);
	if (found === undefined) return [];
	const place =
		found.place === results?.shoe ? message("rules/shoe-of", { string: found.place }) : found.place;
	const facts = { place, size, hole: hole.id, density: found.density };
	if (how === "circulating")
		return [
			margin < 0 ? message("rules/bears-less-than-ecd", facts) : message("rules/bears-more-than-ecd", facts),
		];
	const { by = "", speed } = found;
	const pipe =
		by === "drill string"
			? message("rules/the-drill-string")
			: message("rules/the-string-called", { string: by });
	const run = { ...facts, pipe, speed: { parts: speed === undefined ? [] : [speed] } };
	return [
		margin < 0 ? message("rules/bears-less-than-surge", run) : message("rules/bears-more-than-surge", run),
	];
};

export const openHoleMeasures = {
	"mud over pore pressure": {
		noun: message("rules/mud-density-over-highest-pore-pressure"),
		read: open((the, found, missing) =>
			boundedBy(unknownPore(the, holeOf(the).hole), known(found?.mud_over_pore, missing)),
		),
		say: ({ value, size }, the) => {
			const { hole, found } = holeOf(the);
			return [
				message("rules/mud-hole-is", {
					hole: hole.id,
					size,
					detail:
						value.value < 0
							? message("rules/lighter-than-pore", {
									formation: found?.highest_pore?.formation ?? message("rules/rock"),
								})
							: message("rules/heavier-than-pore", {
									formation: found?.highest_pore?.formation ?? message("rules/rock"),
								}),
					detail2: {
						parts: found?.highest_pore === undefined ? [] : [" (", found.highest_pore.density, ")"],
					},
				}),
			];
		},
	},
	"weakest place over mud": {
		noun: message("rules/strength-weakest-place-over-mud-density"),
		read: open((the, found) => {
			const { hole, at } = holeOf(the);
			if (found?.weakest_over_mud !== undefined)
				return boundedBy(unknownFracture(the, hole), {
					state: "known",
					value: found.weakest_over_mud.margin,
				});
			return the.well.strings.some(
				(string) => string.shoe.value < hole.bottom.value && string.hole.id !== hole.id,
			)
				? lacking(missingAt(message("rules/strength-shoe-above-hole", { hole: hole.id }), ...at))
				: absent(message("rules/no-shoe-is-above-hole", { hole: hole.id }));
		}),
		say: ({ value, size }, the) => {
			const { hole, found } = holeOf(the);
			const place = found?.weakest_over_mud?.place;
			const named =
				place === undefined
					? ""
					: place === found?.shoe
						? message("rules/shoe-of", { string: place })
						: place;
			return [
				value.value < 0
					? message("rules/bears-less-than-mud", { place: named, size, hole: hole.id })
					: message("rules/bears-more-than-mud", { place: named, size, hole: hole.id }),
			];
		},
	},
	"weakest place over circulating density": {
		noun: message("rules/strength-weakest-place-over-ecd"),
		read: open((the, found) => {
			const { hole, at } = holeOf(the);
			if (!isBelowShoe(the)) return absent(message("rules/no-shoe-is-above-hole", { hole: hole.id }));
			if (hole.drilling?.rate === undefined)
				return lacking(
					missingAt(message("rules/rate-of-hole", { hole: hole.id }), ...at, "drilling", "rate"),
				);
			return known(found?.hydraulics?.weakest_over_ecd?.margin, frictionMissing(the));
		}),
		say: ({ value, size }, the) =>
			saidOfColumn(the, value.value, size, holeOf(the).found?.hydraulics?.weakest_over_ecd, "circulating"),
	},
	"weakest place over surge": {
		noun: message("rules/strength-weakest-place-over-surge"),
		read: open((the) => {
			const { hole } = holeOf(the);
			if (!isBelowShoe(the)) return absent(message("rules/no-shoe-is-above-hole", { hole: hole.id }));
			if (!hasSpeed(the)) return speedMissing(the);
			return known(surgeOf(the)?.margin, frictionMissing(the));
		}),
		say: ({ value, size }, the) => saidOfColumn(the, value.value, size, surgeOf(the), "surge"),
	},
	"swabbed mud over pore pressure": {
		noun: message("rules/swabbed-mud-over-pore"),
		read: open((the, found, missing) => {
			const { hole } = holeOf(the);
			if (hole.drilling?.tripSpeed === undefined) return speedMissing(the);
			if (found?.hydraulics === undefined || the.well.drillString === undefined)
				return lacking(frictionMissing(the));
			return known(swabOf(the)?.margin, missing);
		}),
		say: ({ value, size }, the) => {
			const { hole } = holeOf(the);
			const found = swabOf(the);
			const facts = {
				hole: hole.id,
				size,
				formation: found?.place ?? message("rules/rock"),
				detail: { parts: found === undefined ? [] : [" (", found.density, ")"] },
			};
			return [
				value.value < 0
					? message("rules/swabbed-below-pore", facts)
					: message("rules/swabbed-above-pore", facts),
			];
		},
	},
	"kick tolerance": {
		noun: message("rules/kick-tolerance"),
		read: open((the, found) => {
			const { hole } = holeOf(the);
			if (!isShutIn(found))
				return absent(message("rules/no-preventers-are-closed-on-kick-hole", { hole: hole.id }));
			if (the.well.wellControl?.kick?.gas_gradient === undefined)
				return lacking(missingAt(message("rules/design-kick-and-its-gas-gradient"), "well_control", "kick"));
			if (the.well.drillString === undefined)
				return lacking(missingAt(message("rules/drill-string"), "drill_string"));
			return boundedBy(
				[...unknownPore(the, hole), ...unknownFracture(the, hole)],
				known(
					found?.kick_tolerance,
					missingAt(message("rules/strength-shoe-above-hole", { hole: hole.id }), "casing"),
				),
			);
		}),
		say: ({ part }, the) => {
			const { hole, found } = holeOf(the);
			return [
				message("rules/holds-kick-while-hole-is-drilled", {
					detail:
						found?.kick_limited_by ??
						message("rules/holds-kick-while-hole-is-drilled.shoe", { shoe: found?.shoe ?? "" }),
					part,
					hole: hole.id,
					detail2: {
						parts:
							found?.kick_intensity === undefined
								? []
								: [message("rules/over-pore-pressure", { intensity: found.kick_intensity })],
					},
				}),
			];
		},
	},
	"design kick": {
		noun: message("rules/design-kick"),
		read: (the) => {
			const { hole, at, found } = holeOf(the);
			return known(
				found?.design_kick,
				missingAt(message("rules/design-kick-volume-hole", { hole: hole.id }), ...at, "kick", "volume"),
			);
		},
		say: ({ part }) => [message("rules/design-kick-is", { part })],
	},
	"rated pressure of preventers": {
		noun: message("rules/rated-working-pressure-preventers"),
		read: (the) => ({ state: "known", value: stackOf(the).stack.working_pressure }),
		say: ({ part }, the) => [
			message("rules/preventers-on-casing-are-rated-for", { over: stackOf(the).stack.over, part }),
		],
	},
	"anticipated surface pressure": {
		noun: message("rules/anticipated-surface-pressure"),
		read: (the) => {
			const { stack, casing } = stackOf(the);
			return known(
				casing?.maximum_surface_pressure,
				missingAt(
					message("rules/pore-pressure-and-shoe-strength-below", { over: stack.over }),
					"geology",
					"formations",
				),
			);
		},
		say: ({ part }) => [message("rules/gas-may-bring-to-surface", { part })],
	},
	"low-pressure test of preventers": {
		noun: message("rules/low-pressure-test-preventers"),
		read: (the) => {
			const { stack, at } = stackOf(the);
			if (isDrilledThrough(the, stack)) return absent(message("rules/hole-beneath-is-drilled-and-cased"));
			return known(
				test(stack)?.low,
				missingAt(
					message("rules/low-pressure-test-preventers-on", { over: stack.over }),
					...at,
					"test",
					"low",
				),
			);
		},
		say: ({ part }, the) => [
			message("rules/low-pressure-test-preventers-on-is-to", { over: stackOf(the).stack.over, part }),
		],
	},
	"test of preventers on casing": {
		noun: message("rules/high-pressure-test-preventers"),
		read: (the) => {
			const { stack, at } = stackOf(the);
			if (isDrilledThrough(the, stack)) return absent(message("rules/hole-beneath-is-drilled-and-cased"));
			if (test(stack)?.test_plug === true)
				return absent(message("rules/test-plug-keeps-test-preventers-off-casing"));
			return known(
				test(stack)?.high,
				missingAt(
					message("rules/high-pressure-test-preventers-on", { over: stack.over }),
					...at,
					"test",
					"high",
				),
			);
		},
		say: ({ part }, the) => [
			message("rules/preventers-on-casing-are-to-be-tested", { over: stackOf(the).stack.over, part }),
		],
	},
	"internal yield beneath preventers": {
		noun: message("rules/internal-yield-casing-beneath"),
		read: (the) => {
			const { casing, string, stack } = stackOf(the);
			return known(
				casing?.worn_internal_yield ?? casing?.least_internal_yield,
				string === undefined
					? missingAt(message("rules/string-called", { over: stack.over }), "casing")
					: {
							what: message("rules/open-hole-measures.what", { string: string.id }),
							at: stringPath(the.well, string, "pipe"),
						},
			);
		},
		say: ({ part }) => [message("rules/internal-yield-casing-beneath-is", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
