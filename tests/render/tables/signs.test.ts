import { expect, it } from "vitest";
import type { PaperDocument } from "../../../src/document/document.ts";
import { renderTableFiles } from "../../../src/pipeline.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf } from "../../starters.ts";

const [whole] = composeOnce(findingsOf("vertical-metric"), [
	{ paper: "handout", language: "en", units: "field" },
]).documents;
if (whole === undefined) throw new Error("no paper");

it("a negative number stays a number in CSV; text that a spreadsheet would run does not run", async () => {
	const document: PaperDocument = {
		...whole.paper,
		sections: [
			{
				id: "signs",
				title: "Signs",
				blocks: [
					{
						kind: "table",
						caption: "Signs",
						columns: [
							{ id: "what", head: "What", kind: "text", width: 1 },
							{ id: "offset", head: "Offset", kind: "quantity", dimension: "offset", width: 1 },
						],
						rows: ["=1+1", "+1", "-1+2", "@SUM(A1)", "plain"].map((text) => ({
							cells: {
								what: { kind: "text", text },
								offset: { kind: "quantity", dimension: "offset", value: -1039 },
							},
						})),
					},
				],
			},
		],
	};
	const [table] = await renderTableFiles(document);
	expect(table?.text.split("\r\n").slice(1)).toEqual([
		"'=1+1,-1039",
		"'+1,-1039",
		"'-1+2,-1039",
		"'@SUM(A1),-1039",
		"plain,-1039",
		"",
	]);
});
