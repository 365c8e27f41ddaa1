import * as z from "zod";
import { message } from "../messages/message.ts";
import { RECORD } from "./audience.ts";
import { entry, field, group, optional, text } from "./field.ts";

/** How a column of a file is headed there, and its unit where the head does not say it. */
export interface ForeignHead {
	readonly head: string;
	readonly unit?: string;
}

const column = (name: string) =>
	field(
		z.union([
			z
				.string()
				.trim()
				.min(1)
				.transform((head): ForeignHead => ({ head })),
			entry("Column", "Its head in the file, and its unit.", RECORD, {
				head: text("Head", "As it stands in the first line of the file.", RECORD, "DEPT"),
				unit: optional(text("Unit", "Where the head does not say it.", RECORD, "ft")),
			}),
		]),
		{
			title: `Column of \`${name}\``,
			why: "Files of other programs head their columns in their own way.",
			papers: RECORD,
			expected: message("definition/expected.column"),
		},
	);

/** `columns:` beside a file: which of its columns holds what, where its heads are not those that the tool knows. */
export const columnsOf = <const C extends string>(...names: readonly C[]) =>
	optional(
		group(
			"Columns",
			"Which column of the file holds what, where its heads are foreign.",
			RECORD,
			Object.fromEntries(names.map((name) => [name, optional(column(name))])) as Record<
				C,
				z.ZodExactOptional<ReturnType<typeof column>>
			>,
		),
	);
