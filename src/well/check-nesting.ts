import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";

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
					what: message("well/liner-top.what", { string: string.id }),
					expected: message("well/liner-top.expected"),
					found: asWritten(string.top),
					mend: message("well/liner-top.mend"),
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
	const [mine, other, key] =
		lacks === "narrower"
			? ([first.outsideDiameter, firstBefore.outsideDiameter, "od"] as const)
			: ([string.shoe, before.string.shoe, "to"] as const);
	const placed = (value: typeof mine, found: { readonly at: FoundString["at"] }) =>
		placeOf(value, [...found.at, "pipe", 0, key]);
	fault(desk, "well/strings-nest", placed(mine, { at }), {
		what:
			lacks === "narrower"
				? message("well/strings-nest.what", { string: string.id, string2: before.string.id })
				: message("well/strings-nest.string-is-not-deeper-than", {
						string: string.id,
						string2: before.string.id,
					}),
		expected:
			lacks === "narrower"
				? message("well/strings-nest.expected", { other: asWritten(other) })
				: message("well/strings-nest.deeper-than-shoe-string-at", {
						string: before.string.id,
						other: asWritten(other),
					}),
		found: asWritten(mine),
		mend:
			lacks === "deeper" && before.string.kind === "liner" && string.kind === "casing"
				? message("well/strings-nest.mend")
				: message("well/strings-nest.list-strings-from-outermost-inward"),
		related: [
			{ at: placed(other, before), label: message("well/strings-nest.label", { string: before.string.id }) },
		],
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
				? message("well/tieback-join.what", { string: string.id })
				: message("well/tieback-join.tieback-does-not-end-in", { string: string.id, liner: liner.id }),
		expected:
			liner === undefined
				? message("well/tieback-join.expected")
				: message("well/tieback-join.at-liners-top-or-at", {
						top: asWritten(liner.top),
						longestStem: measured("length", LONGEST_STEM),
					}),
		...(liner === undefined ? {} : { found: asWritten(string.shoe) }),
		mend:
			liner === undefined ? message("well/tieback-join.mend") : message("well/tieback-join.correct-depth"),
		...(liner === undefined
			? {}
			: {
					related: [
						{
							at: placeOf(liner.top, [...before.at, "pipe", 0, "from"]),
							label: message("well/tieback-join.label"),
						},
					],
				}),
	});
};

const checkLap = ({ string, at }: FoundString, before: FoundString, desk: Desk, loose: Set<string>): void => {
	const { top } = string;
	if (top.value < before.string.shoe.value && top.value >= before.string.top.value) return;
	loose.add(string.id);
	fault(desk, "well/liner-top", placeOf(top, [...at, "pipe", 0, "from"]), {
		what: message("well/liner-top.top-liner-is-not-inside", { string: string.id, string2: before.string.id }),
		expected: message("well/liner-top.between-and-shoe-at", {
			top: asWritten(before.string.top),
			shoe: asWritten(before.string.shoe),
		}),
		found: asWritten(top),
		mend: message("well/liner-top.hang-liner-inside-string-before"),
		related: [
			{
				at: placeOf(before.string.shoe, [...before.at, "pipe"]),
				label: message("well/liner-top.label", { string: before.string.id }),
			},
		],
	});
};
