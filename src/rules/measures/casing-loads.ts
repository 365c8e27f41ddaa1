import type { LoadCaseResults, LoadKind } from "../../calc/results.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message, type Said } from "../../messages/message.ts";
import type { CasingString } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { factorReached, overpullLeft } from "../formulas.ts";
import { listed } from "../reason.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The case of one kind that comes nearest to what is asked of it. */
const governing = (the: Case, kind: LoadKind): LoadCaseResults | undefined =>
	(casingOf(the)?.loads ?? [])
		.filter((each) => each.kind === kind && each.least_factor !== undefined)
		.sort((a, b) => shareOf(a) - shareOf(b))[0];

const shareOf = ({ least_factor, required }: LoadCaseResults): number =>
	(least_factor?.value ?? Number.POSITIVE_INFINITY) / required.value;

const SITUATION: Readonly<Record<string, Said>> = {
	running: message("rules/while-it-is-run"),
	bending: message("rules/pulled-back-through-curve"),
	shock: message("rules/stopped-short-while-it-is-run"),
	overpull: message("rules/stuck-and-pulled"),
	cementing: message("rules/with-cement-in-place"),
	"bumped-plug": message("rules/when-plug-is-bumped"),
	"pressure-test": message("rules/in-pressure-test"),
	"gas-kick": message("rules/with-gas-kick-shut-in"),
	evacuation: message("rules/evacuated"),
	stimulation: message("rules/at-maximum-treating-pressure"),
	"shut-in-gas": message("rules/shut-in-full-gas"),
	"tubing-leak": message("rules/with-tubing-leak-at-surface"),
	drawdown: message("rules/drawn-down-below-packer"),
	"producing-hot": message("rules/while-producing-hot"),
	"shut-in-hot": message("rules/shut-in-hot-full-gas"),
	"tubing-leak-hot": message("rules/with-hot-tubing-leak-at-surface"),
	"mobile-salt": message("rules/under-mobile-salt"),
};

const KIND: Readonly<Record<LoadKind, Said>> = {
	burst: message("rules/kind-burst"),
	collapse: message("rules/kind-collapse"),
	tension: message("rules/kind-tension"),
	triaxial: message("rules/kind-triaxial"),
};

/** Least factor of a kind over the design factor asked; a case that could not be worked leaves it open unless one fails. */
const design = (kind: LoadKind): Measure => ({
	noun: message("rules/factor-over-its-design-factor", { kind: KIND[kind] }),
	read: (the): Reading => {
		const string = stringOf(the);
		const worst = governing(the, kind);
		const gap = the.results.undetermined.find(
			({ key }) => key === `casing.${string.id}.loads` || key.startsWith(`casing.${string.id}.loads.${kind}`),
		);
		const value = worst?.least_factor && factorReached.of({ SF: worst.least_factor, DF: worst.required });
		if (value !== undefined && (gap === undefined || value.value < 1)) return { state: "known", value };
		if (gap !== undefined && gap.needs.length > 0)
			return lacking({
				what: message("rules/design.what", { kind: KIND[kind], string: string.id }),
				at: gap.needs[0] ?? [],
			});
		return absent(
			gap === undefined
				? message("rules/nothing-loads", { string: string.id, kind: KIND[kind] })
				: message("rules/no-mud-loads", { string: string.id, kind: KIND[kind] }),
		);
	},
	say: (_, the) => {
		const worst = governing(the, kind);
		if (worst?.least_factor === undefined) return [];
		const weak = worst.governed_by === "connection" ? message("rules/in-the-connection") : "";
		return [
			message("rules/string-has-factor-where-is-asked-it", {
				string: stringOf(the).id,
				kind: KIND[kind],
				value: { told: worst.least_factor, from: worst.required },
				situation: SITUATION[worst.situation] ?? worst.situation,
				weak,
				place: worst.at === undefined ? "" : message("rules/at-measured-depth", { md: worst.at.md }),
				required: { factor: worst.required },
				of: factorReached.of({ SF: worst.least_factor, DF: worst.required }),
			}),
		];
	},
});

/** Load situations in which gas stands against the connections. */
const GAS_SITUATIONS = ["gas-kick", "shut-in-gas", "tubing-leak", "shut-in-hot", "tubing-leak-hot"];

const gasPressure = (the: Case): Known<"pressure"> | undefined =>
	(casingOf(the)?.situations ?? [])
		.filter(({ id }) => GAS_SITUATIONS.includes(id))
		.flatMap(({ surface_pressure }) => surface_pressure ?? [])
		.sort((a, b) => b.value - a.value)[0];

const unfit = (the: Case) =>
	(casingOf(the)?.sections ?? []).filter(({ sour_service }) =>
		["outside the limits", "stated unfit"].includes(sour_service.finding),
	);

const SOUR_INPUT = {
	"hydrogen sulfide": [message("rules/statement-on-hydrogen-sulfide"), "safety", "hydrogen_sulfide"],
	fraction: [message("rules/fraction-hydrogen-sulfide"), "safety", "hydrogen_sulfide", "fraction"],
	"pore pressure": [message("rules/pore-pressures"), "geology", "formations"],
	temperature: [message("rules/temperature-gradient"), "geology", "temperature"],
} as const;

/** Places where people are, by the kinds of the definition's own list. */
const PUBLIC_PLACES = ["dwelling", "school", "hospital", "place of worship", "public building", "road"];

const exposed = ({ well, results }: Case) => {
	const radius = results.safety?.hydrogen_sulfide?.rule.to_100_ppm;
	return well.neighbors.filter(({ id, kind, surveyed = [] }) => {
		if (radius === undefined || !PUBLIC_PLACES.includes(kind)) return false;
		const computed = results.site.neighbors.find((place) => place.id === id)?.from_wellhead;
		const distances = [
			...surveyed.map(({ distance }) => distance.value),
			...(computed ? [computed.value] : []),
		];
		return distances.length > 0 && Math.min(...distances) <= radius.value;
	});
};

const counted = (n: number, what: string): Known<"count"> => constant("count", n, what, cite("definition"));

/** Of casing that is still to be run from surface: what its run comes to, or why nothing is asked. */
const ofRun =
	(worked: (the: Case, string: CasingString) => Known | Reading | undefined) =>
	(the: Case): Reading => {
		const string = stringOf(the);
		if (string.kind !== "casing")
			return absent(message("rules/string-is-run-on-another", { string: string.id }));
		if (string.landed !== undefined)
			return absent(message("rules/string-is-on-record-as-landed", { string: string.id }));
		const found = worked(the, string);
		return found !== undefined && "state" in found
			? found
			: known(found, missingOf(the, string, message("rules/mud-density-hole-for-hook-load"), "hole"));
	};

/** How deep the shoe goes by the weight of the string alone. */
const reachOf = (friction: "least_friction" | "greatest_friction"): Measure => ({
	noun:
		friction === "greatest_friction"
			? message("rules/reach-greatest-friction")
			: message("rules/reach-least-friction"),
	read: ofRun((the) => casingOf(the)?.slack_off?.[friction].reach.md),
	say: ({ value, part }, the) => {
		const { id, shoe } = stringOf(the);
		const pressed = casingOf(the)?.slack_off_compression;
		const facts = { string: id, part };
		if (value.value >= shoe.value)
			return [
				friction === "greatest_friction"
					? message("rules/slides-to-greatest", facts)
					: message("rules/slides-to-least", facts),
			];
		const why =
			pressed === undefined || pressed.over_helical.value <= 1 || friction === "least_friction"
				? ""
				: message("rules/coiled-at", {
						md: pressed.at.md,
						compression: pressed.compression,
						helical: pressed.helical,
					});
		return [
			friction === "greatest_friction"
				? message("rules/stops-at-greatest", { ...facts, why })
				: message("rules/stops-at-least", { ...facts, why }),
		];
	},
});

export const casingLoadMeasures = {
	"burst factor over design factor": design("burst"),
	"collapse factor over design factor": design("collapse"),
	"tension factor over design factor": design("tension"),
	"triaxial factor over design factor": design("triaxial"),
	"overpull left": {
		noun: message("rules/overpull-left-at-greatest-pick-up"),
		read: ofRun((the, string) => {
			const casing = casingOf(the);
			const F = (casing?.sections ?? []).flatMap(({ body_yield, joint_strength }) => [
				body_yield,
				...(joint_strength === undefined ? [] : [joint_strength]),
			]);
			const pulled = casing?.hook_load?.pulled_greatest_friction;
			return pulled && F.length > 0
				? overpullLeft.of({ F_i: F, DF: string.designFactors.overpull, P: pulled })
				: undefined;
		}),
		say: ({ part }, the) => [
			message("rules/string-has-overpull-left-at-greatest-pick", { string: stringOf(the).id, part }),
		],
	},
	"slack-off at the block": {
		noun: message("rules/hook-load-let-down-with-greatest"),
		read: ofRun((the, string) => {
			const hook = casingOf(the)?.hook_load;
			return hook !== undefined && hook.run_in_greatest_friction === undefined
				? absent(message("rules/string-stops-short", { string: string.id }))
				: hook?.run_in_greatest_friction;
		}),
		say: ({ part }, the) => [
			message("rules/hook-carries-with-string-let-down-to", { part, string: stringOf(the).id }),
		],
	},
	"hook load without friction": {
		noun: message("rules/hook-load-without-friction"),
		read: (the) =>
			known(
				casingOf(the)?.hook_load?.free,
				missingOf(the, stringOf(the), message("rules/mud-density-hole"), "hole"),
			),
		say: ({ part }) => [message("rules/hook-load-without-friction-is", { part })],
	},
	"reach with the greatest friction": reachOf("greatest_friction"),
	"reach with the least friction": reachOf("least_friction"),
	"gas pressure on connections": {
		noun: message("rules/gas-pressure-on-connections"),
		read: (the) => {
			const string = stringOf(the);
			const api = string.sections.filter(({ threads }) => threads !== undefined);
			if (api.length === 0)
				return absent(message("rules/connections-string-are-not-api-threads", { string: string.id }));
			const pressure = gasPressure(the);
			return pressure === undefined
				? absent(message("rules/no-gas-is-shut-in-by-string", { string: string.id }))
				: { state: "known", value: pressure };
		},
		say: ({ part }, the) => {
			const names = [
				...new Set(
					stringOf(the).sections.flatMap(({ threads, connection }) =>
						threads === undefined ? [] : [connection],
					),
				),
			];
			return [
				message("rules/gas-may-stand-at-behind-connections-string", {
					part,
					names: listed(names),
					string: stringOf(the).id,
				}),
			];
		},
	},
	"sections unfit for sour service": {
		noun: message("rules/sections-pipe-outside-limits-for-sour"),
		read: (the) => {
			const string = stringOf(the);
			const sections = casingOf(the)?.sections ?? [];
			const bad = unfit(the);
			if (bad.length > 0)
				return { state: "known", value: counted(bad.length, "sections outside the limits") };
			const open = sections.find(({ sour_service }) => sour_service.finding === "cannot tell");
			const what = open?.sour_service.missing;
			if (open !== undefined) {
				const place = SOUR_INPUT[what as keyof typeof SOUR_INPUT];
				if (place !== undefined) {
					const [name, ...at] = place;
					return lacking(missingAt(name, ...at));
				}
				return lacking(
					missingOf(
						the,
						string,
						message("rules/fitness-for-sour-service", { detail: what ?? "pipe" }),
						"pipe",
						open.number - 1,
						"ratings",
						"sour_service",
					),
				);
			}
			return sections.every(({ sour_service }) => sour_service.finding === "not sour")
				? absent(message("rules/service-string-is-not-sour", { string: string.id }))
				: { state: "known", value: counted(0, "sections outside the limits") };
		},
		say: (_, the) => {
			const bad = unfit(the);
			const { sections, id } = stringOf(the);
			const [first] = bad;
			if (first === undefined) return [message("rules/every-section-string-is-within-limits-for", { id })];
			const { coldest, lowest_temperature: lowest, partial_pressure: partial } = first.sour_service;
			return [
				message("rules/string-is-not-fit-for-sour-service", {
					detail: sections[first.number - 1]?.grade ?? "pipe",
					id,
					detail2: {
						parts:
							partial === undefined
								? []
								: [message("rules/at-hydrogen-sulfide-partial-pressure", { partial })],
					},
					detail3: {
						parts:
							lowest === undefined || coldest === undefined
								? []
								: [message("rules/it-needs-or-more-and-is-as", { lowest, coldest })],
					},
				}),
			];
		},
	},
	"public places within the exposure radius": {
		noun: message("rules/public-places-within-radius-exposure"),
		read: (the) => {
			const stated = the.well.safety?.hydrogen_sulfide;
			if (stated === undefined)
				return lacking(
					missingAt(message("rules/statement-on-hydrogen-sulfide"), "safety", "hydrogen_sulfide"),
				);
			if (stated.fraction === undefined && stated.expected)
				return lacking(
					missingAt(message("rules/fraction-hydrogen-sulfide"), "safety", "hydrogen_sulfide", "fraction"),
				);
			if ((stated.fraction?.value ?? 0) <= 0) return absent(message("rules/no-hydrogen-sulfide-is-expected"));
			if (stated.gas_rate === undefined)
				return lacking(
					missingAt(message("rules/rate-gas-that-could-escape"), "safety", "hydrogen_sulfide", "gas_rate"),
				);
			return { state: "known", value: counted(exposed(the).length, "public places within the radius") };
		},
		say: (_, the) => {
			const radius = the.results.safety?.hydrogen_sulfide?.rule.to_100_ppm;
			const found = exposed(the);
			const where = radius === undefined ? [] : [" the 100 ppm radius of exposure of ", radius];
			return found.length === 0
				? [message("rules/no-listed-public-place-is-within", { where: { parts: where } })]
				: [
						message("rules/places-within", {
							count: found.length,
							places: listed(found.map(({ name }) => name)),
							where: { parts: where },
						}),
					];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
