import { fracturePressure } from "../../calc/pressure/fracture-gradient.ts";
import { equivalentMudWeight } from "../../calc/pressure/hydrostatic.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { CasingString } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { densityOver } from "../formulas.ts";
import { rolesOf } from "../subject.ts";
import { holeOf, isCased } from "./open-hole.ts";
import { heaviestBelow } from "./pressure.ts";
import { absent, known, type Measure, type Reading } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The innermost string that a hole is drilled out of. */
const stringAbove = (
	{ well }: Case,
	hole: { readonly id: string; readonly bottom: Known },
): CasingString | undefined =>
	well.strings
		.filter((string) => string.hole.id !== hole.id && string.shoe.value < hole.bottom.value)
		.sort((a, b) => b.shoe.value - a.shoe.value)[0];

const gasIn = ({ well }: Case, top: number, bottom: number): string | undefined =>
	well.geology.formations.find(
		({ flowZone, top: from }) => flowZone === "gas" && from.value > top && from.value < bottom,
	)?.name;

/** Of a shoe that is still to be tested, with hole drilled below it. */
const shoeTest =
	(read: (the: Case, EMW: Known<"density">) => Reading) =>
	(the: Case): Reading => {
		const string = stringOf(the);
		if (string.shoeTest?.actual !== undefined)
			return absent(message("rules/shoe-test-is-on-record", { string: string.id }));
		const next = the.well.holes[the.well.holes.findIndex(({ id }) => id === string.hole.id) + 1];
		if (next === undefined)
			return absent(message("rules/no-hole-is-drilled-below-shoe", { string: string.id }));
		if (isCased(the, next)) return absent(message("rules/hole-beneath-is-drilled-and-cased"));
		const EMW = string.shoeTest?.equivalent;
		return EMW === undefined
			? {
					state: "missing",
					missing: [missingOf(the, string, message("rules/planned-shoe-test"), "shoe_test", "equivalent")],
				}
			: read(the, EMW);
	};

export const drilledOutMeasures = {
	"preventers over the hole": {
		noun: message("rules/preventers-over-hole"),
		read: (the) => {
			const { hole } = holeOf(the);
			if (isCased(the, hole)) return absent(message("rules/hole-is-drilled-and-cased", { hole: hole.id }));
			const above = stringAbove(the, hole);
			const shallow = above === undefined || rolesOf(above, the.well).includes("conductor");
			if (shallow && gasIn(the, above?.shoe.value ?? 0, hole.bottom.value) === undefined)
				return absent(message("rules/hole-is-drilled-without-preventers", { hole: hole.id }));
			const n = (the.well.wellControl?.preventers ?? []).filter(({ over }) => over === above?.id).length;
			return { state: "known", value: constant("count", n, "preventer stacks listed", cite("definition")) };
		},
		say: (_, the) => {
			const { hole } = holeOf(the);
			const above = stringAbove(the, hole);
			const gas = gasIn(the, above?.shoe.value ?? 0, hole.bottom.value);
			const listed = (the.well.wellControl?.preventers ?? []).some(({ over }) => over === above?.id);
			return [
				message(listed ? "rules/preventers-stand-over-hole" : "rules/no-preventers-stand-over-hole", {
					hole: hole.id,
					string: above?.id ?? "",
					detail: { parts: gas === undefined ? [] : [message("rules/and-hole-meets-gas", { gas })] },
				}),
			];
		},
	},
	"planned shoe test over fluid below": {
		noun: message("rules/planned-shoe-test-over-fluid"),
		read: shoeTest((the, EMW) => {
			const fluid = heaviestBelow(the);
			return fluid.state === "known"
				? known(
						densityOver.of({ EMW, ρ: fluid.value as Known<"density"> }),
						missingAt(message("rules/density-drilling-fluid-below-shoe"), "holes"),
					)
				: fluid;
		}),
		say: ({ value, size }) => [
			message(
				value.value < 0 ? "rules/planned-shoe-test-below-fluid" : "rules/planned-shoe-test-above-fluid",
				{
					size,
				},
			),
		],
	},
	"planned shoe test": {
		noun: message("rules/planned-formation-integrity-test"),
		read: shoeTest((the, EMW) =>
			stringOf(the).shoeTest?.kind === "LOT"
				? absent(message("rules/shoe-is-tested-to-leak-off", { string: stringOf(the).id }))
				: { state: "known", value: EMW },
		),
		say: ({ part }, the) => [message("rules/shoe-is-to-be-tested-to", { string: stringOf(the).id, part })],
	},
	"fracture gradient at the shoe": {
		noun: message("rules/fracture-gradient-at-shoe"),
		read: (the) => {
			const string = stringOf(the);
			const shoe = casingOf(the)?.shoe;
			const rock = [...the.well.geology.formations]
				.reverse()
				.find(({ top }) => shoe !== undefined && top.value <= shoe.tvd.value);
			const F = rock?.fractureGradient;
			return known(
				shoe === undefined || F === undefined
					? undefined
					: equivalentMudWeight.of({ p: fracturePressure.of({ F, D: shoe.below_ground }), D: shoe.tvd }),
				missingOf(the, string, message("rules/fracture-gradient-at-shoe"), "shoe_test"),
			);
		},
		say: ({ part }) => [message("rules/rock-at-shoe-bears", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
