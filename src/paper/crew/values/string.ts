import type { CasingResults } from "../../../calc/results.ts";
import type { Known } from "../../../cite/known.ts";
import type { QuantityText } from "../../../document/inline.ts";
import type { CasingString } from "../../../well/well.ts";
import type { PaperContext } from "../../context.ts";
import { shown } from "../../context.ts";
import { asGiven } from "../../parts/part.ts";
import { one, PULL, rich, type SheetLine, type SheetValues, WHOLE, words } from "./line.ts";

/** Where the shoe stops by the weight of the string: with the least friction already, or with the greatest. */
const stopsAt = (c: PaperContext, found: CasingResults | undefined): readonly (string | QuantityText)[] => {
	const { label } = c.words;
	const stuck = found?.hook_load?.run_in_least_friction === undefined;
	const reach = found?.slack_off?.[stuck ? "least_friction" : "greatest_friction"].reach.md;
	if (reach === undefined) return [label("crew.does_not_slide")];
	return [
		`${label("crew.stops_at")} `,
		shown(c, reach),
		` ${label(stuck ? "crew.even_with_least_friction" : "crew.with_greatest_friction")}`,
	];
};

export const casingOf = (context: PaperContext, string: CasingString | undefined) =>
	string === undefined ? undefined : context.results.casing[string.id];

/** A welded or plain string is not made up by torque. */
const isThreaded = (string: CasingString): boolean =>
	string.sections.some(({ connection }) => !/^plain end$|weld/iu.test(connection));

/** From least to greatest; one figure where both print alike. */
const range = (context: PaperContext, least: Known, greatest: Known): (string | QuantityText)[] => {
	const alike = Math.round(least.value / PULL.nearest) === Math.round(greatest.value / PULL.nearest);
	const low = shown(context, least, PULL);
	return alike ? [low] : [low, ` ${context.words.label("phrases.to")} `, shown(context, greatest, PULL)];
};

/** The pipe of today's job: where it goes, what it weighs, what it takes. */
export const STRING_VALUES: SheetValues = {
	string_shoe_md: (c, s) => one(c, casingOf(c, s)?.shoe.md),
	string_shoe_tvd: (c, s) => one(c, casingOf(c, s)?.shoe.tvd),
	string_length: (c, s) => one(c, casingOf(c, s)?.length),
	string_joints: (c, s) => one(c, casingOf(c, s)?.joints),
	string_weight_in_air: (c, s) => one(c, casingOf(c, s)?.weight_in_air, PULL),
	string_drift: (c, s) => {
		const sections = s?.sections ?? [];
		const several = new Set(sections.map(({ drift }) => drift.value)).size > 1;
		return (several ? sections : sections.slice(0, 1)).map((section) => ({
			...(several ? { of: `${c.words.label("crew.run")} ${section.number}` } : {}),
			cell: shown(c, section.drift),
		}));
	},
	/** The weakest of pipe and connection; where a connection's strength is not known, the pipe alone and that it is so. */
	string_tension: (c, s) => {
		const found = casingOf(c, s);
		if (found?.least_tension !== undefined) return one(c, found.least_tension, PULL);
		const bodies = (found?.sections ?? []).map(({ body_yield }) => body_yield);
		const [least] = bodies.toSorted((a, b) => a.value - b.value);
		return least === undefined
			? []
			: [{ cell: rich(shown(c, least, PULL), ` ${c.words.label("crew.pipe_alone")}`) }];
	},
	string_maximum_pull: (c, s) => one(c, casingOf(c, s)?.maximum_pull, PULL),
	/** Let down and pulled, at bottom, by least and greatest friction. */
	string_hook_load: (c, s) => {
		const load = casingOf(c, s)?.hook_load;
		if (load === undefined) return [];
		const { label } = c.words;
		// Where the string stops short the hook carries nothing to read at bottom.
		const { run_in_greatest_friction: hard, run_in_least_friction: easy } = load;
		const going =
			hard === undefined || easy === undefined
				? stopsAt(c, casingOf(c, s))
				: [`${label("crew.in")} `, ...range(c, hard, easy)];
		const coming = range(c, load.pulled_least_friction, load.pulled_greatest_friction);
		const { cased, openHole } = c.well.designBasis.friction;
		const assumed = [cased, openHole].some(([least]) => least.from.kind === "assumed");
		return [
			{
				cell: rich(...going, `; ${label("crew.out")} `, ...coming),
				...(assumed ? { note: ` ${label("crew.friction_assumed")}` } : {}),
			},
		];
	},
	/** As stated for the crew. The design basis's greatest speed is for the shock load, and no speed to run at. */
	string_running_speed: (c, s) =>
		one(c, s?.running?.speed, c.units === "field" ? { unit: "ft/min", decimals: 0 } : undefined),
	string_torque: (c, s): readonly SheetLine[] => {
		if (s === undefined) return [];
		if (!isThreaded(s)) return words(c.words.label("crew.no_thread"));
		const torque = s.running?.torque;
		return torque === undefined
			? []
			: [
					{
						cell: rich(shown(c, torque.least), ` ${c.words.label("phrases.to")} `, shown(c, torque.greatest)),
						note: ` (${torque.source})`,
					},
				];
	},
	string_floats: (c, s) => words(s?.floats.map((each) => asGiven(c, each)).join(", ")),
	string_internal_yield: (c, s) => one(c, casingOf(c, s)?.least_internal_yield, { nearest: 10 }),
	string_test_pressure: (c, s) => one(c, s?.pressureTest?.pressure),
	string_test_hold: (c, s) => one(c, s?.pressureTest?.hold),
	string_test_fall: (c, s) => one(c, s?.pressureTest?.allowedFall, WHOLE),
	hole_diameter: (c, s) => one(c, s?.hole.diameter, { pipeSize: true }),
	/** A hole drilled with air has no mud to weigh: the crew is told so, and not stopped for want of a density. */
	mud_density: (c, s) => {
		const fluid = s?.hole.fluid;
		if (fluid?.density !== undefined) return one(c, fluid.density);
		return fluid?.kind === "air" ? words(c.words.label("crew.drilled_with_air")) : [];
	},
};
