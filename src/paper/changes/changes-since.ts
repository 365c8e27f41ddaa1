import type { ChangedInput } from "../../compare/changed-inputs.ts";
import { isWorse } from "../../compare/changed-verdicts.ts";
import type { Block } from "../../document/blocks.ts";
import { message } from "../../messages/message.ts";
import { tell } from "../../messages/print.ts";
import { readerOf } from "../context.ts";
import type { Part } from "../parts/part.ts";
import { inputsTable } from "./parts.ts";

/** The date of issue and the list of revisions change with every issue, and page 1 tells them anyway. */
const isOfTheIssue = (input: ChangedInput): boolean => {
	if (input.what !== "entry") return false;
	const [block, entry] = input.after ?? input.before ?? [];
	return block === "well" && (entry === "issued" || entry === "revisions");
};

/** For page 1 of a paper bound against an earlier state: what was changed, and how the paper marks what followed. */
export const changesSince: Part = (context) => {
	const { changes } = context;
	if (changes === undefined) return [];
	const reader = readerOf(context);
	const { well, digest } = changes.before;
	const revision = well.identity.revisions?.at(-1)?.id ?? "–";
	const caption = tell(message("compare/since", { revision, digest }), reader);
	const worse = changes.verdicts.filter(isWorse).length;
	const note: Block = {
		kind: "paragraph",
		tone: "note",
		children: [{ kind: "text", text: tell(message("compare/marked", { worse }), reader) }],
	};
	const listed = inputsTable({ paper: context, changes }, caption, (input) => !isOfTheIssue(input));
	if (listed.length > 0) return [...listed, note];
	const text = `${caption}: ${tell(message("compare/since-nothing"), reader)}`;
	return [{ kind: "paragraph", children: [{ kind: "text", text }] }];
};
