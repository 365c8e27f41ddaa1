import type { Known } from "../../../cite/known.ts";
import type { PaperContext } from "../../context.ts";
import { shown, textCell } from "../../context.ts";
import { asGiven, named, titled } from "../../parts/part.ts";
import { isDone } from "../job.ts";
import { one, type SheetLine, type SheetValues, spokenDistance, words } from "./line.ts";

interface Zone {
	readonly distance: Known;
	readonly from?: string | undefined;
	readonly source?: string | undefined;
}

/** A distance that is kept; `name` chooses the words that stand under it where it is set large. */
const zone = (context: PaperContext, name: string, written: Zone | undefined): readonly SheetLine[] => {
	if (written === undefined) return [];
	const { label, findLabel } = context.words;
	const source = written.source === undefined ? "" : ` (${written.source})`;
	const from = written.from === undefined ? "" : ` ${label("phrases.from")} ${written.from}`;
	const under = findLabel(`crew.large.${name}`)?.replace("{from}", written.from ?? "");
	return [
		{
			cell: spokenDistance(context, written.distance),
			note: `${from}${source}`,
			...(under === undefined ? {} : { under: `${under}${source}` }),
		},
	];
};

/** Oxygen warns as it falls, every other gas as it rises. */
const alarm = (
	context: PaperContext,
	{ gas, low, high }: { readonly gas: string; readonly low: Known; readonly high?: Known | undefined },
): SheetLine["cell"] => {
	const word = (key: string) => ({
		kind: "text" as const,
		text: `${context.words.label(`crew.alarm.${key}`)} `,
	});
	const first = gas === "oxygen" ? "below" : "above";
	const second = gas === "oxygen" ? "or_above" : "then_above";
	return {
		kind: "rich",
		children: [
			word(first),
			shown(context, low),
			...(high === undefined
				? []
				: [{ kind: "text" as const, text: "; " }, word(second), shown(context, high)]),
		],
	};
};

/** People, place, weather and gas. */
export const SITE_VALUES: SheetValues = {
	person_in_charge: (c) => words(c.well.safety?.person_in_charge),
	site_address: (c) => words(c.well.safety?.emergency?.site_address),
	exclusion: (c) => zone(c, "exclusion", c.well.safety?.exclusion),
	ignition: (c) => zone(c, "ignition", c.well.safety?.ignition),
	radio_silence: (c) => zone(c, "radio_silence", c.well.safety?.radio_silence),
	flame_resistant_clothing: (c) =>
		zone(c, "flame_resistant_clothing", c.well.safety?.flame_resistant_clothing),
	lightning: (c) => {
		const lightning = c.well.safety?.lightning;
		if (lightning === undefined) return [];
		const wait = lightning.wait;
		return [
			{
				cell: {
					kind: "rich",
					children: [
						spokenDistance(c, lightning.distance),
						...(wait === undefined
							? []
							: [
									{ kind: "text" as const, text: `; ${c.words.label("crew.wait_after_lightning")} ` },
									shown(c, wait),
								]),
					],
				},
				note: ` (${lightning.source})`,
				large: [
					{ cell: spokenDistance(c, lightning.distance), label: c.words.label("crew.numbers.lightning") },
				],
				...(wait === undefined ? {} : { more: true }),
			},
		];
	},
	wind_limit_crane: (c) => {
		const wind = c.well.safety?.wind_limit;
		return one(c, wind?.crane).map((line) => ({ ...line, note: ` (${wind?.source})` }));
	},
	wind_limit_man_lift: (c) => {
		const wind = c.well.safety?.wind_limit;
		return one(c, wind?.man_lift).map((line) => ({ ...line, note: ` (${wind?.source})` }));
	},
	hearing_protection: (c) => one(c, c.well.safety?.noise?.hearing_protection),
	silica_area: (c) => {
		const silica = c.well.safety?.silica;
		return words(silica?.regulated_area).map((line) => ({
			...line,
			cell: textCell(`${silica?.regulated_area}: ${silica?.respirator} (${silica?.source})`),
		}));
	},
	muster_points: (c) => {
		const points = c.well.safety?.muster_points ?? [];
		return words(points.map((point) => `${titled(point.id)}: ${point.at}`).join("; "));
	},
	landing_site: (c) => {
		const place = c.well.safety?.emergency?.landing_site;
		return place === undefined
			? []
			: [
					{
						cell: {
							kind: "rich",
							children: [
								shown(c, place.latitude, COORDINATE),
								{ kind: "text", text: ", " },
								shown(c, place.longitude, COORDINATE),
							],
						},
					},
				];
	},
	gas_alarms: (c) =>
		(c.well.safety?.gas_alarms ?? []).map((each) => ({
			of: asGiven(c, each.gas) ?? each.gas,
			cell: alarm(c, each),
			note: ` (${each.source})`,
			large: [
				{
					cell: shown(c, each.low),
					label: `${titled(asGiven(c, each.gas) ?? each.gas)}: ${c.words.label(`crew.alarm.${each.gas === "oxygen" ? "large_below" : "large_above"}`)}`,
				},
			],
			more: true,
		})),
	hydrogen_sulfide: (c) => {
		const gas = c.well.safety?.hydrogen_sulfide;
		if (gas === undefined) return [];
		return words(c.words.label(gas.expected ? "crew.expected" : "crew.not_expected"));
	},
	preventers: (c) =>
		(c.well.wellControl?.preventers ?? []).flatMap(({ over, test, working_pressure }): SheetLine[] =>
			test?.high === undefined
				? []
				: [
						{
							of: named(c, over),
							large: [
								{ cell: shown(c, test.high), label: `${c.words.label("crew.test_high")}: ${named(c, over)}` },
							],
							more: true,
							cell: {
								kind: "rich",
								children: [
									...(test.low === undefined
										? []
										: [
												shown(c, test.low),
												{ kind: "text" as const, text: ` ${c.words.label("crew.then")} ` },
											]),
									shown(c, test.high),
									...(test.hold === undefined
										? []
										: [
												{ kind: "text" as const, text: `, ${c.words.label("crew.held_each")} ` },
												shown(c, test.hold),
											]),
									{ kind: "text", text: `; ${c.words.label("crew.rated")} ` },
									shown(c, working_pressure),
									...(test.test_plug === undefined && isDone(c)
										? []
										: [
												{
													kind: "text" as const,
													text: `; ${c.words.label(`crew.test_plug.${testPlug(test.test_plug)}`)}`,
												},
											]),
								],
							},
						},
					],
		),
};

/** Without a plug the casing beneath sees the test; a crew has to know before pressure is on. */
const testPlug = (stated: boolean | undefined): string =>
	stated === undefined ? "unset" : stated ? "with" : "without";

/** A pilot is read the place to a tenth of a second. */
const COORDINATE = { decimals: 6 } as const;
