import type { Definition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { readNamedTable } from "./read-table.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";

const COLUMNS = {
	joint: { dimension: "count", aliases: ["number", "joint_number"] },
	length: { dimension: "length", aliases: ["joint_length"] },
} as const;

/**
 * The tally of each string that names one: joints numbered without a gap, as many as were run, and together as long as
 * the string, within a joint (the landing joint and the shoe's own length lie in that).
 */
export const checkTallies = (
	{ casing }: Definition,
	strings: readonly FoundString[],
	files: ReadFile,
	desk: Desk,
): void => {
	for (const [i, { id, actual }] of casing.entries()) {
		if (actual?.tally === undefined) continue;
		const at: Path = ["casing", i, "actual"];
		const { file, columns } = actual.tally;
		const read = readNamedTable(file, [...at, "tally", "file"], COLUMNS, files, desk, columns);
		if (read === undefined) continue;
		const { rows } = read.columns;
		const numbers = rows.map(({ numbers: { joint } }) => joint ?? Number.NaN);
		const step = (numbers[1] ?? 2) < (numbers[0] ?? 1) ? -1 : 1;
		const odd = numbers.findIndex((number, j) => j > 0 && number !== (numbers[j - 1] ?? 0) + step);
		if (odd > 0) {
			fault(desk, "well/tally", rows[odd]?.at.joint ?? { path: [...at, "tally", "file"] }, {
				what: message("well/tally.what"),
				expected: message("well/tally.expected", { numbers: String((numbers[odd - 1] ?? 0) + step) }),
				found: String(numbers[odd]),
				mend: message("well/tally.mend"),
			});
			continue;
		}
		if (actual.joints !== undefined && actual.joints.value !== rows.length)
			fault(desk, "well/tally", placeOf(actual.joints, [...at, "joints"]), {
				what: message("well/tally.tally-string-has-another-number", { id }),
				expected: message("well/tally.as-many", { count: rows.length }),
				found: asWritten(actual.joints),
				mend: message("well/tally.correct-number-or-complete-tally"),
			});
		const string = strings.find((found) => found.string.id === id)?.string;
		if (string === undefined || rows.length === 0) continue;
		const total = rows.reduce((sum, { numbers: { length = 0 } }) => sum + length, 0);
		const longest = Math.max(...rows.map(({ numbers: { length = 0 } }) => length));
		const due = string.shoe.value - string.top.value;
		if (Math.abs(total - due) <= longest) continue;
		fault(desk, "well/tally", placeOf(actual.shoe, [...at, "shoe"]), {
			what: message("well/tally.joints-tally-are-together-and", {
				total: measured("length", total, due),
				id,
				due: measured("length", due, total),
			}),
			expected: message("well/tally.joints-that-reach-from-top"),
			found: asWritten(actual.shoe),
			mend: message("well/tally.correct-shoe-or-lengths-in"),
		});
	}
};
