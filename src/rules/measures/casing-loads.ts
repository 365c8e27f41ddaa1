import type { LoadCaseResults, LoadKind } from "../../calc/results.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
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

const SITUATION: Readonly<Record<string, string>> = {
	running: "while it is run",
	bending: "pulled back through the curve",
	shock: "stopped short while it is run",
	overpull: "stuck and pulled",
	cementing: "with the cement in place",
	"bumped-plug": "when the plug is bumped",
	"pressure-test": "in the pressure test",
	"gas-kick": "with a gas kick shut in",
	evacuation: "evacuated",
	stimulation: "at the maximum treating pressure",
	"shut-in-gas": "shut in full of gas",
	"tubing-leak": "with a tubing leak at surface",
	drawdown: "drawn down below the packer",
	"mobile-salt": "under mobile salt",
};

/** Least factor of a kind over the design factor asked; a case that could not be worked leaves it open unless one fails. */
const design = (kind: LoadKind): Measure => ({
	noun: `${kind} factor over its design factor`,
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
				what: `an input of the ${kind} loads of the ${string.id} string`,
				at: gap.needs[0] ?? [],
			});
		return absent(
			`${gap === undefined ? "nothing loads" : "no mud loads"} the ${string.id} string in ${kind}`,
		);
	},
	say: (_, the) => {
		const worst = governing(the, kind);
		if (worst?.least_factor === undefined) return [];
		const weak = worst.governed_by === "connection" ? ", in the connection" : "";
		return [
			`the ${stringOf(the).id} string has a ${kind} factor of `,
			{ told: worst.least_factor, from: worst.required },
			` ${SITUATION[worst.situation] ?? worst.situation}${weak}, where `,
			worst.required,
			" is asked: ",
			factorReached.of({ SF: worst.least_factor, DF: worst.required }),
			" of it",
		];
	},
});

/** Load situations in which gas stands against the connections. */
const GAS_SITUATIONS = ["gas-kick", "shut-in-gas", "tubing-leak"];

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
	"hydrogen sulfide": ["statement on hydrogen sulfide", "safety", "hydrogen_sulfide"],
	fraction: ["fraction of hydrogen sulfide", "safety", "hydrogen_sulfide", "fraction"],
	"pore pressure": ["pore pressures", "geology", "formations"],
	temperature: ["temperature gradient", "geology", "temperature"],
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

export const casingLoadMeasures = {
	"burst factor over design factor": design("burst"),
	"collapse factor over design factor": design("collapse"),
	"tension factor over design factor": design("tension"),
	"triaxial factor over design factor": design("triaxial"),
	"overpull left": {
		noun: "overpull left at the greatest pick-up",
		read: (the) => {
			const string = stringOf(the);
			const casing = casingOf(the);
			if (string.kind !== "casing") return absent(`the ${string.id} string is run on another`);
			if (string.landed !== undefined) return absent(`the ${string.id} string is on record as landed`);
			const F = (casing?.sections ?? []).flatMap(({ body_yield, joint_strength }) => [
				body_yield,
				...(joint_strength === undefined ? [] : [joint_strength]),
			]);
			const pulled = casing?.hook_load?.pulled_greatest_friction;
			return known(
				pulled && F.length > 0
					? overpullLeft.of({ F_i: F, DF: string.designFactors.overpull, P: pulled })
					: undefined,
				missingOf(the, string, "mud density of the hole, for the hook load", "hole"),
			);
		},
		say: ({ part }, the) => [
			`the ${stringOf(the).id} string has `,
			part,
			" of overpull left at the greatest pick-up",
		],
	},
	"slack-off at the block": {
		noun: "hook load let down with the greatest friction",
		read: (the) => {
			const string = stringOf(the);
			if (string.kind !== "casing") return absent(`the ${string.id} string is run on another`);
			if (string.landed !== undefined) return absent(`the ${string.id} string is on record as landed`);
			return known(
				casingOf(the)?.hook_load?.run_in_greatest_friction,
				missingOf(the, string, "mud density of the hole, for the hook load", "hole"),
			);
		},
		say: ({ part }, the) => [
			`the hook carries `,
			part,
			` with the ${stringOf(the).id} string let down to bottom`,
		],
	},
	"hook load without friction": {
		noun: "hook load without friction",
		read: (the) =>
			known(casingOf(the)?.hook_load?.free, missingOf(the, stringOf(the), "mud density of the hole", "hole")),
		say: ({ part }) => ["the hook load without friction is ", part],
	},
	"compression over helical buckling": {
		noun: "compression over that of helical buckling",
		read: (the) => {
			const pressed = casingOf(the)?.slack_off_compression;
			if (stringOf(the).landed !== undefined)
				return absent(`the ${stringOf(the).id} string is on record as landed`);
			return pressed === undefined
				? absent(`friction does not press the ${stringOf(the).id} string together`)
				: { state: "known", value: pressed.over_helical };
		},
		say: ({ part }, the) => {
			const pressed = casingOf(the)?.slack_off_compression;
			return [
				`let down with the greatest friction the ${stringOf(the).id} string is compressed to `,
				part,
				" times helical buckling",
				...(pressed === undefined
					? []
					: [" at ", pressed.at.md, " (", pressed.compression, "), and buckling was not evaluated"]),
			];
		},
	},
	"gas pressure on connections": {
		noun: "gas pressure on the connections",
		read: (the) => {
			const string = stringOf(the);
			const api = string.sections.filter(({ threads }) => threads !== undefined);
			if (api.length === 0) return absent(`the connections of the ${string.id} string are not API threads`);
			const pressure = gasPressure(the);
			return pressure === undefined
				? absent(`no gas is shut in by the ${string.id} string`)
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
				`gas may stand at `,
				part,
				` behind the ${listed(names)} connections of the ${stringOf(the).id} string`,
			];
		},
	},
	"sections unfit for sour service": {
		noun: "sections of pipe outside the limits for sour service",
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
						`fitness of the ${what ?? "pipe"} for sour service`,
						"pipe",
						open.number - 1,
						"ratings",
						"sour_service",
					),
				);
			}
			return sections.every(({ sour_service }) => sour_service.finding === "not sour")
				? absent(`the service of the ${string.id} string is not sour`)
				: { state: "known", value: counted(0, "sections outside the limits") };
		},
		say: (_, the) => {
			const bad = unfit(the);
			const { sections, id } = stringOf(the);
			const [first] = bad;
			if (first === undefined)
				return [`every section of the ${id} string is within the limits for sour service`];
			const { coldest, lowest_temperature: lowest, partial_pressure: partial } = first.sour_service;
			return [
				`${sections[first.number - 1]?.grade ?? "pipe"} of the ${id} string is not fit for sour service`,
				...(partial === undefined ? [] : [" at a hydrogen sulfide partial pressure of ", partial]),
				...(lowest === undefined || coldest === undefined
					? []
					: [": it needs ", lowest, " or more and is as cold as ", coldest]),
			];
		},
	},
	"public places within the exposure radius": {
		noun: "public places within the radius of exposure",
		read: (the) => {
			const stated = the.well.safety?.hydrogen_sulfide;
			if (stated === undefined)
				return lacking(missingAt("statement on hydrogen sulfide", "safety", "hydrogen_sulfide"));
			if (stated.fraction === undefined && stated.expected)
				return lacking(missingAt("fraction of hydrogen sulfide", "safety", "hydrogen_sulfide", "fraction"));
			if ((stated.fraction?.value ?? 0) <= 0) return absent("no hydrogen sulfide is expected");
			if (stated.gas_rate === undefined)
				return lacking(missingAt("rate of gas that could escape", "safety", "hydrogen_sulfide", "gas_rate"));
			return { state: "known", value: counted(exposed(the).length, "public places within the radius") };
		},
		say: (_, the) => {
			const radius = the.results.safety?.hydrogen_sulfide?.rule.to_100_ppm;
			const found = exposed(the);
			const where = radius === undefined ? [] : [" the 100 ppm radius of exposure of ", radius];
			return found.length === 0
				? ["no listed public place is within", ...where]
				: [`${listed(found.map(({ name }) => name))} ${found.length > 1 ? "are" : "is"} within`, ...where];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
