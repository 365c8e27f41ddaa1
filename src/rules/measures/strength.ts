import type { SlurryResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import { practicallyEqual } from "../../units/practically-equal.ts";
import type { Slurry, StrengthPoint } from "../../well/well.ts";
import { type Case, missingOf, stringPath } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { listed } from "../reason.ts";
import { cementOf, reachesInto } from "./cement.ts";
import { absent, lacking, type Measure, type Parameters, type Reading } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The slurries that lie in the zone a limit names, lowest first. */
const slurriesIn = (the: Case, { zone, height }: Parameters): readonly SlurryResults[] | undefined => {
	const slurries = [...(cementOf(the)?.slurries ?? [])].sort((a, b) => b.bottom.md.value - a.bottom.md.value);
	const shoe = casingOf(the)?.shoe;
	if (slurries.length === 0 || shoe === undefined) return undefined;
	if (zone === undefined || zone.kind === "whole") return slurries;
	if (zone.kind === "shoe") return slurries.slice(0, 1);
	if (zone.kind === "filler") return slurries.slice(1);
	return height && slurries.filter((slurry) => reachesInto(slurry, shoe, zone, height.value));
};

/** `of the tail slurry, in the critical zone`. */
const slurryName = (the: Case, parameters: Parameters): Said => {
	const ids = (slurriesIn(the, parameters) ?? []).map(({ id }) => id);
	const zone = zoneName(parameters);
	return ids.length === 0
		? zone
		: message("rules/strength-of-slurries", { count: ids.length, ids: listed(ids), zone });
};

const zoneName = ({ zone }: Parameters): Said => {
	switch (zone?.kind) {
		case "shoe":
			return message("rules/at-shoe");
		case "filler":
			return message("rules/above-slurry-at-shoe");
		case "bottom":
			return message("rules/in-critical-zone");
		case "above bottom":
			return message("rules/above-critical-zone");
		default:
			return message("rules/over-whole-column");
	}
};

/** Bounds that laboratory points put on the strength at a time: cement gains strength, so earlier points bound it from below. */
const boundsAt = (points: readonly StrengthPoint[], after: number) => {
	const before = points.filter(
		(point) => point.after.value <= after || practicallyEqual(point.after.value, after),
	);
	const later = points.filter(
		(point) => point.after.value >= after || practicallyEqual(point.after.value, after),
	);
	const atLeast = before.reduce<Known<"pressure"> | undefined>(
		(best, { value }) => (best === undefined || value.value > best.value ? value : best),
		undefined,
	);
	const atMost = later.reduce<Known<"pressure"> | undefined>(
		(best, { value }) => (best === undefined || value.value < best.value ? value : best),
		undefined,
	);
	return { atLeast, atMost };
};

const lowest = (values: readonly (Known | undefined)[]): Known | undefined =>
	values.every((value) => value !== undefined) && values.length > 0
		? values.reduce((least, each) =>
				each !== undefined && least !== undefined && each.value < least.value ? each : least,
			)
		: undefined;

/** The least of those that are known: one weak slurry bounds the zone from above. */
const lowestKnown = (values: readonly (Known | undefined)[]): Known | undefined =>
	lowest(values.filter((value) => value !== undefined));

const definitionOf = (
	the: Case,
	id: string,
): { readonly slurry: Slurry | undefined; readonly index: number } => {
	const slurries = stringOf(the).cement?.slurries ?? [];
	const index = slurries.findIndex((slurry) => slurry.id === id);
	return { slurry: slurries[index], index };
};

const strengthAt = (the: Case, parameters: Parameters, after: Known<"duration">): Reading => {
	const slurries = slurriesIn(the, parameters);
	const string = stringOf(the);
	if (slurries === undefined) return lacking(missingOf(the, string, "cement", "cement"));
	if (slurries.length === 0)
		return absent(
			message("rules/no-slurry-string-lies", { string: string.id, zoneName: zoneName(parameters) }),
		);
	const missing: MissingInput[] = [];
	const bounds = slurries.map(({ id }) => {
		const { slurry, index } = definitionOf(the, id);
		const { curedAt } = parameters;
		const points = (slurry?.strength ?? []).filter(
			({ at }) => curedAt === undefined || (at !== undefined && practicallyEqual(at.value, curedAt.value)),
		);
		const found = boundsAt(points, after.value);
		if (found.atLeast === undefined || found.atLeast.value !== found.atMost?.value)
			missing.push({
				what:
					curedAt === undefined
						? message("rules/strength-after", { string: string.id, id, after })
						: message("rules/strength-after-cured", { string: string.id, id, after, curedAt }),
				at: stringPath(the.well, string, "cement", "slurries", index, "strength"),
			});
		return found;
	});
	const atLeast = lowest(bounds.map((bound) => bound.atLeast));
	const atMost = lowestKnown(bounds.map((bound) => bound.atMost));
	if (atLeast === undefined && atMost === undefined) return { state: "missing", missing };
	if (atLeast && atMost && atLeast.value === atMost.value) return { state: "known", value: atLeast };
	return { state: "bounded", missing, ...(atLeast && { atLeast }), ...(atMost && { atMost }) };
};

const fluidOf = (the: Case, parameters: Parameters): Reading => {
	const slurries = slurriesIn(the, parameters);
	const string = stringOf(the);
	if (slurries === undefined) return lacking(missingOf(the, string, "cement", "cement"));
	const read = slurries.map(({ id }) => ({ id, ...definitionOf(the, id) }));
	const unknown = read.filter(({ slurry }) => slurry?.freeFluid === undefined);
	if (unknown.length > 0)
		return lacking(
			...unknown.map(({ id, index }) =>
				missingOf(
					the,
					string,
					message("rules/free-fluid-slurry", { id }),
					"cement",
					"slurries",
					index,
					"free_fluid",
				),
			),
		);
	const values = read.flatMap(({ slurry }) => (slurry?.freeFluid === undefined ? [] : [slurry.freeFluid]));
	const [first, ...rest] = values;
	if (first === undefined)
		return absent(
			message("rules/no-slurry-string-lies", { string: string.id, zoneName: zoneName(parameters) }),
		);
	return {
		state: "known",
		value: rest.reduce((most, each) => (each.value > most.value ? each : most), first),
	};
};

export const strengthMeasures = {
	"wait on cement": {
		noun: message("rules/wait-on-cement"),
		read: (the) => {
			const wait = stringOf(the).cement?.waitOnCement;
			return wait === undefined
				? lacking(missingOf(the, stringOf(the), message("rules/wait-on-cement"), "cement", "wait_on_cement"))
				: { state: "known", value: wait };
		},
		say: ({ part }) => [message("rules/wait-on-cement-is", { part })],
	},
	"strength at drill-out": {
		noun: message("rules/strength-when-wait-on-cement-ends"),
		read: (the, parameters) => {
			const wait = stringOf(the).cement?.waitOnCement;
			if (wait === undefined)
				return lacking(
					missingOf(the, stringOf(the), message("rules/wait-on-cement"), "cement", "wait_on_cement"),
				);
			return strengthAt(the, parameters, wait);
		},
		say: ({ part }, the, parameters) => {
			const wait = stringOf(the).cement?.waitOnCement;
			return [
				message("rules/strength-is", {
					slurryName: slurryName(the, parameters),
					part,
					detail: { parts: wait === undefined ? [] : [message("rules/when-wait-on-cement-ends", { wait })] },
				}),
			];
		},
	},
	strength: {
		noun: message("rules/compressive-strength"),
		read: (the, parameters) =>
			parameters.after === undefined
				? lacking(missingOf(the, stringOf(the), message("rules/time-strength"), "cement"))
				: strengthAt(the, parameters, parameters.after),
		say: ({ part }, the, parameters) => [
			message("rules/strength-is-2", {
				slurryName: slurryName(the, parameters),
				part,
				detail: {
					parts: parameters.after === undefined ? [] : [message("rules/after", { after: parameters.after })],
				},
				detail2: {
					parts:
						parameters.curedAt === undefined
							? []
							: [message("rules/cured-at", { curedAt: parameters.curedAt })],
				},
			}),
		],
	},
	"free fluid": {
		noun: message("rules/free-fluid"),
		read: fluidOf,
		say: ({ part }, the, parameters) => [
			message("rules/free-fluid-is", { slurryName: slurryName(the, parameters), part }),
		],
	},
} as const satisfies Readonly<Record<string, Measure>>;
