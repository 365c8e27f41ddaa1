import type { Known } from "../../cite/known.ts";
import type { Code } from "../../diagnostics/codes.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../../diagnostics/diagnostic.ts";
import { message, type Said } from "../../messages/message.ts";
import { listOf } from "../../well/said.ts";
import type { PressureLadder } from "../results.ts";
import { pressureAsWritten } from "../written-at.ts";

type Rung = PressureLadder["rungs"][number];

/**
 * One fault for each limit that other limits pass, with every one of those named, and one for what is expected, at the
 * lowest limit that it does not stay below; the papers name each pair.
 */
export const ladderFaults = ({ rungs, broken }: PressureLadder): readonly Diagnostic[] => {
	const tierOf = (id: string) => rungs.find((rung) => rung.id === id)?.tier;
	const needed = broken.filter(({ lower }) => tierOf(lower) === "expected").map(({ upper }) => upper);
	const lowest = rungs
		.filter(({ id }) => needed.includes(id))
		.reduce<Rung | undefined>(
			(least, rung) => (least === undefined || rung.pressure.value < least.pressure.value ? rung : least),
			undefined,
		);
	return rungs.flatMap((upper) => {
		const over = broken
			.filter((pair) => pair.upper === upper.id)
			.filter(({ lower }) => tierOf(lower) !== "expected" || upper === lowest)
			.flatMap((pair) => rungs.find(({ id }) => id === pair.lower) ?? []);
		// What is expected stands in no line that could be mended: the limit is pointed at instead.
		const [first] = over.filter(({ tier }) => tier !== "expected");
		const at = first === undefined ? upper : first;
		return over.length === 0
			? []
			: [
					diagnose(codeOf(upper, first), placeOf(at), {
						what: message(over.some(strict) ? "calc/ladder.not-below" : "calc/ladder.above", {
							over: listOf(over.map(nameOf)),
							count: over.length,
							upper: nameOf(upper),
						}),
						expected: message(
							over.some(strict) ? "calc/ladder.expected-below" : "calc/ladder.expected-at-most",
							{ pressure: pressureAsWritten(upper.pressure) },
						),
						found: message("well/any-of", {
							choices: listOf(over.map(({ pressure }) => pressureAsWritten(pressure))),
						}),
						mend: MENDS[codeOf(upper, first)] ?? message("calc/ladder-faults.mend"),
						...(at === upper ? {} : { related: [{ at: placeOf(upper), label: nameOf(upper) }] }),
					}),
				];
	});
};

const strict = ({ tier }: Rung): boolean => tier === "expected" || tier === "kickout";

const codeOf = (upper: Rung, limit: Rung | undefined): Code => {
	if (upper.tier === "line-test") return "calc/line-test";
	if (limit === undefined) return "calc/expected-pressure";
	return upper.tier === "element" ? "calc/pressure-boundary" : "calc/pressure-ladder";
};

const MENDS: Partial<Record<Code, Said>> = {
	"calc/line-test": message("calc/test-line-to-maximum-treating-pressure"),
	"calc/expected-pressure": message("calc/lower-rate-or-design-for-higher"),
	"calc/pressure-boundary": message("calc/lower-limit-or-use-stronger-element"),
	"calc/pressure-ladder": message("calc/set-them-from-lowest-up-kickouts"),
};

const nameOf = ({ tier, name }: Rung): Said => {
	switch (tier) {
		case "expected":
			return message("calc/expected-treating-pressure");
		case "kickout":
			return message("calc/kickout", { name: name ?? "" });
		case "relief":
			return message("calc/relief-valve");
		case "maximum":
			return message("calc/maximum-treating-pressure");
		case "line-test":
			return message("calc/the-line-test");
		case "element":
			return message("calc/what-is-allowed", { name: name ?? "" });
	}
};

const placeOf = ({ pressure }: Rung): Place => {
	const written = typedIn(pressure);
	if (written?.from.kind !== "definition") return { path: ["stimulation", "limits"] };
	const { at, file } = written.from;
	return file === undefined ? { path: at } : { path: at, file };
};

/** The first value that was typed, in the value itself or in what it was worked from. */
const typedIn = (value: Known): Known | undefined => {
	if (value.from.kind === "definition") return value;
	if (value.from.kind !== "worked") return undefined;
	for (const input of Object.values(value.from.inputs)) {
		if (!("value" in input)) continue;
		const found = typedIn(input);
		if (found !== undefined) return found;
	}
	return undefined;
};
