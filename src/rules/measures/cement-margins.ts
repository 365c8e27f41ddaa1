import { greatestIndex } from "../../calc/cement/mud-removal.ts";
import type { TightestMargin } from "../../calc/results.ts";
import { message, type Said } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { unknownFracture, unknownPore } from "../unknown-rock.ts";
import { cementOf } from "./cement.ts";
import { friction, hasFriction, least, placements, planned, pumped } from "./cement-job.ts";
import { absent, boundedBy, known, type Measure } from "./reading.ts";
import { stringOf } from "./shoe.ts";

/** Least margin to fracture, moving and in place; at rest alone it only bounds what the job comes to. */
const fracture = (pick: "margin" | "density") =>
	planned((the) => {
		const cement = cementOf(the);
		const still = cement?.least_fracture_margin;
		const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
		const value =
			pick === "margin"
				? least([...moving.map(({ margin }) => margin), ...(still === undefined ? [] : [still.margin])])
				: least([
						...moving.map(({ least_as_density }) => least_as_density),
						...(still === undefined ? [] : [still.as_density]),
					]);
		return boundedBy(
			[...(hasFriction(the) ? [] : [friction(the)]), ...unknownFracture(the, stringOf(the).hole)],
			known(value, missingAt(message("rules/fracture-gradient-rock-behind-cement"), "geology", "formations")),
		);
	});

const where = (the: Case): Said => {
	const still = cementOf(the)?.least_fracture_margin;
	const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
	const all = [
		...moving.map(({ margin, formation }) => ({ value: margin.value, formation })),
		...(still === undefined ? [] : [{ value: still.margin.value, formation: still.formation }]),
	];
	const tightest = all.sort((a, b) => a.value - b.value)[0]?.formation;
	if (tightest === "shoe test") return message("rules/pressure-of-shoe-test");
	return message("rules/fracture-pressure-of", { formation: tightest ?? message("rules/rock") });
};

const at = (the: Case) => {
	const still = cementOf(the)?.least_fracture_margin;
	const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
	return [...moving, ...(still === undefined ? [] : [still])].sort(
		(a, b) => a.margin.value - b.margin.value,
	)[0]?.at.tvd;
};

/** The fluid that passes the weakest place when the job comes nearest to it; nothing where that is with cement in place. */
const passing = (the: Case): Said | undefined => {
	const still = cementOf(the)?.least_fracture_margin;
	const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
	const tightest = [...moving].sort((a, b) => a.margin.value - b.margin.value)[0];
	if (tightest === undefined || (still !== undefined && still.margin.value < tightest.margin.value))
		return undefined;
	return whileMoving(tightest);
};

/** What is on the move then: the fluid at the place once the margin is lost there, else the one that is pumped. */
const whileMoving = ({ lost, during }: Pick<TightestMargin, "lost" | "during">): Said =>
	lost === undefined
		? message("rules/while-fluid-is-pumped", { fluid: during })
		: message("rules/while-fluid-passes", { fluid: lost.passing });

/** Where and when the job comes nearest to pore pressure. */
const nearestPore = (the: Case) =>
	[...placements(the).flatMap(({ pore }) => pore ?? [])].sort((a, b) => a.margin.value - b.margin.value)[0];

export const cementMarginMeasures = {
	"longest transition time": {
		noun: message("rules/longest-transition-time"),
		read: planned((the) => {
			const times = (stringOf(the).cement?.slurries ?? []).flatMap((slurry) => slurry.transitionTime ?? []);
			if ((cementOf(the)?.gas_flow ?? []).length === 0)
				return absent(message("rules/no-gas-zone-is-behind-the-cement"));
			return known(
				[...times].sort((a, b) => b.value - a.value)[0],
				missingOf(the, stringOf(the), message("rules/transition-time-of-the-slurries"), "cement", "slurries"),
			);
		}),
		say: ({ part }) => [message("rules/slurry-is-in-transition-for", { part })],
	},
	"greatest channel index": {
		noun: message("rules/greatest-channel-index"),
		read: planned((the) => {
			const pairs = cementOf(the)?.mud_removal ?? [];
			return pairs.length === 0
				? absent(message("rules/no-flow-of-mud-and-spacer-is-known"))
				: known(
						greatestIndex.of({ n_i: pairs.map(({ index }) => index) }),
						missingOf(the, stringOf(the), message("rules/yield-points-of-mud-spacer-slurry"), "cement"),
					);
		}),
		say: ({ part }, the) => {
			const worst = [...(cementOf(the)?.mud_removal ?? [])].sort((a, b) => b.index.value - a.index.value)[0];
			return [
				message("rules/channel-index-of-string-is", {
					string: stringOf(the).id,
					part,
					at_name: worst?.at_name ?? "",
				}),
			];
		},
	},
	"cement margin to fracture": {
		noun: message("rules/least-margin-cement-job-to-fracture"),
		read: fracture("margin"),
		say: ({ value, size }, the) => {
			const tvd = at(the);
			const fluid = passing(the);
			return [
				message("rules/cement-job-string-comes-bears", {
					string: stringOf(the).id,
					detail: {
						parts:
							value.value < 0
								? [message("rules/above-what", { size })]
								: [message("rules/within-what", { size })],
					},
					where: where(the),
					detail2: {
						parts: [
							...(tvd === undefined ? [] : [message("rules/at", { tvd })]),
							...(fluid === undefined ? [] : [fluid]),
						],
					},
				}),
			];
		},
	},
	"cement margin to fracture as density": {
		noun: message("rules/least-margin-cement-job-to-fracture-2"),
		read: fracture("density"),
		say: ({ part }, the) => [
			message("rules/as-density-least-margin-cement-job-to", { string: stringOf(the).id, part }),
		],
	},
	"cement margin over pore": {
		noun: message("rules/least-margin-cement-job-over-pore"),
		read: pumped((the) =>
			boundedBy(
				unknownPore(the, stringOf(the).hole),
				known(
					least(placements(the).flatMap(({ pore }) => pore?.margin ?? [])),
					missingAt(message("rules/pore-pressure-rock-behind-cement"), "geology", "formations"),
				),
			),
		),
		say: ({ value, size }, the) => {
			const nearest = nearestPore(the);
			const facts = {
				string: stringOf(the).id,
				size,
				formation: nearest?.formation ?? message("rules/rock"),
				detail: {
					parts:
						nearest === undefined ? [] : [message("rules/at", { tvd: nearest.at.tvd }), whileMoving(nearest)],
				},
			};
			return [
				message(value.value < 0 ? "rules/cement-stays-below-pore" : "rules/cement-stays-above-pore", facts),
			];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
