import type { OffsetWellResults } from "../calc/results.ts";
import { wrap } from "../diagnostics/wrap.ts";
import { message } from "../messages/message.ts";
import { type Reader, tell } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";

interface Pair {
	readonly well: string;
	readonly other: string;
	readonly found?: OffsetWellResults;
}

/** Each two wells of a pad once, as the first of them in the order of the pad file meets the second. */
const pairsOf = (wells: readonly Findings[]): readonly Pair[] =>
	wells.flatMap(({ well, results }, i) =>
		wells.slice(i + 1).map((other): Pair => {
			const name = other.well.identity.name;
			const found = results.isolation.offset_wells.find((each) => each.name === name);
			return { well: well.identity.name, other: name, ...(found === undefined ? {} : { found }) };
		}),
	);

/** How near the wells of a pad come to each other, a line a pair. */
export const padText = (
	file: string,
	name: string,
	wells: readonly Findings[],
	reader: Reader,
	width: number,
): string =>
	[
		"",
		tell(message("pad/heading", { file, name, count: wells.length }), reader),
		...pairsOf(wells).flatMap((pair) =>
			wrap(tell(approach(pair), reader), width - 4).map((line, i) => (i === 0 ? `  ${line}` : `    ${line}`)),
		),
	].join("\n");

const approach = ({ well, other, found }: Pair) => {
	const {
		in_space: distance,
		nearest_in_space: nearest,
		separation_factor: factor,
		separation_at,
	} = found ?? {};
	if (distance === undefined || nearest === undefined)
		return message("pad/approach-unknown", { well, other });
	return message("pad/approach", {
		well,
		other,
		distance,
		md: nearest.md,
		detail: {
			parts:
				factor === undefined || separation_at === undefined
					? []
					: [message("pad/approach-factor", { factor, at: separation_at.md })],
		},
	});
};

/** The same for programs: lengths in feet. */
export const approachesJson = (wells: readonly Findings[]): readonly object[] =>
	pairsOf(wells).map(({ well, other, found }) => ({
		well,
		other,
		nearest_ft: found?.in_space?.value ?? null,
		at_md_ft: found?.nearest_in_space?.md.value ?? null,
		separation_factor: found?.separation_factor?.value ?? null,
		separation_at_md_ft: found?.separation_at?.md.value ?? null,
	}));
