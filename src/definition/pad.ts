import * as z from "zod";
import { type Checked, hasErrors } from "../diagnostics/diagnostic.ts";
import { message } from "../messages/message.ts";
import { PUBLIC, SETTING } from "./audience.ts";
import { definitionSchema } from "./definition.ts";
import { faultAt, isBlock } from "./fault.ts";
import { field, file, group, list, optional, text } from "./field.ts";
import { issueDiagnostics } from "./issue-diagnostics.ts";
import { withoutEchoes } from "./validate.ts";

/** Topics that wells may share: all that a definition has, the well's own among them. What they hold is judged in each well. */
const { definition: _version, ...topics } = definitionSchema.shape;
const shareable = Object.fromEntries(
	Object.entries(topics).map(([name, schema]) => [
		name,
		optional(
			field(z.unknown(), {
				title: schema.description ?? name,
				why: "Taken by every well of the pad that does not say otherwise.",
				papers: SETTING,
				expected: message("definition/expected.block"),
			}),
		),
	]),
);

/** A file that names the wells of one pad and says once what they share. */
const padSchema = group("Pad", "Wells from one site, and what they share.", SETTING, {
	pad: field(z.literal(1), {
		title: "Version of this format",
		why: "Tells the tool how to read the rest.",
		papers: SETTING,
		expected: "`1`",
		example: "1",
	}),
	name: text("Name of the pad", "Heads the papers that speak of all its wells.", PUBLIC, "Sorrel Bench pad"),
	wells: list(
		"Wells",
		"The definition of each, which says what is its own.",
		SETTING,
		file("Definition of a well", "Lies beside the pad file or below it.", SETTING, "pad-3-16h.yaml"),
	),
	...shareable,
});

export interface Pad {
	readonly name: string;
	/** Files of its wells, as written. */
	readonly wells: readonly string[];
	/** What the wells share: a definition without what is each well's own. */
	readonly shared: Readonly<Record<string, unknown>>;
}

/** Reads a tree as a pad file. The topics that its wells share are not looked into here: they are judged in each well. */
export const readPad = (tree: unknown): Checked<Pad> => {
	const parsed = padSchema.safeParse(tree);
	const reading = { schema: padSchema, tree };
	const found = (parsed.error?.issues ?? []).flatMap((issue) => issueDiagnostics(issue, reading));
	const diagnostics = [...withoutEchoes(found, reading)];
	if (!parsed.success || !isBlock(tree)) return { diagnostics };
	const { name, wells } = parsed.data as unknown as Pick<Pad, "name" | "wells">;
	for (const [i, well] of wells.entries())
		if (wells.indexOf(well) < i)
			diagnostics.push(
				faultAt({
					code: "definition/duplicate-id",
					at: ["wells", i],
					what: message("pad/well-twice.what"),
					expected: message("definition/same-name.expected"),
					found: well,
					mend: message("pad/well-twice.mend"),
					related: [
						{ at: { path: ["wells", wells.indexOf(well)] }, label: message("definition/same-name.label") },
					],
				}),
			);
	if (hasErrors(diagnostics)) return { diagnostics };
	const shared = Object.fromEntries(Object.entries(tree).filter(([key]) => key in shareable));
	return { value: { name, wells, shared }, diagnostics };
};
