import type { Known } from "../../cite/known.ts";
import type { Code } from "../../diagnostics/codes.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../../diagnostics/diagnostic.ts";
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
						what: `${listed(over.map(nameOf))} ${over.length === 1 ? "is" : "are"} ${over.some(strict) ? "not below" : "above"} ${nameOf(upper)}`,
						expected: `${over.some(strict) ? "below" : "at most"} ${pressureAsWritten(upper.pressure)}`,
						found: over.map(({ pressure }) => pressureAsWritten(pressure)).join(", "),
						mend: MENDS[codeOf(upper, first)] ?? "correct the pressures",
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

const MENDS: Partial<Record<Code, string>> = {
	"calc/line-test": "test the line to the maximum treating pressure or above it",
	"calc/expected-pressure": "lower the rate, or design for a higher limit",
	"calc/pressure-boundary": "lower the limit, or use a stronger element or a higher test",
	"calc/pressure-ladder": "set them from the lowest up: kickouts, relief valve, maximum",
};

const nameOf = ({ tier, name }: Rung): string => {
	switch (tier) {
		case "expected":
			return "the expected treating pressure";
		case "kickout":
			return `kickout ${name}`;
		case "relief":
			return "the relief valve";
		case "maximum":
			return "the maximum treating pressure";
		case "line-test":
			return "the line test";
		case "element":
			return `what the ${name} is allowed`;
	}
};

const listed = (names: readonly string[]): string =>
	names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

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
