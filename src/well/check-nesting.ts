import { asWritten, type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";

const widest = ({ string }: FoundString): number =>
	Math.max(...string.sections.map(({ outsideDiameter }) => outsideDiameter.value));

/**
 * Strings from the outermost inward, each narrower and deeper than the one before.
 *
 * @param astray ids of strings whose own shoe is at fault
 * @returns the ids of strings that do not nest, of which nothing more need be said
 */
export const checkNesting = (
	strings: readonly FoundString[],
	astray: ReadonlySet<string>,
	desk: Desk,
): ReadonlySet<string> => {
	const loose = new Set<string>();
	for (const [i, found] of strings.entries()) {
		const { string, at } = found;
		const before = strings[i - 1];
		if (before === undefined) {
			if (string.kind !== "casing") {
				loose.add(string.id);
				fault(desk, "well/liner-top", placeOf(string.top, [...at, "pipe", 0, "from"]), {
					what: `the ${string.id} string does not come to the surface, and there is no string before it to hang in`,
					expected: "`surface` of the outermost string; of a liner, a string that it hangs in",
					found: asWritten(string.top, "ft"),
					mend: "write `from: surface`, or list the strings from the outermost inward",
				});
			}
			continue;
		}
		if (string.kind === "tieback") {
			if (!astray.has(before.string.id)) checkTieback(found, before, desk, loose);
			continue;
		}
		if (widest(found) >= widest(before)) {
			loose.add(string.id);
			tellLoose(found, before, "narrower", desk);
		} else if (astray.has(string.id) || astray.has(before.string.id)) {
			loose.add(string.id);
		} else if (string.shoe.value <= before.string.shoe.value && before.string.kind !== "tieback") {
			loose.add(string.id);
			tellLoose(found, before, "deeper", desk);
		} else if (string.kind === "liner") checkLap(found, before, desk, loose);
	}
	return loose;
};

const tellLoose = (
	{ string, at }: FoundString,
	before: FoundString,
	lacks: "narrower" | "deeper",
	desk: Desk,
): void => {
	const [first] = string.sections;
	const [firstBefore] = before.string.sections;
	if (first === undefined || firstBefore === undefined) return;
	const [mine, other, key, unit] =
		lacks === "narrower"
			? ([first.outsideDiameter, firstBefore.outsideDiameter, "od", "in"] as const)
			: ([string.shoe, before.string.shoe, "to", "ft"] as const);
	const placed = (value: typeof mine, found: { readonly at: FoundString["at"] }) =>
		placeOf(value, [...found.at, "pipe", 0, key]);
	fault(desk, "well/strings-nest", placed(mine, { at }), {
		what: `the ${string.id} string is not ${lacks} than the ${before.string.id} string before it`,
		expected:
			lacks === "narrower"
				? `less than ${asWritten(other, unit)}`
				: `deeper than the shoe of the ${before.string.id} string at ${asWritten(other, unit)}`,
		found: asWritten(mine, unit),
		mend:
			lacks === "deeper" && before.string.kind === "liner" && string.kind === "casing"
				? "write `kind: tieback` if it joins that liner, or correct the depth"
				: "list the strings from the outermost inward, or correct the value",
		related: [{ at: placed(other, before), label: `the ${before.string.id} string` }],
	});
};

/** A tieback's stem stands in the receptacle on top of the liner, this far at most [ft]. */
const LONGEST_STEM = 60;

const checkTieback = (
	{ string, sections, at }: FoundString,
	before: FoundString,
	desk: Desk,
	loose: Set<string>,
): void => {
	const liner = before.string.kind === "liner" ? before.string : undefined;
	const below = liner === undefined ? 0 : string.shoe.value - liner.top.value;
	if (liner !== undefined && below >= -SAME_DEPTH && below <= LONGEST_STEM) return;
	loose.add(string.id);
	const place =
		liner === undefined
			? { path: [...at, "kind"] }
			: placeOf(string.shoe, [...(sections.at(-1)?.at ?? at), "to"]);
	fault(desk, "well/tieback-join", place, {
		what:
			liner === undefined
				? `the ${string.id} string is a tieback, and the string before it is no liner`
				: `the ${string.id} tieback does not end in the top of the ${liner.id} liner`,
		expected:
			liner === undefined
				? "the liner that it joins, listed before it"
				: `at the liner's top, ${asWritten(liner.top, "ft")}, or at most ${LONGEST_STEM} ft below`,
		...(liner === undefined ? {} : { found: asWritten(string.shoe, "ft") }),
		mend: liner === undefined ? "list it after its liner, or correct its kind" : "correct the depth",
		...(liner === undefined
			? {}
			: {
					related: [{ at: placeOf(liner.top, [...before.at, "pipe", 0, "from"]), label: "top of the liner" }],
				}),
	});
};

const checkLap = ({ string, at }: FoundString, before: FoundString, desk: Desk, loose: Set<string>): void => {
	const { top } = string;
	if (top.value < before.string.shoe.value && top.value >= before.string.top.value) return;
	loose.add(string.id);
	fault(desk, "well/liner-top", placeOf(top, [...at, "pipe", 0, "from"]), {
		what: `the top of the ${string.id} liner is not inside the ${before.string.id} string`,
		expected: `between ${asWritten(before.string.top, "ft")} and the shoe at ${asWritten(before.string.shoe, "ft")}`,
		found: asWritten(top, "ft"),
		mend: "hang the liner inside the string before it",
		related: [
			{
				at: placeOf(before.string.shoe, [...before.at, "pipe"]),
				label: `shoe of the ${before.string.id} string`,
			},
		],
	});
};
